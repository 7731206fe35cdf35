/** A pad of cushion: its thickness, its size, and what age and edges take from it. */
import { type Formula, formula } from "../formula.js";
import {
  Area,
  Length,
  Mass,
  Pressure,
  Ratio,
  recordOf,
  SpringRate,
  standardGravity,
} from "../quantity/index.js";
import { cite } from "../source.js";

/** A thing, its fall and what it stands. */
export interface CushionNeed {
  /** The height of the fall. */
  readonly drop: Length;
  /** Deceleration it stands, in gravities. */
  readonly fragility: Ratio;
  /** The cushion factor of the foam at its best stress: 2.5 to 4, from its maker. */
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
  /** The thickness of the foam that the curve was measured with. */
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
  /** The mass of the thing. */
  readonly mass: Mass;
  /** The area of foam under it. */
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

/** Cushions on three faces and the way a case lands on them. */
export interface CushionedFaces {
  /** The spring rate across the left and right faces. */
  readonly sides: SpringRate;
  /** The spring rate across front and back. */
  readonly ends: SpringRate;
  /** The spring rate across top and bottom. */
  readonly flats: SpringRate;
  /** Direction of the fall against the three: parts of a direction, which need not have length one. */
  readonly towards: { readonly sides: Ratio; readonly ends: Ratio; readonly flats: Ratio };
}

/**
 * Stiffness of cushions on three faces when a case lands on an edge or a corner: each face counts by the
 * square of its share of the direction. With three like faces an edge or a corner lands no harder than a flat.
 *
 * @source springs at right angles, energy
 * @throws Refusal for a stiffness that is not positive, or no direction
 * @example tiltedCushion(tiltedCushion.read({ sides: "10 N/mm", ends: "10 N/mm", flats: "10 N/mm", towards: { sides: 1, ends: 1, flats: 1 } })) // 10 N/mm
 */
export const tiltedCushion: Formula<CushionedFaces, SpringRate> = formula({
  id: "cushion.tilted",
  title: "Stiffness on an edge or a corner",
  equation: String.raw`k=\frac{\sum k_i n_i^2}{\sum n_i^2}`,
  inputs: {
    sides: { symbol: "k_x", kind: SpringRate, meaning: "sides", above: 0 },
    ends: { symbol: "k_y", kind: SpringRate, meaning: "ends", above: 0 },
    flats: { symbol: "k_z", kind: SpringRate, meaning: "flats", above: 0 },
    towards: {
      symbol: "n",
      kind: recordOf("direction", { sides: Ratio, ends: Ratio, flats: Ratio }),
      meaning: "direction of the fall",
    },
  },
  result: { symbol: "k", kind: SpringRate, meaning: "stiffness that way" },
  source: [
    cite("strength-of-materials", "springs at right angles"),
    cite("statics", "components of a force"),
  ],
  validity: "Foam that slides past the thing it holds; glued foam adds its shear.",
  refuse: ({ towards }) =>
    towards.sides ** 2 + towards.ends ** 2 + towards.flats ** 2 > 0 ? [] : ["a fall has a direction"],
  compute: ({ sides, ends, flats, towards }) => {
    const [x, y, z] = [towards.sides ** 2, towards.ends ** 2, towards.flats ** 2];
    return (sides * x + ends * y + flats * z) / (x + y + z);
  },
});
