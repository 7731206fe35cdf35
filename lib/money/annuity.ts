/** The worth today of equal payments to come. */
import { type Formula, type FormulaSymbols, formula } from "../formula.js";
import { Count, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import type { OrNever } from "./never.js";

/** Equal payments at the end of each period. */
export interface EqualPayments {
  /** For one period, as a share. */
  readonly interest: Ratio;
  /** How many payments, one at the end of each period. */
  readonly periods: number;
}

const inputs: FormulaSymbols<EqualPayments> = {
  interest: { symbol: "i", kind: Ratio, meaning: "interest for a period", min: 0, max: 10 },
  periods: { symbol: "n", kind: Count, meaning: "number of payments", min: 1, max: 1000 },
};

/** (1 - (1 + i)^-n) / i, which without interest is n. */
function presentWorthOf({ interest, periods }: EqualPayments): number {
  return interest === 0 ? periods : -Math.expm1(-periods * Math.log1p(interest)) / interest;
}

/**
 * What a payment of 1 at the end of each period is worth today: P/A = (1 - (1 + i)^-n) / i.
 *
 * @source engineering economy, uniform series present worth
 * @throws RangeError for negative interest or no payments
 * @example presentWorthFactor({ interest: ratio(0.12), periods: 5 }) // 3.605
 */
export const presentWorthFactor: Formula<EqualPayments, Ratio> = formula({
  id: "annuity.present.worth",
  title: "Present worth of equal payments",
  equation: String.raw`\frac{P}{A} = \frac{1 - (1 + i)^{-n}}{i}`,
  inputs,
  result: { symbol: "P/A", kind: Ratio, meaning: "worth today of payments of 1" },
  source: [cite("engineering-economy", "uniform series present worth factor")],
  validity: "Payments at the end of each period, one rate throughout.",
  compute: presentWorthOf,
});

/**
 * The equal payment that pays back 1 with its interest: A/P = i / (1 - (1 + i)^-n).
 *
 * @source engineering economy, capital recovery
 * @throws RangeError for negative interest or no payments
 * @example recoveryFactor({ interest: ratio(0.12), periods: 5 }) // 0.2774
 */
export const recoveryFactor: Formula<EqualPayments, Ratio> = formula({
  id: "annuity.recovery",
  title: "Payment that recovers an outlay",
  equation: String.raw`\frac{A}{P} = \frac{i}{1 - (1 + i)^{-n}}`,
  inputs,
  result: { symbol: "A/P", kind: Ratio, meaning: "payment for an outlay of 1" },
  source: [cite("engineering-economy", "capital recovery factor")],
  validity: "Payments at the end of each period, one rate throughout.",
  compute: (payments) => 1 / presentWorthOf(payments),
});

/** Periods, not rounded, until equal payments have paid an outlay and its interest. */
export function periodsToRepay(outlay: number, payment: number, interest: number): OrNever<number> {
  if (outlay === 0) return 0;
  if (payment <= 0 || payment <= outlay * interest) return "never";
  return interest === 0
    ? outlay / payment
    : -Math.log1p((-outlay * interest) / payment) / Math.log1p(interest);
}
