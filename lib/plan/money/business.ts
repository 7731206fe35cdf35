/** What a case costs and when it is paid: hours at the bench, doubts, making against buying. */
import type { SheetPlan } from "../../cutting/index.js";
import { type Business, type Fastener, sheetPieces, type Timing } from "../../design/index.js";
import { fastenerTraits } from "../../fastening/index.js";
import type { WorkedLine } from "../../formula.js";
import type { BusinessInput } from "../../model/index.js";
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
import { addMoney, Money, Ratio, ratio, Time } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import type { PurchaseList } from "../buying/purchases.js";

/** What the case costs, against buying one, and when it is paid. */
export interface BusinessReview {
  /** What the bill comes to. */
  readonly material: Money;
  /** Bench time of one case. */
  readonly time: Time;
  /** Where the bench time comes from. */
  readonly timeFrom: "timings" | "case file";
  /** What a case built costs, worked out. */
  readonly own: WorkedLine & { readonly value: OwnCost };
  /** A case built against one bought, worked out. */
  readonly against: WorkedLine & { readonly value: MakeOrBuyAnswer };
  /** Worth of an hour at which the first case costs as much as a ready-made one. */
  readonly hour: WorkedLine & { readonly value: HourAllowed };
  /** Jobs until a case built is paid. */
  readonly built: Payback;
  /** The same for a case bought. */
  readonly bought: Payback;
}

/** When an outlay is earned back. */
export interface Payback {
  /** What is paid at the start. */
  readonly outlay: Money;
  /** Jobs until it is earned back. */
  readonly jobs: OrNever<number>;
  /** Months until it is earned back, interest counted. */
  readonly months: OrNever<number>;
  /** The worked lines behind it. */
  readonly because: readonly WorkedLine[];
}

/**
 * What the case is to earn.
 *
 * @throws Refusal where the case file does not say
 */
function businessOf({ case: { business, leftOut } }: BusinessInput): Business {
  if (!leftOut.includes("business")) return business;
  throw new Refusal(
    'the case file does not say what the case is to earn; write the block "business" into it',
    {
      measure: "what the case is to earn",
      how: 'write the block "business" into case.yaml',
    },
  );
}

/**
 * Works out the case's money from its purchases.
 *
 * @param material what the bill comes to
 * @throws Refusal where the case file does not say what it is to earn
 */
