/** Every kind of attack, by its name. */
import { cells } from "./cells.js";
import { edits } from "./edits.js";
import { formulas } from "./formulas.js";
import type { Fuzzer } from "./fuzzer.js";
import { jobFiles } from "./job-files.js";
import { messages } from "./messages.js";
import { requests } from "./requests.js";

/** In the order in which they take turns. */
export const fuzzers: Readonly<Record<string, Fuzzer>> = {
  files: jobFiles,
  formulas,
  edits,
  messages,
  requests,
  cells,
};
