/** npm run reference -- FILE...: runs files of published checks, also ones this project has never seen. */
import { readFile } from "node:fs/promises";
import { type CheckOutcome, type CheckTable, runChecks } from "../index.js";
import { textTable } from "./text-table.js";

/**
 * Prints expected, ours and error for every row of every file.
 *
 * @param files paths of JSON files, each `{ kind: "formula", source, rows }` or a list of such tables
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
    const outcomes = readTables(await readFile(file, "utf8")).flatMap(runChecks);
    console.log(`${file}\n${outcomeTable(outcomes)}\n${tally(outcomes)}\n`);
    return outcomes.every(({ holds }) => holds) ? 0 : 1;
  } catch (error) {
    console.error(`${file}: ${(error as Error).message}`);
    return 1;
  }
}

/** The tables of one file. Throws TypeError when it holds anything else. */
export function readTables(text: string): CheckTable[] {
  const parsed: unknown = JSON.parse(text);
  const tables = Array.isArray(parsed) ? parsed : [parsed];
  const stranger = tables.find((table) => table?.kind !== "formula" || !Array.isArray(table.rows));
  if (stranger !== undefined) {
    throw new TypeError(
      `expected { kind: "formula", source, rows: [...] }, got kind ${JSON.stringify(stranger?.kind)}`,
    );
  }
  return tables as CheckTable[];
}

function outcomeTable(outcomes: readonly CheckOutcome[]): string {
  return textTable(
    ["formula", "result", "expected", "ours", "error", "tolerance", "", "known"],
    outcomes.map(({ formula, result, expected, ours, error, tolerance, holds, known }) => [
      formula,
      result,
      expected,
      ours,
      error.toExponential(1),
      String(tolerance),
      holds ? "ok" : "OUT",
      known,
    ]),
  );
}

function tally(outcomes: readonly CheckOutcome[]): string {
  const failed = outcomes.filter(({ holds }) => !holds).length;
  return `${outcomes.length - failed} passed, ${failed} failed`;
}
