import { solveSquare } from "../../algebra/linear-systems.js";
import { add, at as entry, sumOf, under } from "../../algebra/lists.js";
import { spaceDofs } from "../element/index.js";
import { type HalfMoved, movedUnder, type ShareOfHalf } from "../solve/index.js";
import type { BoxSpot } from "./box-problem.js";
import {
  allSprings,
  GivesWay,
  type HeldLoad,
  holdOf,
  type InUse,
  springsIn,
  wrenchOf,
} from "./contact-statics.js";
import { halfMoved, type JoinedParts, stretchUnder } from "./joined-parts.js";

/** Parts under one load case. */
export interface JoinedAnswer {
  /** Of each part, its degrees of freedom in order. */
  readonly displacements: readonly Float64Array[];
  /** Force of each spring of the system, N: positive where it pulls its ends together; zero where it is left out. */
  readonly forces: readonly number[];
}

/**
 * Moves joined parts under forces. Springs that only push or only pull act as all others do, or are left out with a
 * gap: the forces are those of least energy among all that are in balance with the load and pull nowhere they cannot,
 * found by the active-set method for convex quadratic programs (J. Nocedal, S. J. Wright, Numerical Optimization, 2006,
 * 16.5). Every round either lowers that energy or leaves one more spring out, so that the search ends; what it ends
 * with is tested before it is told.
 *
 * @param joined the parts with all springs
 * @param loads forces on the degrees of freedom of each part
 * @param inUse which springs this load case has; all when left out
 * @throws Refusal that names a part that nothing holds, GivesWay where no forces balance the load
 */
export function movedJoined(
  joined: JoinedParts,
  loads: readonly Float64Array[],
  inUse: InUse = allSprings,
): JoinedAnswer {
  const free = joined.parts.map((part, i) => halfMoved(part, entry(loads, i)));
  const springs = springsIn(joined, inUse);
  const load = wrenchOf(joined, loads);
  const { start, carried, tipping } = holdOf(joined, inUse)(load);
  if (tipping) throw new GivesWay(joined, tipping);
  const gaps = joined.links.map((link) => stretchUnder(link, (part) => entry(free, part)));
  return answer(joined, free, atRest(joined, springs, { start, carried, gaps, size: largest(load.gross) }));
}

/** What the search for the springs that act begins with. */
interface Task extends Pick<HeldLoad, "start" | "carried"> {
  /** How much longer each spring got before any force, m. */
  readonly gaps: readonly number[];
  /** The largest of the load, N or N m. */
  readonly size: number;
}

/** Shares of the load and of the longest stretch below which either is round-off. */
const roundOff = 1e-9;
/** Rounds for each spring, far more than were ever needed. */
const roundsEach = 20;

/** Finds the springs that act: all others have a gap. */
function atRest(joined: JoinedParts, springs: readonly number[], task: Task): Round {
  const { carried, gaps, size } = task;
  const forces = task.start.slice();
  const out = new Set<number>();
  const allowed = (i: number, value: number, most: number): boolean => {
    const { only } = entry(joined.links, i).link;
    return only === undefined || (only === "push" ? -value : value) >= -roundOff * most;
  };
  for (let round = 0; round < roundsEach * (springs.length + 1); round++) {
    const active = springs.filter((i) => !out.has(i));
    const found: Round = { active, gaps, ...balanced(joined, active, gaps, carried) };
    const wrong = active.flatMap((i, k) => {
      const [to, from] = [entry(found.forces, k), entry(forces, i)];
      return allowed(i, to, size) ? [] : [{ i, over: Math.abs(to), step: Math.max(0, from / (from - to)) }];
    });
    const step = wrong.reduce((least, one) => Math.min(least, one.step), 1);
    active.forEach((i, k) => {
      forces[i] = entry(forces, i) + step * (entry(found.forces, k) - entry(forces, i));
    });
    const [stops] = wrong.filter((one) => one.step === step).sort((a, b) => b.over - a.over);
    if (stops) {
      forces[stops.i] = 0;
      out.add(stops.i);
      continue;
    }
    const stretches = new Map(springs.map((i) => [i, stretchIn(joined, i, found)]));
    const longest = largest([...stretches.values(), ...gaps]);
    const [back] = [...out]
      .map((i) => ({ i, stretch: under(stretches, i) }))
      .filter(({ i, stretch }) => !allowed(i, -stretch, longest))
      .sort((a, b) => Math.abs(b.stretch) - Math.abs(a.stretch));
    if (!back) return proven(joined, found, stretches, task);
    out.delete(back.i);
  }
  throw new Error(`forces of ${springs.length} springs: no balance was found`);
}

