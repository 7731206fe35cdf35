/** The shortest way of a hand from doorways to places of a room, straight or round what stands in it. */
import { type Axis, axes, distance, type Vector3, vector3 } from "../../algebra/matrix3.js";
import { memoizeLast } from "../../kept/index.js";
import { reachOfSolid, type SolidReach } from "../overlap/placed.js";
import type { Solid } from "../solid.js";
import { freeLines } from "./on-line.js";

/** A room that a hand reaches into. */
export interface ReachRoom {
  /** Its lowest corner, m. */
  readonly low: Vector3;
  /** Its highest corner, m. */
  readonly high: Vector3;
  /** What stands in it. */
  readonly solids: readonly Solid[];
  /** Where a hand comes in, m. */
  readonly doorways: readonly Vector3[];
}

/** The way of a hand. */
export interface HandWay {
  /** How long it is, m. */
  readonly length: number;
  /** From the doorway over every bend to the place, m. */
  readonly points: readonly Vector3[];
}

/** A forearm keeps its middle so far from what stands in the room; common practice, m. */
const clear = 0.04;
/** Knots of a bent way are no further apart than twice that, so that no step goes through a board. */
const knots = 0.07;
/** A hand goes on from a knot so far, straight, into what an arm does not enter; the length of a hand, m. */
const hand = 0.18;

/**
 * The shortest way from any doorway to a place: straight, or over bends that keep the arm clear of what stands in the
 * room. The last 180 mm are the hand's own. A way over bends is at most some hundredths longer than the shortest.
 *
 * @throws Refusal when a solid does not lie along the axes
 */
export function handWays(room: ReachRoom): (place: Vector3) => HandWay | undefined {
  const isFree = freeLines(room.solids);
  let net: Net | undefined;
  return (place) => {
    const straight = straightWay(place, room, isFree);
    if (straight || room.solids.length === 0) return straight;
    net ??= newNet(room, isFree);
    return bentWay(net, place, isFree);
  };
}

/** Whether nothing is in the way from one place to another. */
type IsFree = (from: Vector3, to: Vector3) => boolean;

/** Straight from the nearest doorway, whatever stands in the way; undefined where there is no doorway. */
export function nearestWay(place: Vector3, doorways: readonly Vector3[]): HandWay | undefined {
  let [nearest, least]: [Vector3 | undefined, number] = [undefined, Infinity];
  for (const from of doorways) {
    const by = distance(from, place);
    if (by < least) [nearest, least] = [from, by];
  }
  return nearest && { length: least, points: [nearest, place] };
}

/** From the nearest doorway from which nothing is in the way. */
function straightWay(place: Vector3, { doorways }: ReachRoom, isFree: IsFree): HandWay | undefined {
  const nearest = nearestWay(place, doorways);
  const [first] = nearest?.points ?? [];
  if (!first || isFree(first, place)) return nearest;
  const sorted = doorways
    .map((from) => ({ from, length: distance(from, place) }))
    .sort((a, b) => a.length - b.length);
  const free = sorted.find(({ from }) => from !== first && isFree(from, place));
  return free && { length: free.length, points: [free.from, place] };
}

/** The knots of a room, before anything is asked of its doorways. */
interface Knots {
  /** Undefined where something stands too near. */
  readonly at: readonly (Vector3 | undefined)[];
  /** Where they stand along each axis, m. */
  readonly lines: readonly [readonly number[], readonly number[], readonly number[]];
  /** The open knots beside one, and how far they are, m; found when first asked for. */
  readonly beside: (knot: number) => readonly Beside[];
}

/** A knot beside another. */
interface Beside {
  readonly knot: number;
  /** m */
  readonly by: number;
}

/** Knots that a hand may pass, each with its way from the nearest doorway. */
interface Net extends Knots {
  /** m */
  readonly far: readonly number[];
  /** The knot before on the way, or the doorway. */
  readonly from: readonly (number | Vector3 | undefined)[];
}

/** Whether a place is nearer to the box round a solid than a forearm keeps. */
function isTooNear(place: Vector3, { low, high }: SolidReach): boolean {
  let sum = 0;
  for (const i of axes) sum += Math.max(low[i] - place[i], 0, place[i] - high[i]) ** 2;
  return sum < clear * clear;
}

/** The knots of the room that was asked for last, of each list of solids. */
const knotsOf = memoizeLast(
  ({ solids }: ReachRoom) => solids,
  ({ low, high }) => [...low, ...high],
  newKnots,
);

function newKnots({ low, high, solids }: ReachRoom): Knots {
  const line = (i: Axis): readonly number[] => {
    const room = high[i] - low[i] - 2 * clear;
    const count = Math.max(1, Math.ceil(room / knots) + 1);
    if (count === 1) return [(low[i] + high[i]) / 2];
    return Array.from({ length: count }, (_, n) => low[i] + clear + (n * room) / (count - 1));
  };
  const lines = [line(0), line(1), line(2)] as const;
  const standing = solids.map(reachOfSolid);
  const at = lines[0].flatMap((x) =>
    lines[1].flatMap((y) =>
      lines[2].map((z): Vector3 | undefined => {
        const place: Vector3 = [x, y, z];
        return standing.some((one) => isTooNear(place, one)) ? undefined : place;
      }),
    ),
  );
  const known: (readonly Beside[] | undefined)[] = at.map(() => undefined);
  const beside = (knot: number): readonly Beside[] => {
    const found = known[knot] ?? newBeside(knot, at, lines);
    known[knot] = found;
    return found;
  };
  return { at, lines, beside };
}

