/** Where the lines of a box's mesh run, and where strains pile up in it. */

import { at as entry } from "../../algebra/lists.js";
import type { Point2 } from "../../shape/index.js";
import { divided, gradedAlong, type MeshBox, sharpBoxesOf, sharpBoxOf } from "../mesh/index.js";
import {
  type BoxProblem,
  type BoxSpot,
  extents,
  type FaceName,
  faceNames,
  frames,
  onFace,
} from "./box-problem.js";

/**
 * Places of the lines across each axis of the box: at the sides of cutouts, strips and patches, and between, in
 * pairs.
 */
export function boxLines(
  problem: BoxProblem,
  size: number,
  patches: readonly MeshBox[],
): readonly (readonly number[])[] {
  return ([0, 1, 2] as const).map((axis) => axisLines(problem, axis, size, patches));
}

function axisLines(
  problem: BoxProblem,
  axis: 0 | 1 | 2,
  size: number,
  patches: readonly MeshBox[],
): readonly number[] {
  const extent = extents(problem)[axis];
  const musts = [...faceMusts(problem, axis, patches), ...beamMusts(problem, axis)];
  const fixed = [0, extent, ...musts.filter((at) => at > 0 && at < extent)].sort((a, b) => a - b);
  const apart = fixed.filter((at, i) => i === 0 || at - entry(fixed, i - 1) > 1e-7 * extent);
  const graded = gradedAlong(apart, size);
  const coarse = apart.flatMap((at, i) => {
    const next = apart[i + 1];
    return next === undefined ? [at] : divided(at, next, (place) => 2 * graded(place)).slice(0, -1);
  });
  return coarse.flatMap((at, i) => (i === 0 ? [at] : [(entry(coarse, i - 1) + at) / 2, at]));
}

function faceMusts(problem: BoxProblem, axis: 0 | 1 | 2, patches: readonly MeshBox[]): number[] {
  return faceNames.flatMap((name) => {
    const direction = frames[name].axes.indexOf(axis);
    const face = problem.faces[name];
    if (!face || direction === 2) return [];
    // Only a face whose cutouts are all sharp rectangles is meshed by lines.
    const boxes = [...(sharpBoxesOf(face) ?? []), ...face.regions, ...(axis === 2 ? [] : patches)];
    return boxes.flatMap((box) =>
      direction === 0 ? [box.left, box.left + box.width] : [box.bottom, box.bottom + box.height],
    );
  });
}

function beamMusts({ beams = [] }: BoxProblem, axis: 0 | 1 | 2): number[] {
  return beams.flatMap(({ from, to }) => [from[axis], to[axis]]);
}

/**
 * Places in the box around which elements get smaller.
 *
 * @param problem the box
 * @param patches of the bottom: supports stand there and loads press there
 */
export function boxCorners(problem: BoxProblem, patches: readonly MeshBox[]): readonly BoxSpot[] {
  const ofCutouts = faceNames.flatMap((name) =>
    (problem.faces[name]?.freely ? [] : (problem.faces[name]?.cutouts ?? []))
      .flatMap((cutout) => sharpBoxOf(cutout) ?? [])
      .flatMap(cornersOf)
      .map((corner) => onFace(problem, name, corner)),
  );
  const { length, width } = problem;
  const ofPatches = patches
    .flatMap(cornersOf)
    .filter(({ x, y }) => isEnd(x, length) !== isEnd(y, width))
    .map((corner) => onFace(problem, "bottom", corner));
  return [...ofCutouts, ...ofPatches];
}

/** Those that lie on a face, in its own axes. */
export function cornersOnFace(
  problem: BoxProblem,
  name: FaceName,
  corners: readonly BoxSpot[],
): readonly Point2[] {
  const { axes, far } = frames[name];
  const [along, across, through] = axes;
  const height = far ? extents(problem)[through] : 0;
  return corners
    .filter((corner) => Math.abs(corner[through] - height) < same)
    .map((corner) => ({ x: corner[along], y: corner[across] }));
}

/** Places nearer than this are one, m. */
const same = 1e-9;

function isEnd(at: number, extent: number): boolean {
  return at < same || at > extent - same;
}

function cornersOf({ left, bottom, width, height }: MeshBox): readonly Point2[] {
  return [left, left + width].flatMap((x) => [bottom, bottom + height].map((y) => ({ x, y })));
}
