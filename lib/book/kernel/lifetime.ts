/** A kernel ends with the program that started it, so that none is left running behind. */
import { Worker } from "node:worker_threads";

/** Set by the project's own client, whose end of the kernel's input stays open while it lives. */
export const endWithInput = "CASEWRIGHT_KERNEL_ENDS_WITH_INPUT";

/** Ends this process when its parent is gone, or, if asked to, when its input closes. */
export function endWithParent(): void {
  if (process.env[endWithInput] === "1") {
    process.stdin.on("end", () => process.exit(0)).resume();
  }
  // A cell that loops for ever holds up this thread, hence another one.
  new Worker(new URL("./parent-watch.js", import.meta.url)).unref();
}
