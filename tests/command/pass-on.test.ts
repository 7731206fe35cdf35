/** A case with its answers as one file. */
import { cpSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { passOn } from "../../lib/command/pass-on.js";
import { readJob } from "../../lib/job/index.js";

const jobs = resolve(import.meta.dirname, "../jobs");
let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "casewright-test-"));
  cpSync(join(jobs, "tables"), folder, { recursive: true });
  cpSync(join(jobs, "bare-box.yaml"), join(folder, "case.yaml"));
});
afterAll(() => rmSync(folder, { recursive: true }));

test("the file holds the case and every verdict that it has here", async () => {
  const said = vi.spyOn(console, "log").mockReturnValue(undefined);
  const out = join(folder, "out", "box.html");
  expect(await passOn([folder, "--out", out])).toBe(0);
  expect(said.mock.calls[0]?.[0]).toContain("box.html");
  said.mockRestore();
  const [, json = "{}"] =
    /<script type="application\/json" id="live-data">(.*?)<\/script>/s.exec(readFileSync(out, "utf8")) ?? [];
  const data: { texts: object; passedOn: { answers: { id: string; verdict: string }[] } } = JSON.parse(json);
  const read = readJob(folder);
  if ("problems" in read) throw new Error(JSON.stringify(read.problems));
  expect(Object.keys(data.texts)).toContain("case.yaml");
  expect(data.passedOn.answers.map(({ id, verdict }) => [id, verdict])).toEqual(
    read.job.review.findings.map(({ id, verdict }) => [id, verdict]),
  );
});

test.each([[["a", "b"]], [["--out"]], [["--quick"]]])(
  "%j is answered with how it is called",
  async (args) => {
    const complained = vi.spyOn(console, "error").mockReturnValue(undefined);
    expect(await passOn(args)).toBe(1);
    expect(complained.mock.calls[0]?.[0]).toContain("pass-on");
    complained.mockRestore();
  },
);
