/** Tables of measurements row by row: the same fits as the case's answers, odd readings, tables that are not there yet. */
import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { add, applyChange } from "../../../lib/design/index.js";
import { measuringView } from "../../../lib/live/measuring/measuring-view.js";
import { bentStrips, kerfFromCuts, measuredMean, sheetDensity } from "../../../lib/measure/index.js";
import { sheetModuli } from "../../../lib/model/index.js";
import { Density, Length, Pressure } from "../../../lib/quantity/index.js";
import { boxTexts, designIn } from "../bench/job.js";

const folder = resolve(import.meta.dirname, "../../../data/soil-lab");
const names = readdirSync(folder).filter((name) => /\.(csv|yaml)$/.test(name));
const texts = Object.fromEntries(names.map((name) => [name, readFileSync(join(folder, name), "utf8")]));
const design = designIn(texts);
const { tables } = measuringView(texts, design, design.stock);
const style = { system: design.case.units, digits: 3 };

function tableIn(from: typeof tables, file: string) {
  const found = from.find((one) => one.file === file);
  if (!found) throw new Error(`no ${file}`);
  return found;
}

describe("what was measured", () => {
  test("stands there row by row as it is written, and each reading says how far it is off", () => {
    expect(tables.map(({ file }) => file)).toEqual([
      "bend-tests.csv",
      "weights.csv",
      "spread-trials.csv",
      "pull-tests.csv",
      "kerfs.csv",
    ]);
    for (const { file, rows, columns, told, begun } of tables) {
      const lines = (texts[file] ?? "").split("\n");
      for (const { line, cells } of rows) {
        const written = lines[line - 1] ?? "";
        for (const cell of cells) expect(written, file).toContain(cell);
        expect(cells, file).toHaveLength(columns.length);
      }
      expect(told.length, file).toBeGreaterThan(0);
      expect(begun, file).toBeUndefined();
    }
    for (const { off } of tableIn(tables, "bend-tests.csv").rows) expect(off).toMatch(/ off the line$/);
  });

  test("tells the moduli that the case's answers use", () => {
    const [sheet] = design.stock.sheets;
    if (!sheet) throw new Error("no sheet");
    const { along } = sheetModuli(sheet, design.measurements);
    expect(tableIn(tables, "bend-tests.csv").told).toContainEqual(
      `Answers use ${Pressure.show(along.modulus, style)} along the grain of ${sheet.name}, from ${along.strips} strips.`,
    );
  });

  test("tells the means that the case's answers use", () => {
    const { weights, kerfs } = design.measurements;
    const material = weights[0]?.material;
    const densities = weights
      .filter((row) => row.material === material)
      .map((row) => sheetDensity(row).density);
    const mean = Density.show(measuredMean(densities).mean, style);
    expect(tableIn(tables, "weights.csv").told.join("\n")).toContain(`${material}: ${mean}, between `);
    const [first] = kerfs;
    if (!first) throw new Error("no kerf");
    const kerf = Length.show(kerfFromCuts(first), { unit: "mm", digits: 3 });
    expect(tableIn(tables, "kerfs.csv").told.join("\n")).toContain(`${first.blade}: ${kerf}`);
  });

  test("marks a reading that does not belong to the others, as the fit of the library does", () => {
    const table = tableIn(tables, "bend-tests.csv");
    const odd = bentStrips(design.measurements.bends).strips.flatMap(({ oddLines }) => oddLines);
    expect(odd.length).toBeGreaterThan(0);
    expect(table.rows.filter((one) => one.odd).map(({ line }) => line)).toEqual(odd);
    expect(table.told.join("\n")).toContain(`Read row ${odd[0]} again`);
  });

  test("offers words and names to choose from, and keeps what the next row is likely to share", () => {
    const { columns } = tableIn(tables, "pull-tests.csv");
    const column = (name: string) => columns.find((one) => one.name === name);
    expect(column("washer")?.choices).toEqual(["yes", "no"]);
    expect(column("sheet")?.choices).toEqual(design.stock.sheets.map(({ name }) => name));
    expect(column("load")).toMatchObject({ header: "load (N)", again: false, optional: false });
    expect(column("fastener")?.again).toBe(true);
  });

  test("begins a table that is not there with a header that is read", () => {
    const box = designIn(boxTexts);
    const table = tableIn(measuringView(boxTexts, box, box.stock).tables, "kerfs.csv");
    const now = table.begun ?? "";
    const row = {
      blade: "table saw",
      before: "1000",
      after: "402.5",
      offcuts: "574",
      cuts: "10",
      use: "both",
    };
    const { texts: after } = applyChange(
      boxTexts,
      { kind: "edits", edits: [{ file: "kerfs.csv", at: 0, old: "", now }] },
      add({ file: "kerfs.csv" }, row),
    );
    const seen = designIn(after);
    const kerfs = tableIn(measuringView(after, seen, seen.stock).tables, "kerfs.csv");
    expect(kerfs.told).toEqual([
      "table saw: 2.35 mm. It is from one board: another one tells how far it scatters.",
    ]);
    expect(measuringView(after, undefined, seen.stock).tables.at(-1)).toMatchObject({
      told: [],
      rows: kerfs.rows.map((one) => ({ ...one, off: "" })),
    });
  });
});
