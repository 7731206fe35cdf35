/** How long a cell may run. */
import type { KernelProcess } from "./kernel-process.js";

// A signal that comes while a cell is being compiled is lost on the code that runs after.
const repeatMilliseconds = 200;

/** Interrupts a kernel after a time, and kills it if that does not help. */
export class TimeLimit {
  readonly #timers: NodeJS.Timeout[] = [];
  #passed = false;

  constructor(kernel: KernelProcess, timeout: number, grace: number) {
    const stop = (): void => {
      this.#passed = true;
      kernel.interrupt();
      this.#timers.push(setInterval(() => kernel.interrupt(), repeatMilliseconds));
      this.#timers.push(setTimeout(() => kernel.kill(), grace));
    };
    this.#timers.push(setTimeout(stop, timeout));
  }

  /** Whether the time was over. */
  get passed(): boolean {
    return this.#passed;
  }

  /** The cell has ended. */
  clear(): void {
    for (const timer of this.#timers) clearTimeout(timer);
  }
}
