/** The cheapest change that mends a finding, tried and told in words. */
import { styleOf } from "../findings/index.js";
import type { Job } from "../job/index.js";
import { Money, money } from "../quantity/index.js";
import { bends, questionsOfIds } from "./steps.js";
import { answersOf } from "./trial.js";
import { builtThenCheapest, type Mending, triedFor } from "./tried.js";

/**
 * The cheapest change that mends a finding when it is tried, what is built or bought before a rule that people must
 * keep. Nothing where nothing mends it, or where panels or boxes would bend once a change: that takes long.
 *
 * @param id of the finding
 */
export function cheapestMending(job: Job, id: string): Mending | undefined {
  if (bends(id)) return undefined;
  const finding = answersOf(job, questionsOfIds(job, [id])).find((one) => one.id === id);
  const found = finding ? [...triedFor(job, finding, styleOf(job.case))].flatMap((one) => one ?? []) : [];
  return found.sort(builtThenCheapest)[0];
}

/** A change that was tried, as sentences: what to do, and what it then comes to. */
export function mendingInWords({ words, moreCost, unpriced }: Mending, currency: string): string {
  return `${words} Tried: with it this holds${unpriced === undefined ? costInWords(moreCost, currency) : `; your tables do not price ${unpriced}`}.`;
}

/** What mends a finding of a job, in words; a fault in the trying is told in its place. */
export function triedRemedy(job: Job): (id: string) => string | undefined {
  return (id) => {
    try {
      const mending = cheapestMending(job, id);
      return mending && mendingInWords(mending, job.review.bill.total.currency);
    } catch (error) {
      return `What mends it could not be tried, please report: ${(error as Error).message}.`;
    }
  };
}

/** Less than this is no difference in cost. */
const leastCost = 0.005;

function costInWords(more: number, currency: string): string {
  if (Math.abs(more) < leastCost) return " and costs no more";
  const amount = Money.show(money(Number(Math.abs(more).toFixed(2)), currency));
  return `, for ${amount} ${more > 0 ? "more" : "less"}`;
}