export function businessReview(
  input: BusinessInput,
  purchases: PurchaseList,
  material: Money,
): BusinessReview {
  const business = businessOf(input);
  const { currency } = input.case;
  const { time, from } = buildingTime(input, purchases);
  const tools = addMoney(
    business.tools.map(({ price }) => price),
    currency,
  );
  const own = ownCost.worked({ material, time, hourlyRate: business.labourRate, tools });
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

/**
 * When an outlay is paid at the case file's income, costs, jobs a month and interest.
 *
 * @throws Refusal where the case file does not say what it is to earn
 */
export function payback(input: BusinessInput, outlay: Money, jobsPerMonth?: Ratio): Payback {
  const { incomePerJob, runningCostPerJob, interest, jobsPerMonth: usual } = businessOf(input);
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

/**
 * Money in hand at the end of each month, the outlay paid at the start; for a chart.
 *
 * @throws Refusal where the case file does not say what it is to earn
 */
export function cashOverTime(
  input: BusinessInput,
  outlay: Money,
  jobsPerMonth: number,
  months: number,
): readonly { readonly month: number; readonly cash: number }[] {
  const { incomePerJob, runningCostPerJob, interest } = businessOf(input);
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

/** One kind of work, timed on a trial and multiplied by how often the case needs it. */
export interface WorkTime {
  /** The kind of work, as timings.csv names it. */
  readonly work: string;
  /** The tool it was timed with. */
  readonly tool: string;
  /** What the work is counted by. */
  readonly unit: Timing["unit"];
  /** How many of the unit the case has. */
  readonly pieces: number;
  /** Time for one of them. */
  readonly each: Time;
  /** Time for all of them. */
  readonly time: Time;
}

/**
 * Bench time by kind of work, from the builder's own timings. Of one work timed with several tools the one counts that
 * the cost of the case has; where it has none of them or several, the quickest. Empty without timings.
 */
export function workTimes(input: BusinessInput, purchases: PurchaseList): readonly WorkTime[] {
  const works = [...new Set(input.measurements.timings.map(({ work }) => work))];
  return works.map((work) => {
    const timed = input.measurements.timings.filter((row) => row.work === work);
    const costed = timed.filter(({ tool }) => isCosted(tool, input));
    const rows = costed.length > 0 ? costed : timed;
    const [quickest] = [...rows].sort((a, b) => a.time / a.pieces - b.time / b.pieces) as [Timing];
    const { tool, unit } = quickest;
    const each = Time.si(quickest.time / quickest.pieces);
    const pieces = unitsInCase(unit, input, purchases);
    return { work, tool, unit, pieces, each, time: Time.si(pieces * each) };
  });
}

/** Whether a tool that was timed is among those that the case pays for: "hand riveter with long handles" is a hand riveter. */
function isCosted(tool: string, { case: { business } }: BusinessInput): boolean {
  return business.tools.some(({ name }) => name.includes(tool) || tool.includes(name));
}

/** Whole bench time, and whether it comes from timings or from the case file's own guess. */
export function buildingTime(
  input: BusinessInput,
  purchases: PurchaseList,
): { readonly time: Time; readonly from: "timings" | "case file" } {
  const works = workTimes(input, purchases);
  if (works.length === 0) return { time: input.case.business.buildingTime, from: "case file" };
  return { time: Time.si(works.reduce((sum, { time }) => sum + time, 0)), from: "timings" };
}

/** Edges that are trimmed off a sheet before it is sawn up. */
const trimmedEdges = 4;

/** Cuts through all sheets of some plans, with those that trim each of them. */
function cutsOf(needs: readonly { readonly plan: SheetPlan }[], trims: number): number {
  const sheets = needs.flatMap(({ plan }) => plan.sheets);
  return sheets.reduce((sum, { cuts }) => sum + trims + cuts.length, 0);
}

function unitsInCase(unit: Timing["unit"], input: BusinessInput, purchases: PurchaseList): number {
  const { fastenings, bars, hardware, facings } = input.parts;
  const fasteners = (counts: (fastener: Fastener) => boolean): number =>
    fastenings.reduce((sum, { fastener, count }) => (counts(fastener) ? sum + count : sum), 0);
  const counts: Readonly<Record<Timing["unit"], () => number>> = {
    panel: () => sheetPieces(input.parts).filter(({ openings }) => openings.length > 0).length,
    cut: () =>
      cutsOf(purchases.sheets, trimmedEdges) + cutsOf(purchases.facings, 0) + cutsOf(purchases.panes, 0),
    hole: () => fasteners(() => true),
    rivet: () => fasteners(({ kind }) => fastenerTraits[kind].timedAs === "rivet"),
    bar: () => bars.length,
    hardware: () => hardware.length,
    "square metre": () => facings.reduce((sum, { gluedArea }) => sum + gluedArea, 0),
    case: () => 1,
  };
  return counts[unit]();
}

/** A doubt as a share, and who says so. */
export interface Doubt {
  /** The doubt as a share of the figure. */
  readonly share: Ratio;
  /** Who says so. */
  readonly from: "case file" | "assumed";
}

/** The doubts that money is reckoned with. */
export interface Doubts {
  /** Prices, either way. */
  readonly prices: Doubt;
  /** Hours at the bench, either way. */
  readonly hours: Doubt;
  /** Standard deviation of one job's income. */
  readonly income: Doubt;
}

/** Common practice, no source: what is taken where the case file says nothing. */
const assumed = { prices: Ratio.si(0.1), hours: Ratio.si(0.2), income: Ratio.si(0.5) };

/** The doubts of a case. */
export function doubtsOf({ priceDoubt, hoursDoubt, incomeSpread }: Business): Doubts {
  return {
    prices: doubt(priceDoubt, assumed.prices),
    hours: doubt(hoursDoubt, assumed.hours),
    income: doubt(incomeSpread, assumed.income),
  };
}

function doubt(said: Ratio | undefined, otherwise: Ratio): Doubt {
  return said === undefined ? { share: otherwise, from: "assumed" } : { share: said, from: "case file" };
}

/** The doubts in a sentence, with which of them are assumed. */
export function doubtsInWords({ prices, hours, income }: Doubts): string {
  const words = ({ share, from }: Doubt): string =>
    `${Ratio.show(share, { unit: "%", digits: 3 })}${from === "assumed" ? " (assumed, your case file does not say)" : ""}`;
  return `Prices may be off by ${words(prices)} and hours by ${words(hours)}, either way; one job's income strays from the mean by ${words(income)}.`;
}
