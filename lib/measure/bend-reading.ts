/** The rows of bend-tests.csv: what they say of a strip, and why they cannot be used. */

import { at } from "../algebra/lists.js";
import type { Problem } from "../problem.js";
import { Force, Length, type Ratio, ratio } from "../quantity/index.js";
import { leastSpan } from "./bend-modulus.js";
import { type LineFit, type LinePoints, lineFit, outliers, residuals } from "./line-fit.js";
import { problemAt, type Reading } from "./readings.js";

/** One load on one strip; a row of bend-tests.csv. */
export interface BendReading extends Reading {
  /** Rows of one strip share its name. */ readonly strip: string;
  /** Between the rests. */ readonly span: Length;
  /** Width of the strip. */ readonly width: Length;
  /** Thickness of the strip. */ readonly thickness: Length;
  /** Hung in the middle. */ readonly load: Force;
  /** In the middle, from any fixed mark; a start that is not zero does no harm. */
  readonly sag: Length;
  /** How far the rests gave under this load, the mean of both; nothing unless read. */
  readonly rests?: Length | undefined;
  /** Two strips of one piece are that piece bent over a long and a short span. */
  readonly piece?: string | undefined;
}

/** What the strip itself sags: the rests' giving way taken off. */
function ownSag({ sag, rests = Length.si(0) }: BendReading): Length {
  return Length.si(sag - rests);
}

/** The readings of a strip as points: sag is read, load is set. */
export function sagOverLoad(readings: readonly BendReading[]): LinePoints {
  return {
    x: readings.map(({ load }) => ratio(load)),
    y: readings.map((reading) => ratio(ownSag(reading))),
  };
}

/** Divisions that gauges and rules have, coarsest first, m. */
const divisions = [1e-3, 5e-4, 1e-4, 5e-5, 1e-5] as const;

/** The coarsest division of which every sag is a multiple: what the gauge was read to. */
function gaugeDivision(readings: readonly BendReading[]): Length {
  const whole = (value: number, by: number): boolean => Math.abs(value / by - Math.round(value / by)) < 1e-6;
  return Length.si(divisions.find((by) => readings.every(({ sag }) => whole(sag, by))) ?? 0);
}

/** Unloading of a sound strip lags no further behind loading, as a share of its whole sag (common practice, no source). */
export const soundHysteresis: Ratio = ratio(0.05);

/**
 * How much more a strip sags on the way back than on the way up, as a share of its whole sag: readings in the
 * order they were taken, loads put on and taken off again. A sound strip stays below 5 %: more means slipping
 * rests, a creeping strip or a sticking gauge.
 *
 * @returns undefined when no load was read both ways
 */
export function hysteresis(readings: readonly BendReading[]): Ratio | undefined {
  const peak = readings.reduce((top, { load }, i) => (load > (readings[top]?.load ?? 0) ? i : top), 0);
  const sags = readings.map(ownSag);
  const gaps = readings.flatMap(({ load }, i) => {
    const back = readings.findIndex((other, j) => i < peak && j > peak && other.load === load);
    return back < 0 ? [] : [Math.abs((sags[back] ?? 0) - (sags[i] ?? 0))];
  });
  const whole = Math.max(...sags) - Math.min(...sags);
  return gaps.length === 0 || whole === 0 ? undefined : ratio(Math.max(...gaps) / whole);
}

const sizes = ["span", "width", "thickness"] as const;

/** The first reason to refuse a strip, at its row; undefined when it can be measured. */
export function refusal(readings: readonly BendReading[], file: string): Problem | undefined {
  return (
    unlikeSizes(readings, file) ??
    fewLoads(readings, file) ??
    shortSpan(readings, file) ??
    notGrowing(readings, file)
  );
}

function unlikeSizes(readings: readonly BendReading[], file: string): Problem | undefined {
  const first = at(readings, 0);
  const other = readings.find((one) => sizes.some((size) => one[size] !== first[size]));
  if (!other) return undefined;
  const expected = `the size of strip ${first.strip} as in its first row, ${showSize(first)}`;
  return problemAt(other, file, sizes.join(", "), showSize(other), expected);
}

function showSize(reading: BendReading): string {
  return sizes.map((size) => Length.show(reading[size])).join(" x ");
}

function fewLoads(readings: readonly BendReading[], file: string): Problem | undefined {
  const first = at(readings, 0);
  const loads = new Set(readings.map(({ load }) => load)).size;
  if (loads >= 3) return undefined;
  const expected = `at least 3 different loads on a strip, got ${loads}: hang more weights on it`;
  return problemAt(first, file, "strip", first.strip, expected);
}

function shortSpan(readings: readonly BendReading[], file: string): Problem | undefined {
  const first = at(readings, 0);
  const least = leastSpan(first.thickness);
  if (first.span >= least) return undefined;
  const expected = `a span of at least 10 thicknesses (${Length.show(least)}), better 20: move the rests apart`;
  return problemAt(first, file, "span", Length.show(first.span), expected);
}

/**
 * Sag must grow with the load over the whole strip; names the row that sags no more than the one before.
 *
 * @throws Error when a falling line has no falling sag, which is a mistake in the program
 */
function notGrowing(readings: readonly BendReading[], file: string): Problem | undefined {
  const points = sagOverLoad(readings);
  const flat = points.y.every((sag) => sag === points.y[0]);
  if (!flat && lineFit(points).slope > 0) return undefined;
  const byLoad = [...readings].sort((a, b) => a.load - b.load);
  const culprit = byLoad.find((one, i) => i > 0 && ownSag(one) <= ownSag(byLoad[i - 1] ?? one));
  if (!culprit) throw new Error(`bend test: a falling line without a falling sag in ${file}`);
  const expected = `sag that grows with the load (here ${Force.show(culprit.load)}): read this row again, or bend the strip anew`;
  return problemAt(culprit, file, "sag", Length.show(culprit.sag), expected);
}

/** Lines whose sag lies off by more than scatter, and by more than two divisions of the gauge. */
export function oddLines(readings: readonly BendReading[], fit: LineFit): readonly number[] {
  const points = sagOverLoad(readings);
  const off = residuals(points, fit);
  const readable = 2 * gaugeDivision(readings);
  return outliers(points, fit)
    .filter((i) => Math.abs(off[i] ?? 0) > readable)
    .flatMap((i) => readings[i]?.line ?? []);
}

/** Refuses a strip whose readings disagree, at the one that is furthest off when it stands out. */
export function scattered(readings: readonly BendReading[], fit: LineFit, file: string): Problem {
  const first = at(readings, 0);
  const { strip } = first;
  const points = sagOverLoad(readings);
  const off = residuals(points, fit).map(Math.abs);
  const furthest = off.indexOf(Math.max(...off));
  const others = readings.filter((_, i) => i !== furthest);
  const odd = at(readings, furthest);
  if (others.length >= 3 && new Set(others.map(({ load }) => load)).size >= 2) {
    const alone = lineFit(sagOverLoad(others));
    const wanted = Length.si(alone.intercept + alone.slope * odd.load);
    if (alone.residualDeviation < 0.2 * fit.residualDeviation) {
      const expected = `about ${Length.show(wanted, { digits: 2 })} as the other loads of strip ${strip} have it: read it again, and look at its unit`;
      return problemAt(odd, file, "sag", Length.show(odd.sag, { digits: 3 }), expected);
    }
  }
  const expected =
    "readings that agree better, the scatter is as large as the modulus: more loads, heavier loads, a finer sag gauge";
  return problemAt(first, file, "strip", strip, expected);
}
