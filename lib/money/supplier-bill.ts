/** What a supplier adds to the goods: shipping and tax. */
import { type Formula, formula } from "../formula.js";
import { Mass, Money, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { mixedCurrencies } from "./currency.js";
import { type OrNever, orNever } from "./never.js";

/** One order at one supplier. */
export interface SupplierOrder {
  /** Everything ordered there. */
  readonly goods: Money;
  /** Of the goods. */
  readonly mass: Mass;
  /** For an order of any size. */
  readonly shipping: Money;
  /** For each kilogram, on top of it. */
  readonly perKilogram: Money;
  /** Goods from this amount on are shipped free. */
  readonly freeFrom: OrNever<Money>;
  /** Of everything paid, as a share. */
  readonly tax: Ratio;
}

/** What an order comes to. */
export type SupplierBill = {
  /** Nothing where nothing is ordered, or where it is free. */
  readonly shipping: Money;
  /** Ordered beyond the need, where that costs less than the shipping it saves. */
  readonly filledUp: Money;
  /** On everything paid. */
  readonly tax: Money;
  /** Goods, shipping or what fills the order up, and tax. */
  readonly total: Money;
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
 * @throws RangeError for negative amounts, mass or tax, or two currencies
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
