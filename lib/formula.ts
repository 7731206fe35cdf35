/**
 * A formula is declared once, with its symbols, equation, source and range. From the declaration come the
 * typed function, the worked line a notebook shows, and an entry in the index that published checks call.
 */
import {
  Count,
  type Kind,
  messageOf,
  type Part,
  reachOfKind,
  type ShowStyle,
  Temperature,
  told,
  withoutUnits,
} from "./quantity/index.js";
import { type MissingMeasurement, Refusal } from "./refusal.js";
import type { Citation } from "./source.js";

/** One symbol of an equation, with the range in which the formula holds (SI). */
export interface FormulaSymbol<T> {
  /** The symbol as TeX writes it: "w_{c}", "E_x". */
  readonly symbol: string;
  /** The kind of its value, which reads and shows it. */
  readonly kind: Kind<T>;
  /** What it stands for, in a few words. */
  readonly meaning: string;
  /** The smallest value allowed, in SI. */
  readonly min?: number;
  /** The largest value allowed, in SI. */
  readonly max?: number;
  /** A lower bound that is itself not allowed, in SI. */
  readonly above?: number;
  /** An upper bound that is itself not allowed, in SI. */
  readonly below?: number;
  /** Unit of the number that the equation takes, for a rule in units of its own ("in"); SI unless said. */
  readonly unit?: string;
  /** What a text that leaves the input out means, for an input that a formula got later. */
  readonly absent?: T;
}

/** The symbols of a record, one a field. */
export type FormulaSymbols<T> = { readonly [Field in keyof T]: FormulaSymbol<T[Field]> };

/** A value without its label, so that a computation is plain arithmetic. */
export type Bare<T> = T extends number
  ? number
  : T extends readonly (infer Item)[]
    ? readonly Bare<Item>[]
    : T extends object
      ? { readonly [Field in keyof T]: Bare<T[Field]> }
      : T;

/** All there is to say about a formula. */
export interface Declaration<In extends object, Out> {
  /** Dotted path of plain words, unique: "beam.simple.uniform.sag". */
  readonly id: string;
  /** The title, as a heading says it. */
  readonly title: string;
  /** TeX. For work of many steps, the governing equation. */
  readonly equation: string;
  /** The symbol of each input. */
  readonly inputs: FormulaSymbols<In>;
  /** One symbol for a single result, or a record of them. */
  readonly result: Out extends Result ? FormulaSymbols<Out> : FormulaSymbol<Out>;
  /** Where the equation comes from. */
  readonly source: readonly Citation[];
  /** Where it holds and what it leaves out, in a sentence a builder can read. */
  readonly validity: string;
  /** Reasons why these inputs cannot go together; each is thrown. */
  readonly refuse?: (inputs: In) => readonly string[];
  /** Allowed, but beyond what was tested. */
  readonly warn?: (inputs: In, result: Out) => readonly string[];
  /** Whether one computation takes longer than anybody would wait for many; not so where left out. */
  readonly takesTime?: boolean;
  /** The computation, in SI. */
  readonly compute: (inputs: In) => Bare<Out>;
}

/** A result of several named values. */
export type Result = { readonly [Field in string]: unknown } & { readonly amount?: never };

/** One symbol with its value, ready to show. */
export interface WorkedValue {
  /** The name of the input or result; "value" of a single result. */
  readonly name: string;
  /** The symbol as TeX writes it. */
  readonly symbol: string;
  /** What it stands for. */
  readonly meaning: string;
  /** The number that the equation takes, in SI or the symbol's own unit; absent where the value is no number. */
  readonly number?: number;
  /** The symbol's own unit, where it has one. */
  readonly unit?: string;
  /** Numbers of a record, by the symbols that its own names with commas between. */
  readonly fields?: readonly WorkedValue[];
  /** The same of each item of a list. */
  readonly items?: readonly (readonly WorkedValue[])[];
  /** Shows the value in the reader's units. */
  show(style?: ShowStyle): string;
}

/** A formula with numbers in it, as a textbook would print it. */
export interface WorkedLine {
  /** The id of the formula. */
  readonly id: string;
  /** The title of the formula. */
  readonly title: string;
  /** The equation in TeX. */
  readonly equation: string;
  /** The inputs with their values. */
  readonly inputs: readonly WorkedValue[];
  /** The results with their values. */
  readonly results: readonly WorkedValue[];
  /** Where the equation comes from. */
  readonly source: readonly Citation[];
  /** Where it holds and what it leaves out. */
  readonly validity: string;
  /** What these inputs or results go beyond. */
  readonly warnings: readonly string[];
  /**
   * The results, in SI, with one input larger by a share; absent for a formula that takes its time.
   *
   * @throws Refusal where the larger input is out of range
   */
  readonly again?: (input: string, share: number) => Moved;
}

/** Numbers of a worked line, in SI, by name: of the results, or of the inputs. */
export type Moved = ReadonlyMap<string, number>;

