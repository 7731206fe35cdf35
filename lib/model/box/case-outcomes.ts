/** What each load case comes to: movement, openings out of square, seams, hardware. */
import {
  addRigid,
  type BoxSeam,
  type BoxSpot,
  boxFreedoms,
  extents,
  type FaceName,
  fittingMotion,
  fittingOn,
  frames,
  onFace,
  outOfSquare,
  rimOf,
  type Spot,
  seamFlows,
  seamLoad,
} from "../../fem/index.js";
import { Refusal } from "../../refusal.js";
import { linkOf } from "./case-system.js";
import { edgePitch } from "./edge-joints.js";
import type { LinkKind } from "./hardware-links.js";
import type { LoadedCase } from "./load-cases.js";

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

/** Sums up a load case. */
export function caseOutcome(loaded: LoadedCase): CaseOutcome {
  const moved = movedAgainstCorners(loaded);
  return {
    id: loaded.id,
    title: loaded.title,
    movement: farthest(loaded, moved),
    openings: openingsOf(loaded),
    doors: doorRoom(loaded),
    seams: seamsOf(loaded),
    hardware: hardwareOf(loaded),
  };
}

/** Movements of the load case, less those it counts from. */
export function movementsOf({ answer, from }: LoadedCase): readonly Float64Array[] {
  return answer.displacements.map((own, i) =>
    from ? own.map((value, k) => value - from.displacements[i]![k]!) : own,
  );
}

/** How far in from its corners the lowest section is looked at, m. */
const inside = 0.03;

/** Movements as seen by somebody who stands with the four lower corners of the lowest section. */
export function movedAgainstCorners(loaded: LoadedCase): readonly Float64Array[] {
  const { bodies } = loaded;
  const moved = movementsOf(loaded).map((own) => own.slice());
  const lowest = bodies.parts.reduce(
    (best, part, i) => (part.at[2] < bodies.parts[best]!.at[2] ? i : best),
    0,
  );
  const { structure, at } = bodies.parts[lowest]!;
  const [length, width] = extents(structure.problem);
  const spots = [inside, length - inside].flatMap((x) => [inside, width - inside].map((y): Spot => [x, y]));
  const base = fittingOn(structure, "lower corners", [{ face: "bottom", spots }], [0, 0, 0]);
  const rigid = fittingMotion(base, moved[lowest]!).map((value) => -value);
  bodies.parts.forEach((part, i) => {
    const off = part.at.map((own, axis) => own - at[axis]!) as unknown as BoxSpot;
    addRigid(moved[i]!, part.structure.nodes, carried(rigid, off));
  });
  return moved;
}

/** A rigid movement as told at another place. */
function carried(
  [tx = 0, ty = 0, tz = 0, rx = 0, ry = 0, rz = 0]: Float64Array,
  [x, y, z]: BoxSpot,
): number[] {
  return [tx + ry * z - rz * y, ty + rz * x - rx * z, tz + rx * y - ry * x, rx, ry, rz];
}

function farthest({ bodies }: LoadedCase, moved: readonly Float64Array[]): number {
  let most = 0;
  bodies.parts.forEach(({ structure }, i) => {
    structure.nodes.forEach((_, node) => {
      const [x = 0, y = 0, z = 0] = moved[i]!.subarray(boxFreedoms * node, boxFreedoms * node + 3);
      most = Math.max(most, Math.hypot(x, y, z));
    });
  });
  return most;
}

/** The largest first. */
export function byValue<Value extends NamedValue>(values: readonly Value[]): readonly Value[] {
  return [...values].sort((a, b) => b.value - a.value);
}

function openingsOf(loaded: LoadedCase): readonly NamedValue[] {
  const moved = movementsOf(loaded);
  return byValue(
    loaded.bodies.parts.flatMap(({ structure }, i) =>
      structure.faces.flatMap(({ name }) =>
        (structure.problem.faces[name]?.cutouts ?? []).map((cutout) => ({
          name: cutout.name,
          value: outOfSquare(structure, moved[i]!, name, cutout).diagonals,
        })),
      ),
    ),
  );
}

