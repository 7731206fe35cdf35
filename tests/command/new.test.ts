import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { newJob } from "../../lib/command/new.js";
import { dataFolder, openJob } from "../../lib/job/index.js";

let jobs = "";
beforeEach(() => {
  jobs = mkdtempSync(join(tmpdir(), "jobs-"));
  cpSync(join(dataFolder(), "soil-lab"), join(jobs, "soil-lab"), { recursive: true });
  vi.spyOn(console, "log").mockImplementation(() => {});
  vi.spyOn(console, "error").mockImplementation(() => {});
});
afterEach(() => {
  rmSync(jobs, { recursive: true });
  vi.restoreAllMocks();
});

const complaint = (): string => vi.mocked(console.error).mock.calls.flat().join("\n");

test("new copies the demo, says so in the copy, and the copy opens", async () => {
  expect(await newJob(["my-case"], jobs)).toBe(0);
  const text = readFileSync(join(jobs, "my-case", "case.yaml"), "utf8");
  expect(text).toMatch(/^# my-case: started as a copy of the invented demo "soil-lab"/);
  const job = openJob(join(jobs, "my-case"));
  expect(job.case).toMatchObject({ name: "my-case (started as a copy of the demo)", invented: true });
  expect(job.parts.panels).toHaveLength(openJob("soil-lab").parts.panels.length);
});

test("new leaves nothing half made beside the copy", async () => {
  await newJob(["my-case"], jobs);
  expect(readdirSync(jobs).sort()).toEqual(["my-case", "soil-lab"]);
});

test("new refuses a name that is taken and leaves it as it is", async () => {
  mkdirSync(join(jobs, "mine"));
  expect(await newJob(["mine"], jobs)).toBe(1);
  expect(complaint()).toBe('"mine" is there already: choose another name or remove it first');
  expect(readdirSync(join(jobs, "mine"))).toEqual([]);
});

test.each(["../mine", "..", "a/b", "My Case", "", "nul"])("new refuses the unsafe name %j", async (name) => {
  expect(await newJob([name], jobs)).toBe(1);
  expect(complaint()).toBe(
    `"${name}": expected a job name of small letters, digits and hyphens, at most 40, such as my-case`,
  );
  expect(readdirSync(jobs)).toEqual(["soil-lab"]);
});

test("new without a name says how it is used", async () => {
  expect(await newJob([], jobs)).toBe(1);
  expect(complaint()).toBe("usage: npm run new -- my-case");
});

test("new that cannot copy leaves nothing behind", async () => {
  rmSync(join(jobs, "soil-lab"), { recursive: true });
  await expect(newJob(["mine"], jobs)).rejects.toThrow(/soil-lab/);
  expect(existsSync(join(jobs, "mine"))).toBe(false);
  expect(readdirSync(jobs)).toEqual([]);
});
