import { type Formula, formula } from "../formula.js";
import { Count, Force, Mass, standardGravity } from "../quantity/index.js";
import { cite } from "../source.js";
import { RideWay, slidingShares } from "./ride-share.js";

/** A shelf or a platform with all that is on it, and the fasteners that hold it. */
export interface RidingShelf {
  /** With what it carries. */
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
