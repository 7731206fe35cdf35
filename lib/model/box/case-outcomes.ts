/** What each load case comes to: movement, openings out of square, seams, hardware. */
import {
  addRigid,
  type BoxSeam,
  type BoxSpot,
  boxFreedoms,
  extents,
  fittingMotion,
  fittingOn,
  outOfSquare,
  type Spot,
  seamFlows,
  seamLoad,
} from "../../fem/index.js";
import { linkOf } from "./case-system.js";
import { doorRoom } from "./door-room.js";
import { edgePitch } from "./edge-joints.js";
import type { LinkKind } from "./hardware-links.js";
import type { LoadedCase } from "./load-cases.js";

/** A value with the part it belongs to. */
export interface NamedValue {
  readonly name: string;
  readonly value: number;
}

/** What one load case comes to. */
export interface CaseOutcome {
  readonly id: string;
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
