/** The one door for npm scripts: node lib/dist/command/main.js COMMAND [ARGUMENT...] */
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
const command = commands[name];
if (command) {
  process.exitCode = await command(args);
} else {
  console.error(`no command "${name}", expected one of ${Object.keys(commands).join(", ")}`);
  process.exitCode = 1;
}
