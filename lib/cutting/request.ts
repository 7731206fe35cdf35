/** What is wrong with a list of pieces or stock before any cutting is tried. */
import { Length } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import type { Buyable } from "./purchase.js";

/** A thing with a name. */
export interface Named {
  /** As the builder wrote it. */ readonly name: string;
}

/**
 * Throws with every reason at once.
 *
 * @throws Refusal `bars: <reason>; <reason>` when there is any
 */
export function refuse(trade: string, reasons: readonly string[]): void {
  if (reasons.length > 0) throw new Refusal(`${trade}: ${reasons.join("; ")}`);
}

/** Names that occur twice. */
export function repeatedNames(what: string, things: readonly Named[]): string[] {
  const names = things.map(({ name }) => name);
  const repeated = new Set(names.filter((name, i) => names.indexOf(name) !== i));
  return [...repeated].map((name) => `two ${what} are named "${name}"`);
}

/** Counts that are no whole number from 0 up. */
export function badCounts(things: readonly (Named & { readonly count?: number | undefined })[]): string[] {
  return things
    .filter(({ count }) => count !== undefined && !(Number.isSafeInteger(count) && count >= 0))
    .map(({ name, count }) => `${name}: expected a whole number from 0 up, got ${count}`);
}

/** So many pieces are planned one by one at the most: far beyond any shop, and a plan still ends. */
const mostPieces = 10_000;

/** More pieces in all than can be planned one by one. */
export function tooMany(pieces: readonly { readonly count: number }[]): string[] {
  const all = pieces.reduce((sum, { count }) => sum + count, 0);
  return all > mostPieces ? [`at most ${mostPieces} pieces can be planned, got ${all}`] : [];
}

/** Sizes that are not positive. */
export function badSizes(things: readonly (Named & { readonly sizes: readonly Length[] })[]): string[] {
  return things
    .filter(({ sizes }) => sizes.some((size) => !(size > 0)))
    .map(({ name, sizes }) => `${name}: sizes must be positive, got ${showSizes(sizes)}`);
}

/** A kerf, trim or the like below zero. */
export function belowZero(lengths: Readonly<Record<string, Length>>): string[] {
  return Object.entries(lengths)
    .filter(([, length]) => !(length >= 0))
    .map(([name, length]) => `${name} must be at least 0 mm, got ${Length.show(length)}`);
}

/** Stock that is missing, below zero in price, or priced in two currencies. */
export function badStock(stock: readonly Buyable[]): string[] {
  const currencies = [...new Set(stock.map(({ price }) => price.currency))];
  return [
    ...(stock.length === 0 ? ["no stock to buy from"] : []),
    ...(currencies.length > 1 ? [`stock is priced in ${currencies.join(" and ")}`] : []),
    ...stock
      .filter(({ price }) => !(price.amount >= 0))
      .map(({ name, price }) => `${name}: price must be at least 0, got ${price.amount}`),
    ...badCounts(stock.map(({ name, available }) => ({ name, count: available }))),
    ...repeatedNames("stocks", stock),
  ];
}

/** "600 x 400 mm" */
export function showSizes(sizes: readonly Length[]): string {
  return `${sizes.map((size) => Length.show(size, { unit: "mm", digits: 6 }).replace(" mm", "")).join(" x ")} mm`;
}
