import { type Formula, formula } from "../formula.js";
import { Count, Force, Mass, Ratio, standardGravity } from "../quantity/index.js";
import { cite } from "../source.js";
import { RideWay, slidingShares } from "./ride-share.js";

/** A load against a bulkhead. */
export interface BlockedLoad {
  /** Of the load. */
  readonly mass: Mass;
  /** Under it. */
  readonly friction: Ratio;
  /** Which way the road pushes. */
  readonly way: RideWay;
}

/**
 * Force on what a case leans against: (c - mu) m g. Zero where friction alone holds it.
 *
 * @source EN 12195-1:2010, blocking
 * @throws Refusal unless the mass is positive and friction from 0 to 1
 * @example blockingForce(blockingForce.read({ mass: "500 kg", friction: 0.3, way: "forward" })) // 2.452 kN
 */
export const blockingForce: Formula<BlockedLoad, Force> = formula({
  id: "lashing.block",
  title: "Force on a bulkhead",
  equation: String.raw`F_B=\max(0,\ (c-\mu)\,m g)`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "load", above: 0 },
    friction: { symbol: String.raw`\mu`, kind: Ratio, meaning: "friction on the floor", min: 0, max: 1 },
    way: { symbol: "c", kind: RideWay, meaning: "which way" },
  },
  result: { symbol: "F_B", kind: Force, meaning: "on the bulkhead" },
  source: [cite("en-12195", "blocking")],
  validity: "A load that touches the bulkhead; a gap turns the push into a blow.",
  compute: ({ mass, friction, way }) => Math.max(0, (slidingShares[way] - friction) * mass * standardGravity),
});

/** Straps to share a tension. */
export interface StrapSet {
  /** Of all straps together. */
  readonly tension: Force;
  /** Standard tension of one, STF on its label. */
  readonly each: Force;
}

/**
 * How many straps a tension takes, whole ones.
 *
 * @source EN 12195-1:2010, number of lashings
 * @throws Refusal for a negative tension, or a strap without one
 * @example strapCount({ tension: newton(5290), each: newton(4000) }) // 2
 */
export const strapCount: Formula<StrapSet, number> = formula({
  id: "lashing.straps",
  title: "Straps needed",
  equation: String.raw`n=\left\lceil\frac{n F_T}{S_{TF}}\right\rceil`,
  inputs: {
    tension: { symbol: "n F_T", kind: Force, meaning: "tension of all straps together", min: 0 },
    each: { symbol: "S_{TF}", kind: Force, meaning: "standard tension of one strap", above: 0 },
  },
  result: { symbol: "n", kind: Count, meaning: "straps" },
  source: [cite("en-12195", "number of lashings")],
  validity: "The standard tension (STF) printed on the strap, not its breaking strength.",
  compute: ({ tension, each }) => Math.ceil(tension / each - 1e-9),
});
