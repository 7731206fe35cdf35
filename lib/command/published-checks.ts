/** Runs the published checks, so that the book can print expected, ours and error. */
import { once } from "node:events";
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { Worker } from "node:worker_threads";
import { KeptOnDisk, libraryFolder, projectFolder } from "../book/index.js";
import { type CheckOutcome, runChecks } from "../index.js";
import { asTables, kindOf } from "./reference/kinds.js";

/**
 * Runs every table of formulas in tests/reference/.
 *
 * @throws Error naming the file that cannot be run
 */
export async function publishedChecks(): Promise<readonly CheckOutcome[]> {
  const tables = await readTables();
  const kept = KeptOnDisk.ofThisBuild();
  const key = ["published checks", [...tables]];
  const found = kept.read(key);
  if (Array.isArray(found)) return found;
  const outcomes = [...tables].flatMap(([file, text]) => naming(file, () => outcomesOf(JSON.parse(text))));
  kept.write(key, outcomes);
  return outcomes;
}

/** Texts by file name. */
async function readTables(): Promise<ReadonlyMap<string, string>> {
  const folder = join(projectFolder(), "tests", "reference");
  const files = (await readdir(folder)).filter((file) => file.endsWith(".json")).sort();
  return new Map(
    await Promise.all(files.map(async (file) => [file, await readFile(join(folder, file), "utf8")] as const)),
  );
}

function outcomesOf(content: unknown): readonly CheckOutcome[] {
  return kindOf(content) === "formula" ? asTables(content).flatMap(runChecks) : [];
}

/** @throws Error that names the file, when work throws one */
function naming<Result>(file: string, work: () => Result): Result {
  try {
    return work();
  } catch (error) {
    throw new Error(`tests/reference/${file}: ${(error as Error).message}`, { cause: error });
  }
}

/** Checks that are being run. */
export interface RunningChecks {
  /** Rejects with the error that names the file that cannot be run. */
  readonly outcomes: Promise<readonly CheckOutcome[]>;
  /** Ends the thread, done or not. */
  stop(): Promise<void>;
}

/**
 * Starts the checks on a thread. On this one they would hold up the answers of kernels, whose cells have a time
 * limit. Outcomes of the same tables with the same library are kept.
 */
export function checksAside(): RunningChecks {
  const worker = new Worker(join(libraryFolder(), "command", "checks-worker.js"), { execArgv: [] });
  const outcomes = once(worker, "message").then(([message]) => message as readonly CheckOutcome[]);
  // Whoever awaits them is told; nobody does when a notebook has failed.
  outcomes.catch(() => undefined);
  return { outcomes, stop: async () => void (await worker.terminate()) };
}
