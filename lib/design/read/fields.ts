/** Pieces that the schema of the case file is made of. Every message says what was expected. */
import { z } from "zod";
import { didYouMean } from "../../problem.js";
import { beyondReach, type Kind, Length, Money, money, readNumber } from "../../quantity/index.js";

/** What a bare number means in this file. */
export interface FileUnits {
  /** The unit of a bare length. */
  readonly length: "in" | "mm";
  /** The currency of a bare amount. */
  readonly currency: string;
}

/** Bounds of a value, in SI. */
export interface FieldRules {
  /** Least value. */
  readonly min?: number;
  /** Greatest value. */
  readonly max?: number;
  /** A bound that is itself not allowed. */
  readonly above?: number;
  /** A value that suits the field, for an error; the kind's own where left out. */
  readonly example?: string;
  /** A greatest value that nobody means to pass, and that is told only to whoever does. */
  readonly reach?: number;
}

/** One value, read by its kind. */
export function field<T>(kind: Kind<T>, rules: FieldRules = {}): z.ZodType<T> {
  const { example } = rules;
  const what = example ? kind.expected.replace(/".*"/, `"${example}"`) : kind.expected;
  const expected = [what, ...boundsInWords(kind, rules)].join(", ");
  return z.unknown().transform((input, context) => {
    let message = expected;
    try {
      const value = kind.read(input);
      const measured = kind.measure?.(value);
      const beyond = rules.max === undefined ? beyondReach(kind, measured, rules) : undefined;
      if (within(measured, rules) && beyond === undefined) return value;
      message = beyond ?? expected;
    } catch {
      // Any failure to read has one answer: what was expected.
      message = `${expected}${didYouMean(String(input), kind.words ?? [])}`;
    }
    context.issues.push({ code: "custom", message: withPoint(input) ?? message, input });
    return z.NEVER;
  });
}

/** A decimal comma is the likeliest mistake in a number that has one. */
function withPoint(input: unknown): string | undefined {
  const [, whole, part, rest = ""] = /^\s*(-?\d+),(\d+)(\s.*)?$/.exec(String(input)) ?? [];
  return whole === undefined
    ? undefined
    : `a decimal point where there is a comma; did you mean "${whole}.${part}${rest.trimEnd()}"?`;
}

function within(measured: number | undefined, { min, max, above }: FieldRules): boolean {
  return (
    measured === undefined ||
    ((min === undefined || measured >= min) &&
      (max === undefined || measured <= max) &&
      (above === undefined || measured > above))
  );
}

/** The bounds of a value, each in words. */
export function boundsInWords<T>(kind: Kind<T>, { min, max, above }: FieldRules): string[] {
  const show = (bound: number): string => (bound === 0 ? "0" : (kind.showMeasure?.(bound) ?? String(bound)));
  return [
    above === undefined ? "" : `above ${show(above)}`,
    min === undefined ? "" : `at least ${show(min)}`,
    max === undefined ? "" : `at most ${show(max)}`,
  ].filter(Boolean);
}

/** A length with its unit, or a bare number in the file's own. */
export function lengthIn({ length: unit }: FileUnits): Kind<Length> {
  const [bare, whole] = unit === "in" ? ['"14-1/2"', "inches"] : ['"368"', "millimetres"];
  return {
    ...Length,
    expected: `a length such as ${bare} (${whole}) or "12 mm"`,
    read: (text) => {
      const number = bareNumber(text);
      return number === undefined ? Length.read(text) : Length.of(number, unit);
    },
  };
}

/** Money with its currency, or a bare number in the file's own. */
export function moneyIn({ currency }: FileUnits): Kind<Money> {
  return {
    ...Money,
    expected: `an amount in ${currency} such as 12.50`,
    read: (text) => {
      const number = bareNumber(text);
      const amount = number === undefined ? Money.read(text) : money(number, currency);
      if (amount.currency !== currency) throw new RangeError(`expected ${currency}`);
      return amount;
    },
  };
}

function bareNumber(text: unknown): number | undefined {
  if (typeof text === "number") return text;
  try {
    return readNumber(String(text));
  } catch {
    return undefined;
  }
}

/** A block of fixed words; any other word is refused with the ones that may stand there. */
export function block<Shape extends z.ZodRawShape>(shape: Shape): z.ZodObject<Shape, z.core.$strict> {
  const words = Object.keys(shape).join(", ");
  return z.strictObject(shape, {
    error: ({ code }) => (code === "unrecognized_keys" ? `one of ${words}` : `a block with ${words}`),
  });
}

/** A block of names, each with what it names, in the order of the file. */
export function named<T>(item: z.ZodType<T>, example: string): z.ZodType<readonly (readonly [string, T])[]> {
  const name = z.string().regex(/^[^.]*[^.\s][^.]*$/, "a name without dots");
  return z
    .record(name, item, { error: `a block of names, such as ${example}` })
    .transform((record) => Object.entries(record));
}

/** A record without the fields that nobody wrote. */
export function given<T extends object>(record: { [Field in keyof T]: T[Field] | undefined }): T {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as T;
}

/** A list of exactly so many lengths. */
export function lengths(
  count: number,
  kind: Kind<Length>,
  rules: FieldRules,
  what: string,
): z.ZodType<Length[]> {
  const expected = `a list of ${count} lengths: ${what}`;
  const counted = (input: unknown): string =>
    Array.isArray(input) && input.length > count
      ? `${expected}; this one has ${input.length}, as a comma begins the next length`
      : expected;
  return z.array(field(kind, rules), { error: expected }).length(count, { error: (is) => counted(is.input) });
}

/** A list of things. */
export function list<T>(item: z.ZodType<T>, what: string): z.ZodType<T[]> {
  const expected = `a list of ${what}`;
  return z.array(item, { error: expected }).min(1, expected);
}
