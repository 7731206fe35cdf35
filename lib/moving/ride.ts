/** What the road does to a load: shares of its weight, a shelf that bounces, a thing in a cradle. */
import { type Formula, formula } from "../formula.js";
import {
  Count,
  choice,
  Force,
  type Kind,
  Length,
  Mass,
  Pressure,
  Ratio,
  standardGravity,
} from "../quantity/index.js";
import { cite } from "../source.js";

/** Which way the load wants to go. */
export type RideWay = "forward" | "rearward" | "sideways";
/** All three. */
export const rideWays: readonly RideWay[] = ["forward", "rearward", "sideways"];
export const RideWay: Kind<RideWay> = choice("way", rideWays);

/** Shares of gravity on the road, and the safety factor of frictional lashing. EN 12195-1:2010, tables 2 and 4. */
export const slidingShares: Readonly<Record<RideWay, number>> = {
  forward: 0.8,
  rearward: 0.5,
  sideways: 0.5,
};
/** The same for a load that may tip: sideways 0.6. */
export const tiltingShares: Readonly<Record<RideWay, number>> = {
  forward: 0.8,
  rearward: 0.5,
  sideways: 0.6,
};
/** Safety factors of lashing by friction. EN 12195-1:2010. */
export const lashingSafety: Readonly<Record<RideWay, number>> = {
  forward: 1.25,
  rearward: 1.1,
  sideways: 1.1,
};

/**
 * Push of the road on a load, as a share of its weight. EN 12195-1:2010: 0.8 forward, 0.5 rearward and
 * sideways, 0.6 sideways for a load that may tip.
 *
 * @throws nothing: every way and movement has its figure
 * @example rideShare({ way: "forward", movement: "sliding" }) // 0.8
 */
export const rideShare: Formula<{ readonly way: RideWay; readonly movement: "sliding" | "tilting" }, Ratio> =
  formula<{ readonly way: RideWay; readonly movement: "sliding" | "tilting" }, Ratio>({
    id: "ride.share",
    title: "Push of the road on a load",
    equation: "c",
    inputs: {
      way: { symbol: "w", kind: RideWay, meaning: "which way" },
      movement: {
        symbol: "u",
        kind: choice("movement", ["sliding", "tilting"]),
        meaning: "sliding or tilting",
      },
    },
    result: { symbol: "c", kind: Ratio, meaning: "share of the weight" },
    source: [cite("en-12195", "table 2"), cite("ctu-code", "acceleration coefficients, road")],
    validity: "Road transport in normal traffic, evasive action and hard braking included; not a crash.",
    compute: ({ way, movement }) => (movement === "sliding" ? slidingShares : tiltingShares)[way],
  });

/** A shelf or a platform with all that is on it, and the fasteners that hold it. */
export interface RidingShelf {
  /** The mass of the shelf with what it carries. */
  readonly mass: Mass;
  /** Fasteners that share the load. */
  readonly count: number;
  /** Which way the road pushes. */
  readonly way: RideWay;
}

/**
 * Force on each fastener of a shelf that the road pushes while it carries its weight: m g sqrt(c2 + 1) / n.
 *
 * @source EN 12195-1:2010, table 2: c along the floor and 1.0 downwards at once
 * @throws Refusal unless the mass is positive and there is a fastener
 * @example shelfRide({ mass: kg(10), count: 4, way: "forward" }) // 31.4 N
 */
export const shelfRide: Formula<RidingShelf, Force> = formula({
  id: "ride.shelf",
  title: "Force on each fastener of a shelf on the road",
  equation: String.raw`V=\frac{m g}{n}\sqrt{c^2+1}`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "shelf and what it carries", above: 0 },
    count: { symbol: "n", kind: Count, meaning: "fasteners", min: 1 },
    way: { symbol: "c", kind: RideWay, meaning: "which way" },
  },
  result: { symbol: "V", kind: Force, meaning: "on each fastener" },
  source: [cite("en-12195", "table 2, along the floor and 1.0 downwards"), cite("statics", "equal shares")],
  validity:
    "Fasteners alike, near the middle of the load; bumps that lift the wheels are the jerk of the case file.",
  compute: ({ mass, count, way }) => (mass * standardGravity * Math.hypot(slidingShares[way], 1)) / count,
});

/** A thing in a cradle that the road pushes one way. */
export interface CradledThing {
  /** The height of its centre of gravity above what it stands on. */
  readonly height: Length;
  /** The size of the thing, the way it is pushed. */
  readonly base: Length;
  /** Which way the road pushes. */
  readonly way: RideWay;
}

/**
 * Height of a cradle's wall over which a thing does not tip: h - b / (2 c); zero where it stands by itself.
 *
 * @source moments about the rim; EN 12195-1 for the push, as of a load that may tip
 * @throws Refusal unless height and base are positive
 * @example cradleRim({ height: mm(200), base: mm(200), way: "forward" }) // 75 mm
 */
export const cradleRim: Formula<CradledThing, Length> = formula({
  id: "ride.cradle.rim",
  title: "Height of a cradle's walls",
  equation: String.raw`r=\max\left(0,\ h-\frac{b}{2c}\right)`,
  inputs: {
    height: { symbol: "h", kind: Length, meaning: "its centre above what it stands on", above: 0 },
    base: { symbol: "b", kind: Length, meaning: "size of the thing that way", above: 0 },
    way: { symbol: "c", kind: RideWay, meaning: "which way" },
  },
  result: { symbol: "r", kind: Length, meaning: "rim above what it stands on, at least" },
  source: [cite("statics", "moments about the rim"), cite("en-12195", "table 2")],
  validity:
    "Weight in the middle of the thing, walls that do not bend; what jumps needs a strap or a lid as well.",
  compute: ({ height, base, way }) => Math.max(0, height - base / (2 * tiltingShares[way])),
});

/** A thing pushed against the foam of a wall. */
export interface PressedLining {
  /** The mass of the thing. */
  readonly mass: Mass;
  /** The width of the foam that bears the push, along the wall. */
  readonly width: Length;
  /** The height of the foam that bears the push, up the wall. */
  readonly rim: Length;
  /** Which way the road pushes. */
  readonly way: RideWay;
}

/**
 * Pressure of a thing on the foam of a cradle's wall: c m g / (w r).
 *
 * @source statics; EN 12195-1 for the push
 * @throws Refusal unless mass, width and rim are positive
 * @example cradlePressure(cradlePressure.read({ mass: "20 lb", width: "10 in", rim: "4 in", way: "sideways" })) // 1.724 kPa
 */
export const cradlePressure: Formula<PressedLining, Pressure> = formula({
  id: "ride.cradle.pressure",
  title: "Pressure on the foam of a cradle's wall",
  equation: String.raw`p=\frac{c\,m g}{w\,r}`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "thing", above: 0 },
    width: { symbol: "w", kind: Length, meaning: "width of the foam", above: 0 },
    rim: { symbol: "r", kind: Length, meaning: "height of the foam", above: 0 },
    way: { symbol: "c", kind: RideWay, meaning: "which way" },
  },
  result: { symbol: "p", kind: Pressure, meaning: "pressure on the foam" },
  source: [cite("statics", "force over area"), cite("en-12195", "table 2")],
  validity: "A steady push spread over the whole wall; a thing with feet or edges presses harder there.",
  compute: ({ mass, width, rim, way }) => (slidingShares[way] * mass * standardGravity) / (width * rim),
});
