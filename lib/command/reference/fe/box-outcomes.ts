/** Every expected value of a box case beside ours: pushed at the top, and twisted over three corners. */
import {
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

/** Ours in mm by the names of the file. */
function valuesOf(found: BoxCase, box: MovedBox): (name: string) => number | undefined {
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
