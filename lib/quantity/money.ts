import type { Kind, ShowStyle } from "./kind.js";
import { readNumber } from "./number-text.js";

/** An amount of one currency (ISO 4217 code). */
export interface Money {
  /** The amount, in units of the currency. */
  readonly amount: number;
  /** The code of the currency: "USD". */
  readonly currency: string;
}

/** Whether a value is an amount of a currency. */
export function isMoney(value: unknown): value is Money {
  if (typeof value !== "object" || value === null) return false;
  const { amount, currency } = value as Partial<Money>;
  return Number.isFinite(amount) && typeof currency === "string";
}

const moneyText = /^(?:([A-Z]{3})\s*)?([+-]?[\d.,/\s]+?)\s*([A-Z]{3})?$/;
const expected = 'an amount with its currency such as "12.50 USD"';

function read(text: unknown): Money {
  if (typeof text !== "string") throw new TypeError(`expected ${expected}, got ${JSON.stringify(text)}`);
  const match = moneyText.exec(text.trim());
  const currency = match?.[1] ?? match?.[3];
  if (!match || !currency || (match[1] && match[3]))
    throw new RangeError(`expected ${expected}, got "${text}"`);
  return money(readNumber(match[2] ?? ""), currency);
}

function show({ amount, currency }: Money): string {
  const cents = Math.abs(amount)
    .toFixed(2)
    .replace(/\B(?=(\d{3})+\.)/g, "\u202f");
  return `${amount < 0 && cents !== "0.00" ? "-" : ""}${cents} ${currency}`;
}

/**
 * Money as a kind: reads "12.50 USD", shows the same.
 *
 * @throws RangeError without a currency
 */
export const Money: Kind<Money> & {
  measure(value: Money): number;
  showMeasure(value: number, style?: ShowStyle): string;
} = {
  name: "money",
  expected,
  fault: (value) => (isMoney(value) ? undefined : expected),
  read,
  show,
  measure: ({ amount }) => amount,
  showMeasure: (value) => value.toFixed(2),
};

/**
 * An amount of a currency.
 *
 * @throws RangeError unless the amount is finite and the code is three capitals
 */
export function money(amount: number, currency: string): Money {
  if (!Number.isFinite(amount)) throw new RangeError(`money: expected a finite amount, got ${amount}`);
  if (!/^[A-Z]{3}$/.test(currency)) {
    throw new RangeError(`money: expected a currency of three capitals such as USD, got "${currency}"`);
  }
  return { amount, currency };
}

/**
 * Adds amounts of one currency.
 *
 * @throws RangeError when two currencies meet, or for an empty list without a currency
 */
export function addMoney(
  amounts: readonly Money[],
  currency: string | undefined = amounts[0]?.currency,
): Money {
  if (currency === undefined) throw new RangeError("money: nothing to add and no currency given");
  const stranger = amounts.find((one) => one.currency !== currency);
  if (stranger) throw new RangeError(`money: cannot add ${stranger.currency} to ${currency}`);
  return money(
    amounts.reduce((sum, { amount }) => sum + amount, 0),
    currency,
  );
}

/** So many times an amount. */
export function timesMoney(count: number, { amount, currency }: Money): Money {
  return money(count * amount, currency);
}
