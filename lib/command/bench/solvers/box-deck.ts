import { type FaceName, faceNames, frames } from "../../../fem/index.js";
import type { BoxCase, BoxPlace } from "../../reference/fe/box-file.js";
import { type Deck, GridBuilder, gridLines, lineShares, patchShares } from "./deck.js";

/** How a box is loaded: pushed at the top, or twisted over its corners. */
export type BoxLoading = "racking" | "twist";

/** Places nearer than this are one, mm. */
const same = 1e-6;

/** Whether a box can be cut in straight rows: sharp rectangles only, no strips along its edges. */
export function isStraightBox({ geometry, edge_angle }: BoxCase): boolean {
  return edge_angle === null && geometry.cutouts.every((cutout) => cutout.type === "rect" && !cutout.r);
}

/**
 * A box case for the general solver.
 *
 * @param found a straight case
 * @param loading which load
 * @param size of elements, mm
 */
export function boxDeck(found: BoxCase, loading: BoxLoading, size: number): Deck {
  const { geometry, grain, material, thickness } = found;
  const extents = [geometry.L, geometry.W, geometry.H] as const;
  const grid = new GridBuilder();
  const lines = extents.map((extent, axis) => gridLines(extent, musts(found, axis), size));
  const closed = faceNames.filter((name) => !geometry.open_faces.includes(name));
  const sheets = closed.map((name) => {
    const { axes, far } = frames[name];
    const [along, across, through] = axes;
    const elements = grid.addFace(
      lines[along]!,
      lines[across]!,
      (u, v) => {
        const place: BoxPlace = [0, 0, 0];
        place[along] = u;
        place[across] = v;
        place[through] = far ? extents[through] : 0;
        return place;
      },
      (u, v) => !isCut(found, name, u, v),
    );
    const grainAxis = ["x", "y", "z"].indexOf(grain[name] ?? "x");
    const other = grainAxis === along ? across : along;
    return { name, elements, axes: [unit(grainAxis), unit(other)] as const };
  });
  const bottom = sheets.find(({ name }) => name === "bottom")?.elements ?? [];
  const acts = loading === "racking" ? racked(found, grid) : twisted(found, grid, bottom);
  return { grid, sheets, material, thickness, pressure: 0, ...acts };
}

function musts({ geometry, castor_patch: side }: BoxCase, axis: number): number[] {
  const ofCutouts = geometry.cutouts.flatMap((cutout) => {
    const direction = frames[cutout.face as FaceName].axes.indexOf(axis as 0 | 1 | 2);
    if (cutout.type !== "rect" || direction === 2) return [];
    return direction === 0 ? [cutout.u, cutout.u + cutout.w] : [cutout.v, cutout.v + cutout.h];
  });
  const extent = [geometry.L, geometry.W][axis];
  return [...ofCutouts, ...(extent === undefined ? [] : [side, extent - side])];
}

function isCut({ geometry }: BoxCase, name: FaceName, u: number, v: number): boolean {
  return geometry.cutouts.some(
    (cutout) =>
      cutout.type === "rect" &&
      cutout.face === name &&
      u > cutout.u &&
      u < cutout.u + cutout.w &&
      v > cutout.v &&
      v < cutout.v + cutout.h,
  );
}

function unit(axis: number): BoxPlace {
  return [axis === 0 ? 1 : 0, axis === 1 ? 1 : 0, axis === 2 ? 1 : 0];
}

/** Forces and supports of one loading. */
type Acts = Pick<Deck, "held" | "forces">;

/** All nodes in the bottom's corner patches stand still; 500 N along the top edge at x = 0. */
function racked({ geometry: { L, W, H }, castor_patch: side }: BoxCase, grid: GridBuilder): Acts {
  const within = (at: number, extent: number): boolean => at < side + same || at > extent - side - same;
  const edge = lineShares(grid, ([x, , z]) => x < same && z > H - same);
  return {
    held: grid.nodes.flatMap(([x, y, z], node) =>
      z < same && within(x, L) && within(y, W) ? [[node, 1, 3] as const] : [],
    ),
    forces: [...edge].map(([node, share]) => [node, 1, 500 * share] as const),
  };
}

/** 200 N on each corner patch, two up and two down; held only against drifting. */
function twisted(
  { geometry: { L, W }, castor_patch: side }: BoxCase,
  grid: GridBuilder,
  bottom: readonly number[],
): Acts {
  const down = [-1, 1, 1, -1];
  const forces = down.flatMap((sign, corner) => {
    const [far, high] = [corner > 1, corner % 2 === 1];
    const loaded = bottom.filter((element) =>
      grid.elements[element]!.every((node) => {
        const [x, y] = grid.nodes[node]!;
        return (
          (far ? x > L - side - same : x < side + same) && (high ? y > W - side - same : y < side + same)
        );
      }),
    );
    return [...patchShares(grid, loaded)].map(([node, share]) => [node, 3, 200 * sign * share] as const);
  });
  const at = (x: number, y: number): number =>
    grid.nodes.findIndex((place) => Math.hypot(place[0] - x, place[1] - y, place[2]) < same);
  return {
    held: [
      [at(0, 0), 1, 3],
      [at(L, 0), 2, 3],
      [at(0, W), 3, 3],
    ],
    forces,
  };
}
