/** Many panels solved at once, on as many threads as the machine has to spare. */
import { existsSync } from "node:fs";
import { availableParallelism } from "node:os";
import { setImmediate as pause } from "node:timers/promises";
import { Worker } from "node:worker_threads";
import { type PanelAnswer, type PanelTask, solvedTask } from "../../fem/index.js";
import { inBook } from "../kernel-display.js";

/** What a thread sends back. */
export type WorkerReply = { readonly answer: PanelAnswer } | { readonly fault: string };

/** Told after every panel. */
export type Progress = (done: number, total: number) => void;

/** How a sweep is run. */
export interface SweepOptions {
  /** Threads; one for each processor when left out, 1 to stay in this one. */
  readonly workers?: number;
  readonly progress?: Progress;
}

/** A thread costs its start; fewer panels than this each do not pay for it. */
const fewest = 4;

/** The compiled worker beside this file, or in dist when the sources run themselves, as tests do. */
const workerFile = import.meta.url.endsWith(".ts")
  ? new URL("../../dist/notebook/sweep/panel-worker.js", import.meta.url)
  : new URL("./panel-worker.js", import.meta.url);

/**
 * Solves panels. The answers are the same, and in the order of the tasks, whatever the number of threads.
 *
 * @param tasks the panels
 * @param options threads and progress
 * @throws RangeError of the first panel that cannot be solved
 */
export async function sweptPanels(
  tasks: readonly PanelTask[],
  { workers, progress }: SweepOptions = {},
): Promise<readonly PanelAnswer[]> {
  const threads = Math.min(workers ?? spareThreads(tasks.length), tasks.length);
  if (threads <= 1 || !existsSync(workerFile)) return here(tasks, progress);
  const pool = Array.from({ length: threads }, () => new Worker(workerFile, { execArgv: [] }));
  try {
    return await shared(pool, tasks, progress);
  } finally {
    await Promise.all(pool.map((worker) => worker.terminate()));
  }
}

/** The book runs a notebook on each processor; there, none is to spare. */
function spareThreads(panels: number): number {
  return inBook() ? 1 : Math.min(availableParallelism(), Math.ceil(panels / fewest));
}

async function here(tasks: readonly PanelTask[], progress?: Progress): Promise<readonly PanelAnswer[]> {
  const answers: PanelAnswer[] = [];
  for (const task of tasks) {
    answers.push(solvedTask(task));
    progress?.(answers.length, tasks.length);
    await pause();
  }
  return answers;
}

/** Each thread takes the next panel as soon as it has answered. */
async function shared(
  pool: readonly Worker[],
  tasks: readonly PanelTask[],
  progress?: Progress,
): Promise<readonly PanelAnswer[]> {
  const answers = new Array<PanelAnswer>(tasks.length);
  let [next, done] = [0, 0];
  const work = async (worker: Worker): Promise<void> => {
    while (next < tasks.length) {
      const index = next++;
      answers[index] = await answered(worker, tasks[index]!);
      progress?.(++done, tasks.length);
    }
  };
  await Promise.all(pool.map(work));
  return answers;
}

function answered(worker: Worker, task: PanelTask): Promise<PanelAnswer> {
  return new Promise((resolve, reject) => {
    const settle = (reply: WorkerReply): void => {
      worker.off("error", reject);
      if ("answer" in reply) resolve(reply.answer);
      else reject(new RangeError(reply.fault));
    };
    worker.once("message", settle);
    worker.once("error", reject);
    worker.postMessage(task);
  });
}
