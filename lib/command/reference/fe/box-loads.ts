/** The two loadings of a box case: pushed at the top, and twisted over three corners. */
import {
  alongLine,
  type BoxForce,
  type BoxHold,
  type BoxSpot,
  type BoxStructure,
  factoredBox,
  type MovedBox,
  moved,
  overPatch,
  wayOfForce,
} from "../../../fem/index.js";
import { boxMetres, cornerPatches } from "./box-case.js";
import type { BoxCase } from "./box-file.js";

/** All nodes in the corner patches stand still; 500 N along the top edge at x = 0. */
export function racked(found: BoxCase, structure: BoxStructure): MovedBox {
  const { L, W, H } = found.geometry;
  const side = found.castor_patch;
  const within = (at: number, extent: number): boolean => at < side + 1e-6 || at > extent - side - 1e-6;
  const held: BoxHold = {
    where: ([x, y, z]) => z < 1e-9 && within(1e3 * x, L) && within(1e3 * y, W),
    dofs: [0, 1, 2],
  };
  const edge = alongLine(structure, boxMetres([0, 0, H]), boxMetres([0, W, H]));
  return moved(factoredBox(structure, [held]), [{ on: edge, force: [500, 0, 0] }]);
}

/** 200 N on each corner patch, two up and two down; held only against drifting. */
export function twisted(found: BoxCase, structure: BoxStructure): MovedBox {
  const { L, W } = found.geometry;
  const at = (spot: BoxSpot, dofs: readonly number[]): BoxHold => ({
    where: (node) => Math.hypot(...boxMetres(spot).map((place, axis) => place - node[axis]!)) < 1e-7,
    dofs,
  });
  const box = factoredBox(structure, [at([0, 0, 0], [0, 1, 2]), at([L, 0, 0], [1, 2]), at([0, W, 0], [2])]);
  const down = [-1, 1, 1, -1];
  const forces = cornerPatches(found).map(
    (patch, i): BoxForce => ({ on: overPatch(structure, "bottom", patch), force: [0, 0, 200 * down[i]!] }),
  );
  return moved(box, forces);
}

/** How far all forces have moved in their own direction, by their work, mm. */
export function workWay(box: MovedBox): number {
  return 1e3 * box.forces.reduce((sum, force) => sum + wayOfForce(box, force), 0);
}
