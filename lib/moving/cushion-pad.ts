/** Foam under a fragile thing: how thick and how large. */
import { type Formula, formula } from "../formula.js";
import { Area, Length, Mass, Pressure, Ratio, standardGravity } from "../quantity/index.js";
import { cite } from "../source.js";

/** A thing, its fall and what it stands. */
export interface CushionNeed {
  /** Of the fall. */
  readonly drop: Length;
  /** Deceleration it stands, in gravities. */
  readonly fragility: Ratio;
  /** Of the foam at its best stress: 2.5 to 4, from its maker. */
  readonly cushionFactor: Ratio;
}

/**
 * Thickness of foam by its cushion factor: C h / G.
 *
 * @source R. E. Jones, W. L. James, FPL report 2031
 * @throws Refusal unless drop and fragility are positive and the factor at least 1
 * @example cushionThickness({ drop: mm(610), fragility: ratio(50), cushionFactor: ratio(3) }) // 36.6 mm
 */
export const cushionThickness: Formula<CushionNeed, Length> = formula({
  id: "cushion.thickness",
  title: "Thickness of foam by cushion factor",
  equation: String.raw`T=\frac{C\,h}{G}`,
  inputs: {
    drop: { symbol: "h", kind: Length, meaning: "drop height", above: 0 },
    fragility: { symbol: "G", kind: Ratio, meaning: "deceleration it stands, in gravities", above: 1 },
    cushionFactor: { symbol: "C", kind: Ratio, meaning: "cushion factor of the foam", min: 1 },
  },
  result: { symbol: "T", kind: Length, meaning: "thickness of foam" },
  source: [cite("cushion-design", "cushion factor method")],
  validity:
    "Foam loaded at the stress where its factor is least; the fall through the foam itself is left out.",
  compute: ({ drop, fragility, cushionFactor }) => (cushionFactor * drop) / fragility,
});

/** The best point of a cushion curve. */
export interface BestOfCurve {
  /** Least deceleration of the curve, in gravities. */
  readonly deceleration: Ratio;
  /** Of the foam that the curve was measured with. */
  readonly thickness: Length;
  /** The same. */
  readonly drop: Length;
}

/**
 * Cushion factor of a foam from the lowest point of its curve: G T / h. The smaller, the better the foam.
 *
 * @source R. E. Jones, W. L. James, FPL report 2031
 * @throws Refusal unless all three are positive
 * @example cushionFactor({ deceleration: ratio(50), thickness: mm(36.6), drop: mm(610) }) // 3
 */
export const cushionFactor: Formula<BestOfCurve, Ratio> = formula({
  id: "cushion.factor",
  title: "Cushion factor of a foam",
  equation: String.raw`C=\frac{G\,T}{h}`,
  inputs: {
    deceleration: { symbol: "G", kind: Ratio, meaning: "least deceleration of the curve", above: 0 },
    thickness: { symbol: "T", kind: Length, meaning: "thickness of the foam", above: 0 },
    drop: { symbol: "h", kind: Length, meaning: "drop of the curve", above: 0 },
  },
  result: { symbol: "C", kind: Ratio, meaning: "cushion factor" },
  source: [cite("cushion-design", "cushion factor method")],
  validity: "One foam; about the same for other thicknesses and drops at their own best pressure.",
  compute: ({ deceleration, thickness, drop }) => (deceleration * thickness) / drop,
});

/** A thing on a piece of foam. */
export interface CushionLoad {
  /** Of the thing. */
  readonly mass: Mass;
  /** Of foam under it. */
  readonly area: Area;
}

/**
 * Pressure at rest on foam: m g / A.
 *
 * @source static stress of cushion curves, FPL report 2031
 * @throws Refusal unless mass and area are positive
 * @example staticStress(staticStress.read({ mass: "10 kg", area: "100 cm2" })) // 9.807 kPa
 */
export const staticStress: Formula<CushionLoad, Pressure> = formula({
  id: "cushion.stress",
  title: "Pressure at rest on foam",
  equation: String.raw`\sigma_s=\frac{m g}{A}`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "thing on it", above: 0 },
    area: { symbol: "A", kind: Area, meaning: "foam under it", above: 0 },
  },
  result: { symbol: String.raw`\sigma_s`, kind: Pressure, meaning: "pressure at rest" },
  source: [cite("cushion-design", "static stress")],
  validity: "The whole weight on the foam.",
  compute: ({ mass, area }) => (mass * standardGravity) / area,
});
