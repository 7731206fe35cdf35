import { describe, expect, test } from "vitest";
import { sawSteps, stopSettings } from "../../lib/cutting/index.js";
import type { TableView } from "../../lib/page/index.js";
import { codePieces } from "../../lib/recipe/index.js";
import { flatBlocks, smallInput, smallRecipe } from "./recipes.js";

const { parts, purchases } = smallInput;
const tables = smallRecipe.sections
  .flatMap(({ blocks }) => flatBlocks(blocks))
  .flatMap((block) => (block.kind === "table" ? [block] : []));
const column = ({ columns, rows }: TableView, heading: string): string[] => {
  const at = columns.findIndex((one) => one.heading === heading);
  return rows.map((row) => row[at] ?? "");
};

describe("the cuts of the recipe", () => {
  const sheets = purchases.sheets.flatMap(({ plan }) => plan.sheets);
  const saw = tables.filter(({ columns }) => columns.some(({ heading }) => heading === "Set the fence to"));
  const kerf = purchases.kerfs.sheets.kerf;

  test("number the cuts, and set the fence once for all that share a setting", () => {
    sheets.forEach((sheet, i) => {
      const table = saw[i] as TableView;
      const steps = sawSteps(sheet, kerf);
      expect(column(table, "Cut")).toEqual(steps.map(({ number }) => String(number)));
      expect(column(table, "Set-up")).toEqual(steps.map(({ setting }) => String(setting)));
      const set = column(table, "Set the fence to").filter((words) => words !== "the same");
      expect(set).toHaveLength(new Set(steps.map(({ setting }) => setting)).size);
      expect(set.every((words) => /^[\d.]+.mm, (rip|crosscut)$/.test(words))).toBe(true);
    });
  });

  test("tell of every piece where it comes off", () => {
    sheets.forEach(({ pieces, cuts }, i) => {
      if (cuts.length === 0) return;
      const told = [
        column(saw[i] as TableView, "Stays at the fence"),
        column(saw[i] as TableView, "Falls off"),
      ];
      for (const { name } of pieces) {
        const code = codePieces(parts).panels.find((piece) => piece.name === name)?.code;
        expect(told.flat().filter((words) => words === `${code} ${name}`)).toHaveLength(1);
      }
    });
  });

  test("give every bar piece once, under its stop setting", () => {
    const stops = tables.filter(({ columns }) =>
      columns.some(({ heading }) => heading === "Set the stop to"),
    );
    const codes = stops.flatMap((table) => column(table, "Falls off").join("; ").match(/B\d+/g) ?? []);
    expect(codes.sort()).toEqual(
      codePieces(parts)
        .bars.map(({ code }) => code)
        .sort(),
    );
    const settings = purchases.bars.map(({ plan }) => stopSettings(plan.bars).length);
    expect(stops.map(({ rows }) => rows.length)).toEqual(settings);
  });
});
