/** How stiffly a section by itself keeps its shape: pushed at its top edge, and twisted over three corners. */
import { add, at } from "../../algebra/lists.js";
import {
  alongLine,
  type BoxSpot,
  type BoxStructure,
  faceShear,
  fittingMotion,
  movedJoined,
  pullAt,
  type SeamLoad,
  seamFlows,
  seamLoad,
  spaceDofs,
} from "../../fem/index.js";
import { Refusal } from "../../refusal.js";
import { type JoinedBodies, type Subsystem, subsystem } from "./case-system.js";
import { edgePitch } from "./edge-joints.js";
import { perAxis, seamName } from "./places.js";
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
  const { name, problem } = at(system.model.bodies, number);
  const { structure } = at(system.model.parts, number);
  const whole = subsystem(system, [number], ({ kind }) => kind === "stand");
  const [x, y] = [pushed(structure, whole, 0), pushed(structure, whole, 1)];
  return {
    section: name,
    racking: [1 / x.way, 1 / y.way],
    twist: twistStiffness(system, whole, number),
    seams: (problem.seams ?? []).map((seam) => {
      const pitch = edgePitch(system.input, name, seam);
      const carried = ({ moved }: typeof x) => seamLoad(seamFlows(structure, moved, seam), pitch);
      const [one, other] = [carried(x), carried(y)];
      return { name: seamName(name, seam), ...(one.peak > other.peak ? one : other) };
    }),
  };
}

/**
 * Its movements under a push of 1 N along its top edge, along x (0) or y (1), and how far its top racks, m: by the
 * shear of the walls along the push, or where they are open by how far the pushed edge goes.
 *
 * @throws Refusal where all that could be pushed at its top is open
 */
function pushed(
  structure: BoxStructure,
  whole: Subsystem,
  axis: 0 | 1,
): { readonly moved: Float64Array; readonly way: number } {
  const { name, length, width, height, faces } = structure.problem;
  const far: BoxSpot = [length, width, 0];
  const pushedAt = ([0, 1] as const).find(
    (end) => faces.top || faces[axis === 0 ? (end ? "x1" : "x0") : end ? "y1" : "y0"],
  );
  if (pushedAt === undefined)
    throw new Refusal(`${name} is open where a push along ${axis === 0 ? "x" : "y"} would come`);
  const from: BoxSpot = perAxis((way) => (way === 2 ? height : way === axis ? pushedAt * far[way] : 0));
  const to: BoxSpot = perAxis((way) => (way === 2 || way === axis ? from[way] : far[way]));
  const on = alongLine(structure, from, to);
  const load = new Float64Array(spaceDofs * structure.nodes.length);
  on.nodes.forEach((node, i) => {
    add(load, spaceDofs * node + axis, at(on.shares, i));
  });
  const moved = at(movedJoined(whole, [load]).displacements, 0);
  const along = axis === 0 ? (["y0", "y1"] as const) : (["x0", "x1"] as const);
  const walls = along.filter((wall) => faces[wall]);
  if (walls.length === 0) {
    const way = on.nodes.reduce(
      (sum, node, i) => sum + at(on.shares, i) * at(moved, spaceDofs * node + axis),
      0,
    );
    return { moved, way: Math.abs(way) };
  }
  const shear = walls.reduce((sum, wall) => sum + faceShear(structure, moved, wall), 0);
  return { moved, way: (Math.abs(shear) / walls.length) * height };
}

function twistStiffness({ model }: JoinedBodies, whole: Subsystem, number: number): number {
  const corner = at(corners, 3);
  const { fitting } = footEnd(model, number, corner);
  const { structure } = at(model.parts, number);
  const load = new Float64Array(spaceDofs * structure.nodes.length);
  const up: BoxSpot = [0, 0, 1];
  pullAt(load, fitting, up);
  const hanging = `corner ${corner.join(" ")} of ${at(model.bodies, number).name}`;
  const answer = movedJoined(whole, [load], (link) => link.name !== hanging);
  return 1 / at(fittingMotion(fitting, at(answer.displacements, 0)), 2);
}
