/** Laws of random cases, valid by construction, over everything that a case can have. */
import { describe, expect, test } from "vitest";
import { textsOf } from "../../lib/command/reference/cases/case-content.js";
import { mirroredCase } from "../../lib/command/reference/cases/mirrored-case.js";
import { randomCase } from "../../lib/command/reference/cases/random-case.js";
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
