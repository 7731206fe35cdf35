/**
 * Whether a thing as large as a box passes an opening: with each of its sides first, turned as it likes in the plane of
 * the opening, straight through.
 */
import { type Axis, axes, type Vector3 } from "../../algebra/matrix3.js";
import { Refusal } from "../../refusal.js";
import { boundsOf, circleOf, type Point2, type Shape } from "../../shape/index.js";
import { ringOf } from "../overlap/region.js";
import { mayPass, type OpeningPieces, piecesOfOpening, placesFor } from "./room-for.js";

/** Two that fit within this count as fitting, m; arcs of an opening count as chords within twice as much. */
export const passageTolerance = 1e-5;

/** How a thing goes through an opening. */
export interface Attitude {
  /** Which of its three sizes lies along the way: the side across it goes first. */
  readonly along: Axis;
  /** Which of its sizes is turned from the opening's x. */
  readonly across: Axis;
  /** From the opening's x to that size, rad, from 0 up to half a turn. */
  readonly angle: number;
  /** Where its middle goes through, in the plane of the opening, m. */
  readonly at: Point2;
}

/** What a thing and an opening come to. */
export interface Passage {
  /** Whether it passes. */
  readonly passes: boolean;
  /** One attitude for each side that can go first, the least turned. */
  readonly attitudes: readonly Attitude[];
}

/**
 * Whether a box passes an opening, and how.
 *
 * @param size its three sizes, m
 * @param opening what is open, in its own plane, m
 * @throws Refusal when a size is not positive
 * @example
 * const door = rectangle({ left: 0, bottom: 0, width: 0.3048, height: 0.3556 });
 * const { passes } = passage([0.254, 0.4318, 0.4572], door);
 */
export function passage(size: Vector3, opening: Shape): Passage {
  const attitudes = attitudesOf(size, opening, 0);
  return { passes: attitudes.length > 0, attitudes };
}

/**
 * The attitudes in which a box passes an opening that is wider all round than it is drawn.
 *
 * @param wider by which the opening is wider all round, m
 * @throws Refusal when a size is not positive
 */
export function attitudesOf(size: Vector3, opening: Shape, wider: number): readonly Attitude[] {
  return sideAttitudes(size, opening, wider).flatMap((attitude) => attitude() ?? []);
}

/**
 * Whether a box passes an opening that is wider all round than it is drawn.
 *
 * @param wider by which the opening is wider all round, m
 * @throws Refusal when a size is not positive
 */
export function goesThrough(size: Vector3, opening: Shape, wider: number): boolean {
  return sideAttitudes(size, opening, wider).some((attitude) => attitude() !== undefined);
}

/** For each side that may go first, how it does, if it does. */
function sideAttitudes(
  size: Vector3,
  opening: Shape,
  wider: number,
): readonly (() => Attitude | undefined)[] {
  if (!size.every((one) => one > 0))
    throw new Refusal(`passage: every size must be positive, got ${size.join(", ")} m`);
  const round = circleOf(opening);
  if (round) return throughCircle(size, round.centre, round.radius + wider).map((one) => () => one);
  const pieces = piecesOf(opening);
  const { width, height } = boundsOf(opening);
  const more = 2 * (wider + passageTolerance) + rounding;
  return sidesOf(size)
    .filter(({ across, up }) => goesIntoRectangle([size[across], size[up]], [width + more, height + more]))
    .map(({ along, across, up }) => () => {
      const found = leastTurn(pieces, size[across] / 2, size[up] / 2, wider);
      return found && { along, across, ...found };
    });
}

/** So much more is given before the search, so that rounding keeps nothing from it, m. */
const rounding = 1e-9;

const known = new WeakMap<Shape, OpeningPieces>();

/** The pieces of an opening, made once for each. */
function piecesOf(opening: Shape): OpeningPieces {
  const found = known.get(opening) ?? piecesOfOpening(ringOf(opening));
  known.set(opening, found);
  return found;
}

