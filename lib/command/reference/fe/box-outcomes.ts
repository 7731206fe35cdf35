/** Every expected value of a box case beside ours: pushed at the top, and twisted over three corners. */
import {
  type BoxStructure,
  boxStructure,
  farthestMovement,
  type MovedBox,
  movementAt,
  usualBoxSize,
} from "../../../fem/index.js";
import type { ReferenceOutcome } from "../outcome.js";
import { boxMetres, boxProblem, cornerPatches } from "./box-case.js";
import type { BoxCase } from "./box-file.js";
import { racked, twisted, workWay } from "./box-loads.js";
import { compared, type ValueNamed } from "./compared.js";

/** Sides of elements of the coarser mesh, which tells the mesh error, over the usual ones. */
const coarser = 1.7;

/** Runs one box at the usual mesh, and at a coarser one for the mesh error. */
export function boxOutcomes(found: BoxCase): readonly ReferenceOutcome[] {
  const problem = boxProblem(found);
  const [fine, coarse] = [1, coarser].map((times) =>
    boxStructure(problem, times * usualBoxSize(problem), cornerPatches(found)),
  ) as [BoxStructure, BoxStructure];
  return Object.entries(found.expected.mindlin).flatMap(([name, expected]) => {
    const run = loadCases[name];
    if (!run) throw new RangeError(`${found.id}: no load case "${name}", expected racking or twist`);
    const [ours, other] = [fine, coarse].map((structure) => valuesOf(found, run(found, structure)));
    return compared(`${found.id} ${name}`, expected, ours!, other!);
  });
}

const loadCases: Readonly<Record<string, (found: BoxCase, structure: BoxStructure) => MovedBox>> = {
  racking: racked,
  twist: twisted,
};

/** Ours in mm by the names of the file. */
function valuesOf(found: BoxCase, box: MovedBox): ValueNamed {
  const size = Math.abs(box.forces[0]!.force[0] + box.forces[0]!.force[2]);
  const way = workWay(box);
  return (name) => {
    if (name === "work_displacement") return way;
    if (name === "stiffness_N_per_mm") return size / way;
    if (name === "umax") return 1e3 * farthestMovement(box);
    const [kind, point = ""] = name.split("@");
    const spot = found.named_points[point];
    return spot && 1e3 * movementAt(box, boxMetres(spot))[["ux", "uy", "uz"].indexOf(kind ?? "")]!;
  };
}
