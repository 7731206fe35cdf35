/** Laws of random cases, valid by construction, over everything that a case can have. */
import { describe, expect, test } from "vitest";
import { textsOf } from "../../lib/command/reference/cases/case-content.js";
import { mirroredCase } from "../../lib/command/reference/cases/mirrored-case.js";
import { randomCase } from "../../lib/command/reference/cases/random-case.js";
import { runCases } from "../../lib/command/reference/cases/run-cases.js";
import { shrunkCase } from "../../lib/command/reference/cases/shrunk-case.js";
import { seeds, told } from "./told-case.js";

describe("random cases", () => {
  test("are read, reviewed and written without a fault, and answer in a mirror as they do", () => {
    for (const seed of seeds(0, 250))
      expect(told(seed, 1, { mirrored: seed % 20 === 0, bent: false })).toEqual([]);
  }, 2_400_000);

  test("of several sections too", () => {
    for (const seed of seeds(500, 12)) expect(told(seed, 6, { mirrored: false, bent: false })).toEqual([]);
  }, 400_000);

  test("bend without a fault", () => {
    // A case whose leaf its hinges and latch hold by themselves: its rests are left nothing but round-off.
    expect(told(7005, 1, { mirrored: false, bent: true })).toEqual([]);
  }, 400_000);

  test("bend in a mirror as they do", () => {
    // Seams pushed from either side, and panels with round and sharp openings left and right.
    for (const seed of [40000, 40008]) expect(told(seed, 1, { mirrored: true, bent: true })).toEqual([]);
  }, 2_400_000);

  test("have every count of sections up to six, mostly one or two", () => {
    const counts = seeds(0, 400).map(
      (seed) => Object.keys(randomCase(seed).content.sections as object).length,
    );
    expect(new Set(counts)).toEqual(new Set([1, 2, 3, 4, 5, 6]));
    expect(counts.filter((count) => count <= 2).length).toBeGreaterThan(200);
  });

  test("tried by number are told case by case as they come, and all told in the end", () => {
    const lines: string[] = [];
    const wanted = { cases: 2, seed: 118, bent: 0, shrinking: 0, progress: 0 };
    expect(runCases(wanted, (line) => lines.push(line))).toBe(0);
    const done = /^(\d+) of 2 cases, 0 failed, [\d.]+ s of CPU each, about \d+ min left$/;
    expect(lines.slice(0, 2).map((line) => done.exec(line)?.[1])).toEqual(["1", "2"]);
    expect(lines[2]).toMatch(/^2 cases from seed 118, 0 failed, /);
  }, 60_000);

  test("are the same for the same seed, and another for another", () => {
    expect(textsOf(randomCase(7))).toEqual(textsOf(randomCase(7)));
    expect(textsOf(randomCase(7))).not.toEqual(textsOf(randomCase(9)));
  });

  test("mirrored twice are themselves", () => {
    for (const seed of seeds(0, 40)) {
      const given = randomCase(2 * seed);
      const twice = mirroredCase(mirroredCase(given));
      const sorted = (text: string | undefined): string => [...(text ?? "")].sort().join("");
      expect(sorted(textsOf(twice)["case.yaml"])).toEqual(sorted(textsOf(given)["case.yaml"]));
    }
  });

  test("that fail are made smaller as long as they fail", () => {
    const given = randomCase(4);
    const smaller = shrunkCase(given, ({ content }) => "demands" in content, 5);
    expect(Object.keys(smaller.content)).toEqual(["demands"]);
  });
});
