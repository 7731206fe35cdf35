/** The bill of a case, by groups and by suppliers. */
import { type Formula, formula } from "../formula.js";
import { type Kind, listOf, Mass, Money, Name, Ratio, ratio, recordOf } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import { cite } from "../source.js";
import { mixedCurrencies, type OrNever, orNever } from "./currency.js";

/** How much of a line is for one section of the case. */
export interface SectionShare {
  /** "upper". */ readonly section: string;
  /** The shares of a line add up to 1. */ readonly share: number;
}

/** One thing bought. */
export interface BillLine {
  /** The sections it goes into: one, or several that share it. */
  readonly shares: readonly SectionShare[];
  /** Kind of work it belongs to: "panels", "rivets", "adhesive". */ readonly trade: string;
  /** What it is. */ readonly item: string;
  /** Who sells it; not yet chosen when absent. */ readonly supplier?: string;
  /** Paid for, in the unit the price is for. */ readonly quantity: number;
  /** Goes into the case, in the same unit; all of it when absent. */ readonly used?: number;
  /** "each", "m2", "can". */ readonly unit: string;
  /** Of one unit. */ readonly unitPrice: Money;
  /** Of one unit, for a supplier who charges by weight; weightless when absent. */
  readonly mass?: Mass;
}

/** A line of the bill, as far as its cost goes. */
export interface CostLine {
  /** What it is. */ readonly item: string;
  /** Paid for. */ readonly quantity: Ratio;
  /** Goes into the case. */ readonly used: Ratio;
  /** Of one unit. */ readonly unitPrice: Money;
}

