/** The load on each caster of a case on four, or on the three that touch, and what one may carry. */
import { type Formula, type FormulaSymbols, formula, type WorkedLine } from "../formula.js";
import { choice, Force, type Kind, Length, Mass, Ratio, standardGravity } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import { cite } from "../source.js";

/** A case on four casters, seen from above. */
export interface CaseOnCasters {
  /** Case and all that is in it. */
  readonly mass: Mass;
  /** Left to right, caster to caster. */
  readonly across: Length;
  /** Front to back, caster to caster. */
  readonly deep: Length;
  /** The distance from the left casters to the centre of gravity. */
  readonly fromLeft: Length;
  /** The distance from the front casters to the centre of gravity. */
  readonly fromFront: Length;
}

/** The force on each caster. */
export type CasterLoads = {
  /** The upward force at the front left. */
  readonly frontLeft: Force;
  /** The upward force at the front right. */
  readonly frontRight: Force;
  /** The upward force at the back left. */
  readonly backLeft: Force;
  /** The upward force at the back right. */
  readonly backRight: Force;
};

/** The same with bare numbers. */
export type Loads = { readonly [Caster in keyof CasterLoads]: number };

/** One figure for each corner. */
function atCorners(load: (left: boolean, front: boolean) => number): Loads {
  return {
    frontLeft: load(true, true),
    frontRight: load(false, true),
    backLeft: load(true, false),
    backRight: load(false, false),
  };
}

/** The weight, and how much of it rests on the right and on the back. */
export function split({
  mass,
  across,
  deep,
  fromLeft,
  fromFront,
}: CaseOnCasters): Record<"weight" | "right" | "back", number> {
  return { weight: mass * standardGravity, right: fromLeft / across, back: fromFront / deep };
}

/** Whether no caster would have to pull the case down, beyond the rounding of sums. */
function allPush(loads: Loads, { mass }: CaseOnCasters): boolean {
  return Object.values(loads).every((load) => load >= -1e-9 * mass);
}

/** The symbols of a case on casters. */
const casterInputs: FormulaSymbols<CaseOnCasters> = {
  mass: { symbol: "m", kind: Mass, meaning: "mass", above: 0 },
  across: { symbol: "a", kind: Length, meaning: "left to right between casters", above: 0 },
  deep: { symbol: "d", kind: Length, meaning: "front to back between casters", above: 0 },
  fromLeft: { symbol: "x", kind: Length, meaning: "left casters to the centre of gravity" },
  fromFront: { symbol: "y", kind: Length, meaning: "front casters to the centre of gravity" },
};

/** The symbols of the force on each caster. */
const casterResult: FormulaSymbols<CasterLoads> = {
  frontLeft: { symbol: "R_{fl}", kind: Force, meaning: "on the front left caster" },
  frontRight: { symbol: "R_{fr}", kind: Force, meaning: "on the front right caster" },
  backLeft: { symbol: "R_{bl}", kind: Force, meaning: "on the back left caster" },
  backRight: { symbol: "R_{br}", kind: Force, meaning: "on the back right caster" },
};

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

/** A way the case can stand, with the force on its most loaded caster. */
export interface CasterStand {
  /** How many touch the floor. */
  readonly on: "four casters" | "three casters";
  /** The force on the caster that carries most. */
  readonly greatest: Force;
  /** The force on every caster. */
  readonly worked: WorkedLine & { readonly value: CasterLoads };
}

/**
 * Every way a case can stand on its casters, the heaviest load on one caster first. A caster that the
 * case would rock onto cannot be the one that hangs.
 *
 * @throws Refusal where the centre of gravity does not stand between the casters
 * @example casterStands({ mass: kg(60), across: mm(500), deep: mm(400), fromLeft: mm(250), fromFront: mm(200) })[0]?.greatest // 294.2
 */
export function casterStands(standing: CaseOnCasters): CasterStand[] {
  const lifted = corners.filter((corner) => restsOnThree({ ...standing, lifted: corner }));
  if (lifted.length === 0)
    throw new Refusal("casters: the centre of gravity does not stand between the casters, the case tips");
  const three = lifted.map((corner) =>
    stand("three casters", loadsOnThree.worked({ ...standing, lifted: corner })),
  );
  const four = restsOnFour(standing) ? [stand("four casters", loadsOnFour.worked(standing))] : [];
  return [...three, ...four].sort((a, b) => b.greatest - a.greatest);
}

function stand(on: CasterStand["on"], worked: CasterStand["worked"]): CasterStand {
  return { on, greatest: Force.si(Math.max(...Object.values(worked.value))), worked };
}

/** A loaded case and how roughly it is used. */
export interface CasterDuty {
  /** Case and all that is in it. */
  readonly mass: Mass;
  /** The service factor: 1 for a smooth indoor floor, up to 1.5 for thresholds, yards and ramps. */
  readonly serviceFactor: Ratio;
}

/**
 * The rating each of four casters should have: a third of the loaded case, since one of the four may hang,
 * times a service factor.
 *
 * @source common practice in the trade
 * @throws Refusal unless the mass is positive and the factor from 1 to 3
 * @example casterRating({ mass: kg(90), serviceFactor: ratio(1.5) }) // 45 kg
 */
export const casterRating: Formula<CasterDuty, Mass> = formula({
  id: "caster.rating",
  title: "Rating needed of each of four casters",
  equation: String.raw`m_c = \tfrac13\, m\, k`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "loaded case", above: 0 },
    serviceFactor: { symbol: "k", kind: Ratio, meaning: "service factor", min: 1, max: 3 },
  },
  result: { symbol: "m_c", kind: Mass, meaning: "rating of one caster, at least" },
  source: [cite("common-practice", "a third of the load a caster")],
  validity:
    "Weight near the middle; compare it with the worst three-caster load, which can be more than a third.",
  compute: ({ mass, serviceFactor }) => (mass * serviceFactor) / 3,
});
