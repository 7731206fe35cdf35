#!/usr/bin/env node
/** The one door for npm scripts and for npx casewright: node lib/dist/command/main.js COMMAND [ARGUMENT...] */
import { bench } from "./bench.js";
import { book } from "./book-of-job.js";
import { check } from "./check.js";
import { drawings } from "./drawings.js";
import { fuzz } from "./fuzz.js";
import { helpOf, helpOfAll } from "./help.js";
import { improve } from "./improve.js";
import { lab } from "./lab.js";
import { live } from "./live.js";
import { newJob } from "./new.js";
import { notebooks } from "./notebooks.js";
import { passOn } from "./pass-on.js";
import { reference } from "./reference.js";
import { start } from "./start.js";

/** A command takes its arguments and returns an exit code. */
type Command = (args: readonly string[]) => Promise<number>;

const commands: Readonly<Record<string, Command>> = {
  bench,
  book,
  check,
  drawings,
  fuzz,
  improve,
  lab,
  live,
  new: newJob,
  notebooks,
  "pass-on": passOn,
  reference,
  start,
};

const [name = "", ...args] = process.argv.slice(2);
const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
if (command) {
  process.exitCode = isHelp(args[0]) ? told(helpOf(name)) : await command(args).catch(systemRefused);
} else if (isHelp(name) || name === "help") {
  told(helpOf(args[0] ?? ""));
} else {
  console.error(`${name === "" ? "" : `There is no command "${name}".\n\n`}${helpOfAll()}`);
  process.exitCode = 1;
}

function isHelp(word: string | undefined): boolean {
  return word === "--help" || word === "-h";
}

function told(words: string): number {
  console.log(words);
  return 0;
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
