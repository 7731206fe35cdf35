/** What is bought in packs and at prices that fall with the quantity. */
import { type Formula, formula } from "../formula.js";
import { Count, type Kind, listOf, Money, Ratio, recordOf, wholeUp } from "../quantity/index.js";
import { cite } from "../source.js";
import { mixedCurrencies } from "./currency.js";

/** So many things, sold by the pack. */
export interface PackNeed {
  /** That go into the case. */ readonly needed: number;
  /** Share to have over for drops and trials; 0.05 is one in twenty. */ readonly spare: Ratio;
  /** How many are in a pack. */ readonly perPack: number;
  /** Of one pack. */ readonly price: Money;
}

/** Whole packs and what is left of them. */
export type PackPurchase = {
  /** Whole packs. */ readonly packs: number;
  /** Things in all packs. */ readonly bought: number;
  /** More than go into the case. */ readonly over: number;
  /** Of all packs. */ readonly cost: Money;
  /** What the rest costs that does not go into the case. */ readonly waste: Money;
};

/**
 * Whole packs for a number of things and a share to spare: packs = ceil(needed (1 + spare) / pack).
 *
 * @source arithmetic; a share to spare is common practice
 * @throws Refusal for an empty pack, a negative spare share or price
 * @example packs({ needed: 212, spare: ratio(0.05), perPack: 100, price: money(8, "USD") }) // packs 3, bought 300, over 88, cost 24.00 USD, waste 7.04 USD
 */
export const packs: Formula<PackNeed, PackPurchase> = formula<PackNeed, PackPurchase>({
  id: "buy.packs",
  title: "Whole packs to buy",
  equation: String.raw`N = \left\lceil \frac{n(1 + s)}{q} \right\rceil,\qquad C = N p,\qquad W = C\,\frac{N q - n}{N q}`,
  inputs: {
    needed: { symbol: "n", kind: Count, meaning: "needed in the case" },
    spare: { symbol: "s", kind: Ratio, meaning: "share to spare", min: 0 },
    perPack: { symbol: "q", kind: Count, meaning: "in a pack", min: 1 },
    price: { symbol: "p", kind: Money, meaning: "price of a pack", min: 0 },
  },
  result: {
    packs: { symbol: "N", kind: Count, meaning: "packs to buy" },
    bought: { symbol: "N q", kind: Count, meaning: "bought in all" },
    over: { symbol: "N q - n", kind: Count, meaning: "left over" },
    cost: { symbol: "C", kind: Money, meaning: "cost" },
    waste: { symbol: "W", kind: Money, meaning: "cost of what is left over" },
  },
  source: [cite("geometry", "arithmetic"), cite("common-practice", "a share to spare")],
  validity: "Things sold in packs of one size.",
  compute: ({ needed, spare, perPack, price: { amount, currency } }) => {
    const count = wholeUp((needed * (1 + spare)) / perPack);
    const bought = count * perPack;
    const over = bought - needed;
    const cost = count * amount;
    const waste = bought === 0 ? 0 : (cost * over) / bought;
    return {
      packs: count,
      bought,
      over,
      cost: { amount: cost, currency },
      waste: { amount: waste, currency },
    };
  },
});

/** A lower price from some quantity on. */
export interface PriceBreak {
  /** From this many on, for all of them. */ readonly from: number;
  /** Of one. */ readonly price: Money;
}

/** So many of a thing whose price depends on how many are bought. */
export interface QuantityNeed {
  /** Needed. */ readonly needed: number;
  /** Of one, below every break. */ readonly price: Money;
  /** In any order; none for a price that stays. */ readonly breaks: readonly PriceBreak[];
}

/** The cheapest way to have that many. */
export type QuantityPurchase = {
  /** As many as needed, or a few more where a break makes that cheaper. */ readonly bought: number;
  /** Of one, at that quantity. */ readonly unitPrice: Money;
  /** Of all that are bought. */ readonly cost: Money;
};

const priceBreaks: Kind<readonly PriceBreak[]> = listOf(
  recordOf<PriceBreak>("break", { from: Count, price: Money }),
);

/** The price of one when so many are bought: that of the highest break reached. */
function priceFor(quantity: number, { price, breaks }: QuantityNeed): Money {
  const reached = breaks.filter(({ from }) => from <= quantity).sort((a, b) => b.from - a.from);
  return reached[0]?.price ?? price;
}

function refuseBreaks({ price, breaks }: QuantityNeed): string[] {
  const rising = breaks.find((one) => one.price.amount > price.amount);
  const froms = breaks.map(({ from }) => from);
  return [
    ...mixedCurrencies([price, ...breaks.map((one) => one.price)]),
    ...breaks
      .filter((one) => one.price.amount < 0)
      .map(({ from }) => `the price from ${from} on is below zero`),
    ...(new Set(froms).size < froms.length ? ["two breaks begin at the same quantity"] : []),
    ...(rising
      ? [`a break must lower the price, got ${Money.show(rising.price)} from ${rising.from} on`]
      : []),
  ];
}

/**
 * The cheapest purchase of at least so many: as many as needed, or up to a break where that costs less.
 * C = min over m >= n of m p(m).
 *
 * @source arithmetic
 * @throws Refusal for a negative price, two currencies, two breaks at one quantity, or one that raises the price
 * @example quantityPrice({ needed: 9, price: money(10, "USD"), breaks: [{ from: 10, price: money(8, "USD") }] }) // bought 10, unitPrice 8.00 USD, cost 80.00 USD
 */
export const quantityPrice: Formula<QuantityNeed, QuantityPurchase> = formula<QuantityNeed, QuantityPurchase>(
  {
    id: "buy.price.breaks",
    title: "Cheapest purchase with price breaks",
    equation: String.raw`C = \min_{m \ge n} m\,p(m)`,
    inputs: {
      needed: { symbol: "n", kind: Count, meaning: "needed" },
      price: { symbol: "p_0", kind: Money, meaning: "price of one", min: 0 },
      breaks: { symbol: "p(m)", kind: priceBreaks, meaning: "lower prices from a quantity on" },
    },
    result: {
      bought: { symbol: "m", kind: Count, meaning: "to buy" },
      unitPrice: { symbol: "p", kind: Money, meaning: "price of one" },
      cost: { symbol: "C", kind: Money, meaning: "cost" },
    },
    source: [cite("geometry", "arithmetic")],
    validity: "A break is the price of every one bought, not only of those beyond it.",
    refuse: refuseBreaks,
    compute: (need) => {
      const worth =
        need.needed === 0 ? [] : need.breaks.map(({ from }) => from).filter((from) => from > need.needed);
      const offers = [need.needed, ...worth.sort((a, b) => a - b)].map((bought) => {
        const unitPrice = priceFor(bought, need);
        return { bought, unitPrice, cost: { ...unitPrice, amount: bought * unitPrice.amount } };
      });
      return offers.reduce((best, offer) => (offer.cost.amount < best.cost.amount ? offer : best));
    },
  },
);
