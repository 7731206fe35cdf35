/** What holds a thing in place on the road: screws, brackets, straps. */
import { type Formula, formula } from "../formula.js";
import {
  Angle,
  Area,
  Count,
  degree,
  Force,
  Length,
  Mass,
  Moment,
  Pressure,
  Ratio,
  standardGravity,
} from "../quantity/index.js";
import { cite } from "../source.js";

/** A thing on a row of fasteners or a bracket. */
export interface HeldThing {
  /** Of the thing. */
  readonly mass: Mass;
  /** Push of the road as a share of the weight. */
  readonly share: Ratio;
  /** Fasteners that share it. */
  readonly count: number;
}

/**
 * Sideways force on each fastener that holds a thing: c m g / n. Friction is left out.
 *
 * @source statics; EN 12195-1 for the share
 * @throws RangeError unless mass and share are not negative and there is a fastener
 */
export const heldShear: Formula<HeldThing, Force> = formula({
  id: "hold.shear",
  title: "Sideways force on each fastener",
  equation: String.raw`V=\frac{c\,m g}{n}`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "thing", min: 0 },
    share: { symbol: "c", kind: Ratio, meaning: "push of the road", min: 0 },
    count: { symbol: "n", kind: Count, meaning: "fasteners", min: 1 },
  },
  result: { symbol: "V", kind: Force, meaning: "sideways, each" },
  source: [cite("statics", "equal shares"), cite("en-12195", "table 2")],
  validity: "Fasteners alike and near the thing's middle.",
  compute: ({ mass, share, count }) => (share * mass * standardGravity) / count,
});

/** A thing that wants to tip off its feet. */
export interface TippingThing {
  /** Of the thing. */
  readonly mass: Mass;
  /** Push of the road as a share of the weight. */
  readonly share: Ratio;
  /** Of its centre above its feet. */
  readonly height: Length;
  /** Between the two rows of fasteners, the way it tips. */
  readonly base: Length;
}

/**
 * Pull on the rear row of fasteners of a thing that the road pushes over: m g (c h / b - 1/2), zero where its own
 * weight holds it down.
 *
 * @source moments about the front row
 * @throws RangeError unless height and base are positive
 */
export const heldPull: Formula<TippingThing, Force> = formula({
  id: "hold.pull",
  title: "Pull on the rear row of fasteners",
  equation: String.raw`N=\max\left(0,\ m g\left(\frac{c\,h}{b}-\frac12\right)\right)`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "thing", min: 0 },
    share: { symbol: "c", kind: Ratio, meaning: "push of the road", min: 0 },
    height: { symbol: "h", kind: Length, meaning: "its centre above its feet", above: 0 },
    base: { symbol: "b", kind: Length, meaning: "between the rows", above: 0 },
  },
  result: { symbol: "N", kind: Force, meaning: "pull on the row" },
  source: [cite("statics", "moments about the front row")],
  validity: "Weight midway between the rows, on a level floor.",
  compute: ({ mass, share, height, base }) =>
    Math.max(0, mass * standardGravity * ((share * height) / base - 0.5)),
});

/** A strap over a thing inside. */
export interface StrappedThing {
  /** Of the thing. */
  readonly mass: Mass;
  /** Push of the road as a share of the weight. */
  readonly share: Ratio;
  /** Straps round it that take the push along their length. */
  readonly straps: number;
  /** Strap against the way of the push: 0 when it lies along it. */
  readonly strapAngle: Angle;
  /** Under the thing; 0 where nobody measured it. */
  readonly friction: Ratio;
}

/**
 * Tension in each strap that holds a thing directly: (c - mu) m g / (n cos(beta)), zero where friction holds it.
 *
 * @source EN 12195-1, direct lashing; statics
 * @throws RangeError unless there is a strap and its angle is below 90 degrees
 */
export const strapTension: Formula<StrappedThing, Force> = formula({
  id: "hold.strap",
  title: "Tension in a strap that holds a thing",
  equation: String.raw`T=\max\left(0,\ \frac{(c-\mu)\,m g}{n\,\cos\beta}\right)`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "thing", min: 0 },
    share: { symbol: "c", kind: Ratio, meaning: "push of the road", min: 0 },
    straps: { symbol: "n", kind: Count, meaning: "straps", min: 1 },
    strapAngle: {
      symbol: String.raw`\beta`,
      kind: Angle,
      meaning: "strap against the push",
      min: 0,
      below: degree(90),
    },
    friction: { symbol: String.raw`\mu`, kind: Ratio, meaning: "friction under it", min: 0 },
  },
  result: { symbol: "T", kind: Force, meaning: "tension, each" },
  source: [cite("en-12195", "direct lashing"), cite("statics", "components of a force")],
  validity:
    "Straps round the thing to two anchors; the lift of a slanting strap is left out, to the safe side.",
  compute: ({ mass, share, straps, strapAngle, friction }) =>
    Math.max(0, ((share - friction) * mass * standardGravity) / (straps * Math.cos(strapAngle))),
});

