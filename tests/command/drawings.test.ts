import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { drawings } from "../../lib/command/drawings.js";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "drawings-"));
  vi.spyOn(console, "log").mockImplementation(() => {});
  vi.spyOn(console, "error").mockImplementation(() => {});
});
afterEach(() => {
  rmSync(folder, { recursive: true });
  vi.restoreAllMocks();
});

const said = (how: "log" | "error"): string => vi.mocked(console[how]).mock.calls.flat().join("\n");

test("drawings of the demo go where they are told to, for the paper that is named", async () => {
  expect(await drawings(["soil-lab", "--out", folder, "--paper", "a4"])).toBe(0);
  const files = readdirSync(folder);
  expect(said("log")).toMatch(new RegExp(`^wrote ${files.length} files to .*; index.html lists them$`));
  expect(files).toContain("P1-lower.front-a4.pdf");
  expect(files.filter((file) => file.includes("-letter"))).toEqual([]);
  expect(readFileSync(join(folder, "P1-lower.front.pdf"), "latin1").slice(0, 5)).toBe("%PDF-");
});

test.each([
  [["no-such-job"], /no-such-job/],
  [["soil-lab", "tower"], /expected one name, got soil-lab, tower\nusage: npm run drawings -- /],
  [["--paper", "a3"], /--paper a3: expected one of a4, letter/],
  [["--scale", "2"], /scale/],
])("%j is refused with words", async (args, words) => {
  expect(await drawings(args)).toBe(1);
  expect(said("error")).toMatch(words);
  expect(readdirSync(folder)).toEqual([]);
});
