/** Every expected value of a box case beside ours: pushed at the top, and twisted over three corners. */
import {
  alongLine,
  type BoxForce,
  type BoxHold,
  type BoxSpot,
  type BoxStructure,
  boxStructure,
  factoredBox,
  farthestMovement,
  type MovedBox,
  moved,
  movementAt,
  overPatch,
  usualBoxSize,
  wayOfForce,
} from "../../../fem/index.js";
import type { ReferenceOutcome } from "../outcome.js";
import { boxMetres, boxProblem, cornerPatches } from "./box-case.js";
import type { BoxCase } from "./box-file.js";
import { compared } from "./compared.js";

/** Runs one box at the usual mesh. */
export function boxOutcomes(found: BoxCase): readonly ReferenceOutcome[] {
  const problem = boxProblem(found);
  const structure = boxStructure(problem, usualBoxSize(problem), cornerPatches(found));
  const cases: Readonly<Record<string, () => MovedBox>> = {
    racking: () => racked(found, structure),
    twist: () => twisted(found, structure),
  };
  return Object.entries(found.expected.mindlin).flatMap(([name, expected]) => {
    const run = cases[name];
    if (!run) throw new RangeError(`${found.id}: no load case "${name}", expected racking or twist`);
    return compared(`${found.id} ${name}`, expected, valuesOf(found, run()));
  });
}

/** All nodes in the corner patches stand still; 500 N along the top edge at x = 0. */
function racked(found: BoxCase, structure: BoxStructure): MovedBox {
  const { L, W, H } = found.geometry;
  const side = found.castor_patch;
  const within = (at: number, extent: number): boolean => at < side + 1e-6 || at > extent - side - 1e-6;
  const held: BoxHold = {
    where: ([x, y, z]) => z < 1e-9 && within(1e3 * x, L) && within(1e3 * y, W),
    freedoms: [0, 1, 2],
  };
  const edge = alongLine(structure, boxMetres([0, 0, H]), boxMetres([0, W, H]));
  return moved(factoredBox(structure, [held]), [{ on: edge, force: [500, 0, 0] }]);
}

/** 200 N on each corner patch, two up and two down; held only against drifting. */
function twisted(found: BoxCase, structure: BoxStructure): MovedBox {
  const { L, W } = found.geometry;
  const at = (spot: BoxSpot, freedoms: readonly number[]): BoxHold => ({
    where: (node) => Math.hypot(...boxMetres(spot).map((place, axis) => place - node[axis]!)) < 1e-7,
    freedoms,
  });
  const box = factoredBox(structure, [at([0, 0, 0], [0, 1, 2]), at([L, 0, 0], [1, 2]), at([0, W, 0], [2])]);
  const down = [-1, 1, 1, -1];
  const forces = cornerPatches(found).map(
    (patch, i): BoxForce => ({ on: overPatch(structure, "bottom", patch), force: [0, 0, 200 * down[i]!] }),
  );
  return moved(box, forces);
}

/** Ours in mm by the names of the file. */
function valuesOf(found: BoxCase, box: MovedBox): (name: string) => number | undefined {
  const size = Math.abs(box.forces[0]!.force[0] + box.forces[0]!.force[2]);
  const way = 1e3 * box.forces.reduce((sum, force) => sum + wayOfForce(box, force), 0);
  return (name) => {
    if (name === "work_displacement") return way;
    if (name === "stiffness_N_per_mm") return size / way;
    if (name === "umax") return 1e3 * farthestMovement(box);
    const [kind, point = ""] = name.split("@");
    const spot = found.named_points[point];
    return spot && 1e3 * movementAt(box, boxMetres(spot))[["ux", "uy", "uz"].indexOf(kind ?? "")]!;
  };
}
