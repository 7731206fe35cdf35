/** npm run reference -- FILE...: runs files of published checks, also ones this project has never seen. */
import { readFile } from "node:fs/promises";
import { kindOf, referenceKinds } from "./reference/kinds.js";
import type { ReferenceOutcome } from "./reference/outcome.js";
import { textTable } from "./text-table.js";

/**
 * Prints expected, ours and error for every value of every file.
 *
 * @param files paths of JSON files of a known kind
 * @returns exit code: 1 when any value is out of its tolerance or any file cannot be run
 */
export async function reference(files: readonly string[]): Promise<number> {
  if (files.length === 0) {
    console.error("usage: npm run reference -- FILE...");
    return 1;
  }
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
  const runner = referenceKinds[kind];
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
