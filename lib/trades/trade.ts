/** The formulas of a trade, which take and give numbers with their units. */
import type { Formula, WorkedLine } from "../formula.js";
import { resultNamed, resultSymbols } from "../formula.js";
import {
  type Kind,
  type Quantity,
  type QuantityKind,
  type UnitNumber,
  unitNumber,
} from "../quantity/index.js";

/** A result with its units: a quantity, or a record with quantities in it. */
export type WithUnits<Out> = Out extends number
  ? OneWithUnits<Out>
  : Out extends readonly unknown[]
    ? Out
    : Out extends object
      ? { readonly [Field in keyof Out]: OneWithUnits<Out[Field]> }
      : Out;

/** A quantity with its unit; anything else as it is. */
export type OneWithUnits<T> = T extends Quantity<infer Name> ? UnitNumber<Name> : T;

/** How Node.js, and so a cell, prints a value. */
const printed: symbol = Symbol.for("nodejs.util.inspect.custom");

/** A formula whose result prints with its units. */
export interface TradeFormula<In extends object, Out> {
  (inputs: In): WithUnits<Out>;
  /** The same with its equation, numbers, source and warnings, for `show`. */
  worked(inputs: In): WorkedLine & { readonly value: Out };
  /** Reads inputs from text with units: `read({ span: "30 in" })`. */
  read(inputs: Readonly<Record<string, unknown>>): In;
  /** All that was said of it. */
  readonly declaration: Formula<In, Out>["declaration"];
}

/** A formula, whatever it takes and gives. */
export interface Declared {
  /** All that was said of it. */
  readonly declaration: { readonly id: string };
}

/** The formulas among what files give. */
export type TradeOf<Files> = {
  readonly [Name in keyof Files as Files[Name] extends Declared ? Name : never]: Files[Name] extends Formula<
    infer In,
    infer Out
  >
    ? TradeFormula<In, Out>
    : never;
};

/** The formulas of some files. */
export function trade<Files>(...files: readonly object[]): TradeOf<Files> {
  const formulas = files.flatMap((file) => Object.entries(file)).filter(([, one]) => isFormula(one));
  return Object.fromEntries(formulas.map(([name, one]) => [name, tradeFormula(one)])) as TradeOf<Files>;
}

function isFormula(value: unknown): value is Formula<object, unknown> {
  return typeof value === "function" && "declaration" in value;
}

function tradeFormula<In extends object, Out>(formula: Formula<In, Out>): TradeFormula<In, Out> {
  const { declaration, worked, read } = formula;
  const self = Object.assign((inputs: In) => withUnits(declaration, formula(inputs)), {
    declaration,
    worked,
    read,
  });
  return Object.defineProperty(self, printed, { value: () => `${declaration.title} (${declaration.id})` });
}

function withUnits<Out>(declaration: { readonly result: object }, value: Out): WithUnits<Out> {
  const symbols = resultSymbols(declaration);
  const given = symbols.map(([name, { kind }]) => [name, oneWithUnits(kind, resultNamed(name, value))]);
  const [[name, only] = []] = given;
  return (
    name === "value" && symbols.length === 1 ? only : { ...value, ...Object.fromEntries(given) }
  ) as WithUnits<Out>;
}

function oneWithUnits(kind: Kind<unknown>, value: unknown): unknown {
  return typeof value === "number" && "units" in kind
    ? unitNumber(kind as unknown as QuantityKind<string>, value)
    : value;
}
