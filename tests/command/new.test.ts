import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { newJob } from "../../lib/command/new.js";
import { recipeOf } from "../../lib/index.js";
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

test("new copies the demo when it is asked for, says so in the copy, and the copy opens", async () => {
  expect(await newJob(["my-case", "--start", "demo"], jobs)).toBe(0);
  const text = readFileSync(join(jobs, "my-case", "case.yaml"), "utf8");
  expect(text).toMatch(/^# my-case: started as a copy of the invented demo "soil-lab"/);
  expect(text).toMatch(/\n# Change these three lines first: /);
  const job = openJob(join(jobs, "my-case"));
  expect(job.case).toMatchObject({ name: "my-case (started as a copy of the demo)", invented: true });
  expect(job.parts.panels).toHaveLength(openJob("soil-lab").parts.panels.length);
});

test("new without options is a small box in inches and dollars, which asks nothing", async () => {
  expect(await newJob(["my-case"], jobs)).toBe(0);
  expect(openJob(join(jobs, "my-case")).case).toMatchObject({
    name: "my-case",
    units: "inch",
    currency: "USD",
    invented: true,
  });
});

describe.each(["box", "two-section", "tall", "trunk"])("the start %s", (start) => {
  test.each([
    ["metric", ["--metric", "--currency", "CHF"], "CHF"],
    ["inch", [], "USD"],
  ])("in %s units is short, says what to change, and is sound", async (units, options, currency) => {
    expect(await newJob(["mine", "--start", start, ...options], jobs)).toBe(0);
    const folder = join(jobs, "mine");
    const text = readFileSync(join(folder, "case.yaml"), "utf8");
    expect(text.trimEnd().split("\n").length).toBeLessThanOrEqual(40);
    expect(text).toMatch(/^# mine: .* invented until .*\n# Change these three lines first: /);
    const tables = readdirSync(folder).filter((file) => file !== "case.yaml");
    expect(tables.length).toBeGreaterThanOrEqual(4);
    expect(tables.length).toBeLessThanOrEqual(7);
    for (const file of tables) {
      const [remark = "", header = ""] = readFileSync(join(folder, file), "utf8").split("\n");
      expect(remark).toMatch(file === "bend-tests.csv" ? /^# Your own/ : /^# Invented figures/);
      expect(header).toContain("(");
    }
    const job = openJob(folder);
    expect(job.case).toMatchObject({ name: "mine", units, currency });
    expect(job.measurements.bends).toEqual([]);
    const inInches = JSON.stringify(readFileSync(join(folder, "hardware.csv"), "utf8")).includes("(in)");
    expect(inInches).toBe(units === "inch");
  });

  test("is reviewed with nothing broken, and has a recipe", async () => {
    await newJob(["mine", "--start", start, "--metric"], jobs);
    const job = openJob(join(jobs, "mine"));
    const broken = job.review.findings.filter(({ verdict }) => verdict === "broken");
    expect(broken.map(({ id, error }) => `${id}: ${error}`)).toEqual([]);
    expect(JSON.stringify(recipeOf(job))).not.toMatch(/NaN|soil/);
  }, 600_000);
});

test.each([
  [["a", "--start", "barn"], "--start barn: expected one of box, two-section, tall, trunk, demo"],
  [["a", "--metric", "--inch"], "--metric and --inch: expected one of them"],
  [["a", "--currency", "euro"], "--currency euro: expected a currency of three capitals such as EUR"],
  [["a", "--start", "demo", "--metric"], "--start demo: the demo is in inches and USD"],
  [["a", "b"], "expected one name, got a, b\n"],
  [["a", "--colour"], "Unknown option '--colour'"],
])("new refuses %j", async (args, message) => {
  expect(await newJob(args, jobs)).toBe(1);
  expect(complaint().startsWith(message)).toBe(true);
  expect(readdirSync(jobs)).toEqual(["soil-lab"]);
});

test("new carries on from a case with what was measured on it, and leaves its as-built table behind", async () => {
  await newJob(["last", "--metric", "--currency", "CHF"], jobs);
  const sheet = openJob(join(jobs, "last")).stock.sheets[0]?.name;
  const built = `number,what,of,at,length (mm)\nM1,thickness,${sheet},1,9.4\nM2,kerf,sheets,1,2.75\n`;
  writeFileSync(join(jobs, "last", "as-built.csv"), built);
  expect(await newJob(["next", "--from", "last"], jobs)).toBe(0);
  const next = openJob(join(jobs, "next"));
  expect(next.case).toMatchObject({ name: "next", units: "metric", currency: "CHF" });
  expect(next.texts["as-built.csv"]).toBeUndefined();
  expect(next.stock.sheets[0]?.thickness).toBeCloseTo(9.4e-3, 12);
  expect(next.measurements.kerfs[0]?.before).toBeCloseTo(2.75e-3, 12);
  expect(openJob(join(jobs, "last")).texts["as-built.csv"]).toBe(built);
});

test.each([
  [["a", "--from", "nothing"], "--from nothing: there is no such job"],
  [
    ["a", "--from", "soil-lab", "--metric"],
    "--from: a case that carries on has the files, units and currency",
  ],
  [["a", "--from", "soil-lab", "--start", "box"], "--from: a case that carries on has the files, units"],
])("new refuses %j after another case", async (args, message) => {
  expect(await newJob(args, jobs)).toBe(1);
  expect(complaint().startsWith(message)).toBe(true);
  expect(readdirSync(jobs)).toEqual(["soil-lab"]);
});

test("new refuses to carry on from a case with mistakes", async () => {
  writeFileSync(join(jobs, "soil-lab", "timings.csv"), "work,unit\n");
  expect(await newJob(["a", "--from", "soil-lab"], jobs)).toBe(1);
  expect(complaint()).toMatch(
    /^--from soil-lab: its files have mistakes, which "npm run check -- soil-lab" tells/,
  );
});

test("new takes a path to a folder anywhere", async () => {
  expect(await newJob([join(jobs, "shop", "mine")], jobs)).toBe(0);
  expect(openJob(join(jobs, "shop", "mine")).case.name).toBe("mine");
});

test("new leaves nothing half made beside the job", async () => {
  await newJob(["my-case"], jobs);
  expect(readdirSync(jobs).sort()).toEqual(["my-case", "soil-lab"]);
});

test("new refuses a name that is taken and leaves it as it is", async () => {
  mkdirSync(join(jobs, "mine"));
  expect(await newJob(["mine"], jobs)).toBe(1);
  expect(complaint()).toBe('"mine" is there already: choose another name or remove it first');
  expect(readdirSync(join(jobs, "mine"))).toEqual([]);
});

test.each(["..", "My Case", "", "nul"])("new refuses the unsafe name %j", async (name) => {
  expect(await newJob([name], jobs)).toBe(1);
  expect(complaint()).toBe(
    `"${name}": expected a job name of small letters, digits and hyphens, at most 40, such as my-case`,
  );
  expect(readdirSync(jobs)).toEqual(["soil-lab"]);
});

test("new without a name says how it is used", async () => {
  expect(await newJob([], jobs)).toBe(1);
  expect(complaint()).toMatch(/^usage: npm run new -- my-case \[--start box\|/);
});

test("new that cannot write leaves nothing behind", async () => {
  const blocked = join(jobs, "soil-lab", "case.yaml", "mine");
  await expect(newJob([blocked], jobs)).rejects.toThrow();
  expect(readdirSync(jobs)).toEqual(["soil-lab"]);
});