/** A platform that stands out from a wall. */
export interface Platform {
  /** Thing on it with a jolt. */
  readonly load: Force;
  /** From the wall to the load. */
  readonly reach: Length;
  /** Between the pulled screws and the edge it bears on. */
  readonly lever: Length;
  /** Pulled screws. */
  readonly screws: number;
}

/**
 * Pull on each screw of a platform that is held at its back only: P a / (z n).
 *
 * @source moments about the bearing edge
 * @throws RangeError unless all are positive
 */
export const platformPull: Formula<Platform, Force> = formula({
  id: "platform.pull",
  title: "Pull on each screw of a platform",
  equation: String.raw`N=\frac{P a}{z\,n}`,
  inputs: {
    load: { symbol: "P", kind: Force, meaning: "load with a jolt", min: 0 },
    reach: { symbol: "a", kind: Length, meaning: "wall to load", min: 0 },
    lever: { symbol: "z", kind: Length, meaning: "screws to the bearing edge", above: 0 },
    screws: { symbol: "n", kind: Count, meaning: "pulled screws", min: 1 },
  },
  result: { symbol: "N", kind: Force, meaning: "pull, each" },
  source: [cite("statics", "moments about the bearing edge")],
  validity: "A stiff bracket that bears on its lower edge.",
  compute: ({ load, reach, lever, screws }) => (load * reach) / (lever * screws),
});

/** A glued back edge. */
export interface GluedEdge {
  /** At the joint. */
  readonly moment: Moment;
  /** Along the joint. */
  readonly length: Length;
  /** Of the glued face, the way it bends: the bracket's height or the board's thickness. */
  readonly depth: Length;
}

/**
 * Greatest pull of a bent glue line: 6 M / (l d2).
 *
 * @source flexure formula on the glued face
 * @throws RangeError unless length and depth are positive
 */
export const gluePull: Formula<GluedEdge, Pressure> = formula({
  id: "platform.glue",
  title: "Pull of a bent glue line",
  equation: String.raw`\sigma=\frac{6M}{l\,d^2}`,
  inputs: {
    moment: { symbol: "M", kind: Moment, meaning: "moment at the joint", min: 0 },
    length: { symbol: "l", kind: Length, meaning: "length of the joint", above: 0 },
    depth: { symbol: "d", kind: Length, meaning: "depth of the glued face", above: 0 },
  },
  result: { symbol: String.raw`\sigma`, kind: Pressure, meaning: "pull at the edge" },
  source: [cite("strength-of-materials", "flexure formula")],
  validity: "A thin stiff glue line; across the grain of the face veneer plywood gives at about 1 to 2 MPa.",
  compute: ({ moment, length, depth }) => (6 * moment) / (length * depth ** 2),
});

/** A foam strip squeezed between a clamp and a pane. */
export interface FoamStrip {
  /** Before it is squeezed. */
  readonly thickness: Length;
  /** As a share of the thickness. */
  readonly squeeze: Ratio;
  /** Share of the squeeze that does not come back: ASTM D395, from its maker. */
  readonly set: Ratio;
}

/**
 * What is left of the squeeze of a foam strip once it has set: T q (1 - s). A rattle begins at nothing.
 *
 * @source ASTM D395, compression set
 * @throws RangeError unless squeeze and set are from 0 to below 1
 */
export const stripGrip: Formula<FoamStrip, Length> = formula({
  id: "screen.strip.grip",
  title: "Squeeze that a foam strip keeps",
  equation: String.raw`r=T\,q\,(1-s)`,
  inputs: {
    thickness: { symbol: "T", kind: Length, meaning: "thickness, free", above: 0 },
    squeeze: { symbol: "q", kind: Ratio, meaning: "squeeze", min: 0, below: 1 },
    set: { symbol: "s", kind: Ratio, meaning: "compression set", min: 0, max: 1 },
  },
  result: { symbol: "r", kind: Length, meaning: "squeeze left" },
  source: [cite("astm-d395", "method B, set as a share of the deflection")],
  validity: "At the temperature and time that its maker tested.",
  compute: ({ thickness, squeeze, set }) => thickness * squeeze * (1 - set),
});

