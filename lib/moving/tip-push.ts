/** Pushes that tip a case: hands, braking, and wind. */
import { type Formula, formula } from "../formula.js";
import {
  Acceleration,
  Area,
  Density,
  Force,
  Length,
  Mass,
  Pressure,
  Ratio,
  Speed,
  standardGravity,
} from "../quantity/index.js";
import { cite } from "../source.js";
import type { Stance } from "./tip-angle.js";

/** A level push against a standing case. */
export interface PushAtHeight {
  /** Case and all that is in it. */
  readonly mass: Mass;
  /** The distance along the floor from below the centre of gravity to the edge it would tip over. */
  readonly halfBase: Length;
  /** The height of the hands above the floor. */
  readonly pushHeight: Length;
  /** The friction of the feet on the floor, casters blocked. */
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

/** Wind on a side. */
export interface WindOnSide {
  /** Gust, not mean. */
  readonly speed: Speed;
  /** The area of the side. */
  readonly area: Area;
  /** The drag factor: 1.2 to 1.3 for a box on the ground. */
  readonly dragFactor: Ratio;
  /** The density of the air: 1.2 kg/m3 near sea level. */
  readonly airDensity: Density;
}

/** Push of the wind. */
export type WindPush = {
  /** The pressure of the air coming to rest. */
  readonly pressure: Pressure;
  /** The force on the side. */
  readonly force: Force;
};

/**
 * Wind on a flat side: half density times speed squared, times drag factor and area.
 *
 * @source fluid mechanics, drag
 * @throws Refusal for a negative speed, or an area, factor or density that is not positive
 * @example windForce(windForce.read({ speed: "10 m/s", area: "1 m2", dragFactor: 1.2, airDensity: "1.2 kg/m3" })) // pressure 60 Pa, force 72 N
 */
export const windForce: Formula<WindOnSide, WindPush> = formula<WindOnSide, WindPush>({
  id: "wind.force",
  title: "Wind on a side",
  equation: String.raw`q=\tfrac12\rho v^2,\quad F=c\,q\,A`,
  inputs: {
    speed: { symbol: "v", kind: Speed, meaning: "gust", min: 0 },
    area: { symbol: "A", kind: Area, meaning: "side", above: 0 },
    dragFactor: { symbol: "c", kind: Ratio, meaning: "drag factor", above: 0 },
    airDensity: { symbol: String.raw`\rho`, kind: Density, meaning: "air", above: 0 },
  },
  result: {
    pressure: { symbol: "q", kind: Pressure, meaning: "pressure of the wind" },
    force: { symbol: "F", kind: Force, meaning: "push on the side" },
  },
  source: [cite("fluid-flow", "drag")],
  validity: "A closed box in open ground; an open door or a banner is a sail and adds its own area.",
  compute: ({ speed, area, dragFactor, airDensity }) => {
    const pressure = 0.5 * airDensity * speed ** 2;
    return { pressure, force: dragFactor * pressure * area };
  },
});

/** A case in the wind. */
export interface WindTip {
  /** Case and all that is in it. */
  readonly mass: Mass;
  /** Centre of gravity to the edge it would tip over. */
  readonly halfBase: Length;
  /** The area of the side. */
  readonly area: Area;
  /** Middle of the side above the floor. */
  readonly middle: Length;
  /** The drag factor: 1.2 to 1.3 for a box on the ground. */
  readonly dragFactor: Ratio;
  /** The density of the air: 1.2 kg/m3 near sea level. */
  readonly airDensity: Density;
}

/**
 * The gust that tips a case: sqrt(2 m g b / (rho c A h)).
 *
 * @source moments about the tipping edge; drag
 * @throws Refusal unless every input is positive
 * @example tippingWind(tippingWind.read({ mass: "72 kg", halfBase: "0.25 m", area: "1 m2", middle: "0.5 m",
 *   dragFactor: 1.2, airDensity: "1.2 kg/m3" })) // 22.14 m/s
 */
export const tippingWind: Formula<WindTip, Speed> = formula({
  id: "tip.wind",
  title: "Gust that tips a case",
  equation: String.raw`v=\sqrt{\frac{2\,m g\,b}{\rho\,c\,A\,h}}`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "case", above: 0 },
    halfBase: { symbol: "b", kind: Length, meaning: "centre of gravity to the tipping edge", above: 0 },
    area: { symbol: "A", kind: Area, meaning: "side", above: 0 },
    middle: { symbol: "h", kind: Length, meaning: "middle of the side above the floor", above: 0 },
    dragFactor: { symbol: "c", kind: Ratio, meaning: "drag factor", above: 0 },
    airDensity: { symbol: String.raw`\rho`, kind: Density, meaning: "air", above: 0 },
  },
  result: { symbol: "v", kind: Speed, meaning: "gust that tips it" },
  source: [cite("statics", "moments about the tipping edge"), cite("fluid-flow", "drag")],
  validity: "A gust long enough to push, not only to slap; brakes that hold, or it rolls first.",
  compute: ({ mass, halfBase, area, middle, dragFactor, airDensity }) =>
    Math.sqrt((2 * mass * standardGravity * halfBase) / (airDensity * dragFactor * area * middle)),
});

/** How much less counts what holds, and how much more what topples, where something is to stand. */
const equilibrium = { holds: 0.9, topples: 1.5 };

/**
 * The gust up to which a case may stand: the one that tips it, less the partial factors of static equilibrium,
 * v sqrt(0.9 / 1.5).
 *
 * @source EN 1990, table A1.2(A): weight that holds x 0.9, wind x 1.5
 * @throws Refusal unless the gust is positive
 * @example allowedGust({ tips: Speed.of(20, "m/s") }) // 15.49 m/s
 */
export const allowedGust: Formula<{ readonly tips: Speed }, Speed> = formula({
  id: "tip.wind.allowed",
  title: "Gust up to which a case may stand",
  equation: String.raw`v_a=v\sqrt{\frac{0.9}{1.5}}`,
  inputs: { tips: { symbol: "v", kind: Speed, meaning: "gust that tips it", above: 0 } },
  result: { symbol: "v_a", kind: Speed, meaning: "gust up to which it may stand" },
  source: [cite("en-1990", "table A1.2(A), static equilibrium: 0.9 for what holds, 1.5 for what topples")],
  validity: "The strongest gust expected while it stands, not the mean wind; nobody beside it in a storm.",
  compute: ({ tips }) => tips * Math.sqrt(equilibrium.holds / equilibrium.topples),
});
