/** Tables, chart rows and the answer of the notebook that asks what it costs and when it pays. */
import type { Job } from "../../job/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { Money, showNumber, Time } from "../../quantity/index.js";
import { billOf, cashOverTime, jobsInWords, workTimes } from "../../review/index.js";

/** One trade of the bill, in plain numbers. */
export interface TradeCost {
  readonly trade: string;
  readonly part: string;
  readonly cost: number;
}

/** The bill by trade, split into what goes into the case and what is left over. */
export function tradeCosts({ review: { purchases } }: Job): readonly TradeCost[] {
  return billOf(purchases).trades.flatMap(({ name, total, waste }) => [
    { trade: name, part: "goes into the case", cost: total.amount - waste.amount },
    { trade: name, part: "left over or sawdust", cost: waste.amount },
  ]);
}

/** Every line of the bill. */
export function billTable({ review: { purchases } }: Job): TableView {
  const { lines, total } = billOf(purchases);
  return tableOf(
    lines,
    [
      { heading: "Trade", cell: ({ trade }) => trade },
      { heading: "Item", cell: ({ item }) => item },
      { heading: "Quantity", cell: ({ quantity, unit }) => `${quantity} ${unit}`, align: "left" },
      { heading: "Each", cell: ({ unitPrice }) => Money.show(unitPrice) },
      { heading: "Supplier", cell: ({ supplier = "" }) => supplier },
    ],
    `Bill of materials: ${Money.show(total)}`,
  );
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

/** What it costs, against buying, and when it is paid. */
export function moneyAnswer({ review: { business }, case: { business: asked } }: Job): string {
  const { own, built, bought, material, time } = business;
  return `Material ${Money.show(material)} and ${Time.show(time, { unit: "h", digits: 2 })} at the bench: the first case costs ${Money.show(own.value.first)} with tools, a ready-made one ${Money.show(asked.readyMade)}. Built, it is paid after ${jobsInWords(built.jobs)}; bought, after ${jobsInWords(bought.jobs)}.`;
}
