/** npm run mutate -- ROOM: builds the library and tries every mutant of a room; prints those that no test notices. */
import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { join, resolve } from "node:path";

const root = resolve(import.meta.dirname, "../..");
const [room = ""] = process.argv.slice(2);
if (room === "" || !existsSync(join(root, "tests", room))) {
  console.error("usage: npm run mutate -- ROOM, a folder of lib with tests of its own");
  process.exit(1);
}
const run = (file, ...args) =>
  execFileSync(process.execPath, [join(root, "node_modules", file), ...args], {
    cwd: root,
    stdio: "inherit",
    env: { ...process.env, CASEWRIGHT_ROOM: room },
  });
run("typescript/bin/tsc", "-p", "lib");
run("@stryker-mutator/core/bin/stryker.js", "run", "tests/mutation/stryker.config.mjs");
