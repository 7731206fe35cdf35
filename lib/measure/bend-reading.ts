import { type Force, Length, type Ratio, ratio } from "../quantity/index.js";
import type { LinePoints } from "./line-fit.js";

/** One load on one strip; a row of bend-tests.csv. */
export interface BendReading {
  /** Rows of one strip share its name. */
  readonly strip: string;
  readonly span: Length;
  readonly width: Length;
  readonly thickness: Length;
  readonly load: Force;
  /** In the middle, from any fixed mark; a start that is not zero does no harm. */
  readonly sag: Length;
  /** How far the rests gave under this load, the mean of both; nothing unless read. */
  readonly rests?: Length | undefined;
  /** Two strips of one piece are that piece bent over a long and a short span. */
  readonly piece?: string | undefined;
  /** Line of the file. */
  readonly line?: number;
}

/** What the strip itself sags: the rests' giving way taken off. */
export function ownSag({ sag, rests = Length.si(0) }: BendReading): Length {
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
export function gaugeDivision(readings: readonly BendReading[]): Length {
  const whole = (value: number, by: number): boolean => Math.abs(value / by - Math.round(value / by)) < 1e-6;
  return Length.si(divisions.find((by) => readings.every(({ sag }) => whole(sag, by))) ?? 0);
}

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
