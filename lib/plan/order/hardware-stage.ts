/** When in the work a piece of hardware goes on, and from where a hand reaches into a section by then. */
import type { Face, HardwarePart, Parts, PlacedOpening } from "../../design/index.js";
import { Length } from "../../quantity/index.js";

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

/** The widest way in. */
export interface Access {
  /** The opening that the hand goes through. */
  readonly opening: PlacedOpening;
  /** The id of the panel that the opening is in. */
  readonly panel: string;
}

/** Common practice, no source: a hand with a washer goes through this. */
const hand: Length = Length.of(110, "mm");

/**
 * The opening of a section whose smaller side is largest; undefined where no hand gets through any. A
 * hole for hardware is no way in, the hardware fills it.
 */
export function accessOf(section: string, { panels }: Parts): Access | undefined {
  const ways = panels
    .filter((panel) => panel.section === section && panel.role === "face")
    .flatMap((panel) => panel.openings.map((opening) => ({ opening, panel: panel.id })))
    .filter(({ opening }) => opening.why === "case");
  const best = ways.sort((a, b) => narrowSide(b.opening) - narrowSide(a.opening))[0];
  return best && narrowSide(best.opening) >= hand ? best : undefined;
}

function narrowSide({ width, height }: PlacedOpening): number {
  return Math.min(width, height);
}

/** The faces of a section that have no panel. */
export function openFaces(section: string, { sections }: Parts): readonly Face[] {
  return sections.find(({ name }) => name === section)?.open ?? [];
}

/** The panel to close last: the top, or the back where the way in is in the top. */
export function lastPanel(section: string, access: Access | undefined): string {
  return access?.panel === `${section}.top` ? `${section}.back` : `${section}.top`;
}

/** How to get washers and nuts to the inside of a closed section, in words. */
export function reachWords(section: string, parts: Parts): string {
  const [open] = openFaces(section, parts);
  if (open) return `Reach in through the open ${open} for washers and nuts.`;
  const access = accessOf(section, parts);
  return access
    ? `Reach in through "${access.opening.name}" of ${access.panel} for washers and nuts.`
    : hasLateRivets(section, parts)
      ? `No hand gets into ${section} any more: set these rivets without washers. Tape nuts over their holes before it is closed.`
      : `No opening of ${section} lets a hand in: tape washers and nuts over their holes from inside before it is closed.`;
}

/** Whether rivets of a section are set when no hand gets behind them any more. */
function hasLateRivets(section: string, { fastenings, panels }: Parts): boolean {
  const own = new Set(panels.filter((panel) => panel.section === section).map(({ id }) => id));
  return fastenings.some(({ noHandBehind, panel }) => noHandBehind && own.has(panel));
}
