/** How long a cell may run. */
import type { KernelProcess } from "./kernel-process.js";

/** Interrupts a kernel after a time, and kills it if that does not help. */
export class TimeLimit {
  #timer: NodeJS.Timeout;
  #passed = false;

  constructor(kernel: KernelProcess, timeout: number, grace: number) {
    this.#timer = setTimeout(() => {
      this.#passed = true;
      kernel.interrupt();
      this.#timer = setTimeout(() => kernel.kill(), grace);
    }, timeout);
  }

  /** Whether the time was over. */
  get passed(): boolean {
    return this.#passed;
  }

  /** The cell has ended. */
  clear(): void {
    clearTimeout(this.#timer);
  }
}