/**
 * Whether a rectangle goes into another, turned as it likes: the long side goes into the long side, or it is turned just
 * so far that its corners touch, and the short side must then be long enough. What does not go into the rectangle round
 * an opening does not go into the opening.
 */
export function goesIntoRectangle(one: readonly [number, number], other: readonly [number, number]): boolean {
  const [long, short] = [Math.max(...one), Math.min(...one)];
  const [width, height] = [Math.max(...other), Math.min(...other)];
  if (short > height) return false;
  if (long <= width) return true;
  const diagonal = long * long + short * short;
  const least =
    (2 * long * short * width + (long * long - short * short) * Math.sqrt(diagonal - width * width)) /
    diagonal;
  return height >= least;
}

/**
 * How much wider all round an opening must be for a box to pass, to half a millimetre upwards; 0 where it passes.
 *
 * @throws Refusal when a size is not positive
 */
export function widened(size: Vector3, opening: Shape): number {
  const fits = (wider: number): boolean => goesThrough(size, opening, wider);
  if (fits(0)) return 0;
  let [low, high] = [0, Math.hypot(...size)];
  while (high - low > 5e-4) {
    const middle = (low + high) / 2;
    if (fits(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** Each size once along the way, with the two others. */
function sidesOf(
  size: Vector3,
): readonly { readonly along: Axis; readonly across: Axis; readonly up: Axis }[] {
  const others = (along: Axis): readonly Axis[] => axes.filter((axis) => axis !== along);
  return axes
    .map((along) => ({ along, across: others(along)[0] ?? 0, up: others(along)[1] ?? 0 }))
    .sort((a, b) => size[b.along] - size[a.along]);
}

/** Through a circle a turn changes nothing. */
function throughCircle(size: Vector3, at: Point2, radius: number): readonly Attitude[] {
  return sidesOf(size)
    .filter(({ across, up }) => Math.hypot(size[across], size[up]) <= 2 * (radius + passageTolerance))
    .map(({ along, across }) => ({ along, across, angle: 0, at }));
}

/** A stretch of angles about its middle. */
interface Turns {
  readonly middle: number;
  readonly half: number;
}

const eighth = Math.PI / 8;
const firstTurns: readonly Turns[] = [0, 4, 2, 6].map((i) => ({ middle: i * eighth, half: eighth }));

/**
 * A turn at which a rectangle goes through; undefined where it does at none. A stretch of turns is left out only where
 * the least that the rectangle reaches at any of them is too much for some side, so that nothing is missed but what is
 * too large by more than the tolerance.
 */
function leastTurn(
  pieces: OpeningPieces,
  halfWidth: number,
  halfHeight: number,
  wider: number,
): Pick<Attitude, "angle" | "at"> | undefined {
  const radius = Math.hypot(halfWidth, halfHeight);
  const allowed = passageTolerance + wider;
  let turns = firstTurns;
  while (turns.length > 0) {
    const next: Turns[] = [];
    for (const { middle, half } of turns) {
      const rectangle = { halfWidth, halfHeight, angle: middle };
      if (!mayPass(pieces, rectangle, half, allowed)) continue;
      const places = placesFor(pieces, rectangle, allowed);
      if (places.length > 0) return { angle: (middle + Math.PI) % Math.PI, at: meanOf(places) };
      if (radius * half <= passageTolerance) continue;
      next.push({ middle: middle - half / 2, half: half / 2 }, { middle: middle + half / 2, half: half / 2 });
    }
    turns = next;
  }
  return undefined;
}

/** A point of a convex piece, away from its rim where it has room. */
function meanOf(points: readonly Point2[]): Point2 {
  const mean = (of: (point: Point2) => number): number =>
    points.reduce((sum, point) => sum + of(point), 0) / points.length;
  return { x: mean(({ x }) => x), y: mean(({ y }) => y) };
}
