/** Foam between a fragile thing and the case: how thick, how large, how hard it lands. */
import { type Formula, formula } from "../formula.js";
import {
  Area,
  Length,
  listOf,
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

/** A thing that falls on a spring. */
export interface SpringLanding {
  /** Of the thing. */
  readonly mass: Mass;
  /** Of the cushion. */
  readonly stiffness: SpringRate;
  /** Fall before it touches. */
  readonly drop: Length;
}

/** How far it goes in and how hard it is stopped. */
export type Landing = {
  /** Greatest squeeze. */
  readonly squeeze: Length;
  /** Greatest deceleration, in gravities. */
  readonly deceleration: Ratio;
};

/**
 * Landing on a cushion that pushes back evenly: squeeze s (1 + sqrt(1 + 2 h / s)) with s = m g / k.
 *
 * @source energy of a weight falling on a spring
 * @throws RangeError unless mass and stiffness are positive and the drop not negative
 * @example springLanding({ mass: kg(20), stiffness: SpringRate.si(2e5), drop: mm(300) }).deceleration // 25.76
 */
export const springLanding: Formula<SpringLanding, Landing> = formula<SpringLanding, Landing>({
  id: "cushion.spring",
  title: "Landing on an evenly springy cushion",
  equation: String.raw`s=\frac{m g}{k},\quad G=1+\sqrt{1+\frac{2h}{s}},\quad x=s\,G`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "thing", above: 0 },
    stiffness: { symbol: "k", kind: SpringRate, meaning: "spring rate of the cushion", above: 0 },
    drop: { symbol: "h", kind: Length, meaning: "fall", min: 0 },
  },
  result: {
    squeeze: { symbol: "x", kind: Length, meaning: "greatest squeeze" },
    deceleration: { symbol: "G", kind: Ratio, meaning: "greatest deceleration, in gravities" },
  },
  source: [
    cite("strength-of-materials", "weight falling on a spring"),
    cite("dynamics", "conservation of energy"),
  ],
  validity: "No damping, and the cushion never goes solid; real foam stiffens beyond half its thickness.",
  compute: ({ mass, stiffness, drop }) => {
    const rest = (mass * standardGravity) / stiffness;
    const deceleration = 1 + Math.sqrt(1 + (2 * drop) / rest);
    return { squeeze: rest * deceleration, deceleration };
  },
});

/** Cushions on three faces and the way a case lands on them. */
export interface CushionedFaces {
  /** Across the left and right faces. */
  readonly sides: SpringRate;
  /** Across front and back. */
  readonly ends: SpringRate;
  /** Across top and bottom. */
  readonly flats: SpringRate;
  /** Direction of the fall against the three: parts of a direction, which need not have length one. */
  readonly towards: { readonly sides: Ratio; readonly ends: Ratio; readonly flats: Ratio };
}

/**
 * Stiffness of cushions on three faces when a case lands on an edge or a corner: each face counts by the
 * square of its share of the direction. With three like faces an edge or a corner lands no harder than a flat.
 *
 * @source springs at right angles, energy
 * @throws RangeError for a stiffness that is not positive, or no direction
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

/** One point of a cushion curve. */
export interface CurvePoint {
  /** Pressure at rest. */
  readonly stress: Pressure;
  /** Greatest deceleration measured, in gravities. */
  readonly deceleration: Ratio;
}

/** A measured curve and the pressure to read it at. */
export interface CurveReading {
  /** At least two, at rising pressures. */
  readonly points: readonly CurvePoint[];
  /** Within the curve. */
  readonly stress: Pressure;
}

/**
 * Deceleration that a cushion curve gives at a pressure, straight between its points.
 *
 * @source linear interpolation
 * @throws RangeError for fewer than two points, pressures that do not rise, or a pressure off the curve
 */
export const readCushionCurve: Formula<CurveReading, Ratio> = formula<CurveReading, Ratio>({
  id: "cushion.curve",
  title: "Reading a cushion curve",
  equation: String.raw`G=G_i+(G_{i+1}-G_i)\frac{\sigma-\sigma_i}{\sigma_{i+1}-\sigma_i}`,
  inputs: {
    points: {
      symbol: String.raw`\sigma_i, G_i`,
      kind: listOf(recordOf<CurvePoint>("point", { stress: Pressure, deceleration: Ratio })),
      meaning: "points of the curve",
    },
    stress: { symbol: String.raw`\sigma`, kind: Pressure, meaning: "pressure at rest", above: 0 },
  },
  result: { symbol: "G", kind: Ratio, meaning: "deceleration, in gravities" },
  source: [cite("geometry", "straight between two points")],
  validity: "One foam, one thickness, one drop height; never beyond its ends.",
  refuse: ({ points, stress }) => {
    const [first, last] = [points[0], points.at(-1)];
    if (!first || !last || points.length < 2) return [`a curve has at least 2 points, got ${points.length}`];
    if (points.some((point, i) => i > 0 && point.stress <= (points[i - 1]?.stress ?? 0)))
      return ["pressures must rise from point to point"];
    return stress >= first.stress && stress <= last.stress
      ? []
      : [
          `stress must be within the curve, ${Pressure.show(first.stress)} to ${Pressure.show(last.stress)}, got ${Pressure.show(stress)}`,
        ];
  },
  compute: ({ points, stress }) => {
    const next = Math.max(
      1,
      points.findIndex((point) => point.stress >= stress),
    );
    const [low, high] = [points[next - 1], points[next]];
    if (!low || !high) return 0;
    return (
      low.deceleration +
      ((high.deceleration - low.deceleration) * (stress - low.stress)) / (high.stress - low.stress)
    );
  },
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
