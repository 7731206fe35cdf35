/** What each of four casters at the corners of a rectangle carries: on an even floor, and on three of them. */
import { type Formula, type FormulaSymbols, formula } from "../formula.js";
import { choice, Force, type Kind, Length, Mass, standardGravity } from "../quantity/index.js";
import { cite } from "../source.js";

/** A case on four casters, seen from above. */
export interface CaseOnCasters {
  readonly mass: Mass;
  /** Left to right, caster to caster. */
  readonly across: Length;
  /** Front to back, caster to caster. */
  readonly deep: Length;
  /** From the left casters to the centre of gravity. */
  readonly fromLeft: Length;
  /** From the front casters to the centre of gravity. */
  readonly fromFront: Length;
}

/** A corner of the base. */
export type Corner = "front left" | "front right" | "back left" | "back right";
export const corners: readonly Corner[] = ["front left", "front right", "back left", "back right"];
export const Corner: Kind<Corner> = choice("corner", corners);

/** The force on each caster. */
export type CasterLoads = {
  readonly frontLeft: Force;
  readonly frontRight: Force;
  readonly backLeft: Force;
  readonly backRight: Force;
};

/** A case of which one caster hangs in the air. */
export interface CaseOnThreeCasters extends CaseOnCasters {
  readonly lifted: Corner;
}

type Loads = { readonly [Caster in keyof CasterLoads]: number };

function atCorners(load: (left: boolean, front: boolean) => number): Loads {
  return {
    frontLeft: load(true, true),
    frontRight: load(false, true),
    backLeft: load(true, false),
    backRight: load(false, false),
  };
}

/** The weight, and how much of it rests on the right and on the back. */
function split({
  mass,
  across,
  deep,
  fromLeft,
  fromFront,
}: CaseOnCasters): Record<"weight" | "right" | "back", number> {
  return { weight: mass * standardGravity, right: fromLeft / across, back: fromFront / deep };
}

function onFour(standing: CaseOnCasters): Loads {
  const { weight, right, back } = split(standing);
  return atCorners((left, front) => {
    const side = left ? 1 - right : right;
    const end = front ? 1 - back : back;
    return weight * (side / 2 + end / 2 - 1 / 4);
  });
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

/** Whether no caster would have to pull the case down, beyond the rounding of sums. */
function allPush(loads: Loads, { mass }: CaseOnCasters): boolean {
  return Object.values(loads).every((load) => load >= -1e-9 * mass);
}

/** Whether all four casters of a stiff case on equal springs touch. */
export function restsOnFour(standing: CaseOnCasters): boolean {
  return allPush(onFour(standing), standing);
}

/** Whether the case rests without the lifted caster, rather than rock onto it. */
export function restsOnThree(standing: CaseOnThreeCasters): boolean {
  return allPush(onThree(standing), standing);
}

const inputs: FormulaSymbols<CaseOnCasters> = {
  mass: { symbol: "m", kind: Mass, meaning: "mass", above: 0 },
  across: { symbol: "a", kind: Length, meaning: "left to right between casters", above: 0 },
  deep: { symbol: "d", kind: Length, meaning: "front to back between casters", above: 0 },
  fromLeft: { symbol: "x", kind: Length, meaning: "left casters to the centre of gravity" },
  fromFront: { symbol: "y", kind: Length, meaning: "front casters to the centre of gravity" },
};

const result: FormulaSymbols<CasterLoads> = {
  frontLeft: { symbol: "R_{fl}", kind: Force, meaning: "on the front left caster" },
  frontRight: { symbol: "R_{fr}", kind: Force, meaning: "on the front right caster" },
  backLeft: { symbol: "R_{bl}", kind: Force, meaning: "on the back left caster" },
  backRight: { symbol: "R_{br}", kind: Force, meaning: "on the back right caster" },
};

/**
 * The force on each of four casters on an even floor: a stiff case on four equally springy casters.
 * Statics alone does not settle four supports; equal springs are the usual assumption.
 *
 * @source statics; stiff body on equal springs
 * @throws RangeError unless mass and base are positive, or where a caster would lift off
 * @example loadsOnFour({ mass: kg(60), across: mm(500), deep: mm(400), fromLeft: mm(250), fromFront: mm(200) }).frontLeft // 147.1 N
 */
export const loadsOnFour: Formula<CaseOnCasters, CasterLoads> = formula<CaseOnCasters, CasterLoads>({
  id: "caster.four",
  title: "Force on each of four casters",
  equation: String.raw`R = m g\left(\tfrac14 \pm \tfrac12\Bigl(\frac{x}{a} - \tfrac12\Bigr) \pm \tfrac12\Bigl(\frac{y}{d} - \tfrac12\Bigr)\right)`,
  inputs,
  result,
  source: [cite("statics", "stiff body on four equal springs")],
  validity:
    "An even floor and four casters alike; on a real floor one of them often hangs: see three casters.",
  refuse: (standing) =>
    restsOnFour(standing) ? [] : ["the centre of gravity is so far off the middle that a caster would lift"],
  compute: onFour,
});

/**
 * The force on each caster when one hangs over a dip and the stiff case rests on the other three.
 * With the weight in the middle the two beside the lifted one carry half each.
 *
 * @source statics, three supports
 * @throws RangeError unless mass and base are positive, or where the case would rock onto the lifted caster
 * @example loadsOnThree({ mass: kg(60), across: mm(500), deep: mm(400), fromLeft: mm(200), fromFront: mm(150), lifted: "back right" }).frontRight // 235.4 N
 */
export const loadsOnThree: Formula<CaseOnThreeCasters, CasterLoads> = formula<
  CaseOnThreeCasters,
  CasterLoads
>({
  id: "caster.three",
  title: "Force on each caster when one is lifted",
  equation: String.raw`R_{\text{same side}} = m g\,\frac{x}{a},\quad R_{\text{same end}} = m g\,\frac{y}{d},\quad R_{\text{opposite}} = m g - R_{\text{same side}} - R_{\text{same end}}`,
  inputs: { ...inputs, lifted: { symbol: "j", kind: Corner, meaning: "the caster that hangs" } },
  result,
  source: [cite("statics", "three supports of a stiff body")],
  validity:
    "A stiff case standing still; x and y are taken towards the lifted caster. A real case gives a little, which evens the loads out.",
  refuse: (standing) =>
    restsOnThree(standing)
      ? []
      : ["the case would rock off these three, the centre of gravity does not stand between them"],
  compute: onThree,
});
