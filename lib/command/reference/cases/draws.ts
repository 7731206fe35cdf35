/** What a random case is drawn with: the same draws for the same seed. */
import { at } from "../../../algebra/lists.js";
import { seededRandom } from "../../../algebra/random.js";

/** A block of case.yaml as plain data. */
export interface Block {
  readonly [key: string]: unknown;
}

/** Random choices, and lengths as the case file writes them. */
export interface Draws {
  /** True in so many of ten cases. */
  often(ofTen: number): boolean;
  /** A whole number from one to another, both included. */
  whole(low: number, high: number): number;
  /** One of a list. */
  pick<T>(list: readonly T[]): T;
  /** The list in another order. */
  shuffled<T>(list: readonly T[]): readonly T[];
  /** The entries of a block, each kept in so many of ten cases. */
  some(ofTen: number, block: Block): Block;
  /** A length in millimetres as a number of the file's unit. */
  length(millimetres: number): number;
}

/** Draws from a seed, with lengths in millimetres or in inches to a thirty-second. */
export function drawsOf(seed: number, lengths: "mm" | "in"): Draws {
  const random = seededRandom(seed);
  const whole = (low: number, high: number): number =>
    low + Math.floor(random.uniform() * Math.max(1, high - low + 1));
  const often = (ofTen: number): boolean => random.uniform() < ofTen / 10;
  const shuffled = <T>(list: readonly T[]): readonly T[] =>
    list
      .map((one) => ({ one, key: random.uniform() }))
      .sort((a, b) => a.key - b.key)
      .map(({ one }) => one);
  return {
    often,
    whole,
    pick: (list) => at(list, whole(0, list.length - 1)),
    shuffled,
    some: (ofTen, block) => Object.fromEntries(Object.entries(block).filter(() => often(ofTen))),
    length: (millimetres) =>
      lengths === "mm" ? Math.round(millimetres * 10) / 10 : Math.round((millimetres / 25.4) * 32) / 32,
  };
}
