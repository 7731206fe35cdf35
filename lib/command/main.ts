#!/usr/bin/env node
/** The one door for npm scripts and for npx casewright: node lib/dist/command/main.js COMMAND [ARGUMENT...] */
import { bench } from "./bench.js";
import { book } from "./book-of-job.js";
import { check } from "./check.js";
import { lab } from "./lab.js";
import { newJob } from "./new.js";
import { notebooks } from "./notebooks.js";
import { reference } from "./reference.js";
import { start } from "./start.js";

/** A command takes its arguments and returns an exit code. */
type Command = (args: readonly string[]) => Promise<number>;

const commands: Readonly<Record<string, Command>> = {
  bench,
  book,
  check,
  lab,
  new: newJob,
  notebooks,
  reference,
  start,
};

const [name = "", ...args] = process.argv.slice(2);
const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
if (command) {
  process.exitCode = await command(args).catch(systemRefused);
} else {
  console.error(`no command "${name}", expected one of ${Object.keys(commands).join(", ")}`);
  process.exitCode = 1;
}

/**
 * One sentence where the system refuses: a folder that may not be written, a disk that is full.
 *
 * @throws whatever else went wrong
 */
function systemRefused(error: unknown): number {
  if (!(error instanceof Error && "syscall" in error)) throw error;
  console.error(`${name}: ${error.message.replace(/^[A-Z]+: /, "")}`);
  return 1;
}
