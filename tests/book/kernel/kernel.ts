/** What the tests of the kernel share. */
import { join } from "node:path";
import { afterAll, beforeAll, vi } from "vitest";
import {
  type CellResult,
  type ExecuteOptions,
  KernelClient,
  type KernelOptions,
  type Output,
  projectFolder,
} from "../../../lib/book/index.js";

// A kernel starts in a second, but not when everything else runs at the same time.
vi.setConfig({ testTimeout: 600_000, hookTimeout: 600_000 });

/** Cells run where the notebooks are, so that they find the library. */
export const notebookFolder: string = join(projectFolder(), "notebooks");

/** Starts one kernel for the tests of a block, and ends it after them. */
export function oneKernel(options: KernelOptions = {}): { run: Run; client(): KernelClient } {
  let kernel: KernelClient | undefined;
  const client = (): KernelClient => {
    if (!kernel) throw new Error("the kernel has not started");
    return kernel;
  };
  beforeAll(async () => {
    kernel = await KernelClient.start({ cwd: notebookFolder, ...options });
  });
  afterAll(() => kernel?.shutdown());
  return { client, run: (code, limits) => client().execute(code, limits) };
}

/** Runs one cell. */
export type Run = (code: string, limits?: ExecuteOptions) => Promise<CellResult>;

/** All that a cell printed on its standard output. */
export function printed(outputs: readonly Output[]): string {
  return outputs
    .map((output) => (output.output_type === "stream" && output.name === "stdout" ? output.text : ""))
    .join("");
}

/** Name and message of the error under a cell. */
export function errorOf(outputs: readonly Output[]): string | undefined {
  const error = outputs.find((output) => output.output_type === "error");
  return error && `${error.ename}: ${error.evalue}`;
}

/** Whether a process of this number runs. */
export function isRunning(pid: number | undefined): boolean {
  if (pid === undefined) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
}
