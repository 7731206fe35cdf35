import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { projectFolder } from "../book/index.js";
import { type CheckOutcome, runChecks } from "../index.js";
import { asTables } from "./reference/formula-tables.js";
import { kindOf } from "./reference/kinds.js";

/**
 * Runs every table of formulas in tests/reference/, so that the book can print expected, ours and error.
 *
 * @throws Error naming the file that cannot be run
 */
export async function publishedChecks(): Promise<CheckOutcome[]> {
  const folder = join(projectFolder(), "tests", "reference");
  const files = (await readdir(folder)).filter((file) => file.endsWith(".json")).sort();
  const outcomes: CheckOutcome[] = [];
  for (const file of files) {
    try {
      const content: unknown = JSON.parse(await readFile(join(folder, file), "utf8"));
      if (kindOf(content) === "formula") outcomes.push(...asTables(content).flatMap(runChecks));
    } catch (error) {
      throw new Error(`tests/reference/${file}: ${(error as Error).message}`, { cause: error });
    }
  }
  return outcomes;
}
