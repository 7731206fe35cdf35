/** Runs the cells of one notebook in a kernel. One that fails takes along only those that need a name of it. */
import { endedError, errorOf, errorText, isFailure, namesMissing, notRunError } from "./failed-cells.js";
import type { KernelClient } from "./kernel/client.js";
import { type CellResult, CellTimeout, KernelDied } from "./kernel/kernel-contract.js";
import type { Cell, CodeCell, ErrorOutput, Output } from "./notebook.js";

/** What running cells needs of a kernel. */
export type CellKernel = Pick<KernelClient, "execute" | "settle">;

/** How to run cells. */
interface CellsOptions {
  /** How long each may run, in ms. */
  readonly timeout: number;
  /** Told of every code cell that has run: its number, how many there are, how long it took in ms. */
  readonly onCell: (progress: { cell: number; of: number; ms: number }) => void;
}

/** A cell that failed. */
interface CellFailure {
  /** Which one. */
  readonly cell: {
    /** Its number among the code cells, from 1. */
    readonly number: number;
    /** Its id in the notebook. */
    readonly id: string;
  };
  /** What went wrong, in words. */
  readonly message: string;
}

/** The cells with their outputs, and which of them failed. */
interface CellsRun {
  /** All cells, each with what it printed and showed, and with its error in its place. */
  readonly cells: readonly Cell[];
  /** In the order of the cells; a cell that was not run, since it needs another, is none of them. */
  readonly failures: readonly CellFailure[];
}

/** How one cell ended. */
interface CellOutcome {
  /** The cell's number in the session; null when it has none. */
  readonly executionCount: number | null;
  /** Grows when a promise of the cell is rejected later. */
  readonly outputs: readonly Output[];
  /** Why it failed, where no output of its own says so. */
  readonly ended?: ErrorOutput;
}

/**
 * Runs the cells in order.
 *
 * @param ready gives a kernel in which nothing is declared: at first, and again when a cell has ended the one before
 * @throws KernelDied when there is no kernel at first
 */
export async function runCells(
  ready: () => Promise<CellKernel>,
  cells: readonly Cell[],
  { timeout, onCell }: CellsOptions,
): Promise<CellsRun> {
  const toRun = cells
    .filter((cell) => cell.cell_type === "code")
    .filter(({ source }) => source.trim() !== "");
  const session = new Session(ready, await ready(), timeout);
  for (const [i, cell] of toRun.entries()) {
    const start = performance.now();
    await session.run({ ...cell, number: i + 1 });
    onCell({ cell: i + 1, of: toRun.length, ms: performance.now() - start });
  }
  await session.settle();
  return {
    cells: cells.map((cell) => withOutputs(cell, session.outcomes.get(cell.id))),
    failures: toRun.flatMap(({ id }, i) => {
      const error = errorOf(outputsOf(session.outcomes.get(id)));
      if (!error || !isFailure(error)) return [];
      return [{ cell: { number: i + 1, id }, message: errorText(error) }];
    }),
  };
}

/** A code cell and its number, from 1. */
interface NumberedCell extends CodeCell {
  /** Among the code cells with code in them, from 1. */
  readonly number: number;
}

/** The cells of a notebook so far, and the kernel that they run in. */
class Session {
  /** By the cell's id. */
  readonly outcomes: Map<string, CellOutcome> = new Map();
  readonly #ready: () => Promise<CellKernel>;
  readonly #timeout: number;
  readonly #ran: NumberedCell[] = [];
  #kernel: CellKernel | undefined;

  constructor(ready: () => Promise<CellKernel>, kernel: CellKernel, timeout: number) {
    this.#ready = ready;
    this.#kernel = kernel;
    this.#timeout = timeout;
  }

  async run(cell: NumberedCell): Promise<void> {
    if (this.#kernel === undefined) await this.#startAgain();
    const outcome = this.#kernel
      ? await this.#runIn(this.#kernel, cell)
      : { executionCount: null, outputs: [], ended: notRunError("its kernel has ended") };
    this.outcomes.set(cell.id, this.#explained(outcome));
    this.#ran.push(cell);
  }

  /** Waits for what comes late; a kernel that ends meanwhile was ended by the last cell. */
  async settle(): Promise<void> {
    const last = this.#ran.at(-1);
    const outcome = last && this.outcomes.get(last.id);
    if (!outcome) return;
    try {
      await this.#kernel?.settle();
    } catch (error) {
      if (!(error instanceof KernelDied)) throw error;
      this.outcomes.set(last.id, { ...outcome, ended: endedError(error) });
    }
  }

  /** @throws whatever breaks beside the cell */
  async #runIn(kernel: CellKernel, { source }: CodeCell): Promise<CellOutcome> {
    try {
      return explain(await kernel.execute(source, { timeout: this.#timeout }));
    } catch (error) {
      if (!(error instanceof CellTimeout || error instanceof KernelDied)) throw error;
      if (error instanceof KernelDied || error.killed) this.#kernel = undefined;
      // What an interrupted cell complains of is the interrupt itself.
      const outputs = error.outputs.filter(({ output_type }) => output_type !== "error");
      return { executionCount: null, outputs, ended: this.#endedBy(error) };
    }
  }

  #endedBy(error: CellTimeout | KernelDied): ErrorOutput {
    if (error instanceof KernelDied) return endedError(error);
    const more = `--cell-time ${(2 * this.#timeout) / 1000} gives every cell twice as long`;
    return endedError({ message: `${error.message}; ${more}` });
  }

  /** A new kernel, in which the cells that ran well are run again, since those to come may need what they declare. */
  async #startAgain(): Promise<void> {
    try {
      this.#kernel = await this.#ready();
    } catch (error) {
      if (!(error instanceof KernelDied)) throw error;
      return;
    }
    for (const cell of this.#ran) {
      if (errorOf(outputsOf(this.outcomes.get(cell.id)))) continue;
      if (this.#kernel) await this.#runIn(this.#kernel, cell);
    }
  }

  /** A complaint that a name is missing which an earlier cell would have declared is no failure of this one. */
  #explained(outcome: CellOutcome): CellOutcome {
    const error = errorOf(outputsOf(outcome));
    for (const name of error ? namesMissing(error) : []) {
      const owner = this.#ran.find(
        ({ id, source }) => mentions(source, name) && errorOf(outputsOf(this.outcomes.get(id))),
      );
      if (!owner) continue;
      const words = `it needs "${name}" of cell ${owner.number}, which did not give it`;
      return { executionCount: null, outputs: [], ended: notRunError(words) };
    }
    return outcome;
  }
}

function mentions(source: string, name: string): boolean {
  return source.split(/[^\p{ID_Continue}$]+/u).includes(name);
}

function explain({ status, executionCount, outputs }: CellResult): CellOutcome {
  if (status === "ok" || errorOf(outputs)) return { executionCount, outputs };
  return { executionCount, outputs, ended: endedError(new Error(`the cell ended with status ${status}`)) };
}

/** With the reason why the run ended, where no output says so; outputs that came late are among them. */
function outputsOf(outcome: CellOutcome | undefined): readonly Output[] {
  if (!outcome) return [];
  return outcome.ended ? [...outcome.outputs, outcome.ended] : outcome.outputs;
}

function withOutputs(cell: Cell, outcome: CellOutcome | undefined): Cell {
  if (cell.cell_type !== "code") return cell;
  return { ...cell, execution_count: outcome?.executionCount ?? null, outputs: outputsOf(outcome) };
}