const steps: readonly Vector3[] = [-1, 0, 1]
  .flatMap((x) => [-1, 0, 1].flatMap((y) => [-1, 0, 1].map((z): Vector3 => [x, y, z])))
  .filter((way) => way.some((one) => one !== 0));

/** Every knot's shortest way from a doorway, nearest first. */
function newNet(room: ReachRoom, isFree: IsFree): Net {
  const given = knotsOf(room);
  const { at, lines, beside } = given;
  const far = at.map(() => Infinity);
  const from: (number | Vector3 | undefined)[] = at.map(() => undefined);
  for (const doorway of room.doorways)
    for (const i of knotsNear(doorway, 2 * knots, lines)) {
      const knot = at[i];
      if (!knot) continue;
      const by = distance(doorway, knot);
      if (by < 2 * knots && by < (far[i] ?? 0) && isFree(doorway, knot)) [far[i], from[i]] = [by, doorway];
    }
  // Knots in the order of their distance: each is taken up once, from the list of its hundredth of a metre.
  const lists: number[][] = [];
  const listed = (i: number): void => {
    const list = Math.floor((far[i] ?? 0) / 0.01);
    const near = lists[list] ?? [];
    near.push(i);
    lists[list] = near;
  };
  for (const [i, by] of far.entries()) if (by < Infinity) listed(i);
  for (let list = 0; list < lists.length; list++)
    for (const next of lists[list] ?? []) {
      const before = far[next] ?? 0;
      if (Math.floor(before / 0.01) !== list) continue;
      for (const { knot, by } of beside(next)) {
        if (before + by >= (far[knot] ?? 0) - 1e-9) continue;
        [far[knot], from[knot]] = [before + by, next];
        listed(knot);
      }
    }
  return { ...given, far, from };
}

function newBeside(knot: number, at: Knots["at"], lines: Knots["lines"]): readonly Beside[] {
  const here = at[knot];
  const [nx, ny, nz] = vector3((i) => lines[i].length);
  const [x, y, z] = [Math.floor(knot / (ny * nz)), Math.floor(knot / nz) % ny, knot % nz];
  return steps.flatMap(([dx, dy, dz]) => {
    const [a, b, c] = [x + dx, y + dy, z + dz];
    const within = a >= 0 && a < nx && b >= 0 && b < ny && c >= 0 && c < nz;
    const next = (a * ny + b) * nz + c;
    const there = within ? at[next] : undefined;
    return here && there ? [{ knot: next, by: distance(here, there) }] : [];
  });
}

/** Knots in a cube about a place, as they stand in their list. */
function knotsNear(place: Vector3, half: number, lines: Knots["lines"]): readonly number[] {
  const [[x0, x1], [y0, y1], [z0, z1]] = [
    stretch(lines[0], place[0], half),
    stretch(lines[1], place[1], half),
    stretch(lines[2], place[2], half),
  ];
  const [, { length: ny }, { length: nz }] = lines;
  const near: number[] = [];
  for (let x = x0; x < x1; x++)
    for (let y = y0; y < y1; y++) for (let z = z0; z < z1; z++) near.push((x * ny + y) * nz + z);
  return near;
}

/** From which to before which of rising numbers they are no further from another. */
function stretch(line: readonly number[], at: number, half: number): readonly [number, number] {
  let first = 0;
  while (first < line.length && at - (line[first] ?? at) > half) first++;
  let end = first;
  while (end < line.length && (line[end] ?? at) - at <= half) end++;
  return [first, end];
}

function bentWay({ at, lines, far, from }: Net, place: Vector3, isFree: IsFree): HandWay | undefined {
  let best: { readonly knot: number; readonly length: number } | undefined;
  for (const knot of knotsNear(place, hand, lines)) {
    const there = at[knot];
    const before = far[knot] ?? Infinity;
    if (!there || before >= (best?.length ?? Infinity)) continue;
    const last = distance(there, place);
    const length = before + last;
    if (last <= hand && length < (best?.length ?? Infinity) && isFree(there, place)) best = { knot, length };
  }
  if (!best) return undefined;
  const points: Vector3[] = [place];
  for (let knot: number | Vector3 | undefined = best.knot; knot !== undefined; ) {
    if (typeof knot !== "number") {
      points.unshift(knot);
      break;
    }
    points.unshift(at[knot] as Vector3);
    knot = from[knot];
  }
  return pulledTaut(points, isFree);
}

/** A way without the bends that it does not need. */
function pulledTaut(points: readonly Vector3[], isFree: IsFree): HandWay {
  const taut: Vector3[] = [];
  for (let i = 0; i < points.length; ) {
    const here = points[i] as Vector3;
    taut.push(here);
    const next = points.findLastIndex((there, j) => j > i + 1 && isFree(here, there));
    i = next > 0 ? next : i + 1;
  }
  const length = taut.slice(1).reduce((sum, point, i) => sum + distance(taut[i] ?? point, point), 0);
  return { length, points: taut };
}
