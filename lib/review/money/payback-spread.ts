/** When the case is paid if no two jobs are alike, and which figure decides it. */
import { type OrNever, paybackChance } from "../../money/index.js";
import { type Money, money, Ratio } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import type { BusinessReview } from "./business.js";

/** How sure it is that an outlay is paid after some months. */
export interface ChanceRow {
  readonly month: number;
  readonly chance: Ratio;
}

/**
 * The chance of having paid an outlay, month by month; whole jobs only count.
 *
 * @param scatter standard deviation of what a job leaves, as a share of it
 */
export function paybackChances(
  { case: { business } }: ReviewInput,
  outlay: Money,
  jobsPerMonth: number,
  scatter: Ratio,
  months: number,
): readonly ChanceRow[] {
  const { currency } = outlay;
  const margin = business.incomePerJob.amount - business.runningCostPerJob.amount;
  return [...Array(months).keys()].map((before) => {
    const jobs = Math.floor((before + 1) * jobsPerMonth + 1e-9);
    const asked = {
      outlay,
      margin: money(margin, currency),
      scatter: money(Math.abs(margin) * scatter, currency),
      jobs,
    };
    return { month: before + 1, chance: jobs === 0 ? Ratio.si(0) : paybackChance(asked) };
  });
}

/** What jobs to payback become when one figure is lower or higher. */
export interface Swing {
  readonly figure: string;
  readonly low: OrNever<number>;
  readonly high: OrNever<number>;
}

/**
 * Which figure matters most: each by itself lowered and raised by a share, the one that moves payback most
 * first. A figure that may make payback impossible stands before all others.
 */
export function paybackSwings(
  input: ReviewInput,
  { material, own }: BusinessReview,
  share: Ratio,
): readonly Swing[] {
  const { business } = input.case;
  const tools = own.value.first.amount - own.value.each.amount;
  const jobs = (change: Partial<Figures>): OrNever<number> => jobsWith({ ...figures, ...change });
  const figures: Figures = {
    material: material.amount,
    hours: own.value.labour.amount,
    tools,
    income: business.incomePerJob.amount,
    running: business.runningCostPerJob.amount,
  };
  const swings = (Object.keys(words) as (keyof Figures)[]).map((name) => ({
    figure: words[name],
    low: jobs({ [name]: figures[name] * (1 - share) }),
    high: jobs({ [name]: figures[name] * (1 + share) }),
  }));
  return swings.sort((a, b) => swingOf(b) - swingOf(a));
}

/** By how many jobs a figure moves payback; without end where it may prevent it. */
export function swingOf({ low, high }: Swing): number {
  return low === "never" || high === "never" ? Number.POSITIVE_INFINITY : Math.abs(high - low);
}

interface Figures {
  readonly material: number;
  readonly hours: number;
  readonly tools: number;
  readonly income: number;
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
