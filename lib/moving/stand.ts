/** Things that tip a standing case: a child on a drawer, the wind; and what keeps it standing. */
import { type Formula, formula } from "../formula.js";
import {
  Angle,
  Area,
  Density,
  Force,
  Length,
  Mass,
  Pressure,
  pound,
  Ratio,
  Speed,
  standardGravity,
} from "../quantity/index.js";
import { type Citation, cite } from "../source.js";

/** A case with something that sticks out over its edge. */
export interface EdgeLoad {
  /** Case and all that is in it, less what has moved out. */
  readonly mass: Mass;
  /** Centre of gravity to the edge it would tip over. */
  readonly halfBase: Length;
  /** From that edge out to where the load hangs. */
  readonly overhang: Length;
}

/**
 * The mass on an open drawer or door that tips a case: m b / a.
 *
 * @source moments about the tipping edge
 * @throws RangeError unless all three are positive
 * @example edgeLoadLimit({ mass: kg(80), halfBase: mm(250), overhang: mm(400) }) // 50 kg
 */
export const edgeLoadLimit: Formula<EdgeLoad, Mass> = formula({
  id: "tip.edge.load",
  title: "Mass on an open drawer that tips a case",
  equation: String.raw`m_c=\frac{m\,b}{a}`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "case", above: 0 },
    halfBase: { symbol: "b", kind: Length, meaning: "centre of gravity to the tipping edge", above: 0 },
    overhang: { symbol: "a", kind: Length, meaning: "from that edge out to the load", above: 0 },
  },
  result: { symbol: "m_c", kind: Mass, meaning: "mass that tips it" },
  source: [cite("statics", "moments about the tipping edge")],
  validity: "A still load on a level floor. A child that climbs pulls outwards too: keep twice the margin.",
  compute: ({ mass, halfBase, overhang }) => (mass * halfBase) / overhang,
});

/** The child of the published test: a weight on the front of an open drawer. */
export interface ChildOnDrawer {
  /** The test weight. */
  readonly mass: Mass;
  /** Who asks for it. */
  readonly source: Citation;
}

/** 60 lb. ASTM F2057-23; the standard is for bedroom furniture, the nearest there is. */
export const childOnDrawer: ChildOnDrawer = {
  mass: pound(60),
  source: cite("astm-f2057", "test weight of 60 lb on an open drawer"),
};

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
 * @throws RangeError for a negative speed, or an area, factor or density that is not positive
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
 * @throws RangeError unless every input is positive
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

/** A case and a weight laid low. */
export interface BallastNeed {
  /** Case and all that is in it. */
  readonly mass: Mass;
  /** Centre of gravity to the edge it would tip over. */
  readonly halfBase: Length;
  /** Of the centre of gravity. */
  readonly height: Length;
  /** Lean to be borne. */
  readonly angle: Angle;
  /** Ballast to the same edge. */
  readonly ballastFromEdge: Length;
  /** Of the ballast above the floor. */
  readonly ballastHeight: Length;
}

/**
 * Ballast that makes a case bear a lean: m (h tan(a) - b) / (b2 - h2 tan(a)); zero where it bears it already.
 *
 * @source moments about the tipping edge
 * @throws RangeError unless masses and heights fit, or where the ballast would itself fall over
 */
export const ballastNeeded: Formula<BallastNeed, Mass> = formula({
  id: "tip.ballast",
  title: "Ballast that makes a case stand",
  equation: String.raw`m_b=\max\left(0,\ m\,\frac{h\tan\alpha-b}{b_b-h_b\tan\alpha}\right)`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "case", above: 0 },
    halfBase: { symbol: "b", kind: Length, meaning: "centre of gravity to the tipping edge", above: 0 },
    height: { symbol: "h", kind: Length, meaning: "height of the centre of gravity", above: 0 },
    angle: { symbol: String.raw`\alpha`, kind: Angle, meaning: "lean to bear", min: 0, below: Math.PI / 2 },
    ballastFromEdge: { symbol: "b_b", kind: Length, meaning: "ballast to the tipping edge", above: 0 },
    ballastHeight: { symbol: "h_b", kind: Length, meaning: "height of the ballast", min: 0 },
  },
  result: { symbol: "m_b", kind: Mass, meaning: "ballast" },
  source: [cite("statics", "moments about the tipping edge")],
  validity: "Ballast made fast inside; it counts in every lift.",
  refuse: ({ angle, ballastFromEdge, ballastHeight }) =>
    ballastFromEdge > ballastHeight * Math.tan(angle)
      ? []
      : ["ballast that high so near the edge tips the case instead"],
  compute: ({ mass, halfBase, height, angle, ballastFromEdge, ballastHeight }) => {
    const slope = Math.tan(angle);
    return Math.max(0, (mass * (height * slope - halfBase)) / (ballastFromEdge - ballastHeight * slope));
  },
});

/** How a case stands and should stand. */
export interface OutriggerNeed {
  /** Centre of gravity to the edge it would tip over now. */
  readonly halfBase: Length;
  /** Of the centre of gravity. */
  readonly height: Length;
  /** Lean to be borne. */
  readonly angle: Angle;
}

/**
 * How far an outrigger must reach past the tipping edge: h tan(a) - b; zero where the base is wide enough.
 *
 * @source moments about the tipping edge
 * @throws RangeError unless lengths are positive and the lean from 0 to below 90 degrees
 */
export const outriggerReach: Formula<OutriggerNeed, Length> = formula({
  id: "tip.outrigger",
  title: "Reach of an outrigger",
  equation: String.raw`e=\max(0,\ h\tan\alpha-b)`,
  inputs: {
    halfBase: { symbol: "b", kind: Length, meaning: "centre of gravity to the tipping edge", above: 0 },
    height: { symbol: "h", kind: Length, meaning: "height of the centre of gravity", above: 0 },
    angle: { symbol: String.raw`\alpha`, kind: Angle, meaning: "lean to bear", min: 0, below: Math.PI / 2 },
  },
  result: { symbol: "e", kind: Length, meaning: "reach past the edge" },
  source: [cite("statics", "moments about the tipping edge")],
  validity: "A stiff outrigger that touches the floor.",
  compute: ({ halfBase, height, angle }) => Math.max(0, height * Math.tan(angle) - halfBase),
});

/** A floor or ground that slopes: what a standing case should bear beside its own wobble. IEC 60601-1 asks 5 degrees. */
export const groundSlope: { readonly angle: Angle; readonly source: Citation } = {
  angle: Angle.of(5, "deg"),
  source: cite("iec-60601", "9.4.2, in any normal use"),
};
