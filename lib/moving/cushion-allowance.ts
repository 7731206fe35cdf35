/** How much more foam to buy than works, and how small a pad may be. */
import { type Formula, formula } from "../formula.js";
import { Area, Length, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** Foam that is fallen on, and stays loaded for months. */
export interface WorkingThickness {
  /** Needed while it works. */
  readonly needed: Length;
  /** Share of its thickness lost by then under the load at rest: 5 to 15 %. */
  readonly creep: Ratio;
  /** Share lost to the falls before: 0 for a foam that springs back, up to 10 %. */
  readonly crush: Ratio;
}

/**
 * Thickness to buy, so that enough is left after creep and crushing: T / ((1 - creep)(1 - crush)).
 *
 * @source MIL-HDBK-304, creep allowance; both shares by common practice
 * @throws Refusal unless the thickness is positive and the shares from 0 to below 1
 * @example creepAllowance({ needed: mm(45), creep: ratio(0.1), crush: ratio(0) }) // 50 mm
 */
export const creepAllowance: Formula<WorkingThickness, Length> = formula({
  id: "cushion.creep",
  title: "Thickness of foam to buy",
  equation: String.raw`T_0=\frac{T}{(1-\varepsilon)(1-\kappa)}`,
  inputs: {
    needed: { symbol: "T", kind: Length, meaning: "working thickness", above: 0 },
    creep: { symbol: String.raw`\varepsilon`, kind: Ratio, meaning: "share lost by creep", min: 0, below: 1 },
    crush: { symbol: String.raw`\kappa`, kind: Ratio, meaning: "share lost by crushing", min: 0, below: 1 },
  },
  result: { symbol: "T_0", kind: Length, meaning: "thickness when new" },
  source: [cite("package-handbook", "creep"), cite("common-practice", "shares lost by creep and crushing")],
  validity: "Foam kept below its maker's static limit; hot vans take more. Measure it again every season.",
  compute: ({ needed, creep, crush }) => needed / ((1 - creep) * (1 - crush)),
});

/**
 * Least area of a foam pad that does not fold sideways: (1.33 T)2.
 *
 * @source MIL-HDBK-304, buckling of cushion pads
 * @throws Refusal unless the thickness is positive
 * @example leastPad(leastPad.read({ thickness: "2 in" })) // 45.65 cm2
 */
export const leastPad: Formula<{ readonly thickness: Length }, Area> = formula({
  id: "cushion.pad",
  title: "Least area of a foam pad",
  equation: String.raw`A\ge(1.33\,T)^2`,
  inputs: { thickness: { symbol: "T", kind: Length, meaning: "thickness", above: 0 } },
  result: { symbol: "A", kind: Area, meaning: "area of one pad, at least" },
  source: [cite("package-handbook", "buckling of pads")],
  validity: "A pad that stands free; one held in a pocket may be smaller.",
  compute: ({ thickness }) => (1.33 * thickness) ** 2,
});
