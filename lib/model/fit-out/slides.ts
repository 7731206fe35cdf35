/** The slides that shelves run on, and how far they pull out. */
import type { HardwarePart, Shelf, ShelfPart } from "../../design/index.js";
import type { Length } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";

/** The pair of slides of a shelf or a drawer, where the case names one. */
export function slidesOf({ parts }: ReviewInput, name: string): HardwarePart | undefined {
  return parts.hardware.find(({ id, item }) => item.duty === "slide" && id === `slides of ${name}`);
}

/** How far a sliding shelf or a drawer comes out: as its slides do, or by its whole depth where nobody says. */
export function pulledOut(input: ReviewInput, { name, depth }: Pick<Shelf, "name" | "depth">): Length {
  return slidesOf(input, name)?.stock.extension ?? depth;
}

/** Rounding of measured places, m. */
const rounding = 0.003;

/** The sliding shelves that come out of the case at its front: where it is open there, or open widely enough. */
export function shelvesThatComeOut({ parts }: ReviewInput): readonly ShelfPart[] {
  return parts.shelves.filter(({ shelf, panel: { box, section } }) => {
    if (!shelf.sliding) return false;
    const front = parts.panels.find(
      (one) => one.section === section && one.role === "face" && one.face === "front",
    );
    if (!front) return true;
    return front.openings.some(({ low, width, height }) => {
      const [left, bottom] = [front.box.low.x + low.x, front.box.low.z + low.y];
      const within = (from: number, to: number, start: number, size: number): boolean =>
        from <= start + rounding && start + size <= to + rounding;
      return (
        within(left, left + width, box.low.x, box.size.x) &&
        within(bottom, bottom + height, box.low.z, box.size.z)
      );
    });
  });
}
