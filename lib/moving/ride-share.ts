import { type Formula, formula } from "../formula.js";
import { choice, type Kind, Ratio } from "../quantity/index.js";
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
