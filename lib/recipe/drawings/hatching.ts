/** An opening filled with slanting lines, so that it is seen in black and white. */
import type { DrawingMark } from "../../page/index.js";
import { boundsOf, crossings, line, type Point2, type Shape } from "../../shape/index.js";

/** Lines rising to the right, as far apart as is told, that end at the outline. */
export function hatching(outline: Shape, apart: number): DrawingMark[] {
  const { left, bottom, width, height } = boundsOf(outline);
  const count = Math.ceil((width + height) / apart);
  return Array.from({ length: count }, (_, i) => (i + 0.5) * apart).flatMap((off) => {
    const from = { x: left + off - height - 1, y: bottom - 1 };
    const slant = line(from, { x: from.x + height + 2, y: from.y + height + 2 });
    const met = outline.sides.flatMap((side) => crossings(slant, side)).sort((a, b) => a.x - b.x);
    return pairs(distinct(met)).map((points): DrawingMark => ({ mark: "line", role: "thin", points }));
  });
}

function distinct(points: readonly Point2[]): readonly Point2[] {
  return points.filter(({ x }, i) => i === 0 || x - (points[i - 1]?.x ?? 0) > 1e-6);
}

/** The first with the second, the third with the fourth; a line that only touches gives none. */
function pairs(points: readonly Point2[]): readonly (readonly Point2[])[] {
  if (points.length % 2 === 1) return [];
  return points.flatMap((point, i) => (i % 2 === 0 ? [[point, points[i + 1] as Point2]] : []));
}
