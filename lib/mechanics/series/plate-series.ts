/**
 * Bending of a thin rectangular plate by a Ritz series: the deflection is a sum of products of strip
 * shapes, with the factors that make strain energy less the work of the load smallest. Energy and load
 * are counted over the material only, so that openings need no mesh.
 * Theory: Timoshenko and Woinowsky-Krieger, arts. 80 to 82 (energy), 85 (orthotropic plate).
 */
import { solvePositive } from "../../algebra/linear-systems.js";
import { at as entry } from "../../algebra/lists.js";
import type { OrthotropicStiffness } from "../../material/index.js";
import { Refusal } from "../../refusal.js";
import { type Box2, boundsOf, type Shape } from "../../shape/index.js";
import { type PlateSides, roundedBoxes } from "./opening-layout.js";
import {
  type Band,
  type BandProducts,
  openingBands,
  type PlateStrips,
  rectangleBand,
  type SeriesTerm,
  stiffnessMatrix,
  stripProducts,
} from "./stiffness-matrix.js";
import { type EdgeSupport, type SeriesOrder, stripFunctions } from "./strip-functions.js";

/** The plate with its supports, SI, plain numbers. */
export interface SeriesPlate extends PlateSides {
  /** Bending stiffness, with x along `length`. */
  readonly stiffness: OrthotropicStiffness;
  /** Edge at x = 0. */
  readonly left: EdgeSupport;
  /** Edge at x = length. */
  readonly right: EdgeSupport;
  /** Edge at y = 0. */
  readonly bottom: EdgeSupport;
  /** Edge at y = width. */
  readonly top: EdgeSupport;
  /** Whether the four corners rest on posts; matters where edges are free. */
  readonly cornersHeld: boolean;
  /** What is cut out of it. */
  readonly openings: readonly Shape[];
}

/** A pressure over the whole material, or over a rectangle only. */
export interface SeriesLoad {
  /** Pa, positive the way deflection is positive. */
  readonly pressure: number;
  /** The rectangle that is loaded; all of the material when left out. */
  readonly over?: Box2;
}

/** The deflected plate. */
export interface PlateSeries extends PlateStrips {
  /** The plate that was solved. */
  readonly plate: SeriesPlate;
  /** The terms of the sum with their factors. */
  readonly terms: readonly SeriesTerm[];
}

/**
 * What is left of the plate's stiffness inside an opening, so that shapes that bend there alone still
 * have a definite size. A thousandfold less changes the deflections compared by less than 0.02 %.
 */
const openingRemainder = 1e-5;

/**
 * Solves the plate.
 *
 * @param plate geometry, stiffness and supports
 * @param load pressure
 * @param order how many shapes along each side, about
 * @throws Refusal when the supports leave the plate free to move, or an opening is no rectangle
 */
export function solvePlate(plate: SeriesPlate, load: SeriesLoad, order: SeriesOrder): PlateSeries {
  const strips = plateStrips(plate, load, order);
  const terms = seriesTerms(plate, strips);
  const matrix = stiffnessMatrix(plate.stiffness, terms, integrate(strips, materialBands(plate, strips)));
  const right = loadTerms(terms, integrate(strips, loadBands(plate, load, strips)));
  const factors = solvePositive(matrix, right);
  if (!factors) throw new Refusal("plate series: the plate can move without bending, hold it better");
  return { plate, ...strips, terms: terms.map((term, n) => ({ ...term, factor: entry(factors, n) })) };
}

function plateStrips(plate: SeriesPlate, { over }: SeriesLoad, order: SeriesOrder): PlateStrips {
  const { length, width, left, right, bottom, top, openings } = plate;
  const knots = plateKnots(plate, openings.map(boundsOf), over);
  return {
    along: stripFunctions({ length, start: left, end: right, knots: knots.x }, order),
    across: stripFunctions({ length: width, start: bottom, end: top, knots: knots.y }, order),
  };
}

/** Every product of a shape along and one across; those that lift a held corner are left out. */
function seriesTerms(plate: SeriesPlate, { along, across }: PlateStrips): SeriesTerm[] {
  const lifts = (i: number, j: number): boolean => along.lifting.includes(i) && across.lifting.includes(j);
  return Array.from({ length: along.count * across.count }, (_, n) => ({
    i: Math.floor(n / across.count),
    j: n % across.count,
    factor: 0,
  })).filter(({ i, j }) => !(plate.cornersHeld && lifts(i, j)));
}

