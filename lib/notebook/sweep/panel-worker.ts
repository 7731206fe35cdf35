/** A thread that solves panels, one task each. */
import { host } from "#host";
import { type PanelTask, solvedTask } from "../../fem/index.js";
import type { WorkerReply } from "./panel-sweep.js";

host.pool.serve((task) => reply(task as PanelTask));

function reply(task: PanelTask): WorkerReply {
  try {
    return { answer: solvedTask(task) };
  } catch (error) {
    return { fault: (error as Error).message };
  }
}
