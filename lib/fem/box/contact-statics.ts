/**
 * Which loads the springs of joined parts can be in balance with at all, however stiff they are: plain statics. What
 * only pushes or only pulls makes a cone of loads; a load beyond it tips, and says about which edge.
 */
import { lengthOf, nearestInCone, outOfReach, product } from "../../algebra/cone.js";
import { add, at as entry, under } from "../../algebra/lists.js";
import { Refusal } from "../../refusal.js";
import { spaceDofs } from "../element/index.js";
import type { BoxSpot } from "./box-problem.js";
import type { JoinedParts, PreparedLink } from "./joined-parts.js";
import { waysToMove } from "./meshed-box.js";

/** Which springs a load case has. */
export type InUse = (link: PreparedLink["link"]) => boolean;

/** What forces come to. Six numbers a part: along x, y, z, and about them at its 0, 0, 0. */
export interface Wrench {
  /** All forces, N and N m. */
  readonly total: Float64Array;
  /** Their sizes added up, whichever way they point: what round-off is measured by. */
  readonly gross: Float64Array;
}

/** A load held against what the springs can carry, six numbers a part. */
export interface HeldLoad {
  /** Of each spring that only pushes or pulls, a force with which all is in balance, N; zero of all others. */
  readonly start: Float64Array;
  /** The part of the load that the springs can be in balance with: all of it, but for round-off, unless it tips. */
  readonly carried: Float64Array;
  /** The rigid movement about which the load tips the parts; nothing where it does not. */
  readonly tipping?: Float64Array;
}

/** How a set of springs holds loads on parts. */
export type Hold = (load: Wrench) => HeldLoad;

/** What is left of a load counts as round-off up to this share of it. */
const roundOff = 1e-9;

/** Every spring there is. */
export const allSprings: InUse = () => true;

/** The springs of a load case, by number. */
export function springsIn({ links }: JoinedParts, inUse: InUse): readonly number[] {
  return [...links.keys()].filter((i) => inUse(entry(links, i).link));
}

/**
 * How springs hold loads.
 *
 * @param joined the parts
 * @param inUse which springs a load case has
 * @throws Refusal that names a part that no spring stops from moving, and how it moves
 */
export function holdOf(joined: JoinedParts, inUse: InUse): Hold {
  const known = inUse === allSprings ? holds.get(joined) : undefined;
  const hold = known ?? newHold(joined, springsIn(joined, inUse));
  if (inUse === allSprings) holds.set(joined, hold);
  return hold;
}

/** Of parts with all their springs, which are asked for with one load after another. */
const holds = new WeakMap<JoinedParts, Hold>();

/** @throws Refusal that names a part that no spring stops from moving, and how it moves */
function newHold(joined: JoinedParts, springs: readonly number[]): Hold {
  const { links } = joined;
  const size = 6 * joined.parts.length;
  const reach = reachOf(joined, springs);
  const rows = new Map(springs.map((i) => [i, rowOf(entry(links, i), size, reach)]));
  const [loose] = outOfReach([...rows.values()], size);
  if (loose)
    throw new Refusal(`${wordsOf(joined, loose, "is loose: it")} without resistance; hold it better`);
  const free = outOfReach(
    [...rows].flatMap(([i, row]) => (entry(links, i).link.only ? [] : [row])),
    size,
  );
  const inFree = (vector: Float64Array): Float64Array =>
    Float64Array.from(free, (way) => product(way, vector));
  // What the two-way springs hold already needs no one-way spring: all that is left of its way is round-off.
  const oneWay = springs.filter((i) => {
    const row = under(rows, i);
    return entry(links, i).link.only && lengthOf(inFree(row)) > roundOff * lengthOf(row);
  });
  const sense = (i: number): number => (entry(links, i).link.only === "push" ? -1 : 1);
  const columns = oneWay.map((i) => inFree(under(rows, i).map((value) => sense(i) * value)));
  return ({ total, gross }) => {
    const own = scaled(total, 1 / reach);
    const { shares, rest } = nearestInCone(columns, inFree(own));
    const start = new Float64Array(links.length);
    oneWay.forEach((i, k) => {
      start[i] = sense(i) * entry(shares, k);
    });
    const left = Float64Array.from({ length: size }, (_, k) =>
      free.reduce((sum, way, j) => sum + entry(way, k) * entry(rest, j), 0),
    );
    const carried = scaled(
      own.map((value, k) => value - entry(left, k)),
      reach,
    );
    const tips = lengthOf(left) > roundOff * lengthOf(scaled(gross, 1 / reach));
    return { start, carried, ...(tips ? { tipping: scaled(left, 1 / reach) } : {}) };
  };
}

