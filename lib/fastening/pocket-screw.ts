import { type Formula, formula } from "../formula.js";
import { Angle, type Density, Force, type Length, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { codeScrew, squareWithdrawal, thinnerThanCode } from "./square-withdrawal.js";

/** A screw at an angle to the grain, such as one in a pocket hole. */
export interface PocketScrewInputs {
  readonly density: Density;
  readonly diameter: Length;
  /** Thread in the wood that holds. */
  readonly penetration: Length;
  /** Between screw and grain: 90 degrees is straight in; a pocket into an end leaves about 15. */
  readonly angle: Angle;
  /** Screws of the joint that pull together. */
  readonly count: Ratio;
}

/**
 * Characteristic pull of screws at an angle to the grain: F = n^0.9 f_ax d l k_d / (1.2 cos^2 a + sin^2 a) with
 * f_ax = 0.52 d^-0.5 l^-0.1 rho^0.8 and k_d = min(d/8, 1).
 *
 * @example inclinedScrewPull(inclinedScrewPull.read({ density: "350 kg/m3", diameter: "4 mm", penetration: "30 mm", angle: "90 deg", count: 1 })) // 1.204 kN
 */
export const inclinedScrewPull: Formula<PocketScrewInputs, Force> = formula({
  id: "screw.withdrawal.inclined",
  title: "Withdrawal of screws at an angle, pocket screws",
  equation: String.raw`F = \frac{n^{0.9}\,0.52\,d^{-0.5}\,l^{-0.1}\rho^{0.8}\;d\,l\,\min(d/8,\,1)}{1.2\cos^2\alpha + \sin^2\alpha}`,
  inputs: {
    ...codeScrew,
    angle: {
      symbol: String.raw`\alpha`,
      kind: Angle,
      meaning: "screw to the grain",
      min: Math.PI / 12,
      max: Math.PI / 2,
    },
    count: { symbol: "n", kind: Ratio, meaning: "screws", min: 1 },
  },
  result: { symbol: "F", kind: Force, meaning: "pull that 95 % of such joints hold", unit: "N" },
  source: [cite("en-1995", "8.7.2, eq. 8.38 to 8.40")],
  validity: "Before load-duration and safety factors; solid softwood, 6 to 12 mm in the code.",
  warn: (inputs) => [
    ...(inputs.angle < Math.PI / 6
      ? ["below 30 degrees the code gives no value: pull a few of your own"]
      : []),
    ...thinnerThanCode(inputs),
  ],
  compute: (inputs) => {
    const slope = 1.2 * Math.cos(inputs.angle) ** 2 + Math.sin(inputs.angle) ** 2;
    return (inputs.count ** 0.9 * squareWithdrawal(inputs)) / slope;
  },
});