function seamsOf({ bodies, answer, system }: LoadedCase): readonly (NamedValue & { mean: number })[] {
  return byValue(
    bodies.parts.flatMap(({ structure }, i) => {
      const { name } = system.model.bodies[bodies.numbers[i]!]!;
      return (structure.problem.seams ?? []).map((seam) => {
        const pitch = edgePitch(system.input, name, seam);
        const { mean, peak } = seamLoad(seamFlows(structure, answer.displacements[i]!, seam), pitch);
        return { name: seamName(name, seam), value: peak, mean };
      });
    }),
  );
}

const faceWords: Readonly<Record<string, string>> = {
  y0: "front",
  y1: "back",
  x0: "left",
  x1: "right",
};

/** A seam in the builder's words: "lower, bottom to front". */
export function seamName(section: string, { faces }: Pick<BoxSeam, "faces">): string {
  const [one, other] = faces.map((face) => faceWords[face] ?? face);
  return `${section}, ${one} to ${other}`;
}

/** The springs of one piece of hardware added up as a force. */
function hardwareOf({ bodies, answer }: LoadedCase): CaseOutcome["hardware"] {
  const sums = new Map<string, { kind: LinkKind; name: string; force: [number, number, number] }>();
  bodies.links.forEach((prepared, i) => {
    const { kind, name, along } = linkOf(prepared);
    const sum = sums.get(`${kind} ${name}`) ?? { kind, name, force: [0, 0, 0] };
    sums.set(`${kind} ${name}`, sum);
    along.forEach((share, axis) => {
      sum.force[axis]! += share * answer.forces[i]!;
    });
  });
  const hardware: Partial<Record<LinkKind, NamedValue[]>> = {};
  for (const { kind, name, force } of sums.values()) {
    if (kind === "stand") continue;
    const own = hardware[kind] ?? [];
    hardware[kind] = own;
    own.push({ name, value: Math.hypot(...force) });
  }
  return Object.fromEntries(Object.entries(hardware).map(([kind, values]) => [kind, byValue(values)]));
}

/** Shares of a side at which its gap is looked at: where its corners are not yet round, and in the middle. */
const lookedAt = [0.1, 0.5, 0.9];

/** The gap that each door of a load case loses at its tightest place, m, the largest first. */
export function doorRoom(loaded: LoadedCase): readonly NamedValue[] {
  const { bodies, system } = loaded;
  return byValue(
    bodies.numbers.flatMap((number, i) => {
      const body = system.model.bodies[number]!;
      const frame = bodies.numbers.findIndex((other) => system.model.bodies[other]!.name === body.section);
      return body.name === body.section || frame < 0
        ? []
        : [{ name: body.name, value: lost(loaded, i, frame) }];
    }),
  );
}

function lost(loaded: LoadedCase, leaf: number, frame: number): number {
  const moved = movementsOf(loaded);
  const [own, around] = [loaded.bodies.parts[leaf]!, loaded.bodies.parts[frame]!];
  const [face] = own.structure.faces;
  const { name } = face!;
  const [along, across] = frames[name].axes;
  const opening = around.structure.problem.faces[name]?.cutouts.find((cutout) =>
    own.structure.problem.name.endsWith(cutout.name),
  );
  if (!opening) throw new Refusal(`box: no opening is left for ${own.structure.problem.name}`);
  const offset = ([along, across] as const).map((axis) => own.at[axis] - around.at[axis]);
  const size = [Math.max(...face!.mesh.x), Math.max(...face!.mesh.y)] as const;
  const ownRim = [...new Set(face!.mesh.rim.flat())].map((node) => ({
    x: face!.mesh.x[node]! + offset[0]!,
    y: face!.mesh.y[node]! + offset[1]!,
    node: face!.numbers[node]!,
  }));
  const rim = rimOf(around.structure, name, opening);
  const losses = ([0, 1] as const).flatMap((side) =>
    [-1, 1].flatMap((out) =>
      lookedAt.map((share) => {
        const place: [number, number] = [0, 0];
        place[side] = offset[side]! + (out > 0 ? size[side] : 0);
        place[1 - side] = offset[1 - side]! + share * size[1 - side]!;
        const axis = side === 0 ? along : across;
        const of = (nodes: typeof rim, displacement: Float64Array): number =>
          displacement[boxFreedoms * nearest(nodes, place) + axis]!;
        return -out * (of(rim, moved[frame]!) - of(ownRim, moved[leaf]!));
      }),
    ),
  );
  return Math.max(0, ...losses);
}

