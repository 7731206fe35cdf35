import type { Money } from "../quantity/index.js";

/** Reasons why amounts cannot be added or compared: more than one currency among them. */
export function mixedCurrencies(amounts: readonly Money[]): string[] {
  const currencies = [...new Set(amounts.map(({ currency }) => currency))];
  return currencies.length > 1 ? [`amounts are in ${currencies.join(" and ")}, expected one currency`] : [];
}
