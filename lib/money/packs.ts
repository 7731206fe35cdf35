import { type Formula, formula } from "../formula.js";
import { Count, Money, Ratio, wholeUp } from "../quantity/index.js";
import { cite } from "../source.js";

/** So many things, sold by the pack. */
export interface PackNeed {
  /** That go into the case. */
  readonly needed: number;
  /** Share to have over for drops and trials; 0.05 is one in twenty. */
  readonly spare: Ratio;
  /** How many are in a pack. */
  readonly perPack: number;
  /** Of one pack. */
  readonly price: Money;
}

/** Whole packs and what is left of them. */
export type PackPurchase = {
  /** Whole packs. */
  readonly packs: number;
  /** Things in all packs. */
  readonly bought: number;
  /** More than go into the case. */
  readonly over: number;
  /** Of all packs. */
  readonly cost: Money;
  /** What the rest costs that does not go into the case. */
  readonly waste: Money;
};

/**
 * Whole packs for a number of things and a share to spare: packs = ceil(needed (1 + spare) / pack).
 *
 * @source arithmetic; a share to spare is common practice
 * @throws RangeError for an empty pack, a negative spare share or price
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
