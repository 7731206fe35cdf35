/** What a kernel client takes and gives, and the two ways in which a cell ends without an answer. */
import type { Output } from "../notebook.js";
import type { Transport } from "./connection.js";

/** How to start a kernel. */
export interface KernelOptions {
  /** Folder in which cells run and from which their imports are resolved. Default: this process's. */
  readonly cwd?: string;
  /** Environment of the kernel. Default: this process's. */
  readonly env?: NodeJS.ProcessEnv;
  /** How to meet. Default: "tcp" on Windows, else "ipc". */
  readonly transport?: Transport;
  /** How long the start may take, in ms. Default: 120 000. */
  readonly startTimeout?: number;
}

/** How long a cell may run. */
export interface ExecuteOptions {
  /** In ms, until the cell is interrupted. Default: 60 000. */
  readonly timeout?: number;
  /** In ms from the interrupt, until the kernel is killed. Default: 1 000. */
  readonly grace?: number;
}

/** How a cell ended. */
export interface CellResult {
  /** "aborted" when a cell before it failed after this one had been sent. */
  readonly status: "ok" | "error" | "aborted";
  /** The cell's number in the session; null when it was aborted. */
  readonly executionCount: number | null;
  /** What a timer or an unawaited promise of the cell brings later is added. */
  readonly outputs: readonly Output[];
}

/** What fits at a position in code. */
export interface Completions {
  /** Names that fit. */
  readonly matches: readonly string[];
  /** Span of the code that a match replaces. */
  readonly cursor_start: number;
  /** End of the span, in characters. */
  readonly cursor_end: number;
}

/** The kernel's process ended. */
export class KernelDied extends Error {
  override readonly name = "KernelDied";
  /** What the running cell had printed and shown. */
  readonly outputs: readonly Output[];

  constructor(message: string, outputs: readonly Output[] = []) {
    super(message);
    this.outputs = outputs;
  }
}

/** A cell ran longer than allowed and was stopped. */
export class CellTimeout extends Error {
  override readonly name = "CellTimeout";
  /** What the cell had printed and shown. */
  readonly outputs: readonly Output[];
  /** Whether the kernel had to be killed, since the cell ignored the interrupt. */
  readonly killed: boolean;

  constructor(milliseconds: number, outputs: readonly Output[], killed: boolean) {
    const end = killed ? "it ignored the interrupt, so its kernel was killed" : "it was interrupted";
    super(`the cell ran longer than ${milliseconds / 1000} s; ${end}`);
    this.outputs = outputs;
    this.killed = killed;
  }
}
