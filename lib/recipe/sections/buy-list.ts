/** What to buy: every line of the bill, and its totals by section, by trade and by supplier. */

import { listed } from "../../findings/index.js";
import { type BillHeading, type BillLine, groupBill } from "../../money/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { type Bill, type PurchaseList, sharesInWords } from "../../plan/index.js";
import { Money, timesMoney, Volume } from "../../quantity/index.js";
import type { Rule } from "../rule.js";
import { counted, distinct, grouped } from "../words.js";
import type { Workshop } from "../workshop.js";

/** What the counts allow for, said once. */
export function allowances({ adhesives, sheets }: PurchaseList): string[] {
  const onLabel = adhesives.filter(({ rateFrom }) => rateFrom === "label").map(({ stock }) => stock.name);
  return [
    ...(onLabel.length > 0
      ? [`The spread rate of the label is counted for ${listed(onLabel)}. Weigh the can on a trial panel.`]
      : []),
    ...(sheets.length > 0
      ? [
          "Look at every sheet before paying: it must be flat, without open joints at its edges. Measure its thickness at three places.",
        ]
      : []),
  ];
}

/** A line of the bill with its count and its size in words. */
export interface BuyItem extends BillLine {
  /** How many, and what that allows for. */
  readonly count: string;
  /** In both systems of units, since shops use either; of hardware what the steps call it; empty for what has neither. */
  readonly size: string;
}

/** The lines of the bill in words. */
export function billItems({ bill, purchases, rule, parts }: Workshop): readonly BuyItem[] {
  const notes = notesOf(purchases, rule);
  const sizes = new Map([
    ...[...purchases.sheets, ...purchases.facings, ...purchases.panes].map(({ stock }): [string, string] => [
      stock.name,
      rule.inShop(stock.length, stock.width, stock.thickness),
    ]),
    ...[...purchases.bars, ...purchases.strips].map(({ stock }): [string, string] => [
      stock.name,
      rule.inShop(stock.length),
    ]),
    ...purchases.fasteners.map(({ stock }): [string, string] => [
      stock.name,
      `closes to ${rule.inShop(stock.gripMax)}`,
    ]),
    ...grouped(parts.hardware, ({ stock }) => stock.name).flatMap(([name, some]): [string, string][] => {
      const called = distinct(some.map(({ item }) => item.name)).filter((one) => one !== name);
      const slides = some.every(({ item }) => item.duty === "slide");
      return called.length === 0 || slides ? [] : [[name, `in the steps: ${called.join(", ")}`]];
    }),
  ]);
  return bill.lines.map((line) => ({
    ...line,
    count: [countOf(line), notes.get(line.item)].filter(Boolean).join(" "),
    size: sizes.get(line.item) ?? "",
  }));
}

/** Every line of the bill, with the section it is for, and the total below. */
export function billTable(bill: Bill, purchases: PurchaseList, rule: Rule): TableView {
  const notes = notesOf(purchases, rule);
  const rows = bill.lines.map((line) => ({
    ...line,
    count: [countOf(line), notes.get(line.item)].filter(Boolean).join(" "),
    section: sharesInWords(line.shares),
    each: Money.show(line.unitPrice),
    cost: Money.show(timesMoney(line.quantity, line.unitPrice)),
  }));
  const total = { trade: "Total", item: "", count: "", section: "", supplier: "", each: "" };
  return tableOf(
    [...rows, { ...total, cost: Money.show(bill.total) }],
    [
      { heading: "Trade", cell: ({ trade }) => trade },
      { heading: "Item", cell: ({ item }) => item },
      { heading: "Count", cell: ({ count }) => count, align: "left" },
      { heading: "Section", cell: ({ section }) => section, align: "left" },
      { heading: "Supplier", cell: ({ supplier = "" }) => supplier },
      { heading: "Each", cell: ({ each }) => each, align: "right" },
      { heading: "Cost", cell: ({ cost }) => cost, align: "right" },
    ],
    "Everything to buy",
  );
}

/** "3 sheets", "2 packs of 250", "16"; an order is one and needs no count. */
function countOf({ quantity, unit }: BillLine): string {
  if (unit === "order") return "";
  if (unit === "each") return String(quantity);
  const [word = unit, ...rest] = unit.split(" ");
  return [counted(quantity, word), ...rest].join(" ");
}

/** What a count allows for, by item. */
function notesOf({ adhesives, fasteners }: PurchaseList, rule: Rule): ReadonlyMap<string, string> {
  const liquid = (volume: Volume): string =>
    Volume.show(volume, { ...rule.style, digits: 3 }).replace("floz", "fl oz");
  return new Map([
    ...adhesives.map(({ stock, volume }): [string, string] => [
      stock.name,
      `of ${liquid(stock.content)} (${liquid(volume)} needed)`,
    ]),
    ...fasteners.map(({ stock, count, spares }): [string, string] => [
      stock.name,
      `(${count} and ${spares} spare)`,
    ]),
  ]);
}

const headings: Readonly<Record<BillHeading, { readonly heading: string; readonly caption: string }>> = {
  section: { heading: "Section", caption: "By section" },
  trade: { heading: "Trade", caption: "By trade" },
  supplier: { heading: "Supplier", caption: "By supplier, one order each" },
};

/** The bill's totals under one kind of heading, and what of each does not go into the case. */
export function billGroupTable({ lines, total, waste }: Bill, by: BillHeading): TableView {
  const { heading, caption } = headings[by];
  const rows = groupBill(lines, by).map((group) => ({ ...group, count: String(group.lines.length) }));
  return tableOf(
    [...rows, { name: "Total", count: "", total, waste }],
    [
      { heading, cell: ({ name }) => name },
      {
        heading: by === "section" ? "Lines, shared ones too" : "Lines",
        cell: ({ count }) => count,
        align: "right",
      },
      { heading: "Cost", cell: (group) => Money.show(group.total), align: "right" },
      { heading: "Of it left over", cell: (group) => Money.show(group.waste), align: "right" },
    ],
    caption,
  );
}
