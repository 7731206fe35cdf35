/**
 * The README's first command, as written, from a fresh clone of what is committed.
 * The second, `npm ci && npm test`, is what .ci/run does from a fresh clone; a test cannot call itself.
 */
import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, expect, test } from "vitest";

const project = resolve(import.meta.dirname, "../..");
const clone = mkdtempSync(join(tmpdir(), "casewright-clone-"));
let started: ChildProcess | undefined;

afterAll(() => {
  stop(started);
  rmSync(clone, { recursive: true, force: true, maxRetries: 5 });
}, 600_000);

/** npm runs the server as a child of a child: the whole group is stopped, where the system has groups. */
function stop(child: ChildProcess | undefined): void {
  if (child?.pid === undefined) return;
  child.removeAllListeners("exit");
  if (process.platform === "win32") child.kill();
  else process.kill(-child.pid, "SIGTERM");
}

/** Runs npm start until it prints its address. */
function startBook(): Promise<{ readonly address: string; readonly output: string }> {
  return new Promise((succeed, fail) => {
    const child = spawn(process.execPath, [npmCli(), "start"], {
      cwd: clone,
      detached: process.platform !== "win32",
      env: { ...process.env, CASEWRIGHT_NO_BROWSER: "1", CASEWRIGHT_JOB: "" },
    });
    started = child;
    let output = "";
    const heard = (data: Buffer): void => {
      output += data;
      const address = /http:\/\/127\.0\.0\.1:\d+\//.exec(output)?.[0];
      if (address) succeed({ address, output });
    };
    child.stdout.on("data", heard);
    child.stderr.on("data", heard);
    child.on("exit", (code) => fail(new Error(`npm start ended (${code})\n${output}`)));
  });
}

function npmCli(): string {
  return (
    process.env.npm_execpath ?? join(dirname(process.execPath), "../lib/node_modules/npm/bin/npm-cli.js")
  );
}

test("npm ci && npm start, as the README says, ends in a readable book", { timeout: 400_000 }, async () => {
  execFileSync("git", ["clone", "--quiet", "--depth", "1", pathToFileURL(project).href, clone], {
    stdio: "pipe",
  });
  execFileSync(process.execPath, [npmCli(), "ci", "--prefer-offline"], { cwd: clone, stdio: "pipe" });
  const { address, output } = await startBook();
  expect(output).toMatch(/built book\S*soil-lab in/);
  const page = await (await fetch(address)).text();
  expect(page).toContain("Travelling soil lab");
  expect(page).toContain("Will thin ply stay stiff?");
});
