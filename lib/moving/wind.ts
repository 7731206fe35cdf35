/** Wind on the side of a case. */
import { type Formula, formula } from "../formula.js";
import {
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

/** Wind on a side. */
export interface WindOnSide {
  /** Gust, not mean. */
  readonly speed: Speed;
  /** Of the side. */
  readonly area: Area;
  /** 1.2 to 1.3 for a box on the ground. */
  readonly dragFactor: Ratio;
  /** 1.2 kg/m3 near sea level. */
  readonly airDensity: Density;
}

/** Push of the wind. */
export type WindPush = {
  /** Of the air coming to rest. */
  readonly pressure: Pressure;
  /** On the side. */
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
  /** Of the side. */
  readonly area: Area;
  /** Middle of the side above the floor. */
  readonly middle: Length;
  /** 1.2 to 1.3 for a box on the ground. */
  readonly dragFactor: Ratio;
  /** 1.2 kg/m3 near sea level. */
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
