/** Many panels solved at once, on as many threads as the machine has to spare, with a line of progress. */
import { host } from "#host";
import { type PanelAnswer, type PanelTask, solvedTask } from "../../fem/index.js";
import type { WorkerThread } from "../../host/contract.js";
import { contentKey } from "../../kept/index.js";
import { Refusal } from "../../refusal.js";

/** What a thread sends back for a list of panels. */
export type WorkerReply = { readonly answers: readonly PanelAnswer[] } | { readonly fault: string };

/** Told after every panel. */
export type Progress = (done: number, total: number) => void;

/** How a sweep is run. */
export interface SweepOptions {
  /** Threads; one for each processor when left out, 1 to stay in this one. */
  readonly workers?: number;
  /** Told after every panel. */
  readonly progress?: Progress;
}

/** A thread costs its start; fewer panels than this each do not pay for it. */
const fewest = 4;

/**
 * Solves panels. The answers are the same, and in the order of the tasks, whatever the number of threads.
 *
 * @param tasks the panels
 * @param options threads and progress
 * @throws Refusal of the first panel that cannot be solved
 */
export async function sweptPanels(
  tasks: readonly PanelTask[],
  { workers, progress }: SweepOptions = {},
): Promise<readonly PanelAnswer[]> {
  if (workers === undefined && host.display.inBook()) return aside(tasks);
  const threads = Math.min(workers ?? spareThreads(tasks.length), tasks.length);
  const pool =
    threads <= 1 ? [] : Array.from({ length: threads }, () => host.pool.start("notebook/sweep/panel-worker"));
  const started = pool.filter((thread) => thread !== undefined);
  if (started.length === 0) return here(tasks, progress);
  try {
    return await shared(started, tasks, progress);
  } finally {
    await Promise.all(started.map((thread) => thread.end()));
  }
}

function spareThreads(panels: number): number {
  return Math.min(host.pool.spare(), Math.ceil(panels / fewest));
}

/** Enough for the sweeps of one job; the book runs them again after an edit that does not touch the panel. */
const mostAnswers = 200;
const known = new Map<string, PanelAnswer>();

/** In the book: what is not known yet is solved by one thread, while the notebook goes on with other work. */
async function aside(tasks: readonly PanelTask[]): Promise<readonly PanelAnswer[]> {
  const keys = tasks.map(contentKey);
  const found = keys.map((key) => known.get(key));
  const fresh = await solvedAside(tasks.filter((_, i) => found[i] === undefined));
  let next = 0;
  const answers = found.map((answer) => answer ?? fresh[next++]!);
  keys.forEach((key, i) => void known.set(key, answers[i]!));
  for (const key of known.keys()) if (known.size > mostAnswers) known.delete(key);
  return answers;
}

async function solvedAside(tasks: readonly PanelTask[]): Promise<readonly PanelAnswer[]> {
  const thread = tasks.length < fewest ? undefined : host.pool.start("notebook/sweep/panel-worker");
  if (!thread) return here(tasks);
  try {
    return await answered(thread, tasks);
  } finally {
    await thread.end();
  }
}

async function here(tasks: readonly PanelTask[], progress?: Progress): Promise<readonly PanelAnswer[]> {
  const answers: PanelAnswer[] = [];
  for (const task of tasks) {
    answers.push(solvedTask(task));
    progress?.(answers.length, tasks.length);
    await host.pool.pause();
  }
  return answers;
}

/** Each thread takes the next panel as soon as it has answered. */
async function shared(
  pool: readonly WorkerThread[],
  tasks: readonly PanelTask[],
  progress?: Progress,
): Promise<readonly PanelAnswer[]> {
  const answers = new Array<PanelAnswer>(tasks.length);
  let [next, done] = [0, 0];
  const work = async (worker: WorkerThread): Promise<void> => {
    while (next < tasks.length) {
      const index = next++;
      const [answer] = await answered(worker, [tasks[index]!]);
      answers[index] = answer!;
      progress?.(++done, tasks.length);
    }
  };
  await Promise.all(pool.map(work));
  return answers;
}

/** @throws Refusal of the first panel that cannot be solved */
async function answered(worker: WorkerThread, tasks: readonly PanelTask[]): Promise<readonly PanelAnswer[]> {
  const reply = (await worker.ask(tasks)) as WorkerReply;
  if ("fault" in reply) throw new Refusal(reply.fault);
  return reply.answers;
}

/**
 * A line of a notebook's output that counts along while work is done, such as "panels: 7 of 18"; nothing in the book
 * and outside a notebook.
 *
 * @param what is counted
 */
export function progressLine(what: string): Progress {
  const id = crypto.randomUUID();
  let begun = false;
  return (done, total) => {
    const write = host.display.inBook() ? null : host.display.writer();
    write?.(
      { data: { "text/plain": `${what}: ${done} of ${total}` }, metadata: {}, transient: { display_id: id } },
      begun,
    );
    begun = true;
  };
}
