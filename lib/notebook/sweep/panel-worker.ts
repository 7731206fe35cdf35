/** A thread that solves panels, one message each. */
import { parentPort } from "node:worker_threads";
import { type PanelTask, solvedTask } from "../../fem/index.js";
import type { WorkerReply } from "./panel-sweep.js";

parentPort?.on("message", (task: PanelTask) => {
  parentPort?.postMessage(reply(task));
});

function reply(task: PanelTask): WorkerReply {
  try {
    return { answer: solvedTask(task) };
  } catch (error) {
    return { fault: (error as Error).message };
  }
}
