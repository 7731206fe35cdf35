/** How many jobs, and how many months, until a case has earned what it cost. */
import { type Formula, type FormulaSymbols, formula } from "../formula.js";
import { Count, Money, Ratio, wholeUp } from "../quantity/index.js";
import { cite } from "../source.js";
import { periodsToRepay } from "./annuity.js";
import { mixedCurrencies } from "./currency.js";
import { type OrNever, orNever } from "./never.js";

/** What a case costs and what a job with it brings. */
export interface JobMoney {
  /** The case and the tools, paid at the start. */
  readonly outlay: Money;
  /** Of one job, or what the job would cost with a hired case. */
  readonly income: Money;
  /** Of one job: travel, wear, cleaning, one's own hours. */
  readonly running: Money;
}

/** When the outlay is earned back, counted in jobs. */
export type JobsToPayBack = {
  /** Left over from one job; negative where it loses. */
  readonly margin: Money;
  /** Whole jobs, or never. */
  readonly jobs: OrNever<number>;
};

const inputs: FormulaSymbols<JobMoney> = {
  outlay: { symbol: "I", kind: Money, meaning: "case and tools", min: 0 },
  income: { symbol: "p", kind: Money, meaning: "income of one job", min: 0 },
  running: { symbol: "v", kind: Money, meaning: "running cost of one job", min: 0 },
};

const refuse = ({ outlay, income, running }: JobMoney): string[] =>
  mixedCurrencies([outlay, income, running]);

/**
 * Jobs until a case has earned its cost: ceil(outlay / (income - running cost)), or never where a job
 * leaves nothing over.
 *
 * @source engineering economy, break-even
 * @throws RangeError for negative amounts, or two currencies
 * @example jobsToPayBack({ outlay: money(1500, "USD"), income: money(220, "USD"), running: money(90, "USD") }) // margin 130.00 USD, jobs 12
 */
export const jobsToPayBack: Formula<JobMoney, JobsToPayBack> = formula<JobMoney, JobsToPayBack>({
  id: "payback.jobs",
  title: "Jobs until the case is paid",
  equation: String.raw`N = \left\lceil \frac{I}{p - v} \right\rceil`,
  inputs,
  result: {
    margin: { symbol: "p - v", kind: Money, meaning: "left over from one job" },
    jobs: { symbol: "N", kind: orNever(Count), meaning: "jobs until the case is paid" },
  },
  source: [cite("engineering-economy", "break-even point")],
  validity: "Jobs alike; the case lasts that long.",
  refuse,
  compute: ({ outlay, income, running }) => {
    const margin = income.amount - running.amount;
    return {
      margin: { amount: margin, currency: outlay.currency },
      jobs: outlay.amount === 0 ? 0 : margin > 0 ? wholeUp(outlay.amount / margin) : "never",
    };
  },
});

/** The same with the calendar and the price of money. */
export interface JobMoneyByMonth extends JobMoney {
  /** On average. */
  readonly jobsPerMonth: Ratio;
  /** For one month, as a share; 0 where the money would lie idle. */
  readonly monthlyInterest: Ratio;
}

/** When the outlay is earned back, counted in months. */
export type MonthsToPayBack = {
  /** Left over from a month's jobs. */
  readonly monthly: Money;
  /** Whole months, or never. */
  readonly months: OrNever<number>;
};

/**
 * Whole months until a case has earned its cost and the interest on it: the number of payments of an
 * annuity, n = -ln(1 - I i / A) / ln(1 + i) rounded up, with A what a month's jobs leave over; I / A
 * without interest. Never where a month leaves no more than the interest.
 *
 * @source engineering economy, uniform series
 * @throws RangeError for negative amounts, rates or interest, or two currencies
 * @example monthsToPayBack({ outlay: money(1500, "USD"), income: money(220, "USD"), running: money(90, "USD"), jobsPerMonth: ratio(1), monthlyInterest: ratio(0.01) }) // monthly 130.00 USD, months 13
 */
export const monthsToPayBack: Formula<JobMoneyByMonth, MonthsToPayBack> = formula<
  JobMoneyByMonth,
  MonthsToPayBack
>({
  id: "payback.months",
  title: "Months until the case is paid",
  equation: String.raw`n = \left\lceil \frac{-\ln\left(1 - I i / A\right)}{\ln(1 + i)} \right\rceil,\qquad A = k\,(p - v)`,
  inputs: {
    ...inputs,
    jobsPerMonth: { symbol: "k", kind: Ratio, meaning: "jobs a month", min: 0 },
    monthlyInterest: { symbol: "i", kind: Ratio, meaning: "interest for a month", min: 0, max: 1 },
  },
  result: {
    monthly: { symbol: "A", kind: Money, meaning: "left over from a month's jobs" },
    months: { symbol: "n", kind: orNever(Count), meaning: "months until the case is paid" },
  },
  source: [cite("engineering-economy", "uniform series, present worth")],
  validity: "Jobs spread evenly, paid at the end of each month; prices that stay.",
  refuse,
  compute: ({ outlay, income, running, jobsPerMonth, monthlyInterest }) => {
    const monthly = jobsPerMonth * (income.amount - running.amount);
    const periods = periodsToRepay(outlay.amount, monthly, monthlyInterest);
    return {
      monthly: { amount: monthly, currency: outlay.currency },
      months: periods === "never" ? "never" : wholeUp(periods),
    };
  },
});
