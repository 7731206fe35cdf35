/** Runs the published checks on a thread of their own, beside the notebooks. */
import { once } from "node:events";
import { join } from "node:path";
import { Worker } from "node:worker_threads";
import { projectFolder } from "../book/index.js";
import type { CheckOutcome } from "../index.js";

/** Checks that are being run. */
export interface RunningChecks {
  /** Rejects with the error that names the file that cannot be run. */
  readonly outcomes: Promise<readonly CheckOutcome[]>;
  /** Ends the thread, done or not. */
  stop(): Promise<void>;
}

/** Starts the checks. On this thread they would hold up the answers of kernels, whose cells have a time limit. */
export function checksAside(): RunningChecks {
  const worker = new Worker(join(projectFolder(), "lib/dist/command/checks-worker.js"), { execArgv: [] });
  const outcomes = once(worker, "message").then(([message]) => message as readonly CheckOutcome[]);
  // Whoever awaits them is told; nobody does when a notebook has failed.
  outcomes.catch(() => undefined);
  return { outcomes, stop: async () => void (await worker.terminate()) };
}
