import { type Formula, formula } from "../formula.js";
import { Count, Money, Time, wholeUp } from "../quantity/index.js";
import { cite } from "../source.js";
import { mixedCurrencies, type OrNever, orNever } from "./currency.js";

/** What it takes to build a case oneself. */
export interface OwnWork {
  /** All materials of one case, waste included. */ readonly material: Money;
  /** Bench time of one case. */ readonly time: Time;
  /** What an hour of one's own is worth. */ readonly hourlyRate: Money;
  /** Bought once, for this and later cases. */ readonly tools: Money;
}

/** What one's own case costs. */
export type OwnCost = {
  /** Hours at their rate, of one case. */ readonly labour: Money;
  /** Material and labour of one case. */ readonly each: Money;
  /** The first case, with the tools. */ readonly first: Money;
};

/**
 * What it costs to build a case: material + hours x rate, and the tools with the first one.
 *
 * @source arithmetic
 * @throws Refusal for negative amounts or time, or two currencies
 * @example ownCost({ material: money(420, "USD"), time: hour(30), hourlyRate: money(25, "USD"), tools: money(150, "USD") }) // labour 750.00 USD, each 1 170.00 USD, first 1 320.00 USD
 */
export const ownCost: Formula<OwnWork, OwnCost> = formula<OwnWork, OwnCost>({
  id: "make.cost",
  title: "Cost of building it oneself",
  equation: String.raw`C_1 = M + t\,r,\qquad C_f = C_1 + T`,
  inputs: {
    material: { symbol: "M", kind: Money, meaning: "material of one case", min: 0 },
    time: { symbol: "t", kind: Time, meaning: "bench time of one case", min: 0 },
    hourlyRate: { symbol: "r", kind: Money, meaning: "worth of an hour", min: 0 },
    tools: { symbol: "T", kind: Money, meaning: "tools to buy", min: 0 },
  },
  result: {
    labour: { symbol: "t r", kind: Money, meaning: "labour of one case" },
    each: { symbol: "C_1", kind: Money, meaning: "material and labour of one case" },
    first: { symbol: "C_f", kind: Money, meaning: "the first case with the tools" },
  },
  source: [cite("engineering-economy", "cost of making")],
  validity: "Rent, insurance and the risk of a failed piece are not in it unless the rate covers them.",
  refuse: ({ material, hourlyRate, tools }) => mixedCurrencies([material, hourlyRate, tools]),
  compute: ({ material, time, hourlyRate, tools }) => {
    const { currency } = material;
    const labour = Time.in(time, "h") * hourlyRate.amount;
    const each = material.amount + labour;
    return {
      labour: { amount: labour, currency },
      each: { amount: each, currency },
      first: { amount: each + tools.amount, currency },
    };
  },
});

/** Building against buying. */
export interface MakeOrBuy {
  /** Material and labour of one case. */ readonly own: Money;
  /** Bought once. */ readonly tools: Money;
  /** Price of a ready-made case. */ readonly readyMade: Money;
}

/** Whether building saves anything, and from how many cases on. */
export type MakeOrBuyAnswer = {
  /** On each case, tools aside; negative where buying is cheaper. */ readonly saving: Money;
  /** Cases after which the savings have paid the tools. */ readonly cases: OrNever<number>;
};

/**
 * From how many cases on building is no dearer than buying: ceil(tools / (ready-made - own)), or never.
 *
 * @source engineering economy, break-even of make or buy
 * @throws Refusal for negative amounts, or two currencies
 * @example makeOrBuy({ own: money(1170, "USD"), tools: money(400, "USD"), readyMade: money(1400, "USD") }) // saving 230.00 USD, cases 2
 */
export const makeOrBuy: Formula<MakeOrBuy, MakeOrBuyAnswer> = formula<MakeOrBuy, MakeOrBuyAnswer>({
  id: "make.or.buy",
  title: "Build or buy",
  equation: String.raw`S = B - C_1,\qquad N = \left\lceil \frac{T}{S} \right\rceil`,
  inputs: {
    own: { symbol: "C_1", kind: Money, meaning: "own case, material and labour", min: 0 },
    tools: { symbol: "T", kind: Money, meaning: "tools to buy", min: 0 },
    readyMade: { symbol: "B", kind: Money, meaning: "ready-made case", min: 0 },
  },
  result: {
    saving: { symbol: "S", kind: Money, meaning: "saved on each case" },
    cases: { symbol: "N", kind: orNever(Count), meaning: "cases until the tools are paid" },
  },
  source: [cite("engineering-economy", "break-even of make or buy")],
  validity: "A ready-made case that would do the same job.",
  refuse: ({ own, tools, readyMade }) => mixedCurrencies([own, tools, readyMade]),
  compute: ({ own, tools, readyMade }) => {
    const saving = readyMade.amount - own.amount;
    return {
      saving: { amount: saving, currency: own.currency },
      cases: saving > 0 ? wholeUp(tools.amount / saving) : "never",
    };
  },
});

/** What decides how dear an hour of one's own may be. */
export interface HourAsked {
  /** All materials of one case, waste included. */ readonly material: Money;
  /** Bench time of one case. */ readonly time: Time;
  /** Bought once. */ readonly tools: Money;
  /** Price of a ready-made case. */ readonly readyMade: Money;
}

/** How dear an hour of one's own may be. */
export type HourAllowed = {
  /** Worth of an hour at which building and buying cost the same. */ readonly hour: OrNever<Money>;
};

/**
 * What an hour of one's own may be worth for the first case to cost no more than a ready-made one:
 * r = (B - M - T) / t, or never where material and tools alone cost more.
 *
 * @source engineering economy, break-even of make or buy
 * @throws Refusal for negative amounts, no time, or two currencies
 * @example breakEvenHour({ material: money(1100, "USD"), time: hour(25), tools: money(150, "USD"), readyMade: money(1750, "USD") }) // hour 20.00 USD
 */
export const breakEvenHour: Formula<HourAsked, HourAllowed> = formula<HourAsked, HourAllowed>({
  id: "make.or.buy.hour",
  title: "What an hour may be worth before buying is cheaper",
  equation: String.raw`r = \frac{B - M - T}{t}`,
  inputs: {
    material: { symbol: "M", kind: Money, meaning: "material of one case", min: 0 },
    time: { symbol: "t", kind: Time, meaning: "bench time of one case", above: 0 },
    tools: { symbol: "T", kind: Money, meaning: "tools to buy", min: 0 },
    readyMade: { symbol: "B", kind: Money, meaning: "ready-made case", min: 0 },
  },
  result: {
    hour: { symbol: "r", kind: orNever(Money), meaning: "worth of an hour at which both cost the same" },
  },
  source: [cite("engineering-economy", "break-even of make or buy")],
  validity: "A ready-made case that would do the same job; the tools charged to the first case.",
  refuse: ({ material, tools, readyMade }) => mixedCurrencies([material, tools, readyMade]),
  compute: ({ material, time, tools, readyMade }) => {
    const left = readyMade.amount - material.amount - tools.amount;
    if (left < 0) return { hour: "never" };
    return { hour: { amount: left / Time.in(time, "h"), currency: readyMade.currency } };
  },
});
