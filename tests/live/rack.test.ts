/** The rack: the tables of sheets as they are written, and the cutting plan that comes of them. */
import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import { applyChange, readDesign, type Texts } from "../../lib/design/index.js";
import { reviewCase } from "../../lib/findings/index.js";
import { rackOf } from "../../lib/live/rack.js";

const jobs = resolve(import.meta.dirname, "../jobs");
const tables = join(jobs, "tables");
const texts: Texts = {
  ...Object.fromEntries(readdirSync(tables).map((name) => [name, readFileSync(join(tables, name), "utf8")])),
  "case.yaml": readFileSync(join(jobs, "bare-box.yaml"), "utf8"),
};

function rack(of: Texts): ReturnType<typeof rackOf> {
  const read = readDesign(of);
  if ("problems" in read) throw new Error(JSON.stringify(read.problems));
  return rackOf(of, read.design, reviewCase(read.design));
}

const sheetsIn = (plan: string): number => plan.match(/<svg/g)?.length ?? 0;

test("the table of sheets has sizes and prices, as the file says them", () => {
  const [sheets] = rack(texts).tables;
  expect(sheets?.file).toBe("sheet-stock.csv");
  expect(sheets?.columns).toEqual(["length (mm)", "width (mm)", "thickness (mm)", "price (EUR)"]);
  expect(sheets?.rows[0]).toEqual({ name: "ply 10", cells: ["2500", "1250", "10", "60"] });
});

test("on smaller sheets the same pieces take more of them, and the plan carries no style of its own", () => {
  const { columns = [], rows = [] } = rack(texts).tables[0] ?? {};
  const at = { file: "sheet-stock.csv", row: rows[0]?.name ?? "", column: columns[0] ?? "" };
  const changed = applyChange(texts, { kind: "set", at, to: "700" });
  const [before, after] = [rack(texts).plan, rack(changed.texts).plan];
  expect(sheetsIn(before)).toBe(1);
  expect(sheetsIn(after)).toBeGreaterThan(1);
  expect(before).not.toContain("style=");
});
