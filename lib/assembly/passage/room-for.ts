/**
 * Where the middle of a rectangle, turned by an angle, may lie so that it stays within an opening: a flat region of
 * convex pieces.
 */
import type { Point2 } from "../../shape/index.js";
import { cornersOf, hullOf, type Piece } from "../overlap/hull.js";
import { boxRegion, regionOf, shared } from "../overlap/region.js";

/** An opening, ready to be tried: what is inside its hull and in none of its bays. */
export interface OpeningPieces {
  /** Corners of its convex hull, counterclockwise. */
  readonly hull: readonly Point2[];
  /** The sides of that hull, in their order. */
  readonly sides: readonly HalfPlane[];
  /** The same in an order in which those that leave no room between them come early. */
  readonly mixed: readonly HalfPlane[];
  /** What the hull has and the opening has not, in convex pieces. */
  readonly bays: readonly Piece[];
}

/** The pieces of an opening, given by its corners. */
export function piecesOfOpening(ring: readonly Point2[]): OpeningPieces {
  const hull = hullOf(ring);
  const between = regionOf([hull, ring]);
  const sides = sidesOf(hull);
  const bays = shared(between, boxRegion(between.bounds)).map(cornersOf).filter(isWide);
  return { hull, sides, mixed: mixedUp(sides), bays };
}

/** A list with what lies far apart in it one after another: by turns of the golden section. */
function mixedUp<Item>(list: readonly Item[]): readonly Item[] {
  const turn = (Math.sqrt(5) - 1) / 2;
  return list
    .map((item, i) => ({ item, at: (i * turn) % 1 }))
    .sort((a, b) => a.at - b.at)
    .map(({ item }) => item);
}

/** A bay thinner than this is a rounding of a corner that is straight, m. */
const thin = 1e-7;

function isWide(corners: readonly Point2[]): boolean {
  const doubled = corners.reduce((sum, { x, y }, i) => {
    const next = corners[(i + 1) % corners.length] ?? corners[0];
    return sum + (next ? x * next.y - next.x * y : 0);
  }, 0);
  const around = corners.reduce((sum, { x, y }, i) => {
    const next = corners[(i + 1) % corners.length] ?? corners[0];
    return sum + (next ? Math.hypot(next.x - x, next.y - y) : 0);
  }, 0);
  return Math.abs(doubled) > thin * around;
}

/** A half plane: what is on the left of a line by some distance or more. */
export interface HalfPlane {
  /** Unit normal, to the inside. */
  readonly x: number;
  readonly y: number;
  /** Least scalar product with the normal. */
  readonly least: number;
}

/** Rectangle to be passed: half its sides, and its turn. */
export interface TurnedRectangle {
  /** m */
  readonly halfWidth: number;
  /** m */
  readonly halfHeight: number;
  /** From the opening's x to the width, rad. */
  readonly angle: number;
}

/** A rectangle at any turn of a stretch, with the least that it reaches at one of them. */
interface Stretch {
  /** Cosine and sine of the first turn, and of the last. */
  readonly first: readonly [number, number];
  readonly last: readonly [number, number];
  readonly halfWidth: number;
  readonly halfHeight: number;
}

function stretchOf({ halfWidth, halfHeight, angle }: TurnedRectangle, half: number): Stretch {
  const at = (turn: number): readonly [number, number] => [Math.cos(turn), Math.sin(turn)];
  return { first: at(angle - half), last: at(angle + half), halfWidth, halfHeight };
}

/**
 * The least that a rectangle reaches from its middle along a direction at the turns of a stretch of at most an eighth of
 * a turn, m. Between turns at which a side stands square to the direction, the least is at an end.
 */
function leastReach({ first, last, halfWidth, halfHeight }: Stretch, x: number, y: number): number {
  const [c1, s1] = [first[0] * x + first[1] * y, first[0] * y - first[1] * x];
  const [c2, s2] = [last[0] * x + last[1] * y, last[0] * y - last[1] * x];
  const ends = Math.min(
    halfWidth * Math.abs(c1) + halfHeight * Math.abs(s1),
    halfWidth * Math.abs(c2) + halfHeight * Math.abs(s2),
  );
  return Math.min(ends, c1 * c2 <= 0 ? halfHeight : Infinity, s1 * s2 <= 0 ? halfWidth : Infinity);
}

/**
 * Whether a rectangle may go through an opening at some turn of a stretch. Where it goes through at one of them this is
 * true; it may be true where it does not.
 *
 * @param half how far the stretch goes to both sides of the rectangle's own turn, rad, at most an eighth of a half turn
 * @param allowance how far the rectangle may stand over the rim, m
 */
