/** What a value may be, and kinds that are no single quantity: choices, counts, lists and records. */
import { showNumber } from "./number-text.js";

/**
 * What a value may be: the contract every quantity, choice and list keeps, so that a formula, a CSV
 * column and a page can read, guard and show it without knowing which it is.
 */

declare const measures: unique symbol;

/** A number in SI units that remembers, for the compiler only, what it measures. */
export type Quantity<Name extends string> = number & { readonly [measures]: Name };

/** A number that measures nothing, to the compiler: a count, a share, a factor. */
export type BareNumber = number & { readonly [measures]?: never };

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
  /** The kind of the number. */
  readonly kind: Kind<unknown>;
  /** The number itself. */
  readonly value: unknown;
}

/** One kind of value, with its text form. */
export interface Kind<T> {
  /** The name as an error says it: "length", "edge support". */
  readonly name: string;
  /** What a text of this kind may look like, for an error: `a length such as "12 mm"`. */
  readonly expected: string;
  /** Reads text (or a bare number where the kind has no unit). Throws RangeError or TypeError. */
  read(text: unknown): T;
  /** Shows a value with its unit. */
  show(value: T, style?: ShowStyle): string;
  /** What a value should have been that is none of this kind, at any depth: "a length such as ...". */
  fault?(value: unknown): string | undefined;
  /** The number a range guard compares; absent where the kind has no order. */
  measure?(value: T): number;
  /** The number of a unit that a value is; absent where the kind has no units. */
  in?(value: T, unit: string): number;
  /** Numbers of a record, in the order of its fields. */
  fields?(value: T): readonly Part[];
  /** Numbers of each item of a list. */
  items?(value: T): readonly (readonly Part[])[];
  /** The words of a choice, one of which was meant by another word. */
  readonly words?: readonly string[];
  /** Turns a bound of a range guard into text. */
  showMeasure?(value: number, style?: ShowStyle): string;
}

/** What an error says. */
export function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

/** A value as an error tells it. */
export function told(value: unknown): string {
  if (typeof value === "number") return String(value);
  if (typeof value === "function") return "a function";
  return JSON.stringify(value) ?? String(value);
}

const wholeNumber = "a whole number from 0 up";

/** A whole number from 0 up, for rivets, sheets, people. */
export const Count: Kind<number> & { measure(value: number): number; showMeasure(value: number): string } = {
  name: "count",
  expected: wholeNumber,
  fault: (value) => (Number.isSafeInteger(value) && (value as number) >= 0 ? undefined : wholeNumber),
  read: (text) => {
    const value = typeof text === "string" && /^\s*\d+\s*$/.test(text) ? Number(text) : text;
    if (typeof value !== "number" || !Number.isSafeInteger(value) || value < 0) {
      throw new RangeError(`expected ${wholeNumber}, got ${JSON.stringify(text)}`);
    }
    return value;
  },
  show: (value) => showNumber(value, 12),
  measure: (value) => value,
  showMeasure: (value) => String(value),
};

/** One word out of a few. */
export function choice<const Word extends string>(name: string, words: readonly Word[]): Kind<Word> {
  const expected = `one of ${words.join(", ")}`;
  return {
    name,
    expected,
    words,
    fault: (value) => (words.some((word) => word === value) ? undefined : expected),
    read: (text) => {
      const word = words.find((candidate) => candidate === text);
      if (word === undefined) throw new RangeError(`expected ${expected}, got ${JSON.stringify(text)}`);
      return word;
    },
    show: (value) => value,
  };
}

/** Any text that is not blank, such as a name. */
export const Name: Kind<string> = {
  name: "name",
  expected: "a name",
  fault: (value) => (typeof value === "string" ? undefined : "a name"),
  read: (text) => {
    if (typeof text !== "string" || text.trim() === "")
      throw new TypeError(`expected a name, got ${JSON.stringify(text)}`);
    return text.trim();
  },
  show: (value) => value,
};

/** A list of values of one kind. */
export function listOf<T>(kind: Kind<T>): Kind<readonly T[]> {
  return {
    name: `list of ${kind.name}`,
    expected: `a list, each ${kind.expected}`,
    fault: (values) => {
      if (!Array.isArray(values)) return `a list, each ${kind.expected}`;
      const faults = values.map((value) => kind.fault?.(value));
      const first = faults.findIndex((one) => one !== undefined);
      return first < 0 ? undefined : `a list, its ${kind.name} ${first + 1} ${faults[first]}`;
    },
    read: (values) => {
      if (!Array.isArray(values))
        throw new TypeError(`expected a list, each ${kind.expected}, got ${JSON.stringify(values)}`);
      return values.map((value, i) => readField(kind, value, `${kind.name} ${i + 1}`));
    },
    show: (values, style) => values.map((value) => kind.show(value, style)).join("; "),
    items: (values) => values.map((value) => kind.fields?.(value) ?? numberOf(kind, value)),
  };
}

/** A value as a part, where it is a number. */
function numberOf<T>(kind: Kind<T>, value: T): readonly Part[] {
  return kind.measure ? [{ kind: kind as Kind<unknown>, value }] : [];
}

/** A record whose every field has a kind. */
export function recordOf<T extends object>(
  name: string,
  fields: { readonly [Field in keyof T]: Kind<T[Field]> },
): Kind<T> {
  const names = Object.keys(fields) as (keyof T & string)[];
  const expected = `${name} with ${names.join(", ")}`;
  return {
    name,
    expected,
    fault: (value) => {
      if (typeof value !== "object" || value === null) return expected;
      const given = value as Record<string, unknown>;
      const faults = names.flatMap((field) => {
        const fault = fields[field].fault?.(given[field]);
        return fault === undefined ? [] : [`${name} with ${inWords(field)} ${fault}`];
      });
      return faults[0];
    },
    read: (value) => {
      if (typeof value !== "object" || value === null)
        throw new TypeError(`expected ${expected}, got ${JSON.stringify(value)}`);
      const stranger = Object.keys(value).find((field) => !(field in fields));
      if (stranger) throw new RangeError(`expected ${expected}, got a field "${stranger}"`);
      const given = value as Record<string, unknown>;
      return Object.fromEntries(
        names.map((field) => [field, readField(fields[field], given[field], field)]),
      ) as T;
    },
    show: (value, style) =>
      names.map((field) => `${inWords(field)} ${fields[field].show(value[field], style)}`).join(", "),
    fields: (value) => names.flatMap((field) => numberOf(fields[field], value[field])),
  };
}

/** A field's name as a reader would write it: "gripMin" is "grip min". */
function inWords(field: string): string {
  return field.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);
}

function readField<T>(kind: Kind<T>, value: unknown, field: string): T {
  try {
    return kind.read(value);
  } catch (error) {
    throw new RangeError(`${field}: ${messageOf(error)}`);
  }
}
