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
 * @throws RangeError unless drop and fragility are positive and the factor at least 1
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
 * @throws RangeError unless mass and area are positive
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

/** Foam that stays loaded for months. */
export interface WorkingThickness {
  /** Needed while it works. */
  readonly needed: Length;
  /** Share of its thickness lost by then: 5 to 15 %. */
  readonly creep: Ratio;
}

/**
 * Thickness to buy, so that enough is left after creep: T / (1 - share).
 *
 * @source MIL-HDBK-304, creep allowance
 * @throws RangeError unless the thickness is positive and the share from 0 to below 1
 */
export const creepAllowance: Formula<WorkingThickness, Length> = formula({
  id: "cushion.creep",
  title: "Thickness of foam to buy",
  equation: String.raw`T_0=\frac{T}{1-\varepsilon}`,
  inputs: {
    needed: { symbol: "T", kind: Length, meaning: "working thickness", above: 0 },
    creep: { symbol: String.raw`\varepsilon`, kind: Ratio, meaning: "share lost by creep", min: 0, below: 1 },
  },
  result: { symbol: "T_0", kind: Length, meaning: "thickness when new" },
  source: [cite("package-handbook", "creep")],
  validity: "Foam kept below its maker's static limit; hot vans take more.",
  compute: ({ needed, creep }) => needed / (1 - creep),
});

/**
 * Least area of a foam pad that does not fold sideways: (1.33 T)2.
 *
 * @source MIL-HDBK-304, buckling of cushion pads
 * @throws RangeError unless the thickness is positive
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