/** A typed function that can also show its work. */
export interface Formula<In extends object, Out> {
  (inputs: In): Out;
  /** All that was said of it. */
  readonly declaration: Declaration<In, Out>;
  /** The same computation with its equation, numbers, source and warnings. */
  worked(inputs: In): WorkedLine & { readonly value: Out };
  /** Reads inputs from text with units, by the kinds of its symbols. */
  read(inputs: Readonly<Record<string, unknown>>): In;
}

/** A formula whose types are no longer known, as the index holds it. */
// biome-ignore lint/suspicious/noExplicitAny: the index holds formulas of every type; they are called with inputs read by their own kinds
export type AnyFormula = Formula<any, any>;

const index = new Map<string, AnyFormula>();

/** Every formula declared so far, by id. */
export function formulaIndex(): ReadonlyMap<string, AnyFormula> {
  return index;
}

/**
 * Declares a formula and enters it in the index.
 *
 * @throws Error when the id is taken
 */
export function formula<In extends object, Out>(declaration: Declaration<In, Out>): Formula<In, Out> {
  const { id } = declaration;
  if (index.has(id)) throw new Error(`formula ${id}: declared twice`);
  const run = (inputs: In): Out => {
    guard(declaration, inputs);
    const result = underName(id, () => declaration.compute(inputs) as Out);
    refuseUnfinished(id, result);
    return result;
  };
  const self = Object.assign((inputs: In) => run(withoutUnits(inputs)), {
    declaration,
    worked: (inputs: In) => {
      const plain = withoutUnits(inputs);
      return workedLine(declaration, plain, run(plain));
    },
    read: (inputs: Readonly<Record<string, unknown>>) => readInputs(declaration, inputs),
  });
  index.set(id, self);
  return self;
}

function entries<T extends object>(record: T): [keyof T & string, T[keyof T & string]][] {
  return Object.entries(record) as [keyof T & string, T[keyof T & string]][];
}

function guard<In extends object, Out>(declaration: Declaration<In, Out>, inputs: In): void {
  const { id, title } = declaration;
  const wrong = entries(declaration.inputs).flatMap(([name, symbol]) =>
    outOfRange(symbol, inputs[name]).map((fault) => ({ name, meaning: symbol.meaning, ...fault })),
  );
  const [first] = wrong;
  if (first) {
    const reasons = wrong.map(({ name, expected, got }) =>
      got === undefined
        ? `${name} is missing, expected ${expected}`
        : `${name} must be ${expected}, got ${got}`,
    );
    throw new Refusal(`${id}: ${reasons.join("; ")}`, within(title, first));
  }
  const reasons = underName(id, () => declaration.refuse?.(inputs) ?? []);
  if (reasons.length > 0) throw new Refusal(`${id}: ${reasons.join("; ")}`);
}

/** What would give the answer where a value lies outside what a formula takes. */
function within(
  title: string,
  { meaning, expected, got }: OutOfRange & { readonly meaning: string },
): MissingMeasurement {
  const now = got === undefined ? "It is not given" : `It is ${got} now`;
  return {
    measure: `${meaning} that is ${expected}`,
    how: `${now}, and "${title}" takes no other. Correct the line of the case file or table that it comes from, or change the design`,
    isChange: true,
  };
}

/** What a value must be, and what it is. */
interface OutOfRange {
  /** "at least 3 mm" */
  readonly expected: string;
  /** The value in words; absent where it is missing. */
  readonly got?: string;
}

/** The largest value of a quantity that a formula takes where none is said: far beyond any shop. */
function reachOf(kind: Kind<unknown>): number {
  const bare = kind.name === "ratio" || kind.name === "count" || kind.name === "money";
  return bare ? Number.POSITIVE_INFINITY : reachOfKind(kind);
}

/** What a formula within another refuses is told under the name that was called, with that of the one within. */
function underName<T>(id: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof Refusal) || error.message.startsWith(`${id}:`)) throw error;
    throw new Refusal(`${id}: ${error.message}`, error.would);
  }
}

function outOfRange<T>(symbol: FormulaSymbol<T>, value: T): OutOfRange[] {
  if (value === undefined) return [{ expected: symbol.kind.expected }];
  if (typeof value === "number" && !Number.isFinite(value)) {
    return [{ expected: "a finite number", got: String(value) }];
  }
  const fault = symbol.kind.fault?.(value);
  if (fault !== undefined) return [{ expected: fault, got: shortly(value) }];
  const measured = symbol.kind.measure?.(value);
  if (measured === undefined) return [];
  const bound = (limit: number): string => symbol.kind.showMeasure?.(limit) ?? String(limit);
  const reach = reachOf(symbol.kind as Kind<unknown>);
  const { above = Number.NEGATIVE_INFINITY, below = Number.POSITIVE_INFINITY } = symbol;
  // A symbol with a bound of its own has no other on that side.
  const { min = above > Number.NEGATIVE_INFINITY ? above : -reach } = symbol;
  const { max = below < Number.POSITIVE_INFINITY ? below : reach } = symbol;
  const rules: [boolean, () => string][] = [
    [measured < min && min !== above, () => `at least ${bound(min)}`],
    [measured > max && max !== below, () => `at most ${bound(max)}`],
    [measured <= above, () => (above === 0 ? "positive" : `above ${bound(above)}`)],
    [measured >= below, () => `below ${bound(below)}`],
  ];
  return rules
    .filter(([broken]) => broken)
    .map(([, rule]) => ({ expected: rule(), got: symbol.kind.show(value) }));
}

