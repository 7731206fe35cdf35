/** Runs the cells of one notebook in a kernel until one fails. */
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

/** The cells with their outputs, and which one failed. */
interface CellsRun {
  /** All cells, those that ran with their outputs. */
  readonly cells: readonly Cell[];
  /** Absent when all ran through. */
  readonly failure?: {
    readonly cell: { readonly number: number; readonly id: string };
    readonly message: string;
  };
}

/** How one cell ended; the message is there when it failed. */
interface CellOutcome {
  /** The cell's number in the session; null when it has none. */
  readonly executionCount: number | null;
  /** Grows when a promise of the cell is rejected later. */
  readonly outputs: readonly Output[];
  /** Why it failed; absent when its run gave no reason of its own. */
  readonly message?: string;
}

/** Runs the cells in order, up to the first that fails. */
export async function runCells(
  kernel: CellKernel,
  cells: readonly Cell[],
  { timeout, onCell }: CellsOptions,
): Promise<CellsRun> {
  const toRun = cells
    .filter((cell) => cell.cell_type === "code")
    .filter(({ source }) => source.trim() !== "");
  const outcomes = new Map<string, CellOutcome>();
  for (const [i, cell] of toRun.entries()) {
    const start = performance.now();
    outcomes.set(cell.id, await runCell(kernel, cell, timeout));
    onCell({ cell: i + 1, of: toRun.length, ms: performance.now() - start });
    if (findFailure(toRun, outcomes)) break;
  }
  const last = toRun.at(-1);
  if (last && !findFailure(toRun, outcomes)) await settle(kernel, last, outcomes);
  const failure = findFailure(toRun, outcomes);
  const done = cells.map((cell) => withOutputs(cell, outcomes.get(cell.id)));
  return failure ? { cells: done, failure } : { cells: done };
}

/** @throws whatever breaks beside the cell */
async function runCell(kernel: CellKernel, { source }: CodeCell, timeout: number): Promise<CellOutcome> {
  try {
    return explain(await kernel.execute(source, { timeout }));
  } catch (error) {
    if (!(error instanceof CellTimeout || error instanceof KernelDied)) throw error;
    return { executionCount: null, outputs: error.outputs, message: error.message };
  }
}

/** Waits for what comes late; a kernel that ends meanwhile was ended by the last cell. */
async function settle(
  kernel: CellKernel,
  { id }: CodeCell,
  outcomes: Map<string, CellOutcome>,
): Promise<void> {
  try {
    await kernel.settle();
  } catch (error) {
    const { executionCount = null, outputs = [] } = outcomes.get(id) ?? {};
    outcomes.set(id, { executionCount, outputs, message: (error as Error).message });
  }
}

function explain({ status, executionCount, outputs }: CellResult): CellOutcome {
  if (status === "ok" || outputs.some(isError)) return { executionCount, outputs };
  return { executionCount, outputs, message: `the cell ended with status ${status}` };
}

/** A cell has failed when its run says so, or when an error stands under it, however late it came. */
function findFailure(
  cells: readonly CodeCell[],
  outcomes: ReadonlyMap<string, CellOutcome>,
): CellsRun["failure"] {
  const failures = cells.map(({ id }, i) => {
    const { message, outputs = [] } = outcomes.get(id) ?? {};
    const error = outputs.find(isError);
    const said = message ?? (error && `${error.ename}: ${error.evalue}`);
    return said === undefined ? undefined : { cell: { number: i + 1, id }, message: said };
  });
  return failures.find((failure) => failure !== undefined);
}

function isError(output: Output): output is ErrorOutput {
  return output.output_type === "error";
}

function withOutputs(cell: Cell, outcome: CellOutcome | undefined): Cell {
  if (cell.cell_type !== "code") return cell;
  const { executionCount = null, outputs = [] } = outcome ?? {};
  return { ...cell, execution_count: executionCount, outputs: [...outputs] };
}
