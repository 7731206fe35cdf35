/** Tables, chart rows and the answer of the notebook that asks what it costs and when it pays. */

import type { Job } from "../../job/index.js";
import { groupBill } from "../../money/index.js";
import { type SentenceView, type TableView, tableOf } from "../../page/index.js";
import {
  cashOverTime,
  hourInWords,
  jobsForChance,
  jobsInWords,
  sharingRule,
  workTimes,
} from "../../plan/index.js";
import { Money, ratio, showNumber, Time } from "../../quantity/index.js";
import { billGroupTable, billTable, ruleOf } from "../../recipe/index.js";
import { outlaysOf } from "./payback.js";

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

/** What it costs, against buying, up to what worth of an hour that is so, and when it is paid. */
export function moneyAnswer(job: Job): string {
  const { business } = job.review;
  const { own, built, bought, material, time } = business;
  const [build] = outlaysOf(job);
  const sure = build ? jobsForChance(job, build, ratio(0.9)) : "never";
  return `Material ${Money.show(material)} and ${Time.show(time, { unit: "h", digits: 2 })} at the bench: the first case costs ${Money.show(own.value.first)} with tools, a ready-made one ${Money.show(job.case.business.readyMade)}. ${hourInWords(business)}. Built, it is paid after ${jobsInWords(built.jobs)} on average and, nine times in ten, after ${jobsInWords(sure)}; bought, after ${jobsInWords(bought.jobs)} on average.`;
}
