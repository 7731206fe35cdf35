/** How sure it is that a number of jobs pays a case, when no two jobs leave the same. */
import { type Formula, formula } from "../formula.js";
import { normalShare } from "../measure/normal.js";
import { Count, Money, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { mixedCurrencies } from "./currency.js";

/** An outlay and jobs that scatter. */
export interface ScatteredJobs {
  /** The case and the tools, paid at the start. */
  readonly outlay: Money;
  /** Standard uncertainty of the outlay; nothing once it is paid. */
  readonly doubt: Money;
  /** Left over from a job on average. */
  readonly margin: Money;
  /** Standard deviation of what a job leaves. */
  readonly scatter: Money;
  /** How many jobs. */
  readonly jobs: number;
}

/**
 * The probability that so many jobs have earned the outlay: P = Phi((n m - I) / sqrt(n s^2 + u^2)).
 *
 * The sum of many jobs that do not depend on each other scatters normally about n times the mean, with
 * sqrt(n) times the standard deviation of one (GUM G.2); the doubt of the outlay adds to it as squares.
 *
 * @source GUM (JCGM 100), G.2, central limit theorem
 * @throws RangeError for a negative outlay or scatter, no jobs, or two currencies
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