function nearest(
  nodes: readonly { readonly x: number; readonly y: number; readonly node: number }[],
  [x, y]: readonly [number, number],
): number {
  const away = (one: (typeof nodes)[number]): number => Math.hypot(one.x - x, one.y - y);
  return nodes.reduce((best, one) => (away(one) < away(best) ? one : best)).node;
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
 * Outlines of some faces, those that lie behind first, each followed by its openings; leaves last.
 *
 * @param loaded a load case
 * @param names of the faces to show
 */
export function movedOutlines(loaded: LoadedCase, names: readonly FaceName[]): readonly MovedOutline[] {
  const { bodies, system } = loaded;
  const moved = movedAgainstCorners(loaded);
  const outlines = bodies.parts.flatMap(({ structure, at }, i) => {
    const leaf = system.model.bodies[bodies.numbers[i]!]!;
    const isLeaf = leaf.name !== leaf.section;
    return structure.faces
      .filter(({ name }) => names.includes(name))
      .flatMap(({ name, mesh, numbers }): MovedOutline[] => {
        const place = (node: number, spot: Spot): MovedPlace => ({
          at: onFace(structure.problem, name, spot).map((own, axis) => own + at[axis]!) as unknown as BoxSpot,
          by: Array.from(
            moved[i]!.subarray(boxFreedoms * node, boxFreedoms * node + 3),
          ) as unknown as BoxSpot,
        });
        const sides = Array.from(numbers, (node, k) => ({ node, x: mesh.x[k]!, y: mesh.y[k]! }));
        const size: Spot = [Math.max(...mesh.x), Math.max(...mesh.y)];
        const rim = sides.filter(({ x, y }) => isEnd(x, size[0]) || isEnd(y, size[1]));
        const ring = (nodes: typeof sides): readonly MovedPlace[] =>
          aroundMiddle(nodes).map(({ node, x, y }) => place(node, [x, y]));
        const face: MovedOutline = { what: isLeaf ? "leaf" : "face", name: leaf.name, places: ring(rim) };
        const openings = (structure.problem.faces[name]?.cutouts ?? []).map(
          (cutout): MovedOutline => ({
            what: "opening",
            name: cutout.name,
            places: ring([...rimOf(structure, name, cutout)]),
          }),
        );
        return [face, ...openings];
      });
  });
  return [
    ...outlines.filter(({ what }) => what !== "leaf"),
    ...outlines.filter(({ what }) => what === "leaf"),
  ];
}

function isEnd(at: number, extent: number): boolean {
  return at < 1e-9 || at > extent - 1e-9;
}

/** In the order of their angle about their middle. */
function aroundMiddle<Place extends { readonly x: number; readonly y: number }>(
  places: readonly Place[],
): readonly Place[] {
  const mean = (of: (place: Place) => number): number =>
    places.reduce((sum, place) => sum + of(place), 0) / places.length;
  const [x, y] = [(axis: Place) => axis.x, (axis: Place) => axis.y].map(mean) as [number, number];
  const angle = (place: Place): number => Math.atan2(place.y - y, place.x - x);
  return [...places].sort((a, b) => angle(a) - angle(b));
}
