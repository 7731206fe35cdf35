/** Whether building beats buying, and whether the case pays for itself. */
import type { BusinessInput } from "../model/index.js";
import { type BusinessReview, hourInWords, jobsInWords } from "../plan/index.js";
import { Money } from "../quantity/index.js";
import { cite } from "../source.js";
import { amount, counted } from "./amount.js";
import { type Question, question, type Subjects } from "./question.js";
import { says, where, whole } from "./subjects.js";

/** A case that is to earn something. */
const earningCase: Subjects<undefined> = where(says("business"), whole("whole case"));

/** A case and what it earns, worked out once. */
export interface EarningInput extends BusinessInput {
  /** What it costs, saves and earns. */
  readonly business: () => BusinessReview;
}

const makeOrBuy: Question<EarningInput> = question({
  id: "money.make-or-buy",
  about: earningCase,
  ask: "Is it cheaper to build than to buy?",
  tier: "feel",
  cautions: [],
  answer: (input: EarningInput) => {
    const { readyMade } = input.case.business;
    const review = input.business();
    const { own, against, hour } = review;
    const { first } = own.value;
    const hours = review.timeFrom === "timings" ? "timed" : "guessed";
    return {
      demand: amount(Money, "first case, including tools and own hours", first),
      capacity: amount(Money, "ready-made case", readyMade),
      facts: `The first case costs ${Money.show(first)} with tools and ${hours} hours at your own rate; a ready-made one costs ${Money.show(readyMade)}. ${hourInWords(review)}.`,
      because: [own, against, hour],
      limit: cite("engineering-economy", "make or buy"),
    };
  },
});

/** Common practice, no source: a case should have paid for itself within its second year. */
const patience = 24;

const payback: Question<EarningInput> = question({
  id: "money.payback",
  about: earningCase,
  ask: "After how many jobs is it paid?",
  tier: "feel",
  cautions: [],
  answer: (input: EarningInput) => {
    const { months, jobs, because } = input.business().built;
    const limit = cite("common-practice", "paid within two years");
    const sources = [cite("engineering-economy", "break-even")];
    if (months === "never") {
      const facts = "A month's jobs leave no more than the interest: it is never paid.";
      return { plainNo: true, facts, because, limit, sources };
    }
    const facts = `It is paid after ${jobsInWords(jobs)}, ${counted(months, "month", "months")} at ${counted(input.case.business.jobsPerMonth, "job", "jobs")} a month.`;
    return { ratio: months / patience, facts, because, limit, sources };
  },
});

/** Every question about money. */
export const moneyQuestions: readonly Question<EarningInput>[] = [makeOrBuy, payback];
