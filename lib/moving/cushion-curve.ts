/** The measured curve of a cushion, and a landing on it. */
import { type Formula, formula } from "../formula.js";
import {
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

/** One point of a cushion curve. */
export interface CurvePoint {
  /** Pressure at rest. */
  readonly stress: Pressure;
  /** Greatest deceleration measured, in gravities. */
  readonly deceleration: Ratio;
}

/** A measured curve and the pressure to read it at. */
export interface CurveReading {
  /** The points of the curve, at least two, at rising pressures. */
  readonly points: readonly CurvePoint[];
  /** Within the curve. */
  readonly stress: Pressure;
}

/**
 * Deceleration that a cushion curve gives at a pressure, straight between its points.
 *
 * @source linear interpolation
 * @throws Refusal for fewer than two points, pressures that do not rise, or a pressure off the curve
 * @example readCushionCurve(readCushionCurve.read({ points: [{ stress: "1 kPa", deceleration: 80 },
 *   { stress: "3 kPa", deceleration: 50 }, { stress: "6 kPa", deceleration: 65 }], stress: "2 kPa" })) // 65
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

/** A thing that falls on a spring. */
export interface SpringLanding {
  /** The mass of the thing. */
  readonly mass: Mass;
  /** The spring rate of the cushion. */
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
 * @throws Refusal unless mass and stiffness are positive and the drop not negative
 * @example springLanding({ mass: kg(20), stiffness: SpringRate.si(2e5), drop: mm(300) }) // squeeze 25.26 mm, deceleration 25.76
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

/** A landing that a cushion curve foretells. */
export interface KnownLanding {
  /** The mass of the thing. */
  readonly mass: Mass;
  /** Greatest deceleration, in gravities. */
  readonly deceleration: Ratio;
  /** Fall before it touches. */
  readonly drop: Length;
}

/**
 * Stiffness of the even spring that stops a thing just as hard: k = m g G (G - 2) / (2 h).
 *
 * @source energy of a weight falling on a spring, solved for the spring
 * @throws Refusal unless mass and drop are positive and the deceleration above 2 gravities
 * @example cushionRate({ mass: kg(20), deceleration: ratio(25.755), drop: mm(300) }) // 200 N/mm
 */
export const cushionRate: Formula<KnownLanding, SpringRate> = formula({
  id: "cushion.rate",
  title: "Stiffness of a cushion from one landing",
  equation: String.raw`k=\frac{m g\,G\,(G-2)}{2h}`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "thing", above: 0 },
    deceleration: { symbol: "G", kind: Ratio, meaning: "greatest deceleration, in gravities", above: 2 },
    drop: { symbol: "h", kind: Length, meaning: "fall", above: 0 },
  },
  result: { symbol: "k", kind: SpringRate, meaning: "stiffness of the even spring" },
  source: [cite("strength-of-materials", "weight falling on a spring")],
  validity: "Stands for that landing; foam is no even spring, so other falls on other faces are estimates.",
  compute: ({ mass, deceleration, drop }) =>
    (mass * standardGravity * deceleration * (deceleration - 2)) / (2 * drop),
});
