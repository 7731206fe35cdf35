/** What each load case comes to: movement, openings out of square, gaps of doors, seams, hardware, moved outlines. */

import { at } from "../../algebra/lists.js";
import {
  addRigid,
  type BoxProblem,
  type BoxSpot,
  type BoxStructure,
  extents,
  type FaceName,
  type FaceSpots,
  fittingMotion,
  fittingOn,
  frames,
  onFace,
  outOfSquare,
  rimOf,
  seamFlows,
  seamLoad,
} from "../../fem/index.js";
import { Refusal } from "../../refusal.js";
import type { Point2 } from "../../shape/index.js";
import { type BoxBody, isBeside } from "./box-body.js";
import { linkOf } from "./case-system.js";
import { edgePitch } from "./edge-joints.js";
import type { LinkKind } from "./hardware-links.js";
import type { LoadedCase } from "./load-cases.js";
import { atNode, minus, perAxis, plus, seamName } from "./places.js";

/** A value with the part it belongs to. */
export interface NamedValue {
  /** The part: a seam, an opening, a piece of hardware. */
  readonly name: string;
  /** The value, in the SI unit of its list. */
  readonly value: number;
}

/** What one load case comes to. */
export interface CaseOutcome {
  /** The id of its load case. */
  readonly id: string;
  /** The load case in the builder's words. */
  readonly title: string;
  /** The farthest that any place moves against the lower corners, m. */
  readonly movement: number;
  /** Difference of the diagonals of each opening, m, the largest first. */
  readonly openings: readonly NamedValue[];
  /** Gap that each door loses somewhere around it, m, the largest first. */
  readonly doors: readonly NamedValue[];
  /** Largest force on each metre of each seam that gives, N/m, the largest first. */
  readonly seams: readonly (NamedValue & { readonly mean: number })[];
  /** Force on each piece of hardware, N, the largest first. */
  readonly hardware: Readonly<Partial<Record<LinkKind, readonly NamedValue[]>>>;
}

/** One body of a load case as it moved. */
interface MovedBody {
  /** Which body it is. */
  readonly body: BoxBody;
  /** Its mesh. */
  readonly structure: BoxStructure;
  /** Where its 0, 0, 0 lies in the stacked case, m. */
  readonly origin: BoxSpot;
  /** Six freedoms of each of its nodes. */
  readonly moved: Float64Array;
}

function movedBodies(
  { bodies, system }: LoadedCase,
  movements: readonly Float64Array[],
): readonly MovedBody[] {
  return bodies.parts.map(({ structure, at: origin }, i) => ({
    body: at(system.model.bodies, at(bodies.numbers, i)),
    structure,
    origin,
    moved: at(movements, i),
  }));
}

/** Sums up a load case. */
export function caseOutcome(loaded: LoadedCase): CaseOutcome {
  const own = movedBodies(loaded, movementsOf(loaded));
  return {
    id: loaded.id,
    title: loaded.title,
    movement: farthest(againstCorners(own)),
    openings: openingsOf(own),
    doors: doorsOf(own),
    seams: seamsOf(loaded),
    hardware: hardwareOf(loaded),
  };
}

/** Movements of the load case, less those it counts from. */
function movementsOf({ answer, from }: LoadedCase): readonly Float64Array[] {
  return answer.displacements.map((own, i) => {
    const before = from?.displacements[i];
    return before ? own.map((value, k) => value - at(before, k)) : own;
  });
}

/** How far in from its corners the lowest section is looked at, m. */
const inside = 0.03;

/** Bodies as seen by somebody who stands with the four lower corners of the lowest section. */
function againstCorners(bodies: readonly MovedBody[]): readonly MovedBody[] {
  const lowest = bodies.reduce((best, body) => (body.origin[2] < best.origin[2] ? body : best));
  const base = fittingOn(
    lowest.structure,
    "lower corners",
    lowerCorners(lowest.structure.problem),
    [0, 0, 0],
  );
  const rigid = fittingMotion(base, lowest.moved).map((value) => -value);
  return bodies.map((body) => {
    const moved = body.moved.slice();
    addRigid(moved, body.structure.nodes, carried(rigid, minus(body.origin, lowest.origin)));
    return { ...body, moved };
  });
}

/** Places near the four lower corners: on the bottom, or low on the walls where the bottom is open. */
function lowerCorners(problem: BoxProblem): readonly FaceSpots[] {
  const size = extents(problem);
  const near = (extent: number): readonly number[] => [inside, extent - inside];
  if (problem.faces.bottom)
    return [{ face: "bottom", spots: near(size[0]).flatMap((x) => near(size[1]).map((y) => ({ x, y }))) }];
  return (["x0", "x1", "y0", "y1"] as const)
    .filter((face) => problem.faces[face])
    .map((face) => ({
      face,
      spots: near(size[frames[face].axes[0]]).map((along) => ({ x: along, y: inside })),
    }));
}

