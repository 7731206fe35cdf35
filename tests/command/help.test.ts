import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { expect, test } from "vitest";
import { projectFolder } from "../../lib/book/index.js";
import { helpOf, helpOfAll, usageOf } from "../../lib/command/help.js";

const called = (...args: string[]): { status: number | null; stdout: string; stderr: string } =>
  spawnSync(process.execPath, [join(projectFolder(), "lib/dist/command/main.js"), ...args], {
    encoding: "utf8",
  });

test("help says what every command does, and is no mistake", () => {
  const { status, stdout } = called("--help");
  expect(status).toBe(0);
  for (const name of ["new", "check", "start", "book", "live", "lab", "reference"]) {
    expect(stdout).toMatch(new RegExp(`npm (run )?${name} --\\s+\\w`));
  }
});

test("help of one command says what it takes and does none of it", () => {
  for (const name of ["new", "check", "start", "book", "live", "lab", "reference", "bench", "notebooks"]) {
    expect(helpOf(name)).toMatch(new RegExp(`^usage: npm (run )?${name} --.*\n\n[A-Z][^\n]+\\.\n\n`));
  }
  const { status, stdout } = called("check", "--help");
  expect([status, stdout.split("\n")[0]]).toEqual([0, usageOf("check")]);
});

test("help stands below a command that is none, which is a mistake", () => {
  const { status, stderr } = called("chekc");
  expect([status, stderr.trim()]).toEqual([1, `There is no command "chekc".\n\n${helpOfAll()}`]);
});
