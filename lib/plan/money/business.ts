import type { WorkedLine } from "../../formula.js";
import type { ReviewInput } from "../../model/index.js";
import {
  breakEvenHour,
  type HourAllowed,
  type JobMoneyByMonth,
  jobsToPayBack,
  type MakeOrBuyAnswer,
  makeOrBuy,
  monthsToPayBack,
  type OrNever,
  type OwnCost,
  ownCost,
} from "../../money/index.js";
import { addMoney, Money, type Ratio, ratio, type Time } from "../../quantity/index.js";
import type { PurchaseList } from "../buying/purchase-list.js";
import { buildingTime } from "./building-time.js";

/** What the case costs, against buying one, and when it is paid. */
export interface BusinessReview {
  readonly material: Money;
  readonly time: Time;
  readonly timeFrom: "timings" | "case file";
  readonly own: WorkedLine & { readonly value: OwnCost };
  readonly against: WorkedLine & { readonly value: MakeOrBuyAnswer };
  /** Worth of an hour at which the first case costs as much as a ready-made one. */
  readonly hour: WorkedLine & { readonly value: HourAllowed };
  /** Jobs until a case built is paid, and until a case bought is. */
  readonly built: Payback;
  readonly bought: Payback;
}

/** When an outlay is earned back. */
export interface Payback {
  readonly outlay: Money;
  readonly jobs: OrNever<number>;
  readonly months: OrNever<number>;
  readonly because: readonly WorkedLine[];
}

/**
 * Works out the case's money from its purchases.
 *
 * @param material what the bill comes to
 */
export function businessReview(input: ReviewInput, purchases: PurchaseList, material: Money): BusinessReview {
  const { business, currency } = input.case;
  const { time, from } = buildingTime(input, purchases);
  const tools = addMoney(
    business.tools.map(({ price }) => price),
    currency,
  );
  const own = ownCost.worked({ material, time, hourlyRate: business.ownHour, tools });
  return {
    material,
    time,
    timeFrom: from,
    own,
    against: makeOrBuy.worked({ own: own.value.each, tools, readyMade: business.readyMade }),
    hour: breakEvenHour.worked({ material, time, tools, readyMade: business.readyMade }),
    built: payback(input, own.value.first),
    bought: payback(input, business.readyMade),
  };
}

/** When an outlay is paid at the case file's income, costs, jobs a month and interest. */
export function payback(input: ReviewInput, outlay: Money, jobsPerMonth?: Ratio): Payback {
  const { incomePerJob, runningCostPerJob, interest, jobsPerMonth: usual } = input.case.business;
  const inputs: JobMoneyByMonth = {
    outlay,
    income: incomePerJob,
    running: runningCostPerJob,
    jobsPerMonth: jobsPerMonth ?? ratio(usual),
    monthlyInterest: ratio(interest / 12),
  };
  const jobs = jobsToPayBack.worked({ outlay, income: incomePerJob, running: runningCostPerJob });
  const months = monthsToPayBack.worked(inputs);
  return { outlay, jobs: jobs.value.jobs, months: months.value.months, because: [jobs, months] };
}

/** Money in hand at the end of each month, the outlay paid at the start; for a chart. */
export function cashOverTime(
  input: ReviewInput,
  outlay: Money,
  jobsPerMonth: number,
  months: number,
): readonly { readonly month: number; readonly cash: number }[] {
  const { incomePerJob, runningCostPerJob, interest } = input.case.business;
  const monthly = jobsPerMonth * (incomePerJob.amount - runningCostPerJob.amount);
  const rows = [{ month: 0, cash: -outlay.amount }];
  for (let month = 1; month <= months; month++) {
    const before = rows[month - 1]?.cash ?? 0;
    // Interest is paid on money still tied up, and not earned on what comes after.
    const cost = Math.min(0, before) * (interest / 12);
    rows.push({ month, cash: before + cost + monthly });
  }
  return rows;
}

/** Up to what worth of an hour building is cheaper, in words. */
export function hourInWords({ hour: { value } }: BusinessReview): string {
  return value.hour === "never"
    ? "Material and tools alone cost more than a ready-made case"
    : `Building the first case is the cheaper way as long as an hour of yours is worth less than ${Money.show(value.hour)}`;
}

/** "12 jobs", or that it never pays. */
export function jobsInWords(jobs: OrNever<number>): string {
  return jobs === "never" ? "never" : `${jobs} ${jobs === 1 ? "job" : "jobs"}`;
}
