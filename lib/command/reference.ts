/** npm run reference -- FILE...: runs files of published checks, also ones this project has never seen, or random cases. */
import { readFile } from "node:fs/promises";
import { parseArgs } from "node:util";
import { helpOf } from "./help.js";
import { type CasesWanted, runCases } from "./reference/cases/run-cases.js";
import { kindOf, referenceKinds } from "./reference/kinds.js";
import type { ReferenceOutcome } from "./reference/outcome.js";
import { textTable } from "./text-table.js";

/**
 * Prints expected, ours and error for every value of every file; or tries random cases.
 *
 * @param args paths of JSON files of a known kind, or how many random cases
 * @returns exit code: 1 when any value is out of its tolerance, any file cannot be run, or any case fails
 */
export async function reference(args: readonly string[]): Promise<number> {
  const asked = casesAsked(args);
  if (asked) return runCases(asked, (line) => console.log(line));
  if (args.length === 0 || args.some((one) => one.startsWith("--"))) {
    console.error(helpOf("reference"));
    return 1;
  }
  return filesRun(args);
}

/** Seconds for which the case of a new fault is made smaller, and from one line of progress to the next. */
const seconds = { shrinking: 20, progress: 30 };

/** How many random cases are asked for; undefined where none are, or not in whole numbers. */
function casesAsked(args: readonly string[]): CasesWanted | undefined {
  const options = { cases: { type: "string" }, seed: { type: "string" }, bent: { type: "string" } } as const;
  try {
    const { values } = parseArgs({ args: [...args], options });
    const [cases, seed, bent] = [values.cases, values.seed ?? "0", values.bent ?? "1"].map(Number);
    if (![cases, seed, bent].every((one) => Number.isSafeInteger(one) && Number(one) >= 0)) return undefined;
    return { cases: Number(cases), seed: Number(seed), bent: Number(bent), ...seconds };
  } catch {
    return undefined;
  }
}

async function filesRun(files: readonly string[]): Promise<number> {
  const codes: number[] = [];
  for (const file of files) codes.push(await referenceFile(file));
  return Math.max(...codes);
}

async function referenceFile(file: string): Promise<number> {
  try {
    const outcomes = outcomesOf(JSON.parse(await readFile(file, "utf8")));
    console.log(`${file}\n${outcomeTable(outcomes)}\n${tally(outcomes)}\n`);
    return outcomes.every(({ holds }) => holds) ? 0 : 1;
  } catch (error) {
    console.error(`${file}: ${(error as Error).message}`);
    return 1;
  }
}

/** @throws TypeError for a kind that is not known */
function outcomesOf(content: unknown): readonly ReferenceOutcome[] {
  const kind = kindOf(content);
  const runner = Object.hasOwn(referenceKinds, kind) ? referenceKinds[kind] : undefined;
  if (!runner)
    throw new TypeError(`expected a kind among ${Object.keys(referenceKinds).join(", ")}, got "${kind}"`);
  return runner(content);
}

function outcomeTable(outcomes: readonly ReferenceOutcome[]): string {
  const meshed = outcomes.some(({ meshError }) => meshError !== undefined);
  return textTable(
    [
      "item",
      "result",
      "expected",
      "ours",
      "error",
      ...(meshed ? ["mesh error"] : []),
      "tolerance",
      "",
      "known",
    ],
    outcomes.map(({ item, result, expected, ours, error, meshError, tolerance, holds, known }) => [
      item,
      result,
      expected,
      ours,
      error,
      ...(meshed ? [meshError ?? ""] : []),
      tolerance,
      holds ? "ok" : "OUT",
      known,
    ]),
  );
}

function tally(outcomes: readonly ReferenceOutcome[]): string {
  const failed = outcomes.filter(({ holds }) => !holds).length;
  return `${outcomes.length - failed} passed, ${failed} failed`;
}
