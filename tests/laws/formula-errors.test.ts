/** Every formula, given what it cannot take: it answers, or refuses under its own name, naming the input and the value. */
import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import { allFinite } from "../../lib/command/fuzz/formulas.js";
import { type AnyFormula, formulaIndex } from "../../lib/index.js";
import { Refusal } from "../../lib/refusal.js";

const tables = resolve(import.meta.dirname, "../reference");

/** The inputs of the first published check of each formula. */
const published: ReadonlyMap<string, Readonly<Record<string, unknown>>> = new Map(
  readdirSync(tables)
    .filter((file) => file.endsWith(".json"))
    .map((file) => JSON.parse(readFileSync(join(tables, file), "utf8")))
    .filter(({ kind }) => kind === "formula")
    .flatMap(({ rows }) => rows)
    .reverse()
    .map(({ formula, inputs }) => [formula, inputs]),
);

/** Values that no input of any formula may be. */
const wrong: readonly unknown[] = [true, null, {}, () => 1, undefined, Number.NaN, Number.POSITIVE_INFINITY];
/** Numbers at the ends of what a number can be. */
const extreme: readonly number[] = [1e300, -1e300, 1e305, 1e-300, -0];

/** What is wrong with how a formula takes a value. */
function faultOf(formula: AnyFormula, input: string, value: unknown, mustRefuse: boolean): string[] {
  const { id } = formula.declaration;
  const called = `${id}, ${input} = ${String(value)}`;
  const inputs = { ...formula.read(published.get(id) ?? {}), [input]: value };
  try {
    const result = formula(inputs);
    return mustRefuse || !allFinite(result) ? [`${called}: answered`] : [];
  } catch (error) {
    if (!(error instanceof Refusal)) return [`${called}: ${String(error)}`];
    const names = error.message.startsWith(`${id}: `) && (!mustRefuse || error.message.includes(input));
    return names ? [] : [`${called}: ${error.message}`];
  }
}

const formulas = [...formulaIndex().values()];

test("a value of the wrong kind, or none, is refused by name", () => {
  const faults = formulas.flatMap((formula) =>
    Object.keys(formula.declaration.inputs).flatMap((input) =>
      wrong.flatMap((value) => faultOf(formula, input, value, true)),
    ),
  );
  expect(faults).toEqual([]);
});

test("a huge, tiny or negative number is answered or refused under the name that was called", () => {
  const faults = formulas.flatMap((formula) =>
    Object.keys(formula.declaration.inputs).flatMap((input) =>
      extreme.flatMap((value) => faultOf(formula, input, value, false)),
    ),
  );
  expect(faults).toEqual([]);
});

test("an input too many is refused where text is read", () => {
  const accepted = formulas.filter((formula) => {
    try {
      formula.read({ ...published.get(formula.declaration.id), "no such input": 1 });
      return true;
    } catch (error) {
      return !(error instanceof Refusal && error.message.includes('no input "no such input"'));
    }
  });
  expect(accepted.map(({ declaration }) => declaration.id)).toEqual([]);
});
