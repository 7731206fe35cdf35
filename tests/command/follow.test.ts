import { mkdtemp, rename, rm, unlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { type Following, follow } from "../../lib/command/follow.js";

let folder = "";
let calls = 0;
let following: Following;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
  await writeFile(join(folder, "case.yaml"), "case: a");
  await writeFile(join(folder, "sheets.csv"), "name");
  calls = 0;
  following = await follow([folder, join(folder, "missing")], () => {
    calls += 1;
  });
});
afterEach(async () => {
  following.stop();
  await rm(folder, { recursive: true });
});

/** Whatever is written until now has been noticed, also by the regular look. */
async function settled(): Promise<void> {
  await pause(2_500);
}

test.each<[string, () => Promise<void>]>([
  ["written in place", () => writeFile(join(folder, "case.yaml"), "case: b")],
  [
    "written beside and moved into place",
    async () => {
      await writeFile(join(folder, "case.yaml.tmp"), "case: b");
      await rename(join(folder, "case.yaml.tmp"), join(folder, "case.yaml"));
    },
  ],
  [
    "removed and written again",
    async () => {
      await unlink(join(folder, "case.yaml"));
      await writeFile(join(folder, "case.yaml"), "case: b");
    },
  ],
  ["new", () => writeFile(join(folder, "bars.csv"), "name")],
  ["gone", () => unlink(join(folder, "sheets.csv"))],
])("a source that is %s is noticed", { timeout: 600_000 }, async (_, save) => {
  await save();
  await vi.waitFor(() => expect(calls).toBe(1), { timeout: 10_000 });
});

test("several files saved together are noticed once", { timeout: 600_000 }, async () => {
  await Promise.all(
    ["case.yaml", "sheets.csv", "bars.csv"].map((name) => writeFile(join(folder, name), "new text")),
  );
  await settled();
  expect(calls).toBe(1);
});

test("what an editor leaves beside the sources is not noticed", { timeout: 600_000 }, async () => {
  for (const name of [".case.yaml.swp", "case.yaml~", "4913", "notes.txt"])
    await writeFile(join(folder, name), "x");
  await settled();
  expect(calls).toBe(0);
});

test("nothing is noticed after the end", { timeout: 600_000 }, async () => {
  following.stop();
  await writeFile(join(folder, "case.yaml"), "case: b");
  await settled();
  expect(calls).toBe(0);
});
