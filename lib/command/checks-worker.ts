/** The thread that runs the published checks: one message with all outcomes. */
import { parentPort } from "node:worker_threads";
import { publishedChecks } from "./published-checks.js";

parentPort?.postMessage(await publishedChecks());
