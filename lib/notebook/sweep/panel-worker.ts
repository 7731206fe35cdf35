/** A thread that solves panels, a list at a time. */
import { host } from "#host";
import { type PanelTask, solvedTask } from "../../fem/index.js";
import type { WorkerReply } from "./panel-sweep.js";

host.pool.serve((tasks) => reply(tasks as readonly PanelTask[]));

function reply(tasks: readonly PanelTask[]): WorkerReply {
  try {
    return { answers: tasks.map(solvedTask) };
  } catch (error) {
    return { fault: (error as Error).message };
  }
}
