/**
 * What a value may be: the contract every quantity, choice and list keeps, so that a formula, a CSV
 * column and a page can read, guard and show it without knowing which it is.
 */

declare const measures: unique symbol;

/** A number in SI units that remembers, for the compiler only, what it measures. */
export type Quantity<Name extends string> = number & { readonly [measures]: Name };

/** How a value is shown: the builder's inches and pounds, or millimetres and kilograms. */
export interface ShowStyle {
  /** Default "metric". */
  readonly system?: "inch" | "metric";
  /** Show in exactly this unit, by a name the kind knows ("mm", "psi"). */
  readonly unit?: string;
  /** Finest inch fraction, a power of two up to 128. Default 16. */
  readonly denominator?: number;
  /** Significant digits of a decimal. Default 4. */
  readonly digits?: number;
  /** Inches as a decimal rather than a fraction, so that a sum can be done again with the figure shown. */
  readonly exact?: boolean;
}

/** A number inside a record or a list, with its own kind. */
export interface Part {
  readonly kind: Kind<unknown>;
  readonly value: unknown;
}

/** One kind of value, with its text form. */
export interface Kind<T> {
  /** In words, as an error names it: "length", "edge support". */
  readonly name: string;
  /** What a text of this kind may look like, for an error: `a length such as "12 mm"`. */
  readonly expected: string;
  /** Reads text (or a bare number where the kind has no unit). Throws RangeError or TypeError. */
  read(text: unknown): T;
  /** Shows a value with its unit. */
  show(value: T, style?: ShowStyle): string;
  /** The number a range guard compares; absent where the kind has no order. */
  measure?(value: T): number;
  /** The number of a unit that a value is; absent where the kind has no units. */
  in?(value: T, unit: string): number;
  /** Numbers of a record, in the order of its fields. */
  fields?(value: T): readonly Part[];
  /** Numbers of each item of a list. */
  items?(value: T): readonly (readonly Part[])[];
  /** Turns a bound of a range guard into text. */
  showMeasure?(value: number, style?: ShowStyle): string;
}
