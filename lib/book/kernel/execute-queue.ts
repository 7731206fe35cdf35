/** Cells run one after another; when one fails, those sent along with it are not run. */
import { setTimeout as pause } from "node:timers/promises";

// "Run all" sends every cell at once, but a busy kernel reads them only after the failing cell.
const readingMilliseconds = 20;

/** Orders the cells that a front end sends. */
export class ExecuteQueue {
  #last: Promise<void> = Promise.resolve();
  #arrived = 0;
  #abortedUpTo = 0;

  /**
   * Runs a cell after those before it, or aborts it when one of those failed after it was sent.
   *
   * @param run resolves to whether later cells may run
   */
  add(run: () => Promise<boolean>, abort: () => void): void {
    this.#arrived += 1;
    const number = this.#arrived;
    this.#last = this.#last.then(async () => {
      if (number <= this.#abortedUpTo) abort();
      else if (!(await run())) this.#abortedUpTo = this.#arrived;
    });
  }
}

/** Waits until the cells sent along with a failing one have been read. */
export async function readOthers(): Promise<void> {
  await pause(readingMilliseconds);
}
