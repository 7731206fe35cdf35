/** Lines that meet an outline at a sharp angle, such as the side of a batten that grazes a port. */
import type { Line } from "./mesh-ring.js";
import { apart, type Spot } from "./outline.js";
import { toSide } from "./outline-faults.js";
import type { SizeAt } from "./size.js";

/** Below this angle no sound element fits between two lines, rad. */
const sharp = (28 * Math.PI) / 180;
/** A line is taken up again where it is so far from the outline, in sizes. */
const takenUp = 0.3;
/** Steps in which that place is looked for, a size. */
const step = 0.25;

/**
 * The lines without their ends that lie in a cusp: there the make-up of an element is that of its middle.
 *
 * @param lines parts between places where they meet others
 * @param edges of the outline and its cutouts
 * @param size of triangles
 */
export function clearOfCusps(lines: readonly Line[], edges: readonly Line[], size: SizeAt): readonly Line[] {
  return lines.flatMap((line) => {
    const from = clearEnd(line, edges, size);
    const to = from && clearEnd([line[1], from], edges, size);
    return from && to && apart(from, to) > step * size(from) ? [[from, to] as const] : [];
  });
}

/** Where a line is clear of the outline that it meets at its first end; undefined when nowhere. */
function clearEnd([from, to]: Line, edges: readonly Line[], size: SizeAt): Spot | undefined {
  const meets = edges.some(([a, b]) => isSharp(from, to, a, b) || isSharp(from, to, b, a));
  if (!meets) return from;
  const length = apart(from, to);
  for (let along = step * size(from); along < length; along += step * size(from)) {
    const place: Spot = [
      from[0] + ((to[0] - from[0]) * along) / length,
      from[1] + ((to[1] - from[1]) * along) / length,
    ];
    if (edges.every(([a, b]) => toSide(place, a, b) > takenUp * size(place))) return place;
  }
  return undefined;
}

/** Whether an edge from a leaves a line's first end at a sharp angle without lying on the line. */
function isSharp(from: Spot, to: Spot, a: Spot, b: Spot): boolean {
  if (apart(from, a) > 1e-6 * apart(from, to)) return false;
  const [ux, uy, vx, vy] = [to[0] - from[0], to[1] - from[1], b[0] - a[0], b[1] - a[1]];
  const angle = Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy));
  return angle > 1e-6 && angle < sharp;
}
