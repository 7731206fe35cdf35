/** When in the work a piece of hardware goes on. */
import type { HardwarePart, Parts } from "../design/index.js";

/**
 * bench: on the flat panel, before the box is closed. corners: over the finished edges. doors: with the
 * leaf in its opening. joining: with the sections stacked. wheels: last of all.
 */
export type HardwareStage = "bench" | "corners" | "doors" | "joining" | "wheels";

/** The stage of a piece of hardware. */
export function stageOf({ item, stock, panels }: HardwarePart, parts: Parts): HardwareStage {
  if (stock.kind === "caster" || item.duty === "roll") return "wheels";
  if (stock.kind === "corner" || "cornersOf" in item.places) return "corners";
  if (item.duty === "join-sections") return "joining";
  const onLeaf = panels.some((id) => parts.panels.find((panel) => panel.id === id)?.role === "leaf");
  return onLeaf || stock.kind === "hinge" || item.duty === "close" ? "doors" : "bench";
}

/** Hardware of one stage, of one section or of all. */
export function hardwareAt(stage: HardwareStage, parts: Parts, section?: string): readonly HardwarePart[] {
  return parts.hardware.filter(
    (part) => stageOf(part, parts) === stage && (section === undefined || part.section === section),
  );
}
