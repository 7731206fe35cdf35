/** Figures of the bench in as-built.csv: read back as they were typed, with what stood there kept. */
import { describe, expect, test } from "vitest";
import { applyChange } from "../../../lib/design/index.js";
import { asBuiltChanges } from "../../../lib/live/bench/as-built-changes.js";
import type { BenchValue } from "../../../lib/live/bench/view.js";
import { boxTexts, designIn } from "./job.js";

const { case: build, parts } = designIn(boxTexts);
const section = parts.sections[0]?.name ?? "";
const piece = parts.panels[0]?.id ?? "";
const front = (text: string, unit = "mm"): BenchValue => ({
  key: { what: "outside width", of: section, at: "front" },
  text,
  unit,
});
const weight: BenchValue = { key: { what: "weight empty", of: section }, text: "21.5", unit: "kg" };

function taken(texts: Readonly<Record<string, string>>, ...values: readonly BenchValue[]) {
  return applyChange(texts, ...asBuiltChanges(texts["as-built.csv"], values, build));
}

describe("figures of the bench", () => {
  test("begin a table that is read without a fault", () => {
    const { texts, undo } = taken(boxTexts, front("612"), weight, {
      key: { what: "width", of: piece },
      text: "23 5/8 in",
      unit: "mm",
    });
    const rows = designIn(texts).measurements.asBuilt;
    expect(rows.map(({ what, of, at }) => [what, of, at])).toEqual([
      ["outside width", section, "front"],
      ["weight empty", section, undefined],
      ["width", piece, undefined],
    ]);
    expect(rows[0]?.length).toBeCloseTo(0.612, 9);
    expect(rows[1]?.mass).toBeCloseTo(21.5, 9);
    expect(rows[2]?.length).toBeCloseTo(23.625 * 0.0254, 9);
    expect(applyChange(texts, undo).texts["as-built.csv"] ?? "").toBe("");
  });

  test("go into the row that stands there, in its unit, and leave remarks alone", () => {
    const given = `# from the paper\nnumber,what,of,at,length (in),mass (lb)\nM7,outside width,${section},front,24,\n# end\n`;
    const { texts } = taken({ ...boxTexts, "as-built.csv": given }, front("612"), weight);
    expect(texts["as-built.csv"]).toContain("# from the paper");
    expect(texts["as-built.csv"]).toMatch(new RegExp(`M7,outside width,${section},front,24\\.09\\d*,`));
    const rows = designIn(texts).measurements.asBuilt;
    expect(rows).toHaveLength(2);
    expect(rows[1]?.mass).toBeCloseTo(21.5, 6);
  });

  test("that were taken back leave their cell blank, and make no row", () => {
    const once = taken(boxTexts, front("612")).texts;
    const back = taken(once, front("")).texts;
    expect(designIn(back).measurements.asBuilt.map(({ length }) => length)).toEqual([undefined]);
    expect(taken(boxTexts, front(" ")).texts["as-built.csv"]).not.toContain("outside width");
  });
});
