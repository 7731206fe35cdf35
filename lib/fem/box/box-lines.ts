/** Where the lines of a box's mesh run. */
import { type Cutout, type CutRectangle, divided, gradedAlong, type MeshBox } from "../mesh/index.js";
import { type BoxProblem, extents, faceNames, frames } from "./box-problem.js";

/** Places of the lines across each axis of the box: at the sides of cutouts, strips and patches, and between, in pairs. */
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
  const apart = fixed.filter((at, i) => i === 0 || at - fixed[i - 1]! > 1e-7 * extent);
  const graded = gradedAlong(apart, size);
  const coarse = apart.flatMap((at, i) => {
    const next = apart[i + 1];
    return next === undefined ? [at] : divided(at, next, (place) => 2 * graded(place)).slice(0, -1);
  });
  return coarse.flatMap((at, i) => (i === 0 ? [at] : [(coarse[i - 1]! + at) / 2, at]));
}

function faceMusts(problem: BoxProblem, axis: 0 | 1 | 2, patches: readonly MeshBox[]): number[] {
  return faceNames.flatMap((name) => {
    const direction = frames[name].axes.indexOf(axis);
    const face = problem.faces[name];
    if (!face || direction === 2) return [];
    const straight = face.cutouts.every(isSharp) ? face.cutouts.filter(isSharp) : [];
    const boxes = [...straight, ...face.regions, ...(axis === 2 ? [] : patches)];
    return boxes.flatMap((box) =>
      direction === 0 ? [box.left, box.left + box.width] : [box.bottom, box.bottom + box.height],
    );
  });
}

function beamMusts({ beams = [] }: BoxProblem, axis: 0 | 1 | 2): number[] {
  return beams.flatMap(({ from, to }) => [from[axis], to[axis]]);
}

/** Only a face whose cutouts are all sharp rectangles is meshed by lines. */
function isSharp(cutout: Cutout): cutout is CutRectangle {
  return cutout.kind === "rectangle" && cutout.radius === 0;
}
