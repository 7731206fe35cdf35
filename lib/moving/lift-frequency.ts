/** How often and for how long: the frequency multiplier of the revised NIOSH lifting equation. */
import { type Formula, formula } from "../formula.js";
import { choice, type Kind, Length, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { LiftRate } from "./lift-rate.js";

/** How long the lifting goes on in a day, with rest as the manual asks. */
export type LiftDuration = "up to 1 h" | "1 to 2 h" | "2 to 8 h";
export const LiftDuration: Kind<LiftDuration> = choice("lifting duration", [
  "up to 1 h",
  "1 to 2 h",
  "2 to 8 h",
]);

/** Of someone standing; from lower down one stoops. NIOSH 94-110, tables 2, 5 and 7: 75 cm or 30 in. */
export const knuckleHeight: Length = Length.of(75, "cm");

/** Lifts a minute, first column of table 5. */
const rates = [0.2, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15];

/**
 * Table 5, NIOSH 94-110 (2021), p. 15: values from the first rate on, and those that follow only where the
 * hands start at 75 cm or higher. Past the end of a column nothing may be lifted.
 */
const table: Readonly<
  Record<LiftDuration, { readonly any: readonly number[]; readonly upright: readonly number[] }>
> = {
  "up to 1 h": {
    any: [1, 0.97, 0.94, 0.91, 0.88, 0.84, 0.8, 0.75, 0.7, 0.6, 0.52, 0.45, 0.41, 0.37],
    upright: [0.34, 0.31, 0.28],
  },
  "1 to 2 h": {
    any: [0.95, 0.92, 0.88, 0.84, 0.79, 0.72, 0.6, 0.5, 0.42, 0.35, 0.3, 0.26],
    upright: [0.23, 0.21],
  },
  "2 to 8 h": {
    any: [0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18],
    upright: [0.15, 0.13],
  },
};

/** How often, how long, and from how high. */
export interface LiftFrequency {
  /** Averaged over a quarter of an hour. */
  readonly rate: LiftRate;
  /** Of the lifting in a day. */
  readonly duration: LiftDuration;
  /** Height of the hands above the floor where the lift begins. */
  readonly startHeight: Length;
}

/**
 * The frequency multiplier FM: linear between the rows of table 5; a rate below 0.2 a minute counts as 0.2;
 * past the last row of a column it is 0, and so it is between that row and the next, to be careful.
 *
 * @source NIOSH 94-110, 1.3.5 and table 5
 * @throws Refusal for more than 15 lifts a minute, or hands below the floor or above 175 cm
 * @example frequencyMultiplier({ rate: LiftRate.of(3, "lifts/min"), duration: "up to 1 h", startHeight: mm(500) }) // 0.88
 */
export const frequencyMultiplier: Formula<LiftFrequency, Ratio> = formula({
  id: "lift.frequency.multiplier",
  title: "Frequency multiplier of a lift",
  equation: String.raw`\mathrm{FM} = \mathrm{FM}(F, t, V)`,
  inputs: {
    rate: {
      symbol: "F",
      kind: LiftRate,
      meaning: "lifts a minute",
      min: 0,
      max: LiftRate.of(15, "lifts/min"),
    },
    duration: { symbol: "t", kind: LiftDuration, meaning: "how long the lifting goes on" },
    startHeight: {
      symbol: "V",
      kind: Length,
      meaning: "height of the hands where the lift begins",
      min: 0,
      max: Length.of(175, "cm"),
    },
  },
  result: { symbol: String.raw`\mathrm{FM}`, kind: Ratio, meaning: "frequency multiplier" },
  source: [cite("niosh-lifting", "table 5")],
  validity: "Up to 8 hours a day with the rests the manual asks for.",
  compute: ({ rate, duration, startHeight }) => {
    const { any, upright } = table[duration];
    const column = startHeight < knuckleHeight ? any : [...any, ...upright];
    return interpolate(column, LiftRate.in(rate, "lifts/min"));
  },
});

function interpolate(column: readonly number[], lifts: number): number {
  const tiny = 1e-9;
  const above = rates.findIndex((rate) => lifts <= rate + tiny);
  const high = column[above];
  const low = column[above - 1];
  if (high === undefined) return 0;
  if (low === undefined) return high;
  const [from, to] = [rates[above - 1] ?? 0, rates[above] ?? 0];
  return low + ((high - low) * (lifts - from)) / (to - from);
}
