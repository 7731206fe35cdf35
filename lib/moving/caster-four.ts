import { type Formula, formula } from "../formula.js";
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

function onFour(standing: CaseOnCasters): Loads {
  const { weight, right, back } = split(standing);
  return atCorners((left, front) => {
    const side = left ? 1 - right : right;
    const end = front ? 1 - back : back;
    return weight * (side / 2 + end / 2 - 1 / 4);
  });
}

/** Whether all four casters of a stiff case on equal springs touch. */
export function restsOnFour(standing: CaseOnCasters): boolean {
  return allPush(onFour(standing), standing);
}

/**
 * The force on each of four casters on an even floor: a stiff case on four equally springy casters.
 * Statics alone does not settle four supports; equal springs are the usual assumption.
 *
 * @source statics; stiff body on equal springs
 * @throws Refusal unless mass and base are positive, or where a caster would lift off
 * @example loadsOnFour({ mass: kg(60), across: mm(500), deep: mm(400), fromLeft: mm(250), fromFront: mm(200) }) // frontLeft 147.1 N, frontRight 147.1 N, backLeft 147.1 N, backRight 147.1 N
 */
export const loadsOnFour: Formula<CaseOnCasters, CasterLoads> = formula<CaseOnCasters, CasterLoads>({
  id: "caster.four",
  title: "Force on each of four casters",
  equation: String.raw`R = m g\left(\tfrac14 \pm \tfrac12\Bigl(\frac{x}{a} - \tfrac12\Bigr) \pm \tfrac12\Bigl(\frac{y}{d} - \tfrac12\Bigr)\right)`,
  inputs: casterInputs,
  result: casterResult,
  source: [cite("statics", "stiff body on four equal springs")],
  validity:
    "An even floor and four casters alike; on a real floor one of them often hangs: see three casters.",
  refuse: (standing) =>
    restsOnFour(standing) ? [] : ["the centre of gravity is so far off the middle that a caster would lift"],
  compute: onFour,
});
