/** A platform that stands out from a wall. */
import { type Formula, formula } from "../formula.js";
import { Count, Force, Length, Moment, Pressure } from "../quantity/index.js";
import { cite } from "../source.js";

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
