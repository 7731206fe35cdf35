/** What the case costs, how surely it pays, and what other materials and prices would change. */
import type { Job } from "../../job/index.js";
import { groupBill } from "../../money/index.js";
import { type SentenceView, type TableView, tableOf } from "../../page/index.js";
import {
  billOf,
  businessReview,
  cashOverTime,
  doubtsInWords,
  doubtsOf,
  faceArea,
  hourInWords,
  jobsForChance,
  jobsInWords,
  type MaterialOption,
  materialOptions,
  type Outlay,
  outlays,
  paybackChances,
  paybackSwings,
  pricedItems,
  priceWhatIf,
  sharingRule,
  swingOf,
  workTimes,
} from "../../plan/index.js";
import { addMoney, Money, type Ratio, ratio, showNumber, Time, timesMoney } from "../../quantity/index.js";
import { billGroupTable, billTable, ruleOf } from "../../recipe/index.js";
import { areaOf } from "./face-options.js";

/** Chance of having paid the case, in plain numbers. */
export interface ChancePoint {
  /** Months from the start. */
  readonly month: number;
  /** % */
  readonly chance: number;
  /** Building or buying. */
  readonly way: string;
  /** Jobs a month. */
  readonly jobs: number;
}

/** How likely each way is paid, month by month, for several numbers of jobs a month. */
export function chancePoints(
  job: Job,
  jobsPerMonth: readonly number[],
  months: number,
): readonly ChancePoint[] {
  return jobsPerMonth.flatMap((jobs) =>
    outlaysOf(job).flatMap((outlay) =>
      paybackChances(job, outlay, jobs, months).map(({ month, chance }) => ({
        month,
        chance: chance * 100,
        way: outlay.way,
        jobs,
      })),
    ),
  );
}

/** Building and buying, with what each costs and how sure that is. */
function outlaysOf(job: Job): readonly Outlay[] {
  return outlays(job, job.review.bill, job.review.business);
}

/** Jobs and months after which each way is paid with several chances, in %. */
export function chanceTable(job: Job, chances: readonly number[]): TableView {
  const { jobsPerMonth } = job.case.business;
  const rows = outlaysOf(job).flatMap(({ way, cost, doubt }) =>
    chances.map((chance) => {
      const jobs = jobsForChance(job, { way, cost, doubt }, ratio(chance / 100));
      const months = jobs === "never" ? jobs : Math.ceil(jobs / jobsPerMonth - 1e-9);
      return { way, cost, chance, jobs, months };
    }),
  );
  return tableOf(
    rows,
    [
      { heading: "Way", cell: ({ way }) => way },
      { heading: "Costs", cell: ({ cost }) => Money.show(cost) },
      { heading: "Paid with a chance of", cell: ({ chance }) => `${chance} %`, align: "right" },
      { heading: "After jobs", cell: ({ jobs }) => jobs, align: "right" },
      { heading: "After months", cell: ({ months }) => months, align: "right" },
    ],
    `After how many jobs it is paid, at ${showNumber(jobsPerMonth, 3)} a month, interest left out`,
  );
}

/** By how many jobs a figure moves payback, in plain numbers. */
export interface SwingBar {
  /** The figure and its doubt, in words. */
  readonly figure: string;
  /** By how many jobs it moves payback. */
  readonly jobs: number;
}

/** Which figure matters most, each moved by its own doubt; figures that may prevent payback are left to the sentence below the chart. */
export function swingBars(job: Job): readonly SwingBar[] {
  return paybackSwings(job, job.review.business).flatMap((swing) => {
    const jobs = swingOf(swing);
    const shown = Number(jobs.toPrecision(2));
    return Number.isFinite(jobs)
      ? [{ figure: `${swing.figure}, ±\u00a0${percent(swing.share)}`, jobs: shown }]
      : [];
  });
}

const percent = (share: Ratio): string => `${showNumber(share * 100, 2)}\u00a0%`;

/** The figures that may prevent payback altogether within their doubt, in words. */
export function preventing(job: Job): string {
  const names = paybackSwings(job, job.review.business)
    .filter((swing) => !Number.isFinite(swingOf(swing)))
    .map(({ figure, share }) => `${figure} (± ${percent(share)})`);
  return names.length === 0
    ? "No figure by itself, within its doubt, keeps the case from being paid."
    : `Each of these by itself, within its doubt, may keep the case from ever being paid: ${names.join(", ")}.`;
}

/** How far figures may be off, and which of that is assumed. */
export function doubtsNote({ case: { business } }: Job): string {
  return doubtsInWords(doubtsOf(business));
}

