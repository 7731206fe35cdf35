/** The papers as screens: nothing that is measured is left out, and what is measured is measured in time. */
import { describe, expect, test } from "vitest";
import { workPapersOf } from "../../../lib/job/index.js";
import { benchView } from "../../../lib/live/bench/bench-steps.js";
import { valueName } from "../../../lib/live/bench/notes.js";
import { steps } from "../../../lib/page/index.js";
import type { RecipeBlock } from "../../../lib/recipe/index.js";
import { boxJob } from "./job.js";

const job = boxJob();
const { sections } = workPapersOf(job);
const view = benchView({ ...job, sections });

function keysIn(block: RecipeBlock): string[] {
  if (block.kind === "group") return block.blocks.flatMap(keysIn);
  return block.kind === "blanks" ? (block.records ?? []).flatMap((row) => row.map(valueName)) : [];
}

describe("the work at the bench", () => {
  test("measures every figure of the papers once", () => {
    const measured = view.steps.flatMap(({ measures }) => measures.map(({ key }) => valueName(key)));
    expect(measured.length).toBeGreaterThan(20);
    expect([...measured].sort()).toEqual(sections.flatMap(({ blocks }) => blocks.flatMap(keysIn)).sort());
  });

  test("knows every step by a name of its own, and begins with what can hurt", () => {
    expect(new Set(view.steps.map(({ id }) => id)).size).toBe(view.steps.length);
    const [first] = view.steps;
    expect(first?.section).toBe("Cautions");
    expect(view.sheets[first?.sheets[0] ?? -1]).toContain("Mind this");
  });

  test("measures a clamped box before it is fixed", () => {
    const compared = view.steps.findIndex(({ words }) => words.startsWith("Compare the two diagonals"));
    expect(compared).toBeGreaterThan(0);
    expect(view.steps[compared + 1]?.measures.map(({ key }) => key.what)).toEqual([
      "outside width",
      "outside height",
      "diagonals apart",
    ]);
  });

  test("leads from a figure that is out to the step that made it", () => {
    for (const [i, { measures, madeAt, heading }] of view.steps.entries()) {
      if (measures.length === 0) continue;
      expect(madeAt, heading).toBeLessThanOrEqual(i);
    }
    const piece = view.steps.find(({ measures }) => measures[0]?.key.what === "width");
    const from = piece?.about.find(([what]) => what === "From")?.[1];
    expect(view.steps[piece?.madeAt ?? -1]?.heading).toMatch(new RegExp(`^${from}:`));
  });

  test("draws the stage at each of its steps", () => {
    const fitting = view.steps.filter(({ heading }) => /^Stage \d+\./.test(heading));
    expect(fitting.length).toBeGreaterThan(3);
    for (const { sheets, heading } of fitting)
      expect(view.sheets[sheets[0] ?? -1] ?? "", heading).toContain("<svg");
  });

  test("offers clocks where an adhesive is named, none for a time that is zero", () => {
    const adhesive = { name: "quick glue", openTime: 480, pressTime: 0, cureTime: 86_400 };
    const { clocks, steps: screens } = benchView({
      sections: [{ title: "Gluing", newPage: false, blocks: [steps(["Spread quick glue.", "Wait."])] }],
      case: job.case,
      parts: { facings: [], glues: [{ adhesive }] },
    } as unknown as Parameters<typeof benchView>[0]);
    expect(clocks.map(({ what, words }) => `${what} ${words}`)).toEqual(["open 8 min", "cure 24 h"]);
    expect(screens.map((one) => one.clocks)).toEqual([[0, 1], []]);
  });
});
