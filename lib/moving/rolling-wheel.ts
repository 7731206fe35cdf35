import { type Formula, formula } from "../formula.js";
import { choice, type Kind, Length, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** What a wheel runs on: nylon or polyurethane, hard rubber, soft rubber. */
export type Tread = "plastic" | "hard rubber" | "soft rubber";
export const Tread: Kind<Tread> = choice("tread", ["plastic", "hard rubber", "soft rubber"]);

/** Lever arms of rolling friction on concrete, the upper end of each range: 5 mm, 10 to 20 mm, 15 to 35 mm. */
const levers: Readonly<Record<Tread, number>> = {
  plastic: 0.005,
  "hard rubber": 0.02,
  "soft rubber": 0.035,
};

/** A wheel on a hard floor. */
export interface WheelOnFloor {
  /** What it runs on. */
  readonly tread: Tread;
  /** Of the wheel. */
  readonly diameter: Length;
}

/**
 * Push that a wheel needs to roll, as a share of its load: 2 f / D, f the lever arm of rolling friction.
 *
 * @source rolling friction; lever arms as drive makers print them
 * @throws Refusal unless the diameter is positive
 * @example wheelResistance({ tread: "plastic", diameter: mm(100) }) // 0.1
 */
export const wheelResistance: Formula<WheelOnFloor, Ratio> = formula({
  id: "roll.wheel",
  title: "Rolling push of a wheel, as a share of its load",
  equation: String.raw`\mu_r=\frac{2f}{D}`,
  inputs: {
    tread: { symbol: "f", kind: Tread, meaning: "tread" },
    diameter: { symbol: "D", kind: Length, meaning: "diameter of the wheel", above: 0 },
  },
  result: { symbol: String.raw`\mu_r`, kind: Ratio, meaning: "push over load" },
  source: [cite("rolling-friction", "lever arms of rolling friction on concrete, the upper end")],
  validity:
    "Steady rolling on even concrete, bearings in good order. A tread that stood loaded for days starts harder.",
  compute: ({ tread, diameter }) => (2 * levers[tread]) / diameter,
});
