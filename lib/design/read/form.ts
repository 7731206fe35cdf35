/**
 * How a block of case.yaml is declared: each of its fields once, with its key, kind, bounds, default and meaning. The
 * type of what is read follows from the declaration.
 */
import { z } from "zod";
import { type Kind, Length, Money } from "../../quantity/index.js";
import {
  block as blockOf,
  boundsInWords,
  type FieldRules,
  type FileUnits,
  field,
  lengthIn,
  lengths,
  list,
  moneyIn,
  named,
} from "./fields.js";

/** Something that can stand in a case file. */
export interface Form<T> {
  /** Reads it, given what a bare number means in the file. */
  readonly schema: (units: FileUnits) => z.ZodType<T>;
  /** The fields of a block; absent for a value, a list and a block of names. */
  readonly fields?: Fields;
  /** What each item is, of a list or a block of names. */
  readonly item?: Form<unknown>;
  /** What may stand there, in words, of a value. */
  readonly expected?: string;
}

/** One field of a block. */
export interface Field<T> {
  /** Its word in the file. */
  readonly key: string;
  /** What it is, in a sentence. */
  readonly doc: string;
  /** What stands there. */
  readonly form: Form<unknown>;
  /** What is read from it where it is left out; undefined for nothing. */
  readonly preset?: T;
  /** Whether it must be written. */
  readonly needed: boolean;
}

/** Fields by the name under which they are read. */
export type Fields = Readonly<Record<string, Field<unknown>>>;

/** The type of what a field reads. */
export type Read<Any> = Any extends Field<infer T> ? T : never;

/** What fields read; one that may be left out gives a field that may be absent. */
export type BlockOf<All> = {
  readonly [Name in keyof All as undefined extends Read<All[Name]> ? never : Name]: Read<All[Name]>;
} & {
  readonly [Name in keyof All as undefined extends Read<All[Name]> ? Name : never]?: Exclude<
    Read<All[Name]>,
    undefined
  >;
};

/** What a form reads. */
export type ReadOf<Any> = Any extends Form<infer T> ? T : never;

/** A value of a kind; a bare length or amount is in the unit or the currency of the file. */
export function value<T>(kind: Kind<T>, rules: FieldRules = {}): Form<T> {
  return {
    schema: (units) => field(inFile(kind, units), rules),
    expected: [kind.expected, ...boundsInWords(kind, rules)].join(", "),
  };
}

/** A kind as it stands in a file; lengths and money may be bare numbers there. */
function inFile<T>(kind: Kind<T>, units: FileUnits): Kind<T> {
  const bare: ReadonlyMap<unknown, Kind<unknown>> = new Map<unknown, Kind<unknown>>([
    [Length, lengthIn(units) as Kind<unknown>],
    [Money, moneyIn(units) as Kind<unknown>],
  ]);
  return (bare.get(kind) ?? kind) as Kind<T>;
}

/** True or false. */
export const yesOrNo: Form<boolean> = {
  expected: "one of true, false",
  schema: () => z.boolean({ error: "true or false" }),
};

/** Whether something is turned by a quarter: yes or no, or by how many degrees. */
export const quarterTurn: Form<boolean> = {
  schema: () => {
    const degrees = [0, 90, 180, 270].map((angle) => z.literal(angle));
    const expected = "true, false, or degrees in quarters: 0, 90, 180 or 270";
    return z
      .union([z.boolean(), ...degrees], { error: expected })
      .transform((turn) => turn === true || turn === 90 || turn === 270);
  },
};

/** Two lengths in a list. */
export function twoLengths(rules: FieldRules, what: string): Form<readonly [Length, Length]> {
  return { schema: (units) => tuple<readonly [Length, Length]>(2, units, rules, what), expected: what };
}

/** Three lengths in a list. */
export function threeLengths(rules: FieldRules, what: string): Form<readonly [Length, Length, Length]> {
  return {
    schema: (units) => tuple<readonly [Length, Length, Length]>(3, units, rules, what),
    expected: what,
  };
}

function tuple<Lengths extends readonly Length[]>(
  count: Lengths["length"],
  units: FileUnits,
  rules: FieldRules,
  what: string,
): z.ZodType<Lengths> {
  return lengths(count, lengthIn(units), rules, what) as unknown as z.ZodType<Lengths>;
}

/** A list of at least one thing. */
export function listOfForm<T>(item: Form<T>, what: string): Form<readonly T[]> {
  return { schema: (units) => list(item.schema(units), what), item };
}

/** A block of names, each with what it names, in the order of the file. */
export function byName<T, Whole = T & { readonly name: string }>(
  item: Form<T>,
  example: string,
  whole: (name: string, one: T) => Whole = (name, one) => ({ name, ...one }) as Whole,
): Form<readonly Whole[]> {
  return {
    item,
    schema: (units) =>
      named(item.schema(units), example).transform((all) => all.map(([name, one]) => whole(name, one))),
  };
}

/** How a field's value is read: by its kind, or by a form. */
export type Given<T> = Kind<T> | Form<T>;

function formOf<T>(given: Given<T>, rules: FieldRules): Form<T> {
  return "schema" in given ? given : value(given, rules);
}

/** A field that must be written. */
export function needed<T>(key: string, given: Given<T>, doc: string, rules: FieldRules = {}): Field<T> {
  return { key, doc, form: formOf(given, rules), needed: true };
}

