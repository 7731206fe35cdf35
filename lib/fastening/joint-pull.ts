import { type Formula, formula } from "../formula.js";
import { choice, Force, Length, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { headPullThrough } from "./pull-through.js";

/** One rivet through ply, pulled along its axis. */
export interface JointPullInputs {
  /** Tensile strength of one rivet as its maker states it. */
  readonly rivetTension: Force;
  /** What bears on the ply: the washer, or the bare head or tail. */
  readonly bearingDiameter: Length;
  readonly plyThickness: Length;
  /** Of the ply, on oven-dry mass. */
  readonly plyGravity: Ratio;
}

/** Both ways one rivet may be pulled out, and the first. */
export type JointPull = {
  readonly strength: Force;
  readonly governs: "rivet tension" | "pull through ply";
  readonly rivet: Force;
  /** An allowable value that carries its own margin. */
  readonly ply: Force;
};

/**
 * Pull-out strength of one rivet in ply: the lesser of the rivet's own tension and the pull of its washer,
 * head or tail through the ply. The ply's value is a code allowable: on the safe side of a strength.
 *
 * @throws RangeError for inputs that are not positive or a specific gravity outside 0.3 to 0.8
 * @example rivetJointPull(rivetJointPull.read({ rivetTension: "50 lbf", bearingDiameter: "1 in",
 *   plyThickness: "1/2 in", plyGravity: 0.5 })) // strength 222.4 N, governs rivet tension, rivet 222.4 N, ply 1.205 kN
 */
export const rivetJointPull: Formula<JointPullInputs, JointPull> = formula<JointPullInputs, JointPull>({
  id: "rivet.joint.pull",
  title: "Pull-out strength of one rivet in ply",
  equation: String.raw`F = \min(F_{rivet},\; W_H),\quad W_H = 690\,\mathrm{psi}\,\pi\,D_H\,G^2\,\min(t,\,2.5\,D_H)`,
  inputs: {
    rivetTension: { symbol: "F_{rivet}", kind: Force, meaning: "tensile strength of the rivet", above: 0 },
    bearingDiameter: { symbol: "D_H", kind: Length, meaning: "washer, or head or tail", above: 0 },
    plyThickness: { symbol: "t", kind: Length, meaning: "thickness of the ply", above: 0 },
    plyGravity: { symbol: "G", kind: Ratio, meaning: "specific gravity of the ply", min: 0.3, max: 0.8 },
  },
  result: {
    strength: { symbol: "F", kind: Force, meaning: "strength of the joint" },
    governs: {
      symbol: String.raw`\text{governs}`,
      kind: choice("what gives first", ["rivet tension", "pull through ply"]),
      meaning: "what gives first",
    },
    rivet: { symbol: "F_{rivet}", kind: Force, meaning: "rivet tension" },
    ply: { symbol: "W_H", kind: Force, meaning: "pull through the ply, allowable" },
  },
  source: [cite("nds", "12.2.5, eq. 12.2-6"), cite("iso-15977", "tensile load, as the maker states it")],
  validity: "A straight pull; a rivet that is also pried or shaken loosens long before.",
  warn: (_inputs, { governs }) =>
    governs === "pull through ply"
      ? [
          "pull-through is a code value for nail and screw heads, not for rivets in ply: pull a few of your own to be sure",
        ]
      : [],
  compute: ({ rivetTension: rivet, bearingDiameter, plyThickness, plyGravity }) => {
    const ply = headPullThrough({
      specificGravity: plyGravity,
      headDiameter: bearingDiameter,
      thickness: plyThickness,
    });
    return {
      strength: Math.min(rivet, ply),
      governs: rivet < ply ? "rivet tension" : "pull through ply",
      rivet,
      ply,
    };
  },
});
