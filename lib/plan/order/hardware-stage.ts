/** When in the work a piece of hardware goes on, and from where a hand reaches into a section by then. */
import { accessOf, type HardwarePart, openFaces, type Parts } from "../../design/index.js";

/**
 * bench: on the flat panel, before the box is closed. corners: over the finished edges. doors: with the
 * leaf in its opening. joining: with the sections stacked. wheels: last of all.
 */
export type HardwareStage = "bench" | "corners" | "doors" | "joining" | "wheels";

/** The stage of a piece of hardware. */
export function stageOf({ item, stock, panels }: HardwarePart, parts: Parts): HardwareStage {
  if (stock.kind === "caster" || item.duty === "roll") return "wheels";
  if (stock.kind === "corner" || "cornersOf" in item.places) return "corners";
  if (stock.kind === "keeper" && item.duty === "join-sections") return "bench";
  if (item.duty === "join-sections") return "joining";
  const onLeaf = panels.some((id) => parts.panels.find((panel) => panel.id === id)?.role === "leaf");
  return onLeaf || stock.kind === "hinge" || item.duty === "close" ? "doors" : "bench";
}

/** Whether it joins sections and is what a latch pulls on: it goes on by its drawing, the latch where it meets it. */
export function isKeeper({ stock, item }: HardwarePart): boolean {
  return stock.kind === "keeper" && item.duty === "join-sections";
}

/** Hardware of one stage, of one section or of all. */
export function hardwareAt(stage: HardwareStage, parts: Parts, section?: string): readonly HardwarePart[] {
  return parts.hardware.filter(
    (part) => stageOf(part, parts) === stage && (section === undefined || part.section === section),
  );
}

/** How to get washers and nuts to the inside of a closed section, in words. */
export function reachWords(section: string, parts: Parts): string {
  const [open] = openFaces(section, parts);
  if (open) return `Reach in through the open ${open} for washers and nuts.`;
  const access = accessOf(section, parts);
  return access
    ? `Reach in through "${access.opening.name}" of ${access.panel} for washers and nuts.${hasLateRivets(section, parts) ? " Rivets that no hand reaches get no washer." : ""}`
    : hasLateRivets(section, parts)
      ? `No hand gets into ${section} any more: set these rivets without washers. Tape nuts over their holes before it is closed.`
      : `No opening of ${section} lets a hand in: tape washers and nuts over their holes from inside before it is closed.`;
}

/** Whether rivets of a section are set when no hand gets behind them any more. */
function hasLateRivets(section: string, { fastenings, panels }: Parts): boolean {
  const own = new Set(panels.filter((panel) => panel.section === section).map(({ id }) => id));
  return fastenings.some(({ noHandBehind, panel }) => noHandBehind && own.has(panel));
}
