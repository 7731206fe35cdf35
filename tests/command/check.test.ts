import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { check } from "../../lib/command/check.js";
import { dataFolder } from "../../lib/job/index.js";
import { plainTrunk } from "../design/plain-trunk.js";
import { smallJob } from "../design/small-job.js";

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

test("check counts only what a job has, one of it in the singular", async () => {
  const small = mkdtempSync(join(tmpdir(), "check-small-"));
  const summary = async (texts: Readonly<Record<string, string>>): Promise<string> => {
    vi.mocked(console.log).mockClear();
    for (const [file, text] of Object.entries(texts)) writeFileSync(join(small, file), text);
    expect(await check([small])).toBe(0);
    return printed("log");
  };
  expect(await summary(plainTrunk)).not.toMatch(
    /\b0 |1 rows|door|facing|shel|edge bar|hardware|fastener|inside/,
  );
  const some = await summary(smallJob);
  expect(some).toContain("1 shelf\n");
  expect(some).toContain("2 things inside, 13 kg");
  rmSync(small, { recursive: true });
});

test("check prints every problem and leaves with 1", async () => {
  const text = readFileSync(join(folder, "case.yaml"), "utf8");
  writeFileSync(join(folder, "case.yaml"), text.replace("climate: dry #", "climate: wet #"));
  writeFileSync(
    join(folder, "kerfs.csv"),
    "blade,before (mm),after (mm),offcuts (mm),cuts,use\nsaw,1000,400,570,no,sheets\n",
  );
  expect(await check([folder])).toBe(1);
  const row = text.split("climate: dry #")[0]?.split("\n").length;
  expect(printed("error")).toBe("");
  expect(printed("log").split("\n")).toEqual([
    `${folder}: 2 problems`,
    "",
    `case.yaml, row ${row}, demands.climate`,
    "  found     wet",
    "  expected  one of dry, damp",
    "",
    "kerfs.csv, row 2, cuts",
    "  found     no",
    "  expected  a whole number from 0 up, above 0",
  ]);
});

test("a case in the wrong unit of length or currency is one problem each, and so is a renamed section", async () => {
  const text = readFileSync(join(folder, "case.yaml"), "utf8");
  const problemsWith = async (find: string | RegExp, now: string): Promise<string> => {
    vi.mocked(console.log).mockClear();
    writeFileSync(join(folder, "case.yaml"), text.replace(find, now));
    expect(await check([folder])).toBe(1);
    return printed("log");
  };
  expect(await problemsWith("lengths: in ", "lengths: mm ")).toMatch(
    /: 1 problem\n\ncase\.yaml, row \d+, lengths\n {2}found {5}mm\n {2}expected {2}in, if sizes are written in it: all of \d+ mistakes with mm go away$/,
  );
  expect(await problemsWith("currency: USD", "currency: EUR")).toMatch(
    /: 1 problem\n[\s\S]*change \(USD\) in the headings of sheet-stock\.csv, [\s\S]*or "currency" in case\.yaml/,
  );
  expect(await problemsWith("\n  upper:\n    inside", "\n  top half:\n    inside")).toMatch(/: 1 problem\n/);
});

test("tables of which every sheet is another are a problem a sheet", async () => {
  const file = join(folder, "sheet-stock.csv");
  writeFileSync(file, readFileSync(file, "utf8").replaceAll("birch ply", "poplar"));
  expect(await check([folder])).toBe(1);
  expect(printed("log")).toMatch(/: [1-5] problems?\n/);
});

test("a file that nothing reads is told, and what is read is no worse for it", async () => {
  writeFileSync(join(folder, "notes.txt"), "call the yard");
  expect(await check([folder])).toBe(0);
  expect(printed("log")).toMatch(/\nNot read: notes\.txt\.$/m);
});

test.each(["no-such-job", "../secrets", "..", "Bad Name"])(
  "check of %j leaves with 1 and says why",
  async (name) => {
    expect(await check([name])).toBe(1);
    expect(printed("log")).toMatch(/1 problem\n/);
  },
);
