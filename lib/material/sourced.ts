import type { Known } from "../source.js";

/** A value with how it is known. */
export interface Sourced<T> {
  readonly value: T;
  readonly known: Known;
}

/** Read in a copy of the source. */
export function seen<T>(value: T): Sourced<T> {
  return { value, known: "seen" };
}

/** Recalled; measure it where it matters. */
export function recalled<T>(value: T): Sourced<T> {
  return { value, known: "memory" };
}

/** A rule of the trade. */
export function customary<T>(value: T): Sourced<T> {
  return { value, known: "common practice" };
}