/** A rigid movement as told at another place. */
function carried(
  [tx = 0, ty = 0, tz = 0, rx = 0, ry = 0, rz = 0]: Float64Array,
  [x, y, z]: BoxSpot,
): number[] {
  return [tx + ry * z - rz * y, ty + rz * x - rx * z, tz + rx * y - ry * x, rx, ry, rz];
}

function farthest(bodies: readonly MovedBody[]): number {
  let most = 0;
  for (const { structure, moved } of bodies)
    for (const node of structure.nodes.keys()) most = Math.max(most, Math.hypot(...atNode(moved, node)));
  return most;
}

/** The largest first. */
function byValue<Value extends NamedValue>(values: readonly Value[]): readonly Value[] {
  return [...values].sort((a, b) => b.value - a.value);
}

function openingsOf(bodies: readonly MovedBody[]): readonly NamedValue[] {
  return byValue(
    bodies.flatMap(({ structure, moved }) =>
      structure.faces.flatMap(({ name }) =>
        (structure.problem.faces[name]?.cutouts ?? []).map((cutout) => ({
          name: cutout.name,
          value: outOfSquare(structure, moved, name, cutout).diagonals,
        })),
      ),
    ),
  );
}

function seamsOf(loaded: LoadedCase): CaseOutcome["seams"] {
  const { input } = loaded.system;
  return byValue(
    movedBodies(loaded, loaded.answer.displacements).flatMap(({ body: { name }, structure, moved }) =>
      (structure.problem.seams ?? []).map((seam) => {
        const { mean, peak } = seamLoad(seamFlows(structure, moved, seam), edgePitch(input, name, seam));
        return { name: seamName(name, seam), value: peak, mean };
      }),
    ),
  );
}

/** The springs of one piece of hardware added up as a force. */
function hardwareOf({ bodies, answer, hinges = [] }: LoadedCase): CaseOutcome["hardware"] {
  const sums = new Map<LinkKind, Map<string, BoxSpot>>();
  bodies.links.forEach((prepared, i) => {
    const { kind, name, along } = linkOf(prepared);
    if (kind === "stand") return;
    const own = sums.get(kind) ?? new Map<string, BoxSpot>();
    sums.set(kind, own);
    const force = own.get(name) ?? [0, 0, 0];
    own.set(
      name,
      perAxis((axis) => force[axis] + along[axis] * at(answer.forces, i)),
    );
  });
  const own = [...sums].map(
    ([kind, forces]) =>
      [kind, [...forces].map(([name, force]) => ({ name, value: Math.hypot(...force) }))] as const,
  );
  const all = new Map<LinkKind, readonly NamedValue[]>(own);
  if (hinges.length > 0) all.set("hinge", [...(all.get("hinge") ?? []), ...hinges]);
  return Object.fromEntries([...all].map(([kind, values]) => [kind, byValue(values)]));
}

/** Shares of a side at which a door's gap is looked at: where its corners are not yet round, and in the middle. */
const lookedAt = [0.1, 0.5, 0.9];

/** The gap that each door of a load case loses at its tightest place, m, the largest first. */
function doorsOf(bodies: readonly MovedBody[]): readonly NamedValue[] {
  return byValue(
    bodies.flatMap((leaf) => {
      const { name, section } = leaf.body;
      const frame = name === section ? undefined : bodies.find(({ body }) => body.name === section);
      const beside = bodies.filter((one) => one !== leaf && isBeside(one.body, leaf.body));
      return frame ? [{ name, value: lostGap(leaf, frame, beside) }] : [];
    }),
  );
}

/** A node of a rim in the frame's axes, with its movement along them. */
interface RimPlace {
  /** Along the face's first axis, m. */
  readonly x: number;
  /** Along the face's second axis, m. */
  readonly y: number;
  /** How far it moved, in the axes of the box, m. */
  readonly moved: BoxSpot;
}

