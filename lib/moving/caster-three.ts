import { type Formula, formula } from "../formula.js";
import { choice, type Kind } from "../quantity/index.js";
import { cite } from "../source.js";
import {
  allPush,
  atCorners,
  type CaseOnCasters,
  type CasterLoads,
  casterInputs,
  casterResult,
  type Loads,
  split,
} from "./case-on-casters.js";

/** A corner of the base. */
export type Corner = "front left" | "front right" | "back left" | "back right";
/** The four corners of a base. */
export const corners: readonly Corner[] = ["front left", "front right", "back left", "back right"];
export const Corner: Kind<Corner> = choice("corner", corners);

/** A case of which one caster hangs in the air. */
export interface CaseOnThreeCasters extends CaseOnCasters {
  /** The one that hangs. */
  readonly lifted: Corner;
}

/** The neighbour on the lifted side carries that whole side, the one at the lifted end that whole end. */
function onThree({ lifted, ...standing }: CaseOnThreeCasters): Loads {
  const { weight, right, back } = split(standing);
  const [liftedLeft, liftedFront] = [lifted.endsWith("left"), lifted.startsWith("front")];
  const side = weight * (liftedLeft ? 1 - right : right);
  const end = weight * (liftedFront ? 1 - back : back);
  return atCorners((left, front) => {
    if (left === liftedLeft) return front === liftedFront ? 0 : side;
    return front === liftedFront ? end : weight - side - end;
  });
}

/** Whether the case rests without the lifted caster, rather than rock onto it. */
export function restsOnThree(standing: CaseOnThreeCasters): boolean {
  return allPush(onThree(standing), standing);
}

/**
 * The force on each caster when one hangs over a dip and the stiff case rests on the other three.
 * With the weight in the middle the two beside the lifted one carry half each.
 *
 * @source statics, three supports
 * @throws Refusal unless mass and base are positive, or where the case would rock onto the lifted caster
 * @example loadsOnThree({ mass: kg(60), across: mm(500), deep: mm(400), fromLeft: mm(200), fromFront: mm(150), lifted: "back right" }) // frontLeft 132.4 N, frontRight 235.4 N, backLeft 220.6 N, backRight 0 N
 */
export const loadsOnThree: Formula<CaseOnThreeCasters, CasterLoads> = formula<
  CaseOnThreeCasters,
  CasterLoads
>({
  id: "caster.three",
  title: "Force on each caster when one is lifted",
  equation: String.raw`R_{\text{same side}} = m g\,\frac{x}{a},\quad R_{\text{same end}} = m g\,\frac{y}{d},\quad R_{\text{opposite}} = m g - R_{\text{same side}} - R_{\text{same end}}`,
  inputs: { ...casterInputs, lifted: { symbol: "j", kind: Corner, meaning: "the caster that hangs" } },
  result: casterResult,
  source: [cite("statics", "three supports of a stiff body")],
  validity:
    "A stiff case standing still; x and y are taken towards the lifted caster. A real case gives a little, which evens the loads out.",
  refuse: (standing) =>
    restsOnThree(standing)
      ? []
      : ["the case would rock off these three, the centre of gravity does not stand between them"],
  compute: onThree,
});
