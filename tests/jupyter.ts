/** The real Jupyter, for tests: found, or missed loudly. */
import { execFile } from "node:child_process";
import { promisify } from "node:util";
import type { TestContext } from "vitest";
import { labEnvironment } from "../lib/command/lab.js";

const run = promisify(execFile);

/** Runs one jupyter command with the project's kernel in reach. */
export async function jupyter(args: readonly string[], job: string): Promise<string> {
  const env = { ...labEnvironment(job, process.env), PYDEVD_DISABLE_FILE_VALIDATION: "1" };
  const { stdout } = await run("jupyter", [...args], { env, maxBuffer: 64 * 1024 * 1024 });
  return stdout;
}

const hasJupyter = run("jupyter", ["nbconvert", "--version"]).then(
  () => true,
  () => false,
);

/** Skips with a word where there is no Jupyter; where tests are run for all, there must be one. */
export async function needJupyter({ skip }: TestContext): Promise<void> {
  if (await hasJupyter) return;
  if (process.env.CI === "true") throw new Error("jupyter nbconvert is missing; .ci/run should install it");
  console.warn("jupyter nbconvert is not installed: nothing is tested under the real Jupyter");
  skip("no jupyter nbconvert");
}
