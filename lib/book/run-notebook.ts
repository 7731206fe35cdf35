/** Runs notebooks from first cell to last, and says which cell failed and why. */
import { readFile } from "node:fs/promises";
import { dirname, resolve } from "node:path";
import { KernelClient } from "./kernel/client.js";
import type { Notebook } from "./notebook.js";
import { parseNotebook } from "./notebook-file.js";
import { runCells } from "./run-cells.js";

/** How to run a notebook. */
export interface RunOptions {
  /** Environment of its kernel. Default: this process's. */
  readonly env?: NodeJS.ProcessEnv;
  /** Folder it runs in. Default: the folder of the notebook, as in Jupyter. */
  readonly cwd?: string;
  /** How long each cell may run, in ms. Default: 60 000. */
  readonly timeout?: number;
  /** Told of every cell that has run. */
  readonly onProgress?: (progress: Progress) => void;
}

/** One code cell has run. */
export interface Progress {
  /** The notebook's file. */
  readonly notebook: string;
  /** Its number among the code cells, from 1. */
  readonly cell: number;
  /** How many code cells there are. */
  readonly of: number;
  /** How long the cell took. */
  readonly ms: number;
}

/** Why a notebook did not run through. */
export interface Failure {
  /** The notebook's file. */
  readonly notebook: string;
  /** The cell that failed; absent when the kernel did not start. */
  readonly cell?: {
    /** Its number among the code cells, from 1. */
    readonly number: number;
    readonly id: string;
  };
  readonly message: string;
}

/** A notebook that was run. */
export interface NotebookRun {
  /** With outputs, up to the cell that failed. */
  readonly notebook: Notebook;
  /** Absent when all cells ran through. */
  readonly failure?: Failure;
}

/**
 * Runs a notebook file in a kernel of its own. The file itself is not changed.
 *
 * @throws ProblemsError when the file is no notebook
 */
export async function runNotebook(file: string, options: RunOptions = {}): Promise<NotebookRun> {
  const [run] = await runNotebooks([file], options);
  return run as NotebookRun;
}

/** How to run several notebooks. */
export interface RunsOptions extends RunOptions {
  /** How many at a time. Default: 2. */
  readonly concurrency?: number;
  /**
   * Keeps a kernel for the next notebook, unless a cell failed in it: half the time, for notebooks that are
   * known to run alone. Needs a `cwd`. Default: a fresh kernel for each.
   */
  readonly keepKernels?: boolean;
}

/** Runs several notebooks; the results are in the order of the files. */
export async function runNotebooks(
  files: readonly string[],
  { concurrency = 2, keepKernels = false, ...options }: RunsOptions = {},
): Promise<NotebookRun[]> {
  const runs: NotebookRun[] = [];
  const waiting = files.entries();
  const worker = async (): Promise<void> => {
    const lane = new Lane(options);
    try {
      for (const [i, file] of waiting) {
        runs[i] = await lane.run(file);
        if (!keepKernels || runs[i]?.failure) await lane.close();
      }
    } finally {
      await lane.close();
    }
  };
  await Promise.all(Array.from({ length: Math.max(1, concurrency) }, worker));
  return runs;
}

/** Runs one notebook after another in a kernel that it starts when it needs one. */
class Lane {
  private kernel: KernelClient | undefined;

  constructor(private readonly options: RunOptions) {}

  async run(file: string): Promise<NotebookRun> {
    const notebook = parseNotebook(await readFile(file, "utf8"), file);
    const { env = process.env, cwd = dirname(resolve(file)), timeout = 60_000, onProgress } = this.options;
    try {
      this.kernel ??= await KernelClient.start({ cwd, env });
    } catch (error) {
      return { notebook, failure: { notebook: file, message: (error as Error).message } };
    }
    const { cells, failure } = await runCells(this.kernel, notebook.cells, {
      timeout,
      onCell: (progress) => onProgress?.({ notebook: file, ...progress }),
    });
    const run = { ...notebook, cells };
    return failure ? { notebook: run, failure: { notebook: file, ...failure } } : { notebook: run };
  }

  async close(): Promise<void> {
    const { kernel } = this;
    this.kernel = undefined;
    await kernel?.shutdown();
  }
}
