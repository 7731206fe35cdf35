/** Where strains pile up in a box: at sharp corners of openings, and where a patch of the bottom ends on its rim. */
import type { CutRectangle, MeshBox, Spot } from "../mesh/index.js";
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
 * Places in the box around which elements get smaller.
 *
 * @param problem the box
 * @param patches of the bottom: supports stand there and loads press there
 */
export function boxCorners(problem: BoxProblem, patches: readonly MeshBox[]): readonly BoxSpot[] {
  const ofCutouts = faceNames.flatMap((name) =>
    (problem.faces[name]?.cutouts ?? [])
      .filter((cutout): cutout is CutRectangle => cutout.kind === "rectangle" && cutout.radius === 0)
      .flatMap(cornersOf)
      .map((corner) => onFace(problem, name, corner)),
  );
  const { length, width } = problem;
  const ofPatches = patches
    .flatMap(cornersOf)
    .filter(([x, y]) => isEnd(x, length) !== isEnd(y, width))
    .map((corner) => onFace(problem, "bottom", corner));
  return [...ofCutouts, ...ofPatches];
}

/** Those that lie on a face, in its own axes. */
export function cornersOnFace(
  problem: BoxProblem,
  name: FaceName,
  corners: readonly BoxSpot[],
): readonly Spot[] {
  const { axes, far } = frames[name];
  const [along, across, through] = axes;
  const height = far ? extents(problem)[through] : 0;
  return corners
    .filter((corner) => Math.abs(corner[through] - height) < same)
    .map((corner): Spot => [corner[along], corner[across]]);
}

/** Places nearer than this are one, m. */
const same = 1e-9;

function isEnd(at: number, extent: number): boolean {
  return at < same || at > extent - same;
}

function cornersOf({ left, bottom, width, height }: MeshBox): readonly Spot[] {
  return [left, left + width].flatMap((x) => [bottom, bottom + height].map((y): Spot => [x, y]));
}
