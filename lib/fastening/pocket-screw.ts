import { type Formula, formula } from "../formula.js";
import { Angle, Density, Force, Length, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

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
 */
export const inclinedScrewPull: Formula<PocketScrewInputs, Force> = formula({
  id: "screw.withdrawal.inclined",
  title: "Withdrawal of screws at an angle, pocket screws",
  equation: String.raw`F = \frac{n^{0.9}\,0.52\,d^{-0.5}\,l^{-0.1}\rho^{0.8}\;d\,l\,\min(d/8,\,1)}{1.2\cos^2\alpha + \sin^2\alpha}`,
  inputs: {
    density: {
      symbol: String.raw`\rho`,
      kind: Density,
      meaning: "density, low one of the batch",
      above: 0,
      unit: "kg/m3",
    },
    diameter: {
      symbol: "d",
      kind: Length,
      meaning: "diameter over the thread",
      above: 0,
      max: 0.012,
      unit: "mm",
    },
    penetration: { symbol: "l", kind: Length, meaning: "thread in the wood", above: 0, unit: "mm" },
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
  warn: ({ angle, diameter }) => [
    ...(angle < Math.PI / 6 ? ["below 30 degrees the code gives no value: pull a few of your own"] : []),
    ...(diameter < 0.006 ? ["below 6 mm the code leaves the value to tests"] : []),
  ],
  compute: ({ density, diameter, penetration, angle, count }) => {
    const [d, l] = [diameter * 1000, penetration * 1000];
    const strength = 0.52 * d ** -0.5 * l ** -0.1 * density ** 0.8;
    const slope = 1.2 * Math.cos(angle) ** 2 + Math.sin(angle) ** 2;
    return (count ** 0.9 * strength * d * l * Math.min(d / 8, 1)) / slope;
  },
});
