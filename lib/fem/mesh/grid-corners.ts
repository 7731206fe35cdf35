/** The mesh of a panel whose cutouts are all rectangles with sharp corners: straight lines from rim to rim. */
import type { Point2 } from "../../shape/index.js";
import { isMaterial, type Outline, sharpBoxesOf } from "./outline.js";
import type { Quad } from "./quad-mesh.js";
import type { CornerMesh } from "./refinement.js";
import { divided, type MeshGuides, type SizeAt } from "./size.js";

/** A place nearer than this to another line, in parts of the size there, gets no line of its own. */
const crowded = 0.4;

/**
 * Meshes by lines.
 *
 * @param outline with rectangles only
 * @param guides what else needs lines
 * @param size of elements
 */
export function gridCorners(outline: Outline, guides: MeshGuides, size: SizeAt): CornerMesh {
  return cornersOnLines(outline, lines(outline, guides, size, 0), lines(outline, guides, size, 1));
}

/**
 * Squares between given lines, where there is material.
 *
 * @param outline with rectangles whose sides are among the lines
 * @param columns places of the lines along x
 * @param rows places of the lines along y
 */
export function cornersOnLines(
  outline: Outline,
  columns: readonly number[],
  rows: readonly number[],
): CornerMesh {
  const places: Point2[] = [];
  const numbers = new Map<number, number>();
  const nodeAt = (column: number, row: number): number => {
    const key = row * columns.length + column;
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, places.length);
    return places.push({ x: columns[column]!, y: rows[row]! }) - 1;
  };
  const quads: Quad[] = [];
  for (let row = 0; row + 1 < rows.length; row++) {
    for (let column = 0; column + 1 < columns.length; column++) {
      const middle: Point2 = {
        x: (columns[column]! + columns[column + 1]!) / 2,
        y: (rows[row]! + rows[row + 1]!) / 2,
      };
      if (!isMaterial(outline, middle)) continue;
      quads.push([
        nodeAt(column, row),
        nodeAt(column + 1, row),
        nodeAt(column + 1, row + 1),
        nodeAt(column, row + 1),
      ]);
    }
  }
  return { places, quads };
}

/** Lines across one axis: where they must be, and the divisions between. */
function lines(outline: Outline, guides: MeshGuides, size: SizeAt, axis: 0 | 1): readonly number[] {
  const extent = axis === 0 ? outline.length : outline.width;
  const must = musts(outline, guides, axis).filter((at) => at > 0 && at < extent);
  const smallest = smallestAcross(guides, size, axis);
  const fixed = withRoom(
    [0, extent, ...must],
    guides.places.map(({ x, y }) => (axis === 0 ? x : y)),
    smallest,
    extent,
  );
  return fixed.flatMap((at, i) => {
    const next = fixed[i + 1];
    return next === undefined ? [at] : divided(at, next, smallest).slice(0, -1);
  });
}

function musts(outline: Outline, { boxes }: MeshGuides, axis: 0 | 1): number[] {
  const rectangles = [...boxes, ...(sharpBoxesOf(outline) ?? [])];
  return rectangles.flatMap(({ left, bottom, width, height }) =>
    axis === 0 ? [left, left + width] : [bottom, bottom + height],
  );
}

/** A line runs through the whole panel, so it takes the smallest size it meets: beside a corner, if any. */
function smallestAcross({ corners }: MeshGuides, size: SizeAt, axis: 0 | 1): (at: number) => number {
  const others = [0, ...corners.map(({ x, y }) => (axis === 0 ? y : x))];
  return (at) =>
    Math.min(...others.map((other) => size(axis === 0 ? { x: at, y: other } : { x: other, y: at })));
}

/** All that must be, and the wishes that are not crowded. */
function withRoom(
  must: readonly number[],
  wishes: readonly number[],
  size: (at: number) => number,
  extent: number,
): number[] {
  const taken: number[] = [];
  for (const at of [...must].sort((a, b) => a - b)) {
    if (taken.every((other) => Math.abs(other - at) > 1e-9 * extent)) taken.push(at);
  }
  for (const at of wishes) {
    const inside = at > 0 && at < extent;
    if (inside && taken.every((other) => Math.abs(other - at) > crowded * size(at))) taken.push(at);
  }
  return taken.sort((a, b) => a - b);
}
