/** When the case is paid if no two jobs are alike, and which figure decides it. */

import type { BusinessInput } from "../../model/index.js";
import { groupBill, type OrNever, paybackChance, type ScatteredJobs } from "../../money/index.js";
import { type Money, money, Ratio, ratio } from "../../quantity/index.js";
import type { Bill } from "./bill.js";
import { type BusinessReview, doubtsOf } from "./business.js";

/** A way to come by a case, with what it costs and how sure that is. */
export interface Outlay {
  /** How the case is come by. */
  readonly way: "build it" | "buy ready-made";
  /** What is paid. */
  readonly cost: Money;
  /** Standard uncertainty. */
  readonly doubt: Money;
}

/**
 * Building and buying. Each trade's prices, the tools' and the hours may be off by their own doubt, anywhere
 * within it alike; such doubts count with 1/sqrt(3) and add as squares.
 * Source: GUM 4.3.7 and 5.1.2.
 */
export function outlays(
  input: BusinessInput,
  bill: Bill,
  { own, built, bought }: BusinessReview,
): readonly Outlay[] {
  const { prices, hours } = doubtsOf(input.case.business);
  const { labour, first, each } = own.value;
  const trades = groupBill(bill.lines, "trade").map(({ total }) => total.amount);
  const parts = [
    ...[...trades, first.amount - each.amount].map((amount) => prices.share * amount),
    hours.share * labour.amount,
  ];
  const standard = (...doubts: readonly number[]): Money =>
    money(Math.hypot(...doubts) / Math.sqrt(3), bill.total.currency);
  return [
    { way: "build it", cost: built.outlay, doubt: standard(...parts) },
    { way: "buy ready-made", cost: bought.outlay, doubt: standard(prices.share * bought.outlay.amount) },
  ];
}

/** The jobs of a case as they scatter: income by its spread, running cost as it is. */
function scatteredJobs({ case: { business } }: BusinessInput, outlay: Outlay): Omit<ScatteredJobs, "jobs"> {
  const { incomePerJob, runningCostPerJob } = business;
  const { currency } = outlay.cost;
  return {
    outlay: outlay.cost,
    doubt: outlay.doubt,
    margin: money(incomePerJob.amount - runningCostPerJob.amount, currency),
    scatter: money(doubtsOf(business).income.share * incomePerJob.amount, currency),
  };
}

/** How sure it is that an outlay is paid after some months. */
export interface ChanceRow {
  /** Months since the outlay. */
  readonly month: number;
  /** Chance that it is paid by then. */
  readonly chance: Ratio;
}

/** The chance of having paid an outlay, month by month; whole jobs only count. */
export function paybackChances(
  input: BusinessInput,
  outlay: Outlay,
  jobsPerMonth: number,
  months: number,
): readonly ChanceRow[] {
  const asked = scatteredJobs(input, outlay);
  return [...Array(months).keys()].map((before) => {
    const jobs = Math.floor((before + 1) * jobsPerMonth + 1e-9);
    return { month: before + 1, chance: jobs === 0 ? Ratio.si(0) : paybackChance({ ...asked, jobs }) };
  });
}

/** More jobs than any case lasts. */
const mostJobs = 2000;

/** The fewest jobs after which an outlay is paid with a given chance; never where a job leaves nothing. */
export function jobsForChance(input: BusinessInput, outlay: Outlay, chance: Ratio): OrNever<number> {
  const asked = scatteredJobs(input, outlay);
  if (asked.margin.amount <= 0) return "never";
  for (let jobs = 1; jobs <= mostJobs; jobs++) {
    if (paybackChance({ ...asked, jobs }) >= chance) return jobs;
  }
  return "never";
}

/** What jobs to payback become when one figure is lower or higher. */
export interface Swing {
  /** The figure, in words. */
  readonly figure: string;
  /** How far it is moved, as a share of itself. */
  readonly share: Ratio;
  /** Jobs to payback with the figure lower. */
  readonly low: OrNever<number>;
  /** Jobs to payback with the figure higher. */
  readonly high: OrNever<number>;
}

/**
 * Which figure matters most: each by itself lowered and raised by its own doubt, the one that moves payback
 * most first. The income of a job is moved by what its spread leaves of the mean over the jobs to payback. A
 * figure that may make payback impossible stands before all others.
 */
export function paybackSwings(
  input: BusinessInput,
  { material, own, built }: BusinessReview,
): readonly Swing[] {
  const { business } = input.case;
  const { prices, hours, income } = doubtsOf(business);
  const jobsToPay = built.jobs === "never" ? 1 : Math.max(1, built.jobs);
  const figures: Readonly<Record<keyof Figures, readonly [number, Ratio]>> = {
    material: [material.amount, prices.share],
    hours: [own.value.labour.amount, hours.share],
    tools: [own.value.first.amount - own.value.each.amount, prices.share],
    income: [business.incomePerJob.amount, ratio(income.share / Math.sqrt(jobsToPay))],
    running: [business.runningCostPerJob.amount, prices.share],
  };
  const names = Object.keys(words) as (keyof Figures)[];
  const usual = Object.fromEntries(names.map((name) => [name, figures[name][0]])) as unknown as Figures;
  const swings = names.map((name): Swing => {
    const [value, share] = figures[name];
    const at = (factor: number): OrNever<number> => jobsWith({ ...usual, [name]: value * factor });
    return { figure: words[name], share, low: at(1 - share), high: at(1 + share) };
  });
  return swings.sort((a, b) => swingOf(b) - swingOf(a));
}

/** By how many jobs a figure moves payback; without end where it may prevent it. */
export function swingOf({ low, high }: Pick<Swing, "low" | "high">): number {
  return low === "never" || high === "never" ? Number.POSITIVE_INFINITY : Math.abs(high - low);
}

interface Figures {
  /** Price of the material. */
  readonly material: number;
  /** Worth of the own hours. */
  readonly hours: number;
  /** Price of the tools to buy. */
  readonly tools: number;
  /** Income of one job. */
  readonly income: number;
  /** Running cost of one job. */
  readonly running: number;
}

const words: Readonly<Record<keyof Figures, string>> = {
  material: "price of the material",
  hours: "own hours and what they are worth",
  tools: "tools to buy",
  income: "income per job",
  running: "running cost per job",
};

/** Jobs, not rounded, so that small changes show. */
function jobsWith({ material, hours, tools, income, running }: Figures): OrNever<number> {
  const margin = income - running;
  return margin > 0 ? (material + hours + tools) / margin : "never";
}
