/** How stiffly a section by itself keeps its shape: pushed at its top edge, and twisted over three corners. */
import { add, at } from "../../algebra/lists.js";
import {
  alongLine,
  type BoxSpot,
  type BoxStructure,
  type DofShares,
  type FaceName,
  type Fitting,
  faceShear,
  fittingMotion,
  movedJoined,
  prepareMoves,
  pullAt,
  type SeamLoad,
  type Sheet,
  seamFlows,
  seamLoad,
  sheetSlope,
  spaceDofs,
  sumOfShares,
  workOfChange,
} from "../../fem/index.js";
import { Refusal } from "../../refusal.js";
import type { ReviewInput } from "../review-input.js";
import { type ModuliShares, panelSheet } from "../stiffness/panel-stiffness.js";
import { facePanels } from "./box-body.js";
import { type JoinedBodies, type Subsystem, subsystem } from "./case-system.js";
import { edgePitch } from "./edge-joints.js";
import { boxFaces, perAxis, seamName } from "./places.js";
import { corners, footEnd } from "./standing-links.js";

/** A section's stiffness and what its seams carry. */
export interface SectionStiffness {
  /** The name of the section. */
  readonly section: string;
  /** Force along a top edge over what its top racks against its bottom, along x and along y, at the softer edge, N/m. */
  readonly racking: readonly [x: number, y: number];
  /** Force over movement of a lower corner while the three others stand, N/m. */
  readonly twist: number;
  /** By seam: the largest of all pushes, of a push of 1 N. */
  readonly seams: readonly (SeamLoad & { readonly name: string })[];
}

/** A section held by the feet at its lower corners; a push of 1 N spread along its top edge. */
export function sectionStiffness(system: JoinedBodies, number: number): SectionStiffness {
  const { name, problem } = at(system.model.bodies, number);
  const { structure } = at(system.model.parts, number);
  const whole = onFeet(system, number);
  const edges = [...pushedEdges(structure, 0), ...pushedEdges(structure, 1)].map((edge) =>
    loadOf(structure, edge),
  );
  prepareMoves(at(system.model.parts, number), [...edges, cornerPull(system.model, number).load]);
  const [x, y] = [pushed(structure, whole, 0), pushed(structure, whole, 1)];
  // The feet pull as they push, so that a pull moves the section as a push does, the other way.
  const ways = [...x, ...y].flatMap(({ moved }) => [moved, moved.map((by) => -by)]);
  return {
    section: name,
    racking: [1 / Math.abs(softest(x).way), 1 / Math.abs(softest(y).way)],
    twist: twistStiffness(system, whole, number),
    seams: (problem.seams ?? []).map((seam) => {
      const pitch = edgePitch(system.input, name, seam);
      const loads = ways.map((moved) => seamLoad(seamFlows(structure, moved, seam), pitch));
      const most = loads.reduce((best, one) => (one.peak > best.peak ? one : best));
      return { name: seamName(name, seam), ...most };
    }),
  };
}

function onFeet(system: JoinedBodies, number: number): Subsystem {
  return subsystem(system, [number], ({ kind }) => kind === "stand");
}

/** How a section under a push of 1 N along its top edge moved. */
interface Pushed {
  /** Its degrees of freedom. */
  readonly moved: Float64Array;
  /** How far its top racks, m. */
  readonly way: number;
  /** That as shares of its movements. */
  readonly measure: DofShares;
}

/**
 * A section pushed along x (0) or y (1) at one top edge, and at the other: how far its top racks, by the shear of the
 * walls along the push, or where they are open by how far the pushed edge goes.
 *
 * @throws Refusal where all that could be pushed at its top is open
 */
function pushed(structure: BoxStructure, whole: Subsystem, axis: 0 | 1): readonly Pushed[] {
  return pushedEdges(structure, axis).map((edge) => {
    const moved = movedBy(structure, whole, edge);
    const measure = rackingShares(structure, axis) ?? edge;
    return { moved, way: sumOfShares(measure, moved), measure };
  });
}

/** The push that racks it most. */
function softest(pushes: readonly Pushed[]): Pushed {
  return pushes.reduce((most, one) => (Math.abs(one.way) > Math.abs(most.way) ? one : most));
}

function movedBy(structure: BoxStructure, whole: Subsystem, shares: DofShares): Float64Array {
  return at(movedJoined(whole, [loadOf(structure, shares)]).displacements, 0);
}

function loadOf(structure: BoxStructure, { dofs, shares }: DofShares): Float64Array {
  const load = new Float64Array(spaceDofs * structure.nodes.length);
  dofs.forEach((dof, i) => {
    add(load, dof, at(shares, i));
  });
  return load;
}

