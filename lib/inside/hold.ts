/** What holds a thing inside the case: hook-and-loop, straps, glue under a platform. */
import { type Formula, formula } from "../formula.js";
import {
  Angle,
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
  /** The mass of the thing. */
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
 * @example heldShear(heldShear.read({ mass: "10 kg", share: 0.8, count: 4 })) // 19.61 N
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
  /** The mass of the thing. */
  readonly mass: Mass;
  /** Push of the road as a share of the weight. */
  readonly share: Ratio;
  /** The height of its centre above its feet. */
  readonly height: Length;
  /** The distance between the two rows of fasteners, the way it tips. */
  readonly base: Length;
}

/**
 * Pull on the rear row of fasteners of a thing that the road pushes over: m g (c h / b - 1/2), zero where its own
 * weight holds it down.
 *
 * @source moments about the front row
 * @throws RangeError unless height and base are positive
 * @example heldPull(heldPull.read({ mass: "10 kg", share: 0.8, height: "0.5 m", base: "0.2 m" })) // 147.1 N
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

/** A thing fastened to a wall or under a top. */
export interface WallHeldThing {
  /** The mass of the thing. */
  readonly mass: Mass;
  /** Share of its weight that throws it off its panel; 0 where nothing does. */
  readonly off: Ratio;
  /** Share of its weight along its panel, its own weight included where that runs along it. */
  readonly along: Ratio;
  /** How far it stands out from the panel. */
  readonly depth: Length;
  /** The distance between its outer rows of fasteners, the narrower way. */
  readonly rows: Length;
  /** Fasteners alike. */
  readonly count: number;
}

/**
 * Pull on each of the far half of the fasteners of a thing on a wall: thrown off it, and pried off by what runs along
 * it: m g (o / n + l t / (2 z n_far)), n_far the half of them.
 *
 * @source statics, moments about the near row; EN 12195-1 for the shares
 * @throws Refusal unless the rows are apart and there is a fastener
 * @example wallPull(wallPull.read({ mass: "10 kg", off: 0.8, along: 0, depth: "100 mm", rows: "80 mm", count: 4 })) // 19.61 N
 */
export const wallPull: Formula<WallHeldThing, Force> = formula({
  id: "hold.wall",
  title: "Pull on the far fasteners of a thing on a wall",
  equation: String.raw`N=m g\left(\frac{o}{n}+\frac{l\,t}{2\,z\,\lfloor n/2\rfloor}\right)`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "thing", min: 0 },
    off: { symbol: "o", kind: Ratio, meaning: "share of the weight off the wall", min: 0 },
    along: { symbol: "l", kind: Ratio, meaning: "share along the wall", min: 0 },
    depth: { symbol: "t", kind: Length, meaning: "how far it stands out", min: 0 },
    rows: { symbol: "z", kind: Length, meaning: "between its rows", above: 0 },
    count: { symbol: "n", kind: Count, meaning: "fasteners", min: 1 },
  },
  result: { symbol: "N", kind: Force, meaning: "pull, each" },
  source: [cite("statics", "moments about the near row"), cite("en-12195", "table 2")],
  validity: "Weight in the middle of the thing; one fastener alone takes the whole couple.",
  compute: ({ mass, off, along, depth, rows, count }) =>
    mass *
    standardGravity *
    (off / count + (along * depth) / (2 * rows * Math.max(1, Math.floor(count / 2)))),
});

/** A strap over a thing inside. */
export interface StrappedThing {
  /** The mass of the thing. */
  readonly mass: Mass;
  /** Push of the road as a share of the weight. */
  readonly share: Ratio;
  /** Straps round it that take the push along their length. */
  readonly straps: number;
  /** Strap against the way of the push: 0 when it lies along it. */
  readonly strapAngle: Angle;
  /** The friction under the thing; 0 where nobody measured it. */
  readonly friction: Ratio;
}

/**
 * Tension in each strap that holds a thing directly: (c - mu) m g / (n cos(beta)), zero where friction holds it.
 *
 * @source EN 12195-1, direct lashing; statics
 * @throws RangeError unless there is a strap and its angle is below 90 degrees
 * @example strapTension(strapTension.read({ mass: "10 kg", share: 0.8, straps: 1, strapAngle: "0 deg", friction: 0 })) // 78.45 N
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
  /** The distance from the wall to the load. */
  readonly reach: Length;
  /** The distance between the pulled screws and the edge it bears on. */
  readonly lever: Length;
  /** Pulled screws. */
  readonly screws: number;
}

/**
 * Pull on each screw of a platform that is held at its back only: P a / (z n).
 *
 * @source moments about the bearing edge
 * @throws RangeError unless all are positive
 * @example platformPull(platformPull.read({ load: "50 lbf", reach: "12 in", lever: "3 in", screws: 2 })) // 444.8 N
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
  /** The moment at the joint. */
  readonly moment: Moment;
  /** The length along the joint. */
  readonly length: Length;
  /** The depth of the glued face, the way it bends: the bracket's height or the board's thickness. */
  readonly depth: Length;
}

/**
 * Greatest pull of a bent glue line: 6 M / (l d2).
 *
 * @source flexure formula on the glued face
 * @throws RangeError unless length and depth are positive
 * @example gluePull(gluePull.read({ moment: "30 Nm", length: "600 mm", depth: "10 mm" })) // 3 MPa
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
