import { expect, test } from "vitest";
import { intervalChart, lineChart, rankedBars } from "../../../lib/notebook/chart.js";
import { chartInUnits, inUnits, unitChanges, unitsScript } from "../../../lib/page/index.js";

const text = (spec: unknown): string => JSON.stringify(spec);

/** The same in inch units. */
function inInches(chart: { readonly spec: Parameters<typeof chartInUnits>[0] }): string {
  return text(chartInUnits(chart.spec, unitChanges.inch, (said) => inUnits(said, unitChanges.inch, [])));
}

const swept = lineChart({
  title: "Sag by span",
  description: "Sag of a panel.",
  rows: [254, 508].flatMap((span) => [9, 12].map((ply) => ({ span, ply, sag: span / 100 }))),
  x: { field: "span", title: "Span", unit: "mm" },
  y: { field: "sag", title: "Sag", unit: "mm" },
  slider: { field: "ply", title: "Ply", unit: "mm" },
  limits: [{ value: 25.4, label: "it may sag" }],
});

test("numbers, titles, the limit and the slider change together", () => {
  const spec = inInches(swept);
  expect(spec).toContain('"Sag (in)"');
  expect(spec).toContain('"Span (in)"');
  expect(spec).toContain('"span":10');
  expect(spec).toContain('"span":20');
  expect(spec).toContain('"datum":1');
  expect(spec).toContain(`"min":${Number((9 / 25.4).toPrecision(4))}`);
  expect(spec).toContain('"name":"Ply (in)"');
  // Half of a step of 3 mm keeps the rows of the chosen value.
  expect(spec).toContain(`- chosen) < ${Number((1.5 / 25.4).toPrecision(6))}`);
  expect(spec).not.toContain("(mm)");
});

test("a chart in its own units stays the same", () => {
  const same = chartInUnits(swept.spec, unitChanges.metric, (said) => inUnits(said, unitChanges.metric, []));
  expect(same).toEqual(swept.spec);
});

test("ends of an interval without a title of their own change with its axis, and so do its words", () => {
  const spec = inInches(
    intervalChart({
      title: "Modulus",
      description: "Of strips.",
      rows: [{ strip: "A", low: 8, modulus: 9, high: 10 }],
      label: { field: "strip", title: "Strip" },
      middle: { field: "modulus", title: "Modulus", unit: "GPa" },
      low: "low",
      high: "high",
    }),
  );
  expect(spec).toContain('"Modulus (psi)"');
  expect(spec).toContain(`"low":${Number((8e9 / 6894.757293).toPrecision(6))}`);
  expect(spec).toContain(`"high":${Number((10e9 / 6894.757293).toPrecision(6))}`);
  expect(spec).toContain("1\u202f300\u202f000 psi");
});

test("a price per area changes with its axis, its bars and its words", () => {
  const bars = rankedBars({
    title: "Cost of a finished face",
    description: "Of each.",
    rows: [{ option: "roll", cost: 20 }],
    label: { field: "option", title: "Option" },
    value: { field: "cost", title: "Cost", unit: "EUR/m²" },
  });
  const spec = inInches(bars);
  expect(spec).toContain('"Cost (EUR/ft²)"');
  expect(spec).toContain(`"cost":${Number((20 * 0.09290304).toPrecision(6))}`);
  expect(spec).toContain('"shown":"1.86 EUR/ft²"');
  expect(spec).not.toContain("m²");
});

test("a page carries it as text that runs by itself", () => {
  const carried = /const chartInUnits = ([\s\S]*?);\n {2}const changes/.exec(unitsScript)?.[1] ?? "";
  const run = new Function(`return (${carried})`)() as typeof chartInUnits;
  expect(text(run(swept.spec, unitChanges.inch, (said) => said))).toBe(
    text(chartInUnits(swept.spec, unitChanges.inch, (said) => said)),
  );
});
