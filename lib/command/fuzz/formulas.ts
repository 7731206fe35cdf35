/** Formulas inside and outside their ranges: each answers in finite numbers, or refuses under its own name. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { projectFolder } from "../../book/index.js";
import { formulaIndex } from "../../index.js";
import { Refusal } from "../../refusal.js";
import { type Draws, drawsOf } from "../reference/cases/draws.js";
import { asTables, kindOf } from "../reference/kinds.js";
import { errorWords, type Fuzzer } from "./fuzzer.js";
import { oddNumber, oddTexts } from "./odd-values.js";

/** A formula with inputs as text. */
export interface FormulaTry {
  /** Its id. */
  readonly formula: string;
  /** Its inputs, as a published check writes them. */
  readonly inputs: Readonly<Record<string, unknown>>;
}

/** Published checks with one to three of their inputs changed. */
export const formulas: Fuzzer = {
  attack: (seed) => {
    const draws = drawsOf(seed, "mm");
    const known = draws.pick(publishedTries());
    const inputs = oddLeaves(known.inputs, draws.whole(1, 3), draws);
    const words = faultOfFormula({ formula: known.formula, inputs });
    return words === undefined
      ? undefined
      : { words, input: JSON.stringify({ formula: known.formula, inputs }) };
  },
};

let tries: readonly FormulaTry[] | undefined;

/** The inputs of every published check. */
function publishedTries(): readonly FormulaTry[] {
  const folder = join(projectFolder(), "tests", "reference");
  tries ??= readdirSync(folder)
    .filter((file) => file.endsWith(".json"))
    .map((file): unknown => JSON.parse(readFileSync(join(folder, file), "utf8")))
    .filter((content) => kindOf(content) === "formula")
    .flatMap((content) => asTables(content))
    .flatMap(({ rows }) => rows.map(({ formula, inputs }) => ({ formula, inputs })));
  return tries;
}

function oddLeaves(
  inputs: FormulaTry["inputs"],
  count: number,
  draws: Draws,
): Readonly<Record<string, unknown>> {
  const chosen = new Set(draws.shuffled(Object.keys(inputs)).slice(0, count));
  return Object.fromEntries(
    Object.entries(inputs).map(([name, value]) => [name, chosen.has(name) ? oddly(value, draws) : value]),
  );
}

/** A value with a number in it changed, a list with an item twice or gone, or something else altogether. */
function oddly(value: unknown, draws: Draws): unknown {
  if (draws.often(1)) return draws.pick([...oddTexts, null, true, [], {}]);
  if (Array.isArray(value)) {
    const at = draws.whole(0, value.length - 1);
    if (draws.often(2)) return value.flatMap((one, i) => (i === at ? [one, one] : [one]));
    if (draws.often(2)) return value.filter((_, i) => i !== at);
    return value.map((one, i) => (i === at ? oddly(one, draws) : one));
  }
  if (typeof value === "object" && value !== null) {
    const chosen = draws.pick([...Object.keys(value), ""]);
    return Object.fromEntries(
      Object.entries(value).map(([name, one]) => [name, name === chosen ? oddly(one, draws) : one]),
    );
  }
  return typeof value === "number"
    ? Number(oddNumber(String(value), draws))
    : oddNumber(String(value), draws);
}

/** What is wrong with how a formula takes its inputs. */
export function faultOfFormula({ formula: id, inputs }: FormulaTry): string | undefined {
  const formula = formulaIndex().get(id);
  if (!formula) return `no formula "${id}"`;
  try {
    return allFinite(formula(formula.read(inputs))) ? undefined : `${id}: a result that is no finite number`;
  } catch (error) {
    if (!(error instanceof Refusal)) return errorWords(error);
    return error.message.startsWith(`${id}: `) ? undefined : `${id} refused as ${error.message}`;
  }
}

/** Whether every number in a result is finite. */
export function allFinite(result: unknown): boolean {
  if (typeof result === "number") return Number.isFinite(result);
  return typeof result !== "object" || result === null || Object.values(result).every(allFinite);
}