export function mayPass(
  { hull, mixed, bays }: OpeningPieces,
  rectangle: TurnedRectangle,
  half: number,
  allowance: number,
): boolean {
  const stretch = stretchOf(rectangle, half);
  const room = placesWithin(hull, mixed, (x, y) => leastReach(stretch, x, y) - allowance);
  const most = allowance + half * Math.hypot(rectangle.halfWidth, rectangle.halfHeight);
  return room.length > 0 && besideBays(room, bays, rectangle, most).length > 0;
}

/**
 * Places for the middle of a rectangle within an opening; empty where there is none.
 *
 * @param allowance how far the rectangle may stand over the rim, m
 */
export function placesFor(
  { hull, sides, bays }: OpeningPieces,
  rectangle: TurnedRectangle,
  allowance: number,
): readonly Point2[] {
  const stretch = stretchOf(rectangle, 0);
  const room = placesWithin(hull, sides, (x, y) => leastReach(stretch, x, y) - allowance);
  return room.length > 0 ? (besideBays(room, bays, rectangle, allowance)[0] ?? []) : [];
}

/** What of a square round a hull lies within its sides, each moved inwards by its share. */
function placesWithin(
  hull: readonly Point2[],
  sides: readonly HalfPlane[],
  inwards: (x: number, y: number) => number,
): Piece {
  let room: Piece = roundAbout(hull);
  for (const { x, y, least } of sides) {
    room = keptBy(room, x, y, least + inwards(x, y));
    if (room.length === 0) break;
  }
  return room;
}

/** What of a piece lies clear of the bays of an opening. */
function besideBays(
  room: Piece,
  bays: readonly Piece[],
  rectangle: TurnedRectangle,
  allowance: number,
): readonly Piece[] {
  return bays.reduce<readonly Piece[]>(
    (pieces, bay) => {
      if (pieces.length === 0) return pieces;
      const grown = grownBy(bay, rectangle, allowance);
      return pieces.flatMap((piece) => outside(piece, grown));
    },
    [room],
  );
}

/** Half planes whose common part a convex outline is. */
function sidesOf(corners: readonly Point2[]): readonly HalfPlane[] {
  return corners.flatMap((from, i) => {
    const to = corners[(i + 1) % corners.length] ?? from;
    const long = Math.hypot(to.x - from.x, to.y - from.y);
    if (long < 1e-12) return [];
    const [x, y] = [(from.y - to.y) / long, (to.x - from.x) / long];
    return [{ x, y, least: x * from.x + y * from.y }];
  });
}

/** A convex piece and all places at which a rectangle reaches into it by more than the allowance. */
function grownBy(piece: Piece, rectangle: TurnedRectangle, allowance: number): readonly HalfPlane[] {
  const { halfWidth: w, halfHeight: h, angle } = rectangle;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const corners = [
    [w, h],
    [-w, h],
    [-w, -h],
    [w, -h],
  ].map(([a = 0, b = 0]) => ({ x: a * c - b * s, y: a * s + b * c }));
  const sum = hullOf(piece.flatMap(({ x, y }) => corners.map((by) => ({ x: x + by.x, y: y + by.y }))));
  return sidesOf(sum).map(({ x, y, least }) => ({ x, y, least: least + allowance }));
}

/** A square round about an outline, larger than it. */
function roundAbout(corners: readonly Point2[]): readonly Point2[] {
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  const [left, right] = [Math.min(...xs) - 1, Math.max(...xs) + 1];
  const [bottom, top] = [Math.min(...ys) - 1, Math.max(...ys) + 1];
  return [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ];
}

/** What of a convex piece lies in a half plane: the piece itself where all of it does. */
function keptBy(piece: Piece, x: number, y: number, least: number): Piece {
  const over = ({ x: px, y: py }: Point2): number => x * px + y * py - least;
  if (piece.every((point) => over(point) >= 0)) return piece;
  const kept: Point2[] = [];
  let from = piece.at(-1) as Point2;
  let a = over(from);
  for (const to of piece) {
    const b = over(to);
    if (a < 0 !== b < 0)
      kept.push({ x: from.x + ((to.x - from.x) * a) / (a - b), y: from.y + ((to.y - from.y) * a) / (a - b) });
    if (b >= 0) kept.push(to);
    [from, a] = [to, b];
  }
  return kept;
}

/** What of a convex piece lies outside another, in convex pieces. */
function outside(piece: Piece, other: readonly HalfPlane[]): readonly Piece[] {
  let rest = piece;
  const pieces: Piece[] = [];
  for (const side of other) {
    const out = keptBy(rest, -side.x, -side.y, -side.least);
    if (out.length > 0) pieces.push(out);
    rest = keptBy(rest, side.x, side.y, side.least);
    if (rest.length === 0) break;
  }
  return pieces;
}
