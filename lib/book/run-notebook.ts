/** Runs notebooks from first cell to last, and says which cells failed and why. */
import { readFile } from "node:fs/promises";
import { dirname, resolve } from "node:path";
import { endedError } from "./failed-cells.js";
import { KernelClient } from "./kernel/client.js";
import { KernelDied } from "./kernel/kernel-contract.js";
import type { CodeCell, Notebook } from "./notebook.js";
import { parseNotebook } from "./notebook-file.js";
import { runCells } from "./run-cells.js";

/** How to run a notebook. */
interface RunOptions {
  /** Environment of its kernel. Default: this process's. */
  readonly env?: NodeJS.ProcessEnv;
  /** Folder it runs in, unless it names files beside it. Default: the folder of the notebook, as in Jupyter. */
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

/** What failed in a notebook. */
export interface Failure {
  /** The notebook's file. */
  readonly notebook: string;
  /** The cell that failed; absent when no cell could be run. */
  readonly cell?: {
    /** Its number among the code cells, from 1. */
    readonly number: number;
    readonly id: string;
  };
  /** What went wrong, in words. */
  readonly message: string;
}

/** A notebook that was run. */
export interface NotebookRun {
  /** With outputs; the error of a cell that failed stands under it. */
  readonly notebook: Notebook;
  /** In the order of the cells; none when all ran through. */
  readonly failures: readonly Failure[];
}

/** Runs a notebook file in a kernel of its own. The file itself is not changed. */
export async function runNotebook(file: string, options: RunOptions = {}): Promise<NotebookRun> {
  const [run] = await runNotebooks([file], options);
  return run as NotebookRun;
}

/** How to run several notebooks. */
interface RunsOptions extends RunOptions {
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
  options: RunsOptions = {},
): Promise<NotebookRun[]> {
  const runner = new NotebookRunner(options);
  try {
    return await runner.run(files);
  } finally {
    await runner.close();
  }
}

/** Runs notebooks, again and again, in kernels that may be kept from one time to the next. */
export class NotebookRunner {
  readonly #lanes: readonly Lane[];
  readonly #keep: boolean;

  constructor({ concurrency = 2, keepKernels = false, ...options }: RunsOptions) {
    this.#lanes = Array.from({ length: Math.max(1, concurrency) }, () => new Lane(options));
    this.#keep = keepKernels;
  }

  /**
   * Runs several notebooks; the results are in the order of the files.
   *
   * @param together those that rest on the same long work: they are begun first, and one kernel runs them all
   */
  async run(files: readonly string[], together: readonly string[] = []): Promise<NotebookRun[]> {
    const runs: NotebookRun[] = [];
    const isFirst = ([, file]: [number, string]): boolean => together.includes(file);
    const waiting = [...files.entries()].sort((a, b) => Number(isFirst(b)) - Number(isFirst(a)));
    const work = async (lane: Lane): Promise<void> => {
      for (;;) {
        const next = this.#next(lane, waiting, together);
        if (!next) break;
        const [i, file] = next;
        if (this.#keep && together.includes(file)) for (const one of together) lane.known.add(one);
        const run = await lane.run(file);
        runs[i] = run;
        if (!this.#keep || run.failures.length > 0) await lane.close();
      }
    };
    await Promise.all(this.#lanes.map(work));
    return runs;
  }

  /** Ends the kernels, those that run among them; none is started afterwards. */
  async close(): Promise<void> {
    await Promise.all(this.#lanes.map((lane) => lane.end()));
  }

  /** A notebook goes where it was run before, since its kernel has kept answers of it; else to who is free. */
  #next(lane: Lane, waiting: [number, string][], together: readonly string[]): [number, string] | undefined {
    const known = (asked: Lane, [, file]: [number, string]): boolean => asked.known.has(file);
    const own = waiting.findIndex((one) => known(lane, one));
    const nobodys = waiting.findIndex((one) => !this.#lanes.some((other) => known(other, one)));
    // Another's may be taken over, but not with the long work that its kernel has done.
    const others = waiting.findIndex(([, file]) => !together.includes(file));
    const at = [own, nobodys, others].find((place) => place >= 0);
    return at === undefined ? undefined : waiting.splice(at, 1)[0];
  }
}

const emptyNotebook: Notebook = { nbformat: 4, nbformat_minor: 5, metadata: {}, cells: [] };

/** The notebook in a file, or why there is none. */
async function readNotebook(file: string): Promise<Notebook | Error> {
  try {
    return parseNotebook(await readFile(file, "utf8"), file);
  } catch (error) {
    return error as Error;
  }
}

/** Whether a cell names a file by its place beside the notebook, such as "./mine.ts". */
function namesFilesBeside({ cells }: Notebook): boolean {
  return cells.some((cell) => cell.cell_type === "code" && /["'`]\.{1,2}\//.test(cell.source));
}

/** A notebook none of whose cells could be run, and why. */
function notRun(file: string, { cells, ...rest }: Notebook, message: string): NotebookRun {
  const why: CodeCell = {
    cell_type: "code",
    ...{ id: "not-run", metadata: {}, source: "", execution_count: null },
    outputs: [endedError({ message })],
  };
  return { notebook: { ...rest, cells: [...cells, why] }, failures: [{ notebook: file, message }] };
}

/** Runs one notebook after another in a kernel that it starts when it needs one. */
class Lane {
  readonly #options: RunOptions;
  /** By the folder that they run in. */
  readonly #kernels = new Map<string, KernelClient>();
  /** Files run in the kernels that are there now. */
  readonly known: Set<string> = new Set();
  #ended = false;

  constructor(options: RunOptions) {
    this.#options = options;
  }

  async run(file: string): Promise<NotebookRun> {
    const notebook = await readNotebook(file);
    if (notebook instanceof Error) return notRun(file, emptyNotebook, notebook.message);
    const { env = process.env, timeout = 60_000, onProgress } = this.#options;
    const own = dirname(resolve(file));
    const { cwd = own } = this.#options;
    const folder = namesFilesBeside(notebook) ? own : cwd;
    try {
      const { cells, failures } = await runCells(() => this.#readyKernel(folder, env), notebook.cells, {
        timeout,
        onCell: (progress) => onProgress?.({ notebook: file, ...progress }),
      });
      this.known.add(file);
      return {
        notebook: { ...notebook, cells },
        failures: failures.map((failure) => ({ notebook: file, ...failure })),
      };
    } catch (error) {
      if (!(error instanceof KernelDied)) throw error;
      return notRun(file, notebook, error.message);
    }
  }

  /** Ends its kernels for good. */
  async end(): Promise<void> {
    this.#ended = true;
    await this.close();
  }

  /** Ends its kernels; a notebook that is run later gets a new one. */
  async close(): Promise<void> {
    const kernels = [...this.#kernels.values()];
    this.#kernels.clear();
    this.known.clear();
    await Promise.all(kernels.map((kernel) => kernel.shutdown()));
  }

  /**
   * A kernel in which nothing is declared; one that has ended since is replaced.
   *
   * @throws KernelDied when it does not start, or when the lane has ended
   */
  async #readyKernel(cwd: string, env: NodeJS.ProcessEnv): Promise<KernelClient> {
    if (this.#ended) throw new KernelDied("the work was ended before this was run");
    try {
      await this.#kernels.get(cwd)?.fresh();
    } catch (error) {
      if (!(error instanceof KernelDied)) throw error;
      await this.close();
    }
    const kernel = this.#kernels.get(cwd) ?? (await KernelClient.start({ cwd, env }));
    this.#kernels.set(cwd, kernel);
    if (this.#ended) await this.close();
    return kernel;
  }
}
