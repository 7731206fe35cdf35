/** The two ways in which a cell ends without an answer. */
import type { Output } from "../notebook.js";

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
