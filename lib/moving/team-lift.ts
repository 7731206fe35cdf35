/** A lift by several people, the largest share judged as a lift of its own. */
import type { WorkedLine } from "../formula.js";
import { judgeLift, type Lift, type LiftVerdict, liftCaution } from "./lift.js";
import { type TeamLoad, type TeamShares, teamShares } from "./team-shares.js";

/** What each of a team carries, and what the equation says of the most loaded. */
export interface TeamVerdict {
  /** How the load is shared. */
  readonly shares: WorkedLine & { readonly value: TeamShares };
  /** Name of the most loaded person. */
  readonly who: string;
  /** The lift of that person. */
  readonly worst: LiftVerdict;
  /** To be shown with any of these figures. */
  readonly caution: string;
}

/** Holds for every lift by more than one. */
export const teamCaution: string = `The lifting equation is made for one person; comparing each share with it is common practice for a team, not part of the equation. People rarely lift at the same moment: agree on a word, and let the strongest take the heaviest place. ${liftCaution}`;

/**
 * Shares a load among people and judges the largest share.
 *
 * @param lift how each of them lifts
 * @throws Refusal as `teamShares` and `judgeLift` do
 * @example
 * const hands = { reach: mm(350), height: mm(400), twist: degree(0) };
 * const often = { rate: LiftRate.of(0.2, "lifts/min"), duration: "up to 1 h", grip: "good" } as const;
 * const lift = { start: hands, end: { ...hands, height: mm(900) }, ...often };
 * const people = [-400, 400].map((x) => ({ name: x < 0 ? "left" : "right", x: mm(x), y: mm(0) }));
 * judgeTeamLift({ mass: kg(36), x: mm(0), y: mm(0), people }, lift).worst.index.value // 1.345
 */
export function judgeTeamLift(load: TeamLoad, lift: Lift): TeamVerdict {
  const shares = teamShares.worked(load);
  const { greatest, shares: each } = shares.value;
  const who = load.people[each.indexOf(greatest)]?.name ?? "";
  return { shares, who, worst: judgeLift(greatest, lift), caution: teamCaution };
}
