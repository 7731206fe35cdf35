import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { check } from "../../lib/command/check.js";
import { dataFolder } from "../../lib/job/index.js";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "check-"));
  cpSync(join(dataFolder(), "soil-lab"), folder, { recursive: true });
  vi.spyOn(console, "log").mockImplementation(() => {});
  vi.spyOn(console, "error").mockImplementation(() => {});
});
afterEach(() => {
  rmSync(folder, { recursive: true });
  vi.restoreAllMocks();
});

const printed = (to: "log" | "error"): string => vi.mocked(console[to]).mock.calls.flat().join("\n");

test("check of a sound job says what it is made of and leaves with 0", async () => {
  expect(await check(["soil-lab"])).toBe(0);
  expect(printed("log")).toMatch(/^soil-lab: no problems in \d+ rows of stock and \d+ of measurements\n/);
  expect(printed("log")).toMatch(/Travelling soil lab \(invented\)/);
  expect(printed("log")).toMatch(/ {2}13 panels and doors, [\d.]+ ft2 of sheet/);
  expect(printed("log")).toMatch(/ {2}24 edge bars/);
});

test("check prints every problem in one table and leaves with 1", async () => {
  const text = readFileSync(join(folder, "case.yaml"), "utf8");
  writeFileSync(join(folder, "case.yaml"), text.replace("climate: dry #", "climate: wet #"));
  writeFileSync(
    join(folder, "kerfs.csv"),
    "blade,before (mm),after (mm),offcuts (mm),cuts,use\nsaw,1000,400,570,no,sheets\n",
  );
  expect(await check([folder])).toBe(1);
  const row = text.split("climate: dry #")[0]?.split("\n").length;
  const lines = printed("error")
    .split("\n")
    .map((line) => line.split(/ {2,}/));
  expect(lines[0]?.[0]).toBe(`${folder}: 2 problems`);
  expect(lines[2]).toEqual(["file", "row", "where", "found", "expected"]);
  expect(lines[4]).toEqual(["case.yaml", String(row), "demands.climate", "wet", "one of dry, damp"]);
  expect(lines[5]).toEqual(["kerfs.csv", "2", "cuts", "no", "a whole number from 0 up, above 0"]);
});

test.each(["no-such-job", "../secrets", "..", "Bad Name"])(
  "check of %j leaves with 1 and says why",
  async (name) => {
    expect(await check([name])).toBe(1);
    expect(printed("error")).toMatch(/1 problem\n/);
  },
);
