/** A lift by two people, each share judged as a lift of its own. */
import type { WorkedLine } from "../formula.js";
import { judgeLift, type Lift, type LiftVerdict, liftCaution } from "./lift.js";
import { type LoadBetweenTwo, type PairShares, pairShares } from "./pair-shares.js";

/** What each of the two carries, and what the equation says of it. */
export interface PairVerdict {
  /** How the load is shared. */
  readonly shares: WorkedLine & { readonly value: PairShares };
  /** The lift of the first, lower person. */
  readonly first: LiftVerdict;
  /** The lift of the second person. */
  readonly second: LiftVerdict;
  /** To be shown with any of these figures. */
  readonly caution: string;
}

/** Holds for every lift by two. */
export const pairCaution: string = `The lifting equation is made for one person; comparing each share with it is common practice for a team, not part of the equation. Two people rarely lift at the same moment: agree on a word, and let the stronger take the heavier end. ${liftCaution}`;

/**
 * Shares a load between two people and judges each share.
 *
 * @param lifts how each of the two lifts
 * @throws RangeError as `pairShares` and `judgeLift` do
 * @example judgePairLift(load, { first: lift, second: lift }).first.index.value
 */
export function judgePairLift(
  load: LoadBetweenTwo,
  lifts: { readonly first: Lift; readonly second: Lift },
): PairVerdict {
  const shares = pairShares.worked(load);
  return {
    shares,
    first: judgeLift(shares.value.first, lifts.first),
    second: judgeLift(shares.value.second, lifts.second),
    caution: pairCaution,
  };
}
