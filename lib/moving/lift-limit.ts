/** The limit of a lift by one person, with how often and how long it is done. */

import { type Formula, formula } from "../formula.js";
import {
  Angle,
  choice,
  degree,
  type Kind,
  Length,
  Mass,
  type Quantity,
  type QuantityKind,
  quantityKind,
  Ratio,
} from "../quantity/index.js";
import { cite } from "../source.js";

/** Lifts a second; read and shown as lifts a minute. */
export type LiftRate = Quantity<"lift rate">;
export const LiftRate: QuantityKind<"lift rate"> = quantityKind({
  name: "lift rate",
  units: { "lifts/min": 1 / 60, "lifts/h": 1 / 3600 },
  metric: ["lifts/min"],
  inch: ["lifts/min"],
  example: "0.2 lifts/min or 3 lifts/h",
});

/** How long the lifting goes on in a day, with rest as the manual asks. */
export type LiftDuration = "up to 1 h" | "1 to 2 h" | "2 to 8 h";
export const LiftDuration: Kind<LiftDuration> = choice("lifting duration", [
  "up to 1 h",
  "1 to 2 h",
  "2 to 8 h",
]);

/** Of someone standing; from lower down one stoops. NIOSH 94-110, tables 2, 5 and 7: 75 cm or 30 in. */
const knuckleHeight: Length = Length.of(75, "cm");

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
  /** The duration of the lifting in a day. */
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

/** How well the hands hold on: handles or cut-outs as they should be, not quite, or none. */
export type Grip = "good" | "fair" | "poor";
export const Grip: Kind<Grip> = choice("grip", ["good", "fair", "poor"]);

/** One end of a lift, and the lift it belongs to. */
export interface LiftAt {
  /** The distance from the middle between the ankles to the middle between the hands, along the floor. */
  readonly reach: Length;
  /** The height of the hands above the floor, at this end of the lift. */
  readonly height: Length;
  /** The height of the hands above the floor where the lift begins. */
  readonly startHeight: Length;
  /** Up or down, between the two ends. */
  readonly travel: Length;
  /** How far to the side of straight ahead the load is. */
  readonly twist: Angle;
  /** Averaged over a quarter of an hour. */
  readonly rate: LiftRate;
  /** The duration of the lifting in a day. */
  readonly duration: LiftDuration;
  /** The grip at this end of the lift. */
  readonly grip: Grip;
}

/** The limit with the six factors that make it. */
export type LiftLimit = {
  /** RWL. */
  readonly limit: Mass;
  /** HM, for the reach. */
  readonly horizontal: Ratio;
  /** VM, for the height of the hands. */
  readonly vertical: Ratio;
  /** DM, for the travel. */
  readonly distance: Ratio;
  /** AM, for the twist. */
  readonly asymmetry: Ratio;
  /** FM, for how often and how long. */
  readonly frequency: Ratio;
  /** CM, for the grip. */
  readonly coupling: Ratio;
};

/** LC: 23 kg or 51 lb, the load under ideal conditions. NIOSH 94-110, p. 7. */
export const loadConstant: Mass = Mass.si(23);

/** Table 7, NIOSH 94-110 (2021), p. 18: hands below 75 cm, and at 75 cm or above. */
const couplingTable: Readonly<Record<Grip, readonly [stooped: number, upright: number]>> = {
  good: [1, 1],
  fair: [0.95, 1],
  poor: [0.9, 0.9],
};

/** H and D below this count as this. NIOSH 94-110, pp. 8 and 10. */
const leastReach = 0.25;

/**
 * The recommended weight limit RWL = LC HM VM DM AM FM CM at one end of a lift, with HM = 25 cm / H,
 * VM = 1 - 0.003 |V - 75| (cm), DM = 0.82 + 4.5 cm / D, AM = 1 - 0.0032 A (degrees), FM and CM from tables.
 * H and D below 25 cm count as 25 cm, as the manual says.
 *
 * Computed in the metric form; the inch form of the manual differs by up to 2 % a factor.
 *
 * @source NIOSH 94-110 (2021), 1.3
 * @throws Refusal beyond arm's reach (63 cm), above 175 cm, or turned by more than 135 degrees, where
 * the equation allows nothing
 * @example liftLimit({ reach: mm(400), height: mm(600), startHeight: mm(600), travel: mm(600), twist: degree(30), rate: LiftRate.of(0.2, "lifts/min"), duration: "up to 1 h", grip: "fair" }) // limit 10.55 kg, horizontal 0.625, vertical 0.955, distance 0.895, asymmetry 0.904, frequency 1, coupling 0.95
 */
