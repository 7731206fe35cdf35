/** When a case is paid back, and how surely. */
import { type Formula, type FormulaSymbols, formula } from "../formula.js";
import { normalShare } from "../measure/distributions.js";
import { Count, Money, Ratio, wholeUp } from "../quantity/index.js";
import { cite } from "../source.js";
import { mixedCurrencies, type OrNever, orNever } from "./currency.js";

/** What a case costs and what a job with it brings. */
export interface JobMoney {
  /** The case and the tools, paid at the start. */ readonly outlay: Money;
  /** Of one job, or what the job would cost with a hired case. */ readonly income: Money;
  /** Of one job: travel, wear, cleaning, one's own hours. */ readonly running: Money;
}

/** When the outlay is earned back, counted in jobs. */
export type JobsToPayBack = {
  /** Left over from one job; negative where it loses. */ readonly margin: Money;
  /** Whole jobs, or never. */ readonly jobs: OrNever<number>;
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
 * @throws Refusal for negative amounts, or two currencies
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
  /** On average. */ readonly jobsPerMonth: Ratio;
  /** For one month, as a share; 0 where the money would lie idle. */
  readonly monthlyInterest: Ratio;
}

/** When the outlay is earned back, counted in months. */
export type MonthsToPayBack = {
  /** Left over from a month's jobs. */ readonly monthly: Money;
  /** Whole months, or never. */ readonly months: OrNever<number>;
};

/**
 * Whole months until a case has earned its cost and the interest on it: the number of payments of an
 * annuity, n = -ln(1 - I i / A) / ln(1 + i) rounded up, with A what a month's jobs leave over; I / A
 * without interest. Never where a month leaves no more than the interest.
 *
 * @source engineering economy, uniform series
 * @throws Refusal for negative amounts, rates or interest, or two currencies
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

/** Equal payments at the end of each period. */
export interface EqualPayments {
  /** For one period, as a share. */ readonly interest: Ratio;
  /** How many payments, one at the end of each period. */ readonly periods: number;
}

const annuityInputs: FormulaSymbols<EqualPayments> = {
  interest: { symbol: "i", kind: Ratio, meaning: "interest for a period", min: 0, max: 10 },
  periods: { symbol: "n", kind: Count, meaning: "number of payments", min: 1, max: 1000 },
};

/** (1 - (1 + i)^-n) / i, which without interest is n. */
function presentWorthOf({ interest, periods }: EqualPayments): number {
  return interest === 0 ? periods : -Math.expm1(-periods * Math.log1p(interest)) / interest;
}

/**
 * What a payment of 1 at the end of each period is worth today: P/A = (1 - (1 + i)^-n) / i.
 *
 * @source engineering economy, uniform series present worth
 * @throws Refusal for negative interest or no payments
 * @example presentWorthFactor({ interest: ratio(0.12), periods: 5 }) // 3.605
 */
export const presentWorthFactor: Formula<EqualPayments, Ratio> = formula({
  id: "annuity.present.worth",
  title: "Present worth of equal payments",
  equation: String.raw`\frac{P}{A} = \frac{1 - (1 + i)^{-n}}{i}`,
  inputs: annuityInputs,
  result: { symbol: "P/A", kind: Ratio, meaning: "worth today of payments of 1" },
  source: [cite("engineering-economy", "uniform series present worth factor")],
  validity: "Payments at the end of each period, one rate throughout.",
  compute: presentWorthOf,
});

/**
 * The equal payment that pays back 1 with its interest: A/P = i / (1 - (1 + i)^-n).
 *
 * @source engineering economy, capital recovery
 * @throws Refusal for negative interest or no payments
 * @example recoveryFactor({ interest: ratio(0.12), periods: 5 }) // 0.2774
 */
export const recoveryFactor: Formula<EqualPayments, Ratio> = formula({
  id: "annuity.recovery",
  title: "Payment that recovers an outlay",
  equation: String.raw`\frac{A}{P} = \frac{i}{1 - (1 + i)^{-n}}`,
  inputs: annuityInputs,
  result: { symbol: "A/P", kind: Ratio, meaning: "payment for an outlay of 1" },
  source: [cite("engineering-economy", "capital recovery factor")],
  validity: "Payments at the end of each period, one rate throughout.",
  compute: (payments) => 1 / presentWorthOf(payments),
});

/** Periods, not rounded, until equal payments have paid an outlay and its interest. */
function periodsToRepay(outlay: number, payment: number, interest: number): OrNever<number> {
  if (outlay === 0) return 0;
  if (payment <= 0 || payment <= outlay * interest) return "never";
  return interest === 0
    ? outlay / payment
    : -Math.log1p((-outlay * interest) / payment) / Math.log1p(interest);
}

/** An outlay and jobs that scatter. */
export interface ScatteredJobs {
  /** The case and the tools, paid at the start. */ readonly outlay: Money;
  /** Standard uncertainty of the outlay; nothing once it is paid. */ readonly doubt: Money;
  /** Left over from a job on average. */ readonly margin: Money;
  /** Standard deviation of what a job leaves. */ readonly scatter: Money;
  /** How many jobs. */ readonly jobs: number;
}

/**
 * The probability that so many jobs have earned the outlay: P = Phi((n m - I) / sqrt(n s^2 + u^2)).
 *
 * The sum of many jobs that do not depend on each other scatters normally about n times the mean, with
 * sqrt(n) times the standard deviation of one (GUM G.2); the doubt of the outlay adds to it as squares.
 *
 * @source GUM (JCGM 100), G.2, central limit theorem
 * @throws Refusal for a negative outlay or scatter, no jobs, or two currencies
 * @example paybackChance({ outlay: money(1000, "USD"), doubt: money(80, "USD"), margin: money(100, "USD"), scatter: money(50, "USD"), jobs: 10 }) // 0.5
 */
export const paybackChance: Formula<ScatteredJobs, Ratio> = formula({
  id: "payback.chance",
  title: "Chance that the jobs have paid the case",
  equation: String.raw`P = \Phi\!\left(\frac{n\,m - I}{\sqrt{n\,s^2 + u^2}}\right)`,
  inputs: {
    outlay: { symbol: "I", kind: Money, meaning: "outlay", min: 0 },
    doubt: { symbol: "u", kind: Money, meaning: "standard uncertainty of the outlay", min: 0 },
    margin: { symbol: "m", kind: Money, meaning: "left over from a job on average" },
    scatter: { symbol: "s", kind: Money, meaning: "standard deviation from job to job", min: 0 },
    jobs: { symbol: "n", kind: Count, meaning: "jobs", min: 1 },
  },
  result: { symbol: "P", kind: Ratio, meaning: "probability that the case is paid" },
  source: [cite("gum", "G.2, central limit theorem")],
  validity: "Jobs that do not depend on each other, more than about five of them.",
  refuse: ({ outlay, doubt, margin, scatter }) => mixedCurrencies([outlay, doubt, margin, scatter]),
  compute: ({ outlay, doubt, margin, scatter, jobs }) => {
    const over = jobs * margin.amount - outlay.amount;
    const strays = Math.hypot(Math.sqrt(jobs) * scatter.amount, doubt.amount);
    if (strays === 0) return over >= 0 ? 1 : 0;
    return normalShare(over / strays);
  },
});
