import type { Money } from "../quantity/index.js";

/** Reasons why amounts cannot be added or compared: more than one currency among them. */
export function mixedCurrencies(amounts: readonly Money[]): string[] {
  const currencies = [...new Set(amounts.map(({ currency }) => currency))];
  return currencies.length > 1 ? [`amounts are in ${currencies.join(" and ")}, expected one currency`] : [];
}

/** The next whole number up, where a quotient that is whole but for its rounding stays where it is. */
export function wholeUp(value: number): number {
  return Math.max(0, Math.ceil(value - 1e-9 * Math.max(1, Math.abs(value))));
}