/** Share of the largest up to which a balance may be off. */
const provenTo = 1e-6;

/**
 * A balance whose springs are as long as their forces say, and whose forces come to the load.
 *
 * @throws Error where they do not, which is a mistake in the program
 */
function proven(
  { links }: JoinedParts,
  found: Round,
  stretches: ReadonlyMap<number, number>,
  { carried, size }: Task,
): Round {
  const left = carried.slice();
  const off = found.active.map((i, k) => {
    const { link, ends } = entry(links, i);
    const force = entry(found.forces, k);
    for (const { part, rigid } of ends)
      rigid.forEach((share, way) => {
        add(left, 6 * part + way, -force * share);
      });
    return under(stretches, i) - force / link.stiffness;
  });
  const longest = largest([...stretches.values(), ...found.gaps]);
  if (largest(off) <= provenTo * longest && largest(left) <= provenTo * size) return found;
  throw new Error(`forces of ${found.active.length} springs: off by ${largest(off)} m, ${largest(left)} N`);
}

function largest(values: Iterable<number>): number {
  let most = 0;
  for (const value of values) most = Math.max(most, Math.abs(value));
  return most;
}

/** Force of each active spring, and the rigid movement of each part. */
interface Balance {
  /** One force an active spring, N. */
  readonly forces: Float64Array;
  /** Six numbers a part: along x, y, z, m, and about them, rad. */
  readonly rigid: Float64Array;
}

/** A round of the search for the springs that act. */
interface Round extends Balance {
  /** Numbers of the springs that act. */
  readonly active: readonly number[];
  /** How much longer each spring got before any force, m. */
  readonly gaps: readonly number[];
}

/** Springs as long as their forces say, and every part in balance. */
function balanced(
  { parts, links, give }: JoinedParts,
  active: readonly number[],
  gaps: readonly number[],
  wrench: Float64Array,
): Balance {
  const [springs, size] = [active.length, active.length + 6 * parts.length];
  const matrix = new Float64Array(size * size);
  const right = new Float64Array(size);
  active.forEach((i, row) => {
    active.forEach((j, column) => {
      matrix[row * size + column] = give(i, j);
    });
    const { link, ends } = entry(links, i);
    add(matrix, row * (size + 1), 1 / link.stiffness);
    for (const { part, rigid } of ends)
      rigid.forEach((share, k) => {
        const other = springs + 6 * part + k;
        add(matrix, row * size + other, -share);
        add(matrix, other * size + row, -share);
      });
    right[row] = entry(gaps, i);
  });
  wrench.forEach((value, k) => {
    right[springs + k] = -value;
  });
  const unknowns = solveSquare(matrix, right);
  return { forces: unknowns.subarray(0, springs), rigid: unknowns.subarray(springs) };
}

/** How much longer a spring of the load case gets. */
function stretchIn({ links, give }: JoinedParts, i: number, { active, gaps, forces, rigid }: Round): number {
  const carried = sumOf(entry(links, i).ends, (end) =>
    sumOf(end.rigid.entries(), ([k, share]) => share * entry(rigid, 6 * end.part + k)),
  );
  return active.reduce((sum, j, k) => sum - give(i, j) * entry(forces, k), entry(gaps, i) + carried);
}

function answer(
  { parts, links }: JoinedParts,
  free: readonly HalfMoved[],
  { active, forces, rigid }: Round,
): JoinedAnswer {
  const shares = free.map((half): ShareOfHalf[] => [{ half, share: 1 }]);
  const all = new Array<number>(links.length).fill(0);
  active.forEach((i, k) => {
    const force = entry(forces, k);
    all[i] = force;
    for (const { part, half } of entry(links, i).ends) entry(shares, part).push({ half, share: -force });
  });
  const displacements = parts.map(({ structure, factors }, part) => {
    const moved = movedUnder(factors, entry(shares, part));
    addRigid(moved, structure.nodes, rigid.subarray(6 * part, 6 * part + 6));
    return moved;
  });
  return { displacements, forces: all };
}

/** Adds a rigid movement, along and about x, y, z at 0, 0, 0, to the movement of nodes. */
export function addRigid(
  displacement: Float64Array,
  nodes: readonly BoxSpot[],
  rigid: ArrayLike<number>,
): void {
  const [tx = 0, ty = 0, tz = 0, rx = 0, ry = 0, rz = 0] = Array.from(rigid);
  nodes.forEach(([x, y, z], node) => {
    const from = spaceDofs * node;
    [tx + ry * z - rz * y, ty + rz * x - rx * z, tz + rx * y - ry * x, rx, ry, rz].forEach((value, k) => {
      add(displacement, from + k, value);
    });
  });
}