/** The longest arm of a spring about its part's 0, 0, 0: turns count as the way they make there. */
function reachOf({ links }: JoinedParts, springs: readonly number[]): number {
  return springs.reduce(
    (most, i) =>
      entry(links, i).ends.reduce((far, { fitting }) => Math.max(far, Math.hypot(...fitting.at)), most),
    1e-3,
  );
}

/** Turns in a vector of six numbers a part multiplied. */
function scaled(vector: Float64Array, by: number): Float64Array {
  return vector.map((value, k) => (k % 6 < 3 ? value : by * value));
}

function rowOf({ ends }: PreparedLink, size: number, reach: number): Float64Array {
  const row = new Float64Array(size);
  for (const { part, rigid } of ends)
    rigid.forEach((share, k) => {
      add(row, 6 * part + k, k < 3 ? share : share / reach);
    });
  return row;
}

/** Names the part that moves most in a rigid movement, and how. */
function wordsOf({ parts }: JoinedParts, movement: Float64Array, what: string): string {
  const most = movement.reduce(
    (best, value, k) => (Math.abs(value) > Math.abs(entry(movement, best)) ? k : best),
    0,
  );
  return `${entry(parts, Math.floor(most / 6)).structure.problem.name} ${what} ${waysToMove[most % 6]}`;
}

/** What the forces on the nodes of each part come to. */
export function wrenchOf({ parts }: JoinedParts, loads: readonly Float64Array[]): Wrench {
  const total = new Float64Array(6 * parts.length);
  const gross = new Float64Array(6 * parts.length);
  parts.forEach(({ structure: { nodes } }, part) => {
    addWrench(total, gross, 6 * part, nodes, entry(loads, part));
  });
  return { total, gross };
}

function addWrench(
  total: Float64Array,
  gross: Float64Array,
  first: number,
  nodes: readonly BoxSpot[],
  load: Float64Array,
): void {
  const put = (k: number, value: number): void => {
    total[first + k]! += value;
    gross[first + k]! += Math.abs(value);
  };
  for (const [node, [x, y, z]] of nodes.entries()) {
    const from = spaceDofs * node;
    const [fx, fy, fz] = [load[from]!, load[from + 1]!, load[from + 2]!];
    put(0, fx);
    put(1, fy);
    put(2, fz);
    put(3, y * fz - z * fy + load[from + 3]!);
    put(4, z * fx - x * fz + load[from + 4]!);
    put(5, x * fy - y * fx + load[from + 5]!);
  }
}

/** A load and a share of another. */
function sumWith(one: Wrench, other: Wrench, share: number): Wrench {
  return {
    total: one.total.map((value, k) => value + share * entry(other.total, k)),
    gross: one.gross.map((value, k) => value + Math.abs(share) * entry(other.gross, k)),
  };
}

/**
 * Whether loads can be in balance with the springs of a load case.
 *
 * @throws Refusal that names a part that is loose
 */
export function isBalanced(
  joined: JoinedParts,
  loads: readonly Float64Array[],
  inUse: InUse = allSprings,
): boolean {
  return holdOf(joined, inUse)(wrenchOf(joined, loads)).tipping === undefined;
}

/** Tries at a share of a load; each is the statics of one more edge. */
const mostEdges = 100;

/**
 * The share of a load, added to a standing one, at which the parts begin to tip; 1 where they bear all of it. Each try
 * that tips tells an edge, and moments about that edge the share at which it would be reached.
 *
 * @param joined the parts
 * @param standing loads on the degrees of freedom of each part
 * @param more the same, growing
 * @param inUse which springs the load case has; all when left out
 * @throws Refusal that names a part that is loose, or that gives way under the standing load alone
 */
export function shareBorne(
  joined: JoinedParts,
  standing: readonly Float64Array[],
  more: readonly Float64Array[],
  inUse: InUse = allSprings,
): number {
  const hold = holdOf(joined, inUse);
  const [base, growing] = [wrenchOf(joined, standing), wrenchOf(joined, more)];
  let share = 1;
  for (let edge = 0; edge < mostEdges; edge++) {
    const { tipping } = hold(sumWith(base, growing, share));
    if (!tipping) return share;
    const [holds, tips] = [-product(base.total, tipping), product(growing.total, tipping)];
    if (!(holds > 0 && tips > 0 && holds / tips < share)) throw new GivesWay(joined, tipping);
    share = holds / tips;
  }
  throw new Error(`tipping of ${joined.parts.length} parts: no edge is the last of ${mostEdges}`);
}

/** A load that no forces of the springs balance, though nothing is loose: it tips, lifts off or falls open. */
export class GivesWay extends Refusal {
  constructor(joined: JoinedParts, tipping: Float64Array) {
    super(`${wordsOf(joined, tipping, "gives way: it")} and nothing there pushes or pulls against it`);
  }
}
