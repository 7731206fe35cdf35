/** From where a hand reaches into a section while its last panel is closed. */
import type { Parts, PlacedOpening } from "../design/index.js";
import { Length } from "../quantity/index.js";

/** The widest way in. */
export interface Access {
  readonly opening: PlacedOpening;
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

/** The panel to close last: the top, or the back where the way in is in the top. */
export function lastPanel(section: string, access: Access | undefined): string {
  return access?.panel === `${section}.top` ? `${section}.back` : `${section}.top`;
}

/** How to get washers and nuts to the inside of a closed section, in words. */
export function reachWords(section: string, parts: Parts): string {
  const access = accessOf(section, parts);
  return access
    ? `Reach in through "${access.opening.name}" of ${access.panel} for washers and nuts.`
    : `No opening of ${section} lets a hand in: tape washers and nuts over their holes from inside before it is closed.`;
}
