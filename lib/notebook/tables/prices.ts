/** Chart rows and tables of other material and other prices. */

import type { Job } from "../../job/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import {
  billOf,
  businessReview,
  jobsInWords,
  type MaterialOption,
  materialOptions,
  pricedItems,
  priceWhatIf,
} from "../../plan/index.js";
import { addMoney, Money, timesMoney } from "../../quantity/index.js";

/** One choice of material with the range it is left, in plain numbers. */
export interface OptionRow {
  readonly option: string;
  readonly cost: number;
  readonly low: number;
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
  readonly total: number;
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
