import { spawn } from "node:child_process";
import { once } from "node:events";
import { expect, test } from "vitest";
import { runs } from "../../lib/book/running-process.js";

test("this process runs, one that ended does not, and no number is no process", async () => {
  const ended = spawn(process.execPath, ["--version"]);
  await once(ended, "exit");
  expect(runs(process.pid)).toBe(true);
  expect(runs(ended.pid ?? 0)).toBe(false);
  expect([0, -1, 1.5, Number.NaN].map(runs)).toEqual([false, false, false, false]);
});