/** Compression set of a test piece. */
export interface SetTest {
  /** Before. */
  readonly before: Length;
  /** While squeezed. */
  readonly squeezed: Length;
  /** Half an hour after it was let go. */
  readonly after: Length;
}

/**
 * Compression set: (before - after) / (before - squeezed).
 *
 * @source ASTM D395, method B
 * @throws RangeError unless the squeezed piece is thinner than before
 */
export const compressionSet: Formula<SetTest, Ratio> = formula({
  id: "screen.strip.set",
  title: "Compression set",
  equation: String.raw`s=\frac{t_0-t_1}{t_0-t_n}`,
  inputs: {
    before: { symbol: "t_0", kind: Length, meaning: "before", above: 0 },
    squeezed: { symbol: "t_n", kind: Length, meaning: "while squeezed", min: 0 },
    after: { symbol: "t_1", kind: Length, meaning: "afterwards", min: 0 },
  },
  result: { symbol: "s", kind: Ratio, meaning: "share that does not come back" },
  source: [cite("astm-d395", "method B")],
  validity: "Read half an hour after release.",
  refuse: ({ before, squeezed, after }) =>
    squeezed < before && after <= before
      ? []
      : ["the piece must be thinner squeezed than before, and not grow"],
  compute: ({ before, squeezed, after }) => (before - after) / (before - squeezed),
});

/** A pane's edge under a clamp. */
export interface ClampedEdge {
  /** Of one clamp. */
  readonly force: Force;
  /** Of strip under the clamp. */
  readonly area: Area;
}

/**
 * Pressure of a clamp on a pane's edge through its strip: F / A.
 *
 * @source statics
 * @throws RangeError unless the area is positive
 */
export const clampPressure: Formula<ClampedEdge, Pressure> = formula({
  id: "screen.clamp",
  title: "Pressure of a clamp on a pane",
  equation: String.raw`p=\frac{F}{A}`,
  inputs: {
    force: { symbol: "F", kind: Force, meaning: "force of the clamp", min: 0 },
    area: { symbol: "A", kind: Area, meaning: "strip under it", above: 0 },
  },
  result: { symbol: "p", kind: Pressure, meaning: "pressure on the pane" },
  source: [cite("statics", "force over area")],
  validity:
    "An even strip, no metal on glass anywhere; the rim of a screen panel stands little and its face none.",
  compute: ({ force, area }) => force / area,
});

/** A cable that turns a corner. */
export interface BentCable {
  /** Outside. */
  readonly diameter: Length;
  /** Least inner radius over diameter: 4 for data, 6 to 8 for power, from its maker. */
  readonly factor: Ratio;
  /** Of plug and strain relief, straight. */
  readonly plug: Length;
}

/** Room behind a plug. */
export type CableRoom = {
  /** Inner radius of the bend. */
  readonly radius: Length;
  /** From the socket to the far side of the bent cable. */
  readonly room: Length;
};

/**
 * Room behind a socket for its plug and a right-angled bend: plug + factor x d + d.
 *
 * @source common practice; NEC 300.34 for factors of power cable
 * @throws RangeError unless the diameter is positive and the factor at least 1
 */
export const cableRoom: Formula<BentCable, CableRoom> = formula<BentCable, CableRoom>({
  id: "cable.room",
  title: "Room behind a socket",
  equation: String.raw`r=f\,d,\quad L=p+r+d`,
  inputs: {
    diameter: { symbol: "d", kind: Length, meaning: "cable", above: 0 },
    factor: { symbol: "f", kind: Ratio, meaning: "least radius over diameter", min: 1 },
    plug: { symbol: "p", kind: Length, meaning: "plug and strain relief", min: 0 },
  },
  result: {
    radius: { symbol: "r", kind: Length, meaning: "inner radius of the bend" },
    room: { symbol: "L", kind: Length, meaning: "room from the socket" },
  },
  source: [
    cite("common-practice", "inner radius as a multiple of the diameter"),
    cite("nec", "300.34, multiples of the diameter"),
  ],
  validity: "One bend at rest; a cable that moves wants twice the radius.",
  compute: ({ diameter, factor, plug }) => ({
    radius: factor * diameter,
    room: plug + factor * diameter + diameter,
  }),
});
