/** The bill of materials: what is bought for which part of the work, what it costs and what of it is wasted. */
import { type Formula, formula } from "../formula.js";
import { type Kind, listOf, type Mass, Money, Name, Ratio, ratio, recordOf } from "../quantity/index.js";
import { cite } from "../source.js";
import { mixedCurrencies } from "./currency.js";

/** How much of a line is for one section of the case. */
export interface SectionShare {
  /** "upper". */
  readonly section: string;
  /** The shares of a line add up to 1. */
  readonly share: number;
}

/** One thing bought. */
export interface BillLine {
  /** The sections it goes into: one, or several that share it. */
  readonly shares: readonly SectionShare[];
  /** Kind of work it belongs to: "panels", "rivets", "adhesive". */
  readonly trade: string;
  /** What it is. */
  readonly item: string;
  /** Who sells it; not yet chosen when absent. */
  readonly supplier?: string;
  /** Paid for, in the unit the price is for. */
  readonly quantity: number;
  /** Goes into the case, in the same unit; all of it when absent. */
  readonly used?: number;
  /** "each", "m2", "can". */
  readonly unit: string;
  /** Of one unit. */
  readonly unitPrice: Money;
  /** Of one unit, for a supplier who charges by weight; weightless when absent. */
  readonly mass?: Mass;
}

/** A line of the bill, as far as its cost goes. */
export interface CostLine {
  /** What it is. */
  readonly item: string;
  /** Paid for. */
  readonly quantity: Ratio;
  /** Goes into the case. */
  readonly used: Ratio;
  /** Of one unit. */
  readonly unitPrice: Money;
}

/** What is paid, and how much of it does not go into the case. */
export type BillTotal = {
  /** Everything that is paid. */
  readonly total: Money;
  /** Paid for what does not go into the case. */
  readonly waste: Money;
};

const costLines: Kind<readonly CostLine[]> = listOf(
  recordOf<CostLine>("line", { item: Name, quantity: Ratio, used: Ratio, unitPrice: Money }),
);

function refuse({ lines }: { readonly lines: readonly CostLine[] }): string[] {
  if (lines.length === 0) return ["there is nothing on the bill"];
  return [
    ...mixedCurrencies(lines.map(({ unitPrice }) => unitPrice)),
    ...lines.flatMap(({ item, quantity, used, unitPrice }) => [
      ...(used >= 0 && used <= quantity * (1 + 1e-9)
        ? []
        : [`${item}: used must be from 0 to the ${quantity} bought, got ${used}`]),
      ...(unitPrice.amount >= 0 ? [] : [`${item}: price must be at least 0, got ${Money.show(unitPrice)}`]),
    ]),
  ];
}

/**
 * Adds up a bill: quantity x price of every line, and the same for what does not go into the case.
 *
 * @source arithmetic
 * @throws RangeError for an empty bill, two currencies, more used than bought, or a negative price
 * @example billTotal({ lines: [{ item: "ply", quantity: ratio(3), used: ratio(2.4), unitPrice: money(80, "USD") }] }) // total 240.00 USD, waste 48.00 USD
 */
export const billTotal: Formula<{ readonly lines: readonly CostLine[] }, BillTotal> = formula<
  { readonly lines: readonly CostLine[] },
  BillTotal
>({
  id: "bill.total",
  title: "Cost of a bill and its waste",
  equation: String.raw`T = \sum_i q_i p_i,\qquad W = \sum_i (q_i - u_i)\, p_i`,
  inputs: { lines: { symbol: "q_i, u_i, p_i", kind: costLines, meaning: "bought, used, price" } },
  result: {
    total: { symbol: "T", kind: Money, meaning: "total" },
    waste: { symbol: "W", kind: Money, meaning: "paid for what does not go into the case" },
  },
  source: [cite("geometry", "arithmetic")],
  validity: "One currency; prices as paid, with tax and carriage as the shop counts them.",
  refuse,
  compute: ({ lines }) => {
    const currency = lines[0]?.unitPrice.currency ?? "";
    const sum = (quantity: (line: CostLine) => number): Money => ({
      amount: lines.reduce((total, line) => total + quantity(line) * line.unitPrice.amount, 0),
      currency,
    });
    return {
      total: sum((line) => line.quantity),
      waste: sum((line) => line.quantity - line.used),
    };
  },
});

/** Adds up a whole bill. Throws as `billTotal` does. */
export function totalOf(lines: readonly BillLine[]): BillTotal {
  return billTotal({
    lines: lines.map(({ item, quantity, used = quantity, unitPrice }) => ({
      item,
      quantity: ratio(quantity),
      used: ratio(used),
      unitPrice,
    })),
  });
}
