/** Where a group's holes are, as running marks of a tape from the panel's bottom left corner. */
import type { Fastening, PanelPoint } from "../design/index.js";
import type { Length } from "../quantity/index.js";

/** Holes as two lists of marks. */
export interface HoleMarks {
  /** From the left edge. */
  readonly across: readonly Length[];
  /** From the bottom edge. */
  readonly up: readonly Length[];
  /** "crossings": a hole where every line across meets every line up. "pairs": the nth with the nth. */
  readonly read: "crossings" | "pairs";
}

/** Marks closer than this are one mark (a tenth of a millimetre). */
const sameMark = 1e-4;

/** The marks of a group; undefined where the builder places it by hand. */
export function holeMarks({ at }: Fastening): HoleMarks | undefined {
  if (at.length === 0) return undefined;
  const across = marksAlong(at, "u");
  const up = marksAlong(at, "v");
  const everyCrossing =
    across.length * up.length === at.length && across.every((u) => up.every((v) => isHole(at, u, v)));
  if (everyCrossing) return { across, up, read: "crossings" };
  const inOrder = [...at].sort((a, b) => a.u - b.u || a.v - b.v);
  return { across: inOrder.map(({ u }) => u), up: inOrder.map(({ v }) => v), read: "pairs" };
}

function marksAlong(at: readonly PanelPoint[], axis: keyof PanelPoint): Length[] {
  const sorted = at.map((hole) => hole[axis]).sort((a, b) => a - b);
  return sorted.filter((mark, i) => i === 0 || mark - (sorted[i - 1] as Length) > sameMark);
}

function isHole(at: readonly PanelPoint[], u: Length, v: Length): boolean {
  return at.some((hole) => Math.abs(hole.u - u) <= sameMark && Math.abs(hole.v - v) <= sameMark);
}
