/** How stiffly a section by itself keeps its shape: pushed at its top edge, and twisted over three corners. */
import {
  alongLine,
  type BoxSpot,
  boxFreedoms,
  faceShear,
  fittingMotion,
  type JoinedAnswer,
  movedJoined,
  pullAt,
  type SeamLoad,
  seamFlows,
  seamLoad,
} from "../../fem/index.js";
import { Refusal } from "../../refusal.js";
import { seamName } from "./case-outcomes.js";
import { type JoinedBodies, type Subsystem, subsystem } from "./case-system.js";
import { edgePitch } from "./edge-joints.js";
import { corners, footEnd } from "./standing-links.js";

/** A section's stiffness and what its seams carry. */
export interface SectionStiffness {
  /** The name of the section. */
  readonly section: string;
  /** Force along its top edge over what its top racks against its bottom, along x and along y, N/m. */
  readonly racking: readonly [x: number, y: number];
  /** Force over movement of a lower corner while the three others stand, N/m. */
  readonly twist: number;
  /** By seam: the larger of both pushes, of a push of 1 N. */
  readonly seams: readonly (SeamLoad & { readonly name: string })[];
}

/** A section held by the feet at its lower corners; a push of 1 N spread along its top edge. */
export function sectionStiffness(system: JoinedBodies, number: number): SectionStiffness {
  const { name } = system.model.bodies[number]!;
  const whole = subsystem(system, [number], ({ kind }) => kind === "stand");
  const pushes = (["x", "y"] as const).map((way) => pushed(system, whole, number, way));
  const seams = system.model.bodies[number]!.problem.seams ?? [];
  const { structure } = whole.parts[0]!;
  return {
    section: name,
    racking: [1 / pushes[0]!.way, 1 / pushes[1]!.way],
    twist: twistStiffness(system, whole, number),
    seams: seams.map((seam) => {
      const pitch = edgePitch(system.input, name, seam);
      const [x, y] = pushes.map(({ answer }) =>
        seamLoad(seamFlows(structure, answer.displacements[0]!, seam), pitch),
      );
      return { name: seamName(name, seam), ...(x!.peak > y!.peak ? x! : y!) };
    }),
  };
}

function pushed(
  { model }: JoinedBodies,
  whole: Subsystem,
  number: number,
  way: "x" | "y",
): { readonly answer: JoinedAnswer; readonly way: number } {
  const { structure } = model.parts[number]!;
  const { length, width, height } = structure.problem;
  const axis = way === "x" ? 0 : 1;
  const on = alongLine(structure, [0, 0, height], axis === 0 ? [0, width, height] : [length, 0, height]);
  const load = new Float64Array(boxFreedoms * structure.nodes.length);
  on.nodes.forEach((node, i) => {
    load[boxFreedoms * node + axis]! += on.shares[i]!;
  });
  const answer = movedJoined(whole, [load]);
  const walls = (axis === 0 ? (["y0", "y1"] as const) : (["x0", "x1"] as const)).filter(
    (wall) => structure.problem.faces[wall],
  );
  if (walls.length === 0) throw new Refusal(`${structure.problem.name}: no wall stands along ${way}`);
  const shear = walls.reduce((sum, wall) => sum + faceShear(structure, answer.displacements[0]!, wall), 0);
  return { answer, way: (Math.abs(shear) / walls.length) * height };
}

function twistStiffness({ model }: JoinedBodies, whole: Subsystem, number: number): number {
  const { fitting } = footEnd(model, number, corners[3]!);
  const { structure } = model.parts[number]!;
  const load = new Float64Array(boxFreedoms * structure.nodes.length);
  const up: BoxSpot = [0, 0, 1];
  pullAt(load, fitting, up);
  const hanging = `corner ${corners[3]!.join(" ")} of ${model.bodies[number]!.name}`;
  const answer = movedJoined(whole, [load], (link) => link.name !== hanging);
  return 1 / fittingMotion(fitting, answer.displacements[0]!)[2]!;
}
