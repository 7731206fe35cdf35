/** What holds a lid open: the force in its stays, from its weight and from whoever or whatever pushes it. */
import { type Formula, formula } from "../formula.js";
import { Angle, Count, degree, Force, Length, Mass, standardGravity } from "../quantity/index.js";
import { cite } from "../source.js";

/** A lid or a flap that stays hold open. */
export interface HeldLid {
  /** Of the lid, with what is on it. */
  readonly mass: Mass;
  /** From its hinges to its centre of gravity. */
  readonly reach: Length;
  /** Of the open lid against the level; beyond a right angle it leans over its hinges. */
  readonly angle: Angle;
  /** Square to the lid, at its free edge, the way its weight turns it. */
  readonly push: Force;
  /** From its hinges to its free edge. */
  readonly width: Length;
  /** From its hinges to where a stay is fixed. */
  readonly arm: Length;
  /** Between a stay and the lid. */
  readonly pull: Angle;
  /** How many stays there are. */
  readonly stays: number;
}

/**
 * The force in each stay of an open lid: moments about its hinges, shared alike.
 *
 * @source plain statics: moments about the hinges
 * @throws Refusal unless arm, width, reach and mass are positive and the stay pulls at an angle
 * @example lidStay({ mass: kg(4), reach: mm(200), angle: degree(0), push: newton(0), width: mm(400), arm: mm(300), pull: degree(45), stays: 1 }) // 36.98 N
 */
export const lidStay: Formula<HeldLid, Force> = formula<HeldLid, Force>({
  id: "lid.stay",
  title: "Force in a stay of an open lid",
  equation: String.raw`F=\frac{m\,g\,r\,|\cos\theta|+P\,b}{n\,a\,\sin\varphi}`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "lid", above: 0 },
    reach: { symbol: "r", kind: Length, meaning: "hinges to its centre of gravity", above: 0 },
    angle: {
      symbol: String.raw`\theta`,
      kind: Angle,
      meaning: "open lid against the level",
      min: 0,
      max: degree(180),
    },
    push: { symbol: "P", kind: Force, meaning: "push at its free edge", min: 0 },
    width: { symbol: "b", kind: Length, meaning: "hinges to its free edge", above: 0 },
    arm: { symbol: "a", kind: Length, meaning: "hinges to the stay on the lid", above: 0 },
    pull: {
      symbol: String.raw`\varphi`,
      kind: Angle,
      meaning: "between stay and lid",
      above: 0,
      max: degree(90),
    },
    stays: { symbol: "n", kind: Count, meaning: "stays", min: 1 },
  },
  result: { symbol: "F", kind: Force, meaning: "force in each stay" },
  source: [cite("statics", "moments about the hinges")],
  validity: "A lid at rest on its stays; one that is thrown open or let fall pulls several times as hard.",
  compute: ({ mass, reach, angle, push, width, arm, pull, stays }) =>
    (mass * standardGravity * reach * Math.abs(Math.cos(angle)) + push * width) /
    (stays * arm * Math.sin(pull)),
});