/** One trade of the bill, in plain numbers. */
export interface TradeCost {
  /** Name of the trade. */
  readonly trade: string;
  /** Into the case, or left over. */
  readonly part: string;
  /** Cost, in the job's currency. */
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

/** Bench time by kind of work; what counts by area has the unit of area of the case's units. */
export function timeTable(job: Job): TableView {
  const { per } = areaOf(job.case);
  const size = faceArea(job.case);
  const minutes = (time: Time): string => Time.show(time, { unit: "min", digits: 2 });
  return tableOf(
    workTimes(job, job.review.purchases),
    [
      { heading: "Work", cell: ({ work }) => work },
      { heading: "Tool", cell: ({ tool }) => tool },
      {
        heading: "How many",
        cell: ({ pieces, unit }) =>
          unit === "square metre"
            ? `${showNumber(pieces / size, 3)} ${per}`
            : `${showNumber(pieces, 3)} × ${unit}`,
        align: "left",
      },
      {
        heading: "Each",
        cell: ({ each, unit }) =>
          unit === "square metre" ? `${minutes((each * size) as Time)}/${per}` : minutes(each),
      },
      { heading: "In all", cell: ({ time }) => Time.show(time, { unit: "h", digits: 2 }) },
    ],
    "Hours at the bench, from your own timings",
  );
}

/** Money in hand over the months, in plain numbers. */
export interface CashPoint {
  /** From the start. */
  readonly month: number;
  /** In hand, in the job's currency. */
  readonly cash: number;
  /** Built or bought. */
  readonly way: string;
  /** Jobs a month. */
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

/** One choice of material with the range it is left, in plain numbers. */
export interface OptionRow {
  /** Letter of the choice. */
  readonly option: string;
  /** Cost, in the job's currency. */
  readonly cost: number;
  /** Lowest cost, in the job's currency. */
  readonly low: number;
  /** Highest cost, in the job's currency. */
  readonly high: number;
}

/** The cheapest choices of material, and the one of the case file, under letters that a table explains. */
export function optionRows(job: Job, most: number): readonly OptionRow[] {
  return lettered(job, most).map(({ option, cost, low, high }) => ({
    option,
    cost: cost.amount,
    low: low.amount,
    high: high.amount,
  }));
}

/** What each letter of the chart of choices is made of. */
export function optionTable(job: Job, most: number): TableView {
  return tableOf(
    lettered(job, most),
    [
      { heading: "Choice", cell: ({ option }) => option },
      { heading: "Ply", cell: ({ sheet }) => sheet },
      { heading: "Laminate", cell: ({ facing }) => facing },
      { heading: "Adhesive", cell: ({ adhesive }) => adhesive },
      { heading: "Edges", cell: ({ bar }) => bar },
      { heading: "Cost", cell: ({ cost }) => Money.show(cost) },
    ],
    "What the choices are made of",
  );
}

function lettered(job: Job, most: number) {
  return optionsOf(job)
    .filter(({ chosen }, i) => chosen || i < most)
    .map((option, i) => ({
      ...option,
      option: `${String.fromCharCode(65 + (i % 26))}${option.chosen ? ", as designed" : ""}`,
    }));
}

const options = new WeakMap<Job, readonly MaterialOption[]>();

/** The choices of a job, planned once. */
function optionsOf(job: Job): readonly MaterialOption[] {
  const known = options.get(job) ?? materialOptions(job);
  options.set(job, known);
  return known;
}

/** One point of the what-if chart, in plain numbers. */
export interface PricePoint {
  /** Change of the price, % */
  readonly change: number;
  /** The whole bill, in the job's currency. */
  readonly total: number;
  /** The item whose price changes. */
  readonly item: string;
}

/** What the whole bill comes to when the price of one item changes, for the dearest items. */
export function pricePoints(job: Job, changes: readonly number[], most: number): readonly PricePoint[] {
  const { purchases, bill } = job.review;
  return pricedItems(bill)
    .slice(0, most)
    .flatMap((item) =>
      changes.map((change) => ({
        change,
        total: billOf(job, purchases, { [item]: 1 + change / 100 }).total.amount,
        item,
      })),
    );
}

/** The item that most is paid for. */
export function dearestItem({ review: { bill } }: Job): string {
  return pricedItems(bill)[0] ?? "";
}

/**
 * What other prices do to the bill and to payback.
 *
 * @param changes in %, by item of the bill
 * @throws Refusal for an item that is not on the bill
 */
export function whatIfTable(job: Job, changes: Readonly<Record<string, number>>): TableView {
  const { purchases, business } = job.review;
  const shares = Object.fromEntries(Object.entries(changes).map(([item, change]) => [item, change / 100]));
  const { bill, effects } = priceWhatIf(job, purchases, shares);
  const then = businessReview(job, purchases, bill.total);
  const rows = effects.map(({ item, before, after, added }) => [
    item,
    Money.show(before),
    Money.show(after),
    Money.show(added),
  ]);
  return tableOf(
    [
      ...rows,
      [
        "whole bill",
        Money.show(business.material),
        Money.show(bill.total),
        Money.show(addMoney([bill.total, timesMoney(-1, business.material)])),
      ],
      ["paid after, built", jobsInWords(business.built.jobs), jobsInWords(then.built.jobs), ""],
    ],
    [
      { heading: "What", cell: ([what]) => what ?? "" },
      { heading: "As it is", cell: ([, before]) => before ?? "", align: "right" },
      { heading: "With the other prices", cell: ([, , after]) => after ?? "", align: "right" },
      { heading: "Adds to the bill", cell: ([, , , added]) => added ?? "", align: "right" },
    ],
    "What if a price is another one?",
  );
}
