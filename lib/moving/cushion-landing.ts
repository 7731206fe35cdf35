/** How far a thing goes into its cushion, and how hard it is stopped. */
import { type Formula, formula } from "../formula.js";
import { Length, Mass, Ratio, SpringRate, standardGravity } from "../quantity/index.js";
import { cite } from "../source.js";

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
  /** Of the thing. */
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