/**
 * The top edges across a push that can be pushed at.
 *
 * @throws Refusal where all that could be pushed at its top is open
 */
function pushedEdges(structure: BoxStructure, axis: 0 | 1): readonly DofShares[] {
  const { name, length, width, height, faces } = structure.problem;
  const far: BoxSpot = [length, width, 0];
  const ends = ([0, 1] as const).filter(
    (end) => faces.top || faces[axis === 0 ? (end ? "x1" : "x0") : end ? "y1" : "y0"],
  );
  if (ends.length === 0)
    throw new Refusal(`${name} is open where a push along ${axis === 0 ? "x" : "y"} would come`);
  return ends.map((end) => {
    const from: BoxSpot = perAxis((way) => (way === 2 ? height : way === axis ? end * far[way] : 0));
    const to: BoxSpot = perAxis((way) => (way === 2 || way === axis ? from[way] : far[way]));
    const { nodes, shares } = alongLine(structure, from, to);
    return { dofs: nodes.map((node) => spaceDofs * node + axis), shares };
  });
}

/** How far the top racks against the bottom by the shear of the walls along a push; undefined where they are open. */
function rackingShares(structure: BoxStructure, axis: 0 | 1): DofShares | undefined {
  const { height, faces } = structure.problem;
  const along = axis === 0 ? (["y0", "y1"] as const) : (["x0", "x1"] as const);
  const walls = along.filter((wall) => faces[wall]).map((wall) => faceShear(structure, wall));
  if (walls.length === 0) return undefined;
  return {
    dofs: walls.flatMap(({ dofs }) => dofs),
    shares: walls.flatMap(({ shares }) => shares.map((share) => (share * height) / walls.length)),
  };
}

/** The powers with which what a section racks follows the moduli of its sheets, pushed along x and along y. */
export type RackingPowers = readonly [x: ModuliShares, y: ModuliShares];

/** Share of a modulus to either side at which sheets are compared. */
const step = 1e-4;

/**
 * How what a section racks follows the moduli of its sheets, from its energy: by the work that the push's movement does
 * on that of a load where it is measured, through the change of the sheets (adjoint method).
 *
 * @throws Refusal where all that could be pushed at its top is open
 */
export function sectionPowers(system: JoinedBodies, number: number): RackingPowers {
  const { name } = at(system.model.bodies, number);
  const { structure } = at(system.model.parts, number);
  const whole = onFeet(system, number);
  const changes = {
    along: sheetSlopes(system.input, name, "along"),
    across: sheetSlopes(system.input, name, "across"),
  };
  const measures = ([0, 1] as const).flatMap(
    (axis) => rackingShares(structure, axis) ?? pushedEdges(structure, axis),
  );
  prepareMoves(
    at(system.model.parts, number),
    measures.map((measure) => loadOf(structure, measure)),
  );
  const powers = (axis: 0 | 1): ModuliShares => {
    const { moved, way, measure } = softest(pushed(structure, whole, axis));
    const measured = movedBy(structure, whole, measure);
    const power = (grain: keyof ModuliShares): number =>
      -workOfChange(structure, changes[grain], measured, moved) / way;
    return { along: power("along"), across: power("across") };
  };
  return [powers(0), powers(1)];
}

/** How the sheet of each face of a section follows a modulus, for the modulus as it is. */
function sheetSlopes(
  input: ReviewInput,
  section: string,
  grain: keyof ModuliShares,
): Readonly<Partial<Record<FaceName, Sheet>>> {
  return Object.fromEntries(
    facePanels(input, section, "face").map((panel) => {
      const sheet = (share: number): Sheet =>
        panelSheet(panel, input, { along: 1, across: 1, [grain]: share });
      return [boxFaces[panel.face][0], sheetSlope(sheet(1 - step), sheet(1 + step), 2 * step)];
    }),
  );
}

function twistStiffness(system: JoinedBodies, whole: Subsystem, number: number): number {
  const { load, fitting } = cornerPull(system.model, number);
  const hanging = `corner ${lifted.join(" ")} of ${at(system.model.bodies, number).name}`;
  const answer = movedJoined(whole, [load], (link) => link.name !== hanging);
  return 1 / at(fittingMotion(fitting, at(answer.displacements, 0)), 2);
}

/** The corner that is lifted while the others stand. */
const lifted = at(corners, 3);

/** A pull of 1 N up at the lifted corner of a section. */
function cornerPull(
  model: JoinedBodies["model"],
  number: number,
): { readonly load: Float64Array; readonly fitting: Fitting } {
  const { fitting } = footEnd(model, number, lifted);
  const load = new Float64Array(spaceDofs * at(model.parts, number).structure.nodes.length);
  pullAt(load, fitting, [0, 0, 1]);
  return { load, fitting };
}
