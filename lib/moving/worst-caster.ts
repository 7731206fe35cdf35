import type { WorkedLine } from "../formula.js";
import { Force } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import type { CaseOnCasters, CasterLoads } from "./case-on-casters.js";
import { loadsOnFour, restsOnFour } from "./caster-four.js";
import { corners, loadsOnThree, restsOnThree } from "./caster-three.js";

/** A way the case can stand, with the force on its most loaded caster. */
export interface CasterStand {
  /** How many touch the floor. */
  readonly on: "four casters" | "three casters";
  /** On the caster that carries most. */
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
