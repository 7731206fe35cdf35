import { describe, expect, test } from "vitest";
import { openAskedJob, sweep, sweepChart } from "../../../lib/notebook/ask/index.js";
import { sweepTable } from "../../../lib/notebook/ask/sweep.js";
import { kg, mm } from "../../../lib/quantity/given-units.js";

const job = openAskedJob("soil-lab");
const width = "upper.front.display window.width";

describe("a place tried with several values", () => {
  const swept = sweep(job, width, [mm(300), mm(400), mm(4000)], (one) =>
    one.opening("upper.front.display window").area(),
  );

  test("keeps its answers with their units, and those of the place", () => {
    expect(swept.unit).toBe("mm");
    expect(swept.tried.map(({ number }) => number?.toFixed(6))).toEqual([
      "300.000000",
      "400.000000",
      "4000.000000",
    ]);
    const [narrow, wide] = swept.answers;
    expect(wide?.minus(narrow ?? wide).in("mm2")).toBeCloseTo(100 * 13.5 * 25.4, 3);
  });

  test("tells of a value that the case cannot have why", () => {
    expect(swept.answers[2]).toBeUndefined();
    expect(swept.tried[2]?.answer).toMatch(/^cannot be: .*past its right edge/);
  });

  test("is a table, and a chart of those that have an answer", () => {
    expect(sweepTable(swept).rows.map(([value]) => value)).toEqual(["300 mm", "400 mm", "4000 mm"]);
    expect(JSON.stringify(sweepChart(swept, { y: "Area" }).spec)).toContain('"value":400');
  });
});

test("a mass is no width, to the compiler and when it runs", () => {
  // @ts-expect-error a mass
  expect(() => sweep(job, width, [kg(5)], (one) => one.mass())).toThrow("expected a length");
});

test("a width without its unit is refused, to the compiler in words and when it runs", () => {
  // @ts-expect-error write the unit too: mm(600) or inch(24)
  expect(() => sweep(job, width, [600], (one) => one.mass())).toThrow("write the unit too, such as mm(600)");
});

test("an answer that cannot be given is told with its reason", () => {
  const bare = job.panels.find((panel) => panel.sag().whyNone !== undefined)?.name ?? "";
  const swept = sweep(job, width, [mm(400)], (one) => one.panel(bare).sag());
  expect(swept.answers).toEqual([undefined]);
  expect(swept.tried[0]?.answer).toBe(`no answer: nothing presses on ${bare}, so it has no sag`);
});

test("words cannot be drawn, and nothing cannot be tried", () => {
  const words = sweep(job, "units", ["inch", "metric"], (one) => one.case.units);
  expect(words.tried.map(({ answer }) => answer)).toEqual(["inch", "metric"]);
  expect(() => sweepChart(words)).toThrow("chart: no number to draw");
  expect(() => sweep(job, width, [], (one) => one.mass())).toThrow("give at least one value");
});

test("a mistake in the question is no answer", () => {
  expect(() =>
    sweep(job, width, [mm(300)], () => {
      throw new TypeError("mine");
    }),
  ).toThrow("mine");
});
