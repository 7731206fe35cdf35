/** The revised NIOSH lifting equation: how much one person may lift with two hands, again and again. */
import { type Formula, formula } from "../formula.js";
import { Angle, choice, degree, type Kind, Length, Mass, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { frequencyMultiplier, knuckleHeight, type LiftDuration } from "./lift-frequency.js";
import type { LiftRate } from "./lift-rate.js";

/** How well the hands hold on: handles or cut-outs as they should be, not quite, or none. */
export type Grip = "good" | "fair" | "poor";
export const Grip: Kind<Grip> = choice("grip", ["good", "fair", "poor"]);

/** One end of a lift, and the lift it belongs to. */
export interface LiftAt {
  /** From the middle between the ankles to the middle between the hands, along the floor. */
  readonly reach: Length;
  /** Of the hands above the floor, at this end of the lift. */
  readonly height: Length;
  /** Of the hands above the floor, where the lift begins. */
  readonly startHeight: Length;
  /** Up or down, between the two ends. */
  readonly travel: Length;
  /** How far to the side of straight ahead the load is. */
  readonly twist: Angle;
  /** Averaged over a quarter of an hour. */
  readonly rate: LiftRate;
  /** Of the lifting in a day. */
  readonly duration: LiftDuration;
  /** At this end of the lift. */
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