export const liftLimit: Formula<LiftAt, LiftLimit> = formula<LiftAt, LiftLimit>({
  id: "lift.limit",
  title: "Recommended weight limit of a lift",
  equation: String.raw`\mathrm{RWL} = 23\,\mathrm{kg}\;\mathrm{HM}\;\mathrm{VM}\;\mathrm{DM}\;\mathrm{AM}\;\mathrm{FM}\;\mathrm{CM},\quad
    \mathrm{HM} = \frac{25}{\max(H,\,25)},\quad \mathrm{VM} = 1 - 0.003\cdot|V - 75|,\quad
    \mathrm{DM} = 0.82 + \frac{4.5}{\max(D,\,25)},\quad \mathrm{AM} = 1 - 0.0032\,A`,
  inputs: {
    reach: {
      symbol: "H",
      kind: Length,
      meaning: "ankles to hands, along the floor",
      min: 0,
      max: Length.of(63, "cm"),
      unit: "cm",
    },
    height: {
      symbol: "V",
      kind: Length,
      meaning: "height of the hands",
      min: 0,
      max: Length.of(175, "cm"),
      unit: "cm",
    },
    startHeight: {
      symbol: "V_0",
      kind: Length,
      meaning: "height of the hands where the lift begins",
      min: 0,
      max: Length.of(175, "cm"),
    },
    travel: {
      symbol: "D",
      kind: Length,
      meaning: "lifted or lowered by",
      min: 0,
      max: Length.of(175, "cm"),
      unit: "cm",
    },
    twist: {
      symbol: "A",
      kind: Angle,
      meaning: "load to the side of straight ahead",
      min: 0,
      max: degree(135),
      unit: "°",
    },
    rate: frequencyMultiplier.declaration.inputs.rate,
    duration: frequencyMultiplier.declaration.inputs.duration,
    grip: { symbol: "C", kind: Grip, meaning: "how well the hands hold on" },
  },
  result: {
    limit: { symbol: String.raw`\mathrm{RWL}`, kind: Mass, meaning: "recommended weight limit" },
    horizontal: { symbol: String.raw`\mathrm{HM}`, kind: Ratio, meaning: "horizontal multiplier" },
    vertical: { symbol: String.raw`\mathrm{VM}`, kind: Ratio, meaning: "vertical multiplier" },
    distance: { symbol: String.raw`\mathrm{DM}`, kind: Ratio, meaning: "distance multiplier" },
    asymmetry: { symbol: String.raw`\mathrm{AM}`, kind: Ratio, meaning: "asymmetry multiplier" },
    frequency: { symbol: String.raw`\mathrm{FM}`, kind: Ratio, meaning: "frequency multiplier" },
    coupling: { symbol: String.raw`\mathrm{CM}`, kind: Ratio, meaning: "coupling multiplier" },
  },
  source: [cite("niosh-lifting", "1.3, tables 5 and 7")],
  validity:
    "One healthy adult, both hands, standing on a sound floor with room to move, without haste. Not for carrying, pushing, one hand, or a load that shifts.",
  compute: ({ startHeight, rate, duration, grip, ...at }) => {
    const horizontal = leastReach / Math.max(at.reach, leastReach);
    const vertical = 1 - 0.3 * Math.abs(at.height - knuckleHeight);
    const distance = 0.82 + 0.045 / Math.max(at.travel, leastReach);
    const asymmetry = 1 - 0.0032 * Angle.in(at.twist, "deg");
    const frequency = frequencyMultiplier({ rate, duration, startHeight });
    const coupling = couplingTable[grip][at.height < knuckleHeight ? 0 : 1];
    const product = horizontal * vertical * distance * asymmetry * frequency * coupling;
    return { limit: loadConstant * product, horizontal, vertical, distance, asymmetry, frequency, coupling };
  },
});