/** What is paid, and how much of it does not go into the case. */
export type BillTotal = {
  /** Everything that is paid. */ readonly total: Money;
  /** Paid for what does not go into the case. */ readonly waste: Money;
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
 * @throws Refusal for an empty bill, two currencies, more used than bought, or a negative price
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

/** A heading of a bill with its total. */
export interface BillGroup {
  /** The section, trade or supplier. */ readonly name: string;
  /** The lines under it. */ readonly lines: readonly BillLine[];
  /** Everything paid under it. */ readonly total: Money;
  /** Paid for what does not go into the case. */ readonly waste: Money;
}

/** What a bill can be put in order by. */
export type BillHeading = "section" | "trade" | "supplier";

/**
 * Totals by section, trade or supplier, in the order the headings first appear. A line that several sections
 * share stands under each of them with its share of the quantity, so that every grouping adds up to the bill.
 *
 * @throws Refusal as `billTotal` does
 * @example
 * const { shares, ...ply } = { shares: [{ section: "lower", share: 1 }], trade: "panels", item: "ply", unit: "each" };
 * const lines = [{ ...ply, shares, quantity: 3, unitPrice: money(80, "USD") }];
 * groupBill(lines, "trade").map(({ name, total }) => `${name}: ${Money.show(total)}`).join() // panels: 240.00 USD
 */
export function groupBill(lines: readonly BillLine[], by: BillHeading): BillGroup[] {
  const parts = by === "section" ? lines.flatMap(bySection) : lines;
  const nameOf = (line: BillLine): string =>
    (by === "section" ? line.shares[0]?.section : line[by]) ?? "not yet chosen";
  return [...new Set(parts.map(nameOf))].map((name) => {
    const mine = parts.filter((line) => nameOf(line) === name);
    return { name, lines: mine, ...totalOf(mine) };
  });
}

/** A line in as many parts as sections share it, each all its section's own. */
function bySection(line: BillLine): BillLine[] {
  const { quantity, used = quantity } = line;
  return line.shares.map(({ section, share }) => ({
    ...line,
    shares: [{ section, share: 1 }],
    quantity: quantity * share,
    used: used * share,
  }));
}

/**
 * The shares of things that several sections have a part in, in the order the sections first appear.
 *
 * @throws Refusal for parts that add up to nothing, or a negative one
 * @example
 * const shares = sharesOf([{ section: "lower", amount: 3 }, { section: "upper", amount: 1 }]);
 * shares.map(({ section, share }) => `${section} ${share}`).join() // lower 0.75,upper 0.25
 */
export function sharesOf(
  parts: readonly { readonly section: string; readonly amount: number }[],
): SectionShare[] {
  const whole = parts.reduce((sum, { amount }) => sum + amount, 0);
  if (!(whole > 0) || parts.some(({ amount }) => amount < 0)) {
    throw new Refusal(`shares: parts must be at least 0 and add up to more, got ${whole} in all`);
  }
  return [...new Set(parts.map(({ section }) => section))].map((section) => ({
    section,
    share: parts.reduce((sum, part) => (part.section === section ? sum + part.amount : sum), 0) / whole,
  }));
}

/** One order at one supplier. */
export interface SupplierOrder {
  /** Everything ordered there. */ readonly goods: Money;
  /** Of the goods. */ readonly mass: Mass;
  /** For an order of any size. */ readonly shipping: Money;
  /** For each kilogram, on top of it. */ readonly perKilogram: Money;
  /** Goods from this amount on are shipped free. */ readonly freeFrom: OrNever<Money>;
  /** Of everything paid, as a share. */ readonly tax: Ratio;
}

/** What an order comes to. */
export type SupplierBill = {
  /** Nothing where nothing is ordered, or where it is free. */ readonly shipping: Money;
  /** Ordered beyond the need, where that costs less than the shipping it saves. */
  readonly filledUp: Money;
  /** On everything paid. */ readonly tax: Money;
  /** Goods, shipping or what fills the order up, and tax. */ readonly total: Money;
};

/** Shipping, or the lesser amount that makes it free. */
function carriage({ goods, mass, shipping, perKilogram, freeFrom }: Omit<SupplierOrder, "tax">): {
  readonly shipping: number;
  readonly filledUp: number;
} {
  if (goods.amount === 0) return { shipping: 0, filledUp: 0 };
  const charged = shipping.amount + perKilogram.amount * Mass.in(mass, "kg");
  if (freeFrom === "never") return { shipping: charged, filledUp: 0 };
  const short = Math.max(0, freeFrom.amount - goods.amount);
  return short <= charged ? { shipping: 0, filledUp: short } : { shipping: charged, filledUp: 0 };
}

/**
 * What an order comes to: (G + min(F + c m, max(0, G_f - G))) (1 + t), or nothing where nothing is ordered.
 *
 * Below the amount from which shipping is free, the order is filled up where that is no dearer than shipping;
 * so neither a cheaper price nor one thing fewer ever makes the order dearer.
 *
 * @source arithmetic
 * @throws Refusal for negative amounts, mass or tax, or two currencies
 * @example supplierBill({ goods: money(100, "USD"), mass: kg(5), shipping: money(15, "USD"), perKilogram: money(1, "USD"), freeFrom: "never", tax: ratio(0.08) }) // shipping 20.00 USD, filledUp 0.00 USD, tax 9.60 USD, total 129.60 USD
 */
export const supplierBill: Formula<SupplierOrder, SupplierBill> = formula<SupplierOrder, SupplierBill>({
  id: "buy.supplier",
  title: "What an order comes to",
  equation: String.raw`T = \left(G + \min\left(F + c\,m,\ \max(0,\ G_f - G)\right)\right)(1 + t)`,
  inputs: {
    goods: { symbol: "G", kind: Money, meaning: "goods", min: 0 },
    mass: { symbol: "m", kind: Mass, meaning: "mass of the goods", min: 0 },
    shipping: { symbol: "F", kind: Money, meaning: "shipping of any order", min: 0 },
    perKilogram: { symbol: "c", kind: Money, meaning: "shipping of a kilogram", min: 0 },
    freeFrom: { symbol: "G_f", kind: orNever(Money), meaning: "shipped free from this amount on" },
    tax: { symbol: "t", kind: Ratio, meaning: "tax", min: 0 },
  },
  result: {
    shipping: { symbol: "S", kind: Money, meaning: "shipping" },
    filledUp: { symbol: "G_f - G", kind: Money, meaning: "bought to fill the order up" },
    tax: { symbol: "t(T/(1 + t))", kind: Money, meaning: "tax" },
    total: { symbol: "T", kind: Money, meaning: "total" },
  },
  source: [cite("geometry", "arithmetic")],
  validity: "One order; tax on shipping too: ask what applies where you buy.",
  refuse: ({ goods, shipping, perKilogram, freeFrom }) =>
    mixedCurrencies([goods, shipping, perKilogram, ...(freeFrom === "never" ? [] : [freeFrom])]),
  compute: ({ tax, ...order }) => {
    const { amount, currency } = order.goods;
    const { shipping, filledUp } = carriage(order);
    const taxed = (amount + shipping + filledUp) * tax;
    return {
      shipping: { amount: shipping, currency },
      filledUp: { amount: filledUp, currency },
      tax: { amount: taxed, currency },
      total: { amount: amount + shipping + filledUp + taxed, currency },
    };
  },
});
