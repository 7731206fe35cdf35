/** A figure judged by itself says what check says of it. */
import { describe, expect, test } from "vitest";
import { applyChange, designReader } from "../../../lib/design/index.js";
import { reviewCase } from "../../../lib/findings/index.js";
import { asBuiltChanges } from "../../../lib/live/bench/as-built-changes.js";
import { judged } from "../../../lib/live/bench/judge.js";
import type { BenchValue } from "../../../lib/live/bench/view.js";
import { boxTexts, designIn } from "./job.js";

const { case: build, parts } = designIn(boxTexts);
const [section] = parts.sections;
if (!section) throw new Error("the box has no section");
const read = designReader();
const judge = (value: BenchValue, texts = boxTexts) => judged(texts, [value], build, read);
const width = (off: number): BenchValue => ({
  key: { what: "outside width", of: section.name, at: "front" },
  text: String(section.outside.size.x * 1000 + off),
  unit: "mm",
});

describe("a figure judged", () => {
  test.each([
    [1, "holds"],
    [-3, "fails"],
    [4, "fails"],
  ])("%s mm off the plan: %s, as the case says that has it in its files", (off, verdict) => {
    const found = judge(width(off));
    if ("trouble" in found) throw new Error(found.trouble);
    const { texts } = applyChange(boxTexts, ...asBuiltChanges(undefined, [width(off)], build));
    const whole = reviewCase(designIn(texts))
      .steps.find(({ id }) => id === "assembly.as-built-size")
      ?.ask();
    expect(found.findings.map((one) => one.verdict.replace("close", "holds"))).toEqual([verdict]);
    expect(found.findings.map(({ id, answer }) => [id, answer])).toEqual(
      whole?.map(({ id, answer }) => [id, answer]),
    );
  });

  test("is judged alone, whatever else is written in as-built.csv", () => {
    const { texts } = applyChange(boxTexts, ...asBuiltChanges(undefined, [width(9)], build));
    const weight: BenchValue = { key: { what: "weight empty", of: section.name }, text: "900", unit: "kg" };
    const found = judge(weight, texts);
    expect("findings" in found && found.findings.map(({ id }) => id)).toEqual([
      `assembly.as-built-weight.${section.name}.empty`,
    ]);
  });

  test("that is no figure says what is expected, not where it would stand", () => {
    const found = judge({ ...width(0), text: "wide" });
    expect("trouble" in found && found.trouble).toMatch(/^Found "wide", expected a number in mm/);
  });
});
