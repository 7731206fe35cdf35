/** Which findings a change must mend, and which of them hold, the upper end of their interval included. */
import type { Finding, Review, Tier } from "../findings/index.js";

/** What decides whether a finding holds for sure. */
export type Judged = Pick<Finding, "verdict" | "ratio" | "interval">;

/** Whether it holds, with all that the builder's own scatter leaves open. */
export function holdsForSure({ verdict, interval }: Judged): boolean {
  return verdict === "holds" && (interval === undefined || interval.high <= 1);
}

/** Whether it fails, or may: what nobody knows yet does not fail. */
export function mayFail(finding: Judged): boolean {
  return finding.verdict !== "unknown" && !holdsForSure(finding);
}

/** How far over it may be: demand over capacity at the upper end of its interval; nothing for a plain no. */
export function overBy({ ratio, interval }: Judged): number | undefined {
  return interval ? Math.max(interval.high, ratio ?? 0) : ratio;
}

/** Where somebody is hurt or something breaks. */
export const graveTiers: readonly Tier[] = ["safety", "strength"];

/** Findings of a whole review that may fail, of the tiers that are looked at. */
export function failingOf(review: Pick<Review, "steps">, tiers: readonly Tier[]): readonly Finding[] {
  return review.steps
    .filter(({ tier }) => tiers.includes(tier))
    .flatMap(({ ask }) => ask())
    .filter(mayFail);
}