/** A field that may be left out. */
export function optional<T>(
  key: string,
  given: Given<T>,
  doc: string,
  rules: FieldRules = {},
): Field<T | undefined> {
  return { key, doc, form: formOf(given, rules), needed: false };
}

/** A field that may be left out, and then is so much. */
export function preset<T>(
  key: string,
  given: Given<T>,
  otherwise: T,
  doc: string,
  rules: FieldRules = {},
): Field<T> {
  return { key, doc, form: formOf(given, rules), needed: false, preset: otherwise };
}

/** A block of fields; any other word in it is refused. */
export function block<All extends Fields>(fields: All): Form<BlockOf<All>> & { readonly fields: All } {
  return {
    fields,
    schema: (units) => {
      const shape = Object.values(fields).map((one) => [one.key, schemaOf(one, units)] as const);
      return blockOf(Object.fromEntries(shape)).transform(
        (written) => readFields(fields, written) as BlockOf<All>,
      );
    },
  };
}

function schemaOf({ form, needed, preset }: Field<unknown>, units: FileUnits): z.ZodType<unknown> {
  const schema = form.schema(units);
  return needed ? schema : schema.optional().transform((read) => read ?? preset);
}

/** The fields that were written or have a default, under the names that they are read by. */
function readFields(fields: Fields, written: Readonly<Record<string, unknown>>): object {
  const read = Object.entries(fields).map(([name, { key }]) => [name, written[key]] as const);
  return Object.fromEntries(read.filter(([, one]) => one !== undefined));
}

/** Fields of which each may be left out, without their defaults: a thing told in part. */
export type Partly<All> = { readonly [Name in keyof All]: Field<Read<All[Name]> | undefined> };

/** The same fields, none needed and none with a default. */
export function partly<All extends Fields>(fields: All): Partly<All> {
  const loose = Object.entries(fields).map(([name, { key, doc, form }]) => [
    name,
    { key, doc, form, needed: false },
  ]);
  return Object.fromEntries(loose) as Partly<All>;
}

/** What a form reads, made into something else. */
export function mapped<T, U>(form: Form<T>, make: (read: T) => U): Form<U> {
  return { ...form, schema: (units) => form.schema(units).transform(make) };
}

/** A form that is refused unless it keeps a rule. */
export function checked<T>(
  form: Form<T>,
  keeps: (read: T) => boolean,
  expected: string,
  path: readonly string[] = [],
): Form<T> {
  return {
    ...form,
    schema: (units) => form.schema(units).refine(keeps, { error: expected, path: [...path] }),
  };
}

/** "none" itself, or the block; anything else is answered as the block answers it. */
export function noneOr<T>(item: Form<T>): Form<T | "none"> {
  return {
    ...item,
    schema: (units) => {
      const block = item.schema(units);
      return z.unknown().transform((input, context): T | "none" => {
        if (input === "none") return "none";
        const read = block.safeParse(input);
        if (read.success) return read.data;
        const issues = read.error.issues.map((issue) => ({ ...issue, path: [...issue.path], input }));
        context.issues.push(...(issues as unknown as typeof context.issues));
        return z.NEVER;
      });
    },
  };
}

/** True, false, or a block that says more. */
export function yesNoOr<T>(item: Form<T>, expected: string): Form<boolean | T> {
  return { ...item, schema: (units) => z.union([z.boolean(), item.schema(units)], { error: expected }) };
}

/** A block whose further fields depend on one word in it. */
export function blockByWord<Word extends string, Ways extends Readonly<Record<string, Fields>>>(
  word: Word,
  kind: Kind<keyof Ways & string>,
  ways: Ways,
): Form<
  { [Way in keyof Ways & string]: { readonly [Key in Word]: Way } & BlockOf<Ways[Way]> }[keyof Ways & string]
> {
  type Whole = {
    [Way in keyof Ways & string]: { readonly [Key in Word]: Way } & BlockOf<Ways[Way]>;
  }[keyof Ways & string];
  const all: Fields = Object.assign({}, ...Object.values(ways).map(partly));
  const tagged = block({ [word]: needed(word, kind, "Which of the ways it is."), ...all });
  return {
    fields: tagged.fields,
    schema: (units) =>
      tagged.schema(units).transform((read, context): Whole => {
        const written = read as Readonly<Record<string, unknown>>;
        const fields: Fields = ways[written[word] as keyof Ways & string] ?? {};
        const wanted = Object.entries(fields).filter(([, one]) => one.needed);
        const missing = wanted.filter(([name]) => written[name] === undefined).map(([, { key }]) => key);
        const needless = Object.entries(all).filter(([name]) => name in written && !(name in fields));
        const own = `"${word}: ${written[word]}"`;
        const complain = (key: string, message: string): void =>
          context.addIssue({ code: "custom", path: [key], message });
        for (const key of missing)
          complain(key, `${wanted.map(([, one]) => one.key).join(", ")} with ${own}`);
        for (const [name, { key }] of needless) {
          const others = Object.keys(ways).filter((way) => name in (ways[way] ?? {}));
          const where = others.map((way) => `"${word}: ${way}"`).join(" or ");
          complain(key, `no ${key} with ${own}, only with ${where}`);
        }
        return missing.length + needless.length > 0 ? z.NEVER : (read as unknown as Whole);
      }),
  };
}
