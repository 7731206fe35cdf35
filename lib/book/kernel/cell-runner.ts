/** Runs cells in this process and says how each ended, also when the error comes from beside the cell. */
import { setImmediate as nextTurn } from "node:timers/promises";
import { type LastValueBundle, lastValueBundle } from "../../host/contract.js";
import { KeptOnDisk } from "../kept-on-disk.js";
import { type CellError, strayError, thrownError, typeError } from "./cell-error.js";
import type { CellOutput } from "./cell-output.js";
import { keptConverter } from "./kept-cells.js";
import type { Completeness, Completion, Converter, Executor, TslabInternals } from "./tslab-internals.js";

/** A value with this method shows itself when it is the last expression of a cell. */
const displayMethod = Symbol.for("Jupyter.display");

/** The TypeScript session that all cells of a notebook share. */
export class CellRunner {
  readonly #tslab: TslabInternals;
  readonly #executor: Executor;
  readonly #reportLate: (error: CellError) => void;
  #running = false;
  #error: CellError | undefined;

  /**
   * @param folder the notebook's folder, from which its imports are resolved
   * @param reportLate called with an error that comes up while no cell runs
   */
  constructor(tslab: TslabInternals, folder: string, reportLate: (error: CellError) => void) {
    const create = (): Converter => tslab.createConverter({ isJS: false, isBrowser: false });
    const node = keptConverter(create, KeptOnDisk.ofThisBuild());
    const converters = {
      node,
      get browser(): never {
        throw new Error("cells for the browser are not supported");
      },
      close: () => node.close(),
    };
    this.#tslab = tslab;
    this.#reportLate = reportLate;
    this.#executor = tslab.createExecutor(folder, converters, {
      log: (value) => this.#showLast(value),
      error: (...report) => this.#noteError(report),
    });
    process.on("unhandledRejection", (reason) => this.#stray(strayError("a promise nobody awaited", reason)));
    process.on("uncaughtException", (error) => this.#stray(strayError("a callback that ran later", error)));
  }

  /** Runs one cell; the result is its error, if it failed. */
  async run(code: string, output: CellOutput): Promise<CellError | undefined> {
    this.#running = true;
    this.#error = undefined;
    this.#tslab.displayHook.lastWriteDisplayData = (display, update = false) =>
      output.display(display, update);
    try {
      const ok = await this.#executor.execute(code);
      await settle();
      if (!ok) this.#error ??= thrownError(new Error("the cell failed without a message"));
    } catch (error) {
      this.#error = thrownError(error);
    } finally {
      this.#running = false;
    }
    return this.#error;
  }

  /** Ends the wait of a cell that awaits; a busy cell is ended by the signal itself. */
  interrupt(): void {
    this.#executor.interrupt();
  }

  /** Names that fit at a position. */
  complete(code: string, position: number): Completion {
    return this.#executor.complete(code, position);
  }

  /** Type and comment of the name at a position; undefined where there is none. */
  inspect(code: string, position: number): string | undefined {
    const found = this.#executor.inspect(code, position);
    return found && this.#tslab.printQuickInfo(found);
  }

  /** Whether code is a whole statement. */
  isComplete(code: string): Completeness {
    return this.#tslab.isCompleteCode(code);
  }

  /** Begins a new session, in which nothing is declared. */
  forget(): void {
    this.#executor.reset();
  }

  /** Ends the session. */
  close(): void {
    this.#executor.close();
  }

  #showLast(value: unknown): void {
    const show = (value as Record<symbol, unknown>)[displayMethod];
    const data = typeof show === "function" ? show.call(value) : libraryBundle(value);
    const write = this.#tslab.displayHook.lastWriteDisplayData;
    if (data !== undefined && write) write({ data, metadata: {}, transient: {} });
    else console.log(value);
  }

  /** The executor reports a thrown value alone, and a complaint of the compiler as a format with values. */
  #noteError(report: readonly unknown[]): void {
    this.#error = report.length === 1 ? thrownError(report[0]) : typeError(report, this.#error);
  }

  #stray(error: CellError): void {
    if (this.#running) this.#error ??= error;
    else this.#reportLate(error);
  }
}

/** What the library that the cells imported makes of a value; undefined where it was not imported. */
function libraryBundle(value: unknown): ReturnType<LastValueBundle> {
  const made = (globalThis as { readonly [lastValueBundle]?: LastValueBundle })[lastValueBundle];
  return made?.(value);
}

/** Lets promises that are already rejected, and callbacks that are already due, come up. */
async function settle(): Promise<void> {
  await nextTurn();
  await nextTurn();
}