function wholePlate({ length, width }: SeriesPlate): Box2 {
  return { left: 0, bottom: 0, width: length, height: width };
}

function materialBands(plate: SeriesPlate, strips: PlateStrips): Band[] {
  return [
    rectangleBand(strips, wholePlate(plate), 1),
    ...roundedBoxes(plate.openings).flatMap((opening) => openingBands(strips, opening, openingRemainder - 1)),
  ];
}

function loadBands(plate: SeriesPlate, { pressure, over }: SeriesLoad, strips: PlateStrips): Band[] {
  if (over) return [rectangleBand(strips, over, pressure)];
  return [
    rectangleBand(strips, wholePlate(plate), pressure),
    ...roundedBoxes(plate.openings).flatMap((opening) => openingBands(strips, opening, -pressure)),
  ];
}

function integrate({ along, across }: PlateStrips, bands: readonly Band[]): BandProducts[] {
  return bands.map(({ x, y, factor }) => ({
    x: stripProducts(along, x),
    y: stripProducts(across, y),
    factor,
  }));
}

function loadTerms(terms: readonly SeriesTerm[], bands: readonly BandProducts[]): Float64Array {
  const right = new Float64Array(terms.length);
  for (const { x, y, factor } of bands) {
    terms.forEach(({ i, j }, n) => {
      right[n] = entry(right, n) + factor * entry(x.single, i) * entry(y.single, j);
    });
  }
  return right;
}

/** Knots along both sides, rising, m. */
export interface PlateKnots {
  /** Along x. */
  readonly x: readonly number[];
  /** Along y. */
  readonly y: readonly number[];
}

/** More would make the equations slow to solve. */
const mostKnots = 8;
/** Nearest distance of two knots as a share of the side. */
const nearest = 0.004;

/**
 * Chooses the knots, those of the larger openings first. A load's own are for plates without openings:
 * they settle the moment under it, but take shapes away from where openings need them.
 *
 * @param sides of the plate
 * @param openings rectangles around them
 * @param load what the load covers, when it does not cover all
 */
export function plateKnots(sides: PlateSides, openings: readonly Box2[], load?: Box2): PlateKnots {
  const bySize = openings.toSorted((one, other) => other.width * other.height - one.width * one.height);
  const ordered = load && openings.length === 0 ? [load] : bySize;
  return {
    x: knotsAlong(
      sides.length,
      ordered.flatMap(({ left, width }) => [left, left + width]),
    ),
    y: knotsAlong(
      sides.width,
      ordered.flatMap(({ bottom, height }) => [bottom, bottom + height]),
    ),
  };
}

/** Openings smaller than this share of the plate's shorter side matter little. */
const smallOpening = 0.1;

/**
 * How many openings of some size found no room for their knots, so that the series bends smoothly across
 * them and comes out too stiff.
 *
 * @param sides of the plate
 * @param openings rectangles around them
 */
export function openingsNotFollowed(sides: PlateSides, openings: readonly Box2[]): number {
  const { x, y } = plateKnots(sides, openings);
  const at = (place: number, side: number, knots: readonly number[]): boolean =>
    [0, side, ...knots].some((knot) => Math.abs(place - knot) <= nearest * side);
  return openings.filter(({ left, bottom, width, height }) => {
    const sizeable = Math.max(width, height) > smallOpening * Math.min(sides.length, sides.width);
    const followed =
      [left, left + width].every((place) => at(place, sides.length, x)) &&
      [bottom, bottom + height].every((place) => at(place, sides.width, y));
    return sizeable && !followed;
  }).length;
}

function knotsAlong(side: number, places: readonly number[]): number[] {
  const chosen: number[] = [];
  for (const place of places) {
    const room = [0, side, ...chosen].every((other) => Math.abs(place - other) > nearest * side);
    if (room && chosen.length < mostKnots) chosen.push(place);
  }
  return chosen.toSorted((one, other) => one - other);
}
