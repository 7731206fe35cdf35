import { type Formula, formula } from "../formula.js";
import { Acceleration, Force, Length, Mass, Ratio, standardGravity } from "../quantity/index.js";
import { cite } from "../source.js";
import type { Stance } from "./tip-angle.js";

/** A level push against a standing case. */
export interface PushAtHeight {
  /** Case and all that is in it. */
  readonly mass: Mass;
  /** Along the floor, from below the centre of gravity to the edge it would tip over. */
  readonly halfBase: Length;
  /** Of the hands above the floor. */
  readonly pushHeight: Length;
  /** Of the feet on the floor, casters blocked. */
  readonly friction: Ratio;
}

/** The push that tips and the push that slides; the smaller one happens. */
export type PushLimits = {
  /** Push that begins to tip. */
  readonly tips: Force;
  /** Push that begins to slide. */
  readonly slides: Force;
};

/**
 * The level push that begins to tip a case, m g b / p, and the one that begins to slide it, mu m g.
 *
 * @source statics, moments about the tipping edge and dry friction
 * @throws Refusal unless mass, half base and height are positive and friction is not negative
 * @example pushLimits({ mass: kg(80), halfBase: mm(300), pushHeight: mm(1000), friction: ratio(0.4) }) // tips 235.4 N, slides 313.8 N
 */
export const pushLimits: Formula<PushAtHeight, PushLimits> = formula<PushAtHeight, PushLimits>({
  id: "tip.push",
  title: "Push that tips a case, or slides it",
  equation: String.raw`P_t = \frac{m g b}{p},\qquad P_s = \mu m g`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "mass", above: 0 },
    halfBase: { symbol: "b", kind: Length, meaning: "centre of gravity to the tipping edge", above: 0 },
    pushHeight: { symbol: "p", kind: Length, meaning: "height of the push", above: 0 },
    friction: { symbol: String.raw`\mu`, kind: Ratio, meaning: "friction on the floor", min: 0 },
  },
  result: {
    tips: { symbol: "P_t", kind: Force, meaning: "push that begins to tip" },
    slides: { symbol: "P_s", kind: Force, meaning: "push that begins to slide" },
  },
  source: [cite("statics", "moments about the tipping edge; dry friction")],
  validity: "A steady push on a level floor. A wheel that meets a sill acts like high friction.",
  warn: (_, { tips, slides }) => (tips < slides ? ["it tips before it slides: push lower down"] : []),
  compute: ({ mass, halfBase, pushHeight, friction }) => ({
    tips: (mass * standardGravity * halfBase) / pushHeight,
    slides: friction * mass * standardGravity,
  }),
});

/**
 * The braking at which an unsecured case tips over its front edge: g b / h.
 *
 * @source statics with the force of inertia at the centre of gravity
 * @throws Refusal unless half base and height are positive
 * @example tippingBraking({ halfBase: mm(300), height: mm(700) }) // 4.203 m/s2
 */
export const tippingBraking: Formula<Stance, Acceleration> = formula({
  id: "tip.braking",
  title: "Braking that tips an unsecured case",
  equation: String.raw`a = g\,\frac{b}{h}`,
  inputs: {
    halfBase: { symbol: "b", kind: Length, meaning: "centre of gravity to the tipping edge", above: 0 },
    height: { symbol: "h", kind: Length, meaning: "height of the centre of gravity", above: 0 },
  },
  result: { symbol: "a", kind: Acceleration, meaning: "braking at which it tips" },
  source: [cite("statics", "inertia force at the centre of gravity")],
  validity: "Slow braking on a level bed; in a vehicle secure every case whatever this says.",
  compute: ({ halfBase, height }) => (standardGravity * halfBase) / height,
});

/**
 * The level test push of a free-standing piece of equipment: 13 % of its weight, 250 N at the most.
 * It acts at up to 1.5 m above the floor and must not tip it.
 *
 * @source IEC 62368-1 ed. 3, 8.6
 * @throws Refusal unless the mass is positive
 * @example steadinessPush({ mass: kg(100) }) // 127.5 N
 */
export const steadinessPush: Formula<{ readonly mass: Mass }, Force> = formula({
  id: "tip.test.push",
  title: "Test push for a free-standing case",
  equation: String.raw`P = \min(0.13\,m g,\ 250\,\mathrm{N})`,
  inputs: { mass: { symbol: "m", kind: Mass, meaning: "mass", above: 0 } },
  result: { symbol: "P", kind: Force, meaning: "push it must bear without tipping" },
  source: [cite("iec-62368", "8.6")],
  validity: "Pushed at up to 1.5 m above the floor, in the worst direction, doors and drawers as in use.",
  compute: ({ mass }) => Math.min(0.13 * mass * standardGravity, 250),
});
