import type { BusinessInput } from "../../model/index.js";
import { type BusinessReview, hourInWords, jobsInWords } from "../../plan/index.js";
import { Money, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount } from "../amount.js";
import type { Finding } from "../finding.js";
import { verdictOf } from "../finding.js";
import { guarded } from "../guarded.js";

/** Common practice, no source: a case should have paid for itself within its second year. */
const patience = 24;

/** Whether building beats buying, and whether the case pays for itself. */
export function moneyFindings(input: BusinessInput, review: BusinessReview): readonly Finding[] {
  const about = (id: string, question: string) => ({
    id: `money.${id}`,
    topic: "money",
    subject: "whole case",
    question,
  });
  const { readyMade } = input.case.business;
  const { own, against, hour, built } = review;
  return [
    guarded(about("make-or-buy", "Is it cheaper to build than to buy?"), () => {
      const used = ratio(own.value.first.amount / readyMade.amount);
      return {
        verdict: verdictOf(used),
        answer: `The first case costs ${Money.show(own.value.first)} with tools and ${review.timeFrom === "timings" ? "timed" : "guessed"} hours at your own rate; a ready-made one costs ${Money.show(readyMade)}. ${hourInWords(review)}.`,
        demand: amount(Money, "first case, tools and own hours counted", own.value.first),
        capacity: amount(Money, "ready-made case", readyMade),
        ratio: used,
        because: [own, against, hour],
        cautions: [],
        source: [cite("engineering-economy", "make or buy")],
      };
    }),
    guarded(about("payback", "After how many jobs is it paid?"), () => {
      const { months, jobs } = built;
      const used = months === "never" ? undefined : ratio(months / patience);
      return {
        verdict: used === undefined ? "fails" : verdictOf(used),
        answer:
          months === "never"
            ? "A month's jobs leave no more than the interest: it is never paid."
            : `It is paid after ${jobsInWords(jobs)}, ${months} months at ${input.case.business.jobsPerMonth} jobs a month.`,
        ...(used === undefined ? {} : { ratio: used }),
        because: built.because,
        cautions: [],
        source: [cite("engineering-economy", "break-even"), cite("common-practice", "paid within two years")],
      };
    }),
  ];
}
