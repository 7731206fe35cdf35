/** What all money formulas share. */
import type { Kind, Money } from "../quantity/index.js";

/** Reasons why amounts cannot be added or compared: more than one currency among them. */
export function mixedCurrencies(amounts: readonly Money[]): string[] {
  const currencies = [...new Set(amounts.map(({ currency }) => currency))];
  return currencies.length > 1 ? [`amounts are in ${currencies.join(" and ")}, expected one currency`] : [];
}

/** A value, or the word that there is none. */
export type OrNever<T> = T | "never";

/** The same kind, that may also be "never". */
export function orNever<T>(kind: Kind<T>): Kind<OrNever<T>> {
  return {
    name: `${kind.name} or never`,
    expected: `${kind.expected}, or "never"`,
    fault: (value) => (value === "never" ? undefined : kind.fault?.(value)),
    read: (text) => (text === "never" ? "never" : kind.read(text)),
    show: (value, style) => (value === "never" ? "never" : kind.show(value, style)),
  };
}
