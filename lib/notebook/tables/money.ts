/** Tables, chart rows and the answer of the notebook that asks what it costs and when it pays. */
import type { Job } from "../../job/index.js";
import { groupBill } from "../../money/index.js";
import { type SentenceView, type TableView, tableOf } from "../../page/index.js";
import { Money, ratio, showNumber, Time } from "../../quantity/index.js";
import { billGroupTable, billTable, ruleOf } from "../../recipe/index.js";
import {
  cashOverTime,
  jobsInWords,
  materialOptions,
  paybackChances,
  paybackSwings,
  sharingRule,
  swingOf,
  workTimes,
} from "../../review/index.js";

/** One trade of the bill, in plain numbers. */
export interface TradeCost {
  readonly trade: string;
  readonly part: string;
  readonly cost: number;
}

/** The bill by trade, split into what goes into the case and what is left over. */
export function tradeCosts({ review: { bill } }: Job): readonly TradeCost[] {
  return groupBill(bill.lines, "trade").flatMap(({ name, total, waste }) => [
    { trade: name, part: "goes into the case", cost: total.amount - waste.amount },
    { trade: name, part: "left over or sawdust", cost: waste.amount },
  ]);
}

/** Every line of the bill, and its totals by section, by trade and by supplier. */
export function billTables({ review: { bill, purchases }, case: { units } }: Job): readonly TableView[] {
  return [
    billTable(bill, purchases, ruleOf(units)),
    billGroupTable(bill, "section"),
    billGroupTable(bill, "trade"),
    billGroupTable(bill, "supplier"),
  ];
}

/** How lines that several sections share are shared; nothing to say for a case of one section. */
export function sharingNote({ case: { sections } }: Job): readonly SentenceView[] {
  return sections.length > 1 ? [{ kind: "sentence", text: sharingRule }] : [];
}

/** Bench time by kind of work. */
export function timeTable(job: Job): TableView {
  return tableOf(
    workTimes(job, job.review.purchases),
    [
      { heading: "Work", cell: ({ work }) => work },
      { heading: "Tool", cell: ({ tool }) => tool },
      {
        heading: "How many",
        cell: ({ pieces, unit }) => `${showNumber(pieces, 3)} × ${unit}`,
        align: "left",
      },
      { heading: "Each", cell: ({ each }) => Time.show(each, { unit: "min", digits: 2 }) },
      { heading: "In all", cell: ({ time }) => Time.show(time, { unit: "h", digits: 2 }) },
    ],
    "Hours at the bench, from your own timings",
  );
}

/** Money in hand over the months, in plain numbers. */
export interface CashPoint {
  readonly month: number;
  readonly cash: number;
  readonly way: string;
  readonly jobs: number;
}

/** Building and buying side by side, for several numbers of jobs a month. */
export function cashPoints(job: Job, jobsPerMonth: readonly number[], months: number): readonly CashPoint[] {
  const { built, bought } = job.review.business;
  const ways = [
    { way: "build it", outlay: built.outlay },
    { way: "buy ready-made", outlay: bought.outlay },
  ];
  return jobsPerMonth.flatMap((jobs) =>
    ways.flatMap(({ way, outlay }) =>
      cashOverTime(job, outlay, jobs, months).map((row) => ({ ...row, way, jobs })),
    ),
  );
}

/** Chance of having paid the case, in plain numbers. */
export interface ChancePoint {
  readonly month: number;
  /** % */
  readonly chance: number;
  readonly way: string;
  readonly jobs: number;
}

/** How likely each way is paid, month by month, for several numbers of jobs a month. */
export function chancePoints(
  job: Job,
  jobsPerMonth: readonly number[],
  months: number,
  scatter: number,
): readonly ChancePoint[] {
  const { built, bought } = job.review.business;
  const ways = [
    { way: "build it", outlay: built.outlay },
    { way: "buy ready-made", outlay: bought.outlay },
  ];
  return jobsPerMonth.flatMap((jobs) =>
    ways.flatMap(({ way, outlay }) =>
      paybackChances(job, outlay, jobs, ratio(scatter / 100), months).map(({ month, chance }) => ({
        month,
        chance: chance * 100,
        way,
        jobs,
      })),
    ),
  );
}

/** By how many jobs a figure moves payback, in plain numbers. */
export interface SwingBar {
  readonly figure: string;
  readonly jobs: number;
}

/** Which figure matters most; figures that may prevent payback are left to the sentence below the chart. */
export function swingBars(job: Job, share: number): readonly SwingBar[] {
  return paybackSwings(job, job.review.business, ratio(share / 100)).flatMap((swing) => {
    const jobs = swingOf(swing);
    return Number.isFinite(jobs) ? [{ figure: swing.figure, jobs }] : [];
  });
}

/** The figures that may prevent payback altogether when they are off by a share, in words. */
export function preventing(job: Job, share: number): string {
  const names = paybackSwings(job, job.review.business, ratio(share / 100))
    .filter((swing) => !Number.isFinite(swingOf(swing)))
    .map(({ figure }) => figure);
  return names.length === 0
    ? `No figure by itself, off by ${share} %, keeps the case from being paid.`
    : `Off by ${share} %, each of these by itself may keep the case from ever being paid: ${names.join(", ")}.`;
}

/** One choice of material with the range its prices leave it, in plain numbers. */
export interface OptionRow {
  readonly option: string;
  readonly cost: number;
  readonly low: number;
  readonly high: number;
}

/** The cheapest choices of material, and the one of the case file. */
export function optionRows(job: Job, doubt: number, most: number): readonly OptionRow[] {
  const options = materialOptions(job, ratio(doubt / 100));
  return options
    .filter(({ chosen }, i) => chosen || i < most)
    .map(({ sheet, facing, adhesive, bar, cost, low, high, chosen }) => ({
      option: `${chosen ? "as designed: " : ""}${sheet}, ${facing}, ${adhesive}, ${bar}`,
      cost: cost.amount,
      low: low.amount,
      high: high.amount,
    }));
}

/** What it costs, against buying, and when it is paid. */
export function moneyAnswer({ review: { business }, case: { business: asked } }: Job): string {
  const { own, built, bought, material, time } = business;
  return `Material ${Money.show(material)} and ${Time.show(time, { unit: "h", digits: 2 })} at the bench: the first case costs ${Money.show(own.value.first)} with tools, a ready-made one ${Money.show(asked.readyMade)}. Built, it is paid after ${jobsInWords(built.jobs)}; bought, after ${jobsInWords(bought.jobs)}.`;
}