/** @throws Refusal where the frame's mesh has no opening for the leaf */
function lostGap(leaf: MovedBody, frame: MovedBody, beside: readonly MovedBody[]): number {
  const face = at(leaf.structure.faces, 0);
  const { x, y } = face.mesh;
  const [along, across] = frames[face.name].axes;
  const { name } = leaf.structure.problem;
  const opening = frame.structure.problem.faces[face.name]?.cutouts.find((cutout) =>
    leaf.body.closes?.endsWith(`.${cutout.name}`),
  );
  if (!opening) throw new Refusal(`box: no opening is left for ${name}`);
  const off = minus(leaf.origin, frame.origin);
  const own = leafRim(leaf, frame);
  const around = [
    ...rimOf(frame.structure, face.name, opening).map(({ node, ...place }) => ({
      ...place,
      moved: atNode(frame.moved, node),
    })),
    ...beside.flatMap((one) => leafRim(one, frame)),
  ];
  const size = { along: Math.max(...x), across: Math.max(...y) };
  const losses = [-1, 1].flatMap((out) =>
    lookedAt.flatMap((share) => {
      const far = out > 0 ? 1 : 0;
      const beside = { x: off[along] + far * size.along, y: off[across] + share * size.across };
      const above = { x: off[along] + share * size.along, y: off[across] + far * size.across };
      const lost = (place: Point2, axis: 0 | 1 | 2): number =>
        -out * (nearest(around, place).moved[axis] - nearest(own, place).moved[axis]);
      return [lost(beside, along), lost(above, across)];
    }),
  );
  return Math.max(0, ...losses);
}

/** The rim of a leaf in its frame's axes. */
function leafRim({ structure, moved, origin }: MovedBody, frame: MovedBody): readonly RimPlace[] {
  const face = at(structure.faces, 0);
  const [along, across] = frames[face.name].axes;
  const off = minus(origin, frame.origin);
  return [...new Set(face.mesh.rim.flat())].map((node) => ({
    x: at(face.mesh.x, node) + off[along],
    y: at(face.mesh.y, node) + off[across],
    moved: atNode(moved, at(face.numbers, node)),
  }));
}

function nearest(places: readonly RimPlace[], { x, y }: Point2): RimPlace {
  const away = (one: RimPlace): number => Math.hypot(one.x - x, one.y - y);
  return places.reduce((best, one) => (away(one) < away(best) ? one : best));
}

/** A place of the stacked case and its movement, m. */
export interface MovedPlace {
  /** Where it was, m. */
  readonly at: BoxSpot;
  /** How far it moved, m. */
  readonly by: BoxSpot;
}

/** A closed line: a face's four sides, an opening's rim, a door leaf. */
export interface MovedOutline {
  /** What the line goes around. */
  readonly what: "face" | "opening" | "leaf";
  /** The body, or the opening. */
  readonly name: string;
  /** In the order of the line. */
  readonly places: readonly MovedPlace[];
}

/**
 * Outlines of some faces as they move against the floor, those that lie behind first, each followed by its openings; leaves last.
 *
 * @param loaded a load case
 * @param names of the faces to show
 */
export function movedOutlines(loaded: LoadedCase, names: readonly FaceName[]): readonly MovedOutline[] {
  const outlines = movedBodies(loaded, movementsOf(loaded)).flatMap((body) =>
    body.structure.faces.filter(({ name }) => names.includes(name)).flatMap((face) => outlinesOf(body, face)),
  );
  return [
    ...outlines.filter(({ what }) => what !== "leaf"),
    ...outlines.filter(({ what }) => what === "leaf"),
  ];
}

/** A face's own sides, and the rims of its openings. */
function outlinesOf(
  { body, structure, origin, moved }: MovedBody,
  { name, mesh, numbers }: BoxStructure["faces"][number],
): readonly MovedOutline[] {
  const ring = (nodes: readonly FaceNode[]): readonly MovedPlace[] =>
    aroundMiddle(nodes).map(({ node, x, y }) => ({
      at: plus(onFace(structure.problem, name, { x, y }), origin),
      by: atNode(moved, node),
    }));
  const size = { x: Math.max(...mesh.x), y: Math.max(...mesh.y) };
  const sides = Array.from(numbers, (node, k) => ({ node, x: at(mesh.x, k), y: at(mesh.y, k) }));
  const rim = sides.filter(({ x, y }) => isEnd(x, size.x) || isEnd(y, size.y));
  const openings = structure.problem.faces[name]?.cutouts ?? [];
  return [
    { what: body.name === body.section ? "face" : "leaf", name: body.name, places: ring(rim) },
    ...openings.map(
      (cutout): MovedOutline => ({
        what: "opening",
        name: cutout.name,
        places: ring(rimOf(structure, name, cutout)),
      }),
    ),
  ];
}

/** A node of a face: its place in the face's axes, m, and its number in the box. */
type FaceNode = ReturnType<typeof rimOf>[number];

function isEnd(place: number, extent: number): boolean {
  return place < 1e-9 || place > extent - 1e-9;
}

/** In the order of their angle about their middle. */
function aroundMiddle(places: readonly FaceNode[]): readonly FaceNode[] {
  const mean = (of: (place: FaceNode) => number): number =>
    places.reduce((sum, place) => sum + of(place), 0) / places.length;
  const [middleX, middleY] = [mean(({ x }) => x), mean(({ y }) => y)];
  const angle = ({ x, y }: FaceNode): number => Math.atan2(y - middleY, x - middleX);
  return [...places].sort((a, b) => angle(a) - angle(b));
}
