/** Every kind of chart: fits the published schema, compiles without a warning, leaves its input untouched. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { z } from "zod";
import { host } from "../../lib/host/node.js";
import { lineChart, rankedBars } from "../../lib/notebook/chart.js";
import { type DrawnChart, drawChart } from "../../lib/notebook/chart-still.js";
import type { ChartSpec } from "../../lib/page/index.js";
import { sampleCharts } from "./sample-charts.js";

const drawn = (spec: ChartSpec): DrawnChart => drawChart(spec, host.charts.library()!);

const library = dirname(createRequire(import.meta.url).resolve("vega-lite"));
const schema = z.fromJSONSchema(JSON.parse(readFileSync(join(library, "vega-lite-schema.json"), "utf8")));
const charts = Object.entries(sampleCharts);

test.each(charts)("%s fits the schema", (_, { spec }) => {
  expect(schema.safeParse(spec).error?.issues ?? []).toEqual([]);
});

test("the schema refuses a wrong chart", () => {
  expect(schema.safeParse({ ...sampleCharts.area?.spec, autosize: { type: "fitt" } }).success).toBe(false);
});

test.each(charts)("%s compiles without a warning and leaves its input untouched", (_, { spec }) => {
  const before = JSON.stringify(spec);
  const { svg, warnings } = drawn(spec);
  expect(warnings).toEqual([]);
  expect(svg).toMatch(/^<svg [^>]*width="\d+"/);
  expect(svg).not.toContain("NaN");
  expect(JSON.stringify(spec)).toBe(before);
});

test.each(charts)("%s as a specification", async (name, { spec }) => {
  await expect(`${JSON.stringify(spec, null, 2)}\n`).toMatchFileSnapshot(
    `charts/${name.replaceAll(" ", "-")}.json`,
  );
});

test("axes carry units", () => {
  const text = drawn(sampleCharts["line with slider"]?.spec ?? {}).svg;
  expect(text).toContain("Clear span (mm)");
  expect(text).toContain("Sag (mm)");
});

const point = {
  title: "t",
  description: "d",
  x: { field: "a", title: "A" },
  y: { field: "b", title: "B" },
} as const;

test("rows that cannot be drawn are refused", () => {
  expect(() => lineChart<{ a: number; b: number }>({ ...point, rows: [] })).toThrow(
    'chart "t": no rows to draw',
  );
  expect(() =>
    lineChart({
      ...point,
      rows: [
        { a: 1, b: 2 },
        { a: 1, b: Number.NaN },
      ],
    }),
  ).toThrow('chart "t": row 2, b: expected text or a finite number, got NaN');
});

function controlOf(values: readonly number[], start?: number): unknown {
  const rows = values.map((c) => ({ a: c, b: c, c }));
  const slider = { field: "c", title: "C", ...(start === undefined ? {} : { start }) } as const;
  return (lineChart({ ...point, rows, slider }).spec.params as readonly unknown[])[0];
}

test("an evenly spaced choice is a slider, another one a list", () => {
  expect(controlOf([6, 3, 9, 12])).toEqual({
    name: "chosen",
    value: 6,
    bind: { input: "range", min: 3, max: 12, step: 3, name: "C" },
  });
  expect(controlOf([4, 6.5, 9.5, 12], 12)).toEqual({
    name: "chosen",
    value: 12,
    bind: { input: "select", options: [4, 6.5, 9.5, 12], name: "C" },
  });
});

test("a slider needs a choice, and starts on one", () => {
  expect(() => controlOf([3])).toThrow("slider c: expected at least two values, got 1");
  expect(() => controlOf([3, 6], 4)).toThrow("slider c: no row at 4, expected one of 3, 6");
});

test("bars are ranked and the chosen one stands out", () => {
  const { spec } = rankedBars({
    title: "t",
    description: "d",
    rows: [
      { name: "b", cost: 2 },
      { name: "a", cost: 1 },
      { name: 'c "x"', cost: 3 },
    ],
    label: { field: "name", title: "Name" },
    value: { field: "cost", title: "Cost", unit: "USD" },
    chosen: 'c "x"',
    order: "largest first",
  });
  expect((spec.encoding as { y: { sort: string[] } }).y.sort).toEqual(['c "x"', "b", "a"]);
  expect(drawn(spec).svg.match(/fill="#1a557f"/g)?.length).toBe(1);
});