/** A value as an error tells it, cut short where it is a long one. */
function shortly(value: unknown): string {
  const text = told(value);
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
}

/** A result is never NaN or infinite, at any depth. */
function refuseUnfinished(id: string, result: unknown): void {
  if (typeof result === "number") {
    if (!Number.isFinite(result))
      throw new Refusal(`${id}: the result is not a finite number for these inputs`);
  } else if (typeof result === "object" && result !== null) {
    for (const part of Object.values(result)) refuseUnfinished(id, part);
  }
}

function isSingle(result: object): result is FormulaSymbol<unknown> {
  return "kind" in result && result.kind instanceof Object && "show" in result.kind;
}

/** The result's symbols with a name each; a single result is named "value". */
export function resultSymbols({ result }: { readonly result: object }): [string, FormulaSymbol<unknown>][] {
  return isSingle(result) ? [["value", result]] : Object.entries(result);
}

/** One value of a result by its name, "value" of a single one. */
export function resultNamed(name: string, result: unknown): unknown {
  return name === "value" ? result : new Map(Object.entries(result ?? {})).get(name);
}

function workedLine<In extends object, Out>(
  declaration: Declaration<In, Out>,
  inputs: In,
  value: Out,
): WorkedLine & { readonly value: Out } {
  const { id, title, equation, source, validity } = declaration;
  return {
    id,
    title,
    equation,
    inputs: entries(declaration.inputs).map(([name, symbol]) => workedValue(name, symbol, inputs[name])),
    results: resultSymbols(declaration).map(([name, symbol]) =>
      workedValue(name, symbol, resultNamed(name, value)),
    ),
    source,
    validity,
    warnings: declaration.warn?.(inputs, value) ?? [],
    ...(declaration.takesTime ? {} : { again: againOf(declaration, inputs) }),
    value,
  };
}

function againOf<In extends object, Out>(
  declaration: Declaration<In, Out>,
  inputs: In,
): (input: string, share: number) => Moved {
  const kinds = new Map<string, unknown>(entries(declaration.inputs).map(([name, { kind }]) => [name, kind]));
  return (input, share) => {
    // A share of a count or of a temperature, which begins anywhere, says nothing.
    if (kinds.get(input) === Count || kinds.get(input) === Temperature) return new Map();
    const moved = Object.fromEntries(
      entries(inputs).map(([name, value]) => [
        name,
        name === input && typeof value === "number" ? value * (1 + share) : value,
      ]),
    ) as In;
    guard(declaration, moved);
    const result = declaration.compute(moved);
    const results = resultSymbols(declaration).map(([name]) => [name, resultNamed(name, result)] as const);
    return new Map(results.flatMap(([name, value]) => (typeof value === "number" ? [[name, value]] : [])));
  };
}

function workedValue<T>(
  name: string,
  { symbol, meaning, kind, unit }: FormulaSymbol<T>,
  value: T,
): WorkedValue {
  const number = unit === undefined ? kind.measure?.(value) : kind.in?.(value, unit);
  return {
    name,
    symbol,
    meaning,
    ...(number === undefined ? {} : { number }),
    ...(unit === undefined ? {} : { unit }),
    ...(kind.fields ? { fields: workedParts(symbol, kind.fields(value)) } : {}),
    ...(kind.items ? { items: kind.items(value).map((parts) => workedParts(symbol, parts)) } : {}),
    show: (style) => kind.show(value, style),
  };
}

/** Parts with the symbols "a, b" of the whole; none where they are not as many. */
function workedParts(symbol: string, parts: readonly Part[]): readonly WorkedValue[] {
  const symbols = symbol.split(",").map((one) => one.trim());
  return symbols.length === parts.length
    ? parts.map(({ kind, value }, i) =>
        workedValue("", { symbol: symbols[i] ?? "", kind, meaning: "" }, value),
      )
    : [];
}

function readInputs<In extends object, Out>(
  declaration: Declaration<In, Out>,
  given: Readonly<Record<string, unknown>>,
): In {
  const stranger = Object.keys(given).find((name) => !(name in declaration.inputs));
  const names = Object.keys(declaration.inputs).join(", ");
  if (stranger) throw new Refusal(`${declaration.id}: no input "${stranger}", expected ${names}`);
  const read = entries(declaration.inputs).map(([name, symbol]) => {
    try {
      const text = given[name];
      return [
        name,
        text === undefined && symbol.absent !== undefined ? symbol.absent : symbol.kind.read(text),
      ];
    } catch (error) {
      throw new Refusal(`${declaration.id}: ${name}: ${messageOf(error)}`);
    }
  });
  return Object.fromEntries(read) as In;
}
