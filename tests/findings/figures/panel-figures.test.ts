import { describe, expect, test } from "vitest";
import {
  levelStep,
  loadedPanelFigure,
  pressedPanelFigure,
  sagFigure,
  shelfFigure,
  stiffenerFigure,
} from "../../../lib/findings/figures/panel-figures.js";
import { openJob } from "../../../lib/job/index.js";
import { beamStiffeners, hingedEdges, panelNamed, panelSag, sagCaseOf } from "../../../lib/model/index.js";
import { boxesMeet, figureDrawing, lineMeetsBox, textBox } from "../../../lib/page/index.js";
import { mm, Pressure } from "../../../lib/quantity/index.js";
import { crateJob } from "../../design/crate-job.js";
import { designOf, smallJob } from "../../design/small-job.js";

const small = designOf(smallJob);
const job = openJob("soil-lab");

describe("the sag of a panel", () => {
  const panel = panelNamed(job, "upper.front");
  const sagCase = sagCaseOf(panel, Pressure.of(1, "kPa"), "hinged", job);
  const figure = sagFigure(job, sagCase, hingedEdges(panel), "1 kPa");
  const drawn = figureDrawing(figure);

  test("is drawn in even steps that end below the most, which is what the finding says", () => {
    const sag = panelSag(sagCase).sag / 0.0254;
    const named = figure.lines?.flatMap(({ what, words }) =>
      what === "level" && words ? [Number.parseFloat(words)] : [],
    );
    const step = named?.[0] ?? 0;
    expect([...(named ?? [])].sort()).toEqual(named?.map((_, i) => expect.closeTo((i + 1) * step, 9)));
    expect(Math.max(...(named ?? []))).toBeLessThan(sag);
    expect(Math.max(...(named ?? [])) + step).toBeGreaterThanOrEqual(sag);
    expect(figure.places?.[0]?.words).toContain(String(Number(sag.toPrecision(2))).slice(0, 4));
  });

  test("has words that touch no other, no opening, no edge and no line of sag", () => {
    const letter = drawn.letter ?? 0;
    const boxes = drawn.marks.flatMap((mark) => (mark.mark === "text" ? [textBox(mark, letter)] : []));
    expect(boxes.length).toBeGreaterThan(4);
    boxes.forEach((box, i) => {
      expect(boxes.slice(i + 1).filter((other) => boxesMeet(box, other))).toEqual([]);
    });
    const lines = drawn.marks.flatMap((mark) => {
      const points = mark.mark === "polygon" ? [...mark.points, mark.points[0]!] : [];
      const all = mark.mark === "line" && mark.role !== "thin" ? mark.points : points;
      return all.slice(1).map((to, j) => [all[j]!, to] as const);
    });
    expect(boxes.filter((box) => lines.some((line) => lineMeetsBox(line, box)))).toEqual([]);
  });
});

test.each([
  [0.001, 0.0002, "metric"],
  [0.0031, 0.001, "metric"],
  [0.0121, 0.0025, "metric"],
  [0.0254 * 0.14, 0.0254 * 0.025, "inch"],
] as const)("a sag of %f m has steps of %f m", (most, step, system) => {
  expect(levelStep(most, { system })).toBeCloseTo(step, 9);
});

test("a panel of a closed box is held on four edges, and pressed from one end of its span to the other", () => {
  const {
    lines = [],
    arrows = [],
    places = [],
  } = loadedPanelFigure(small, panelNamed(small, "box.back"), [{ on: "all", words: "1 kPa" }]);
  // Four edges of the panel and the panel edge on.
  expect(lines.filter(({ what }) => what === "held")).toHaveLength(5);
  expect(places.filter(({ what }) => what === "edge")).toHaveLength(2);
  expect(arrows.filter(({ words }) => words === "1 kPa")).toHaveLength(1);
  const xs = arrows.map(({ at }) => at.x);
  // The back runs through left and right: 620 wide, 600 clear, five arrows at tenths and fifths of it.
  expect(xs.map((x) => x - xs[0]!)).toEqual([0, 0.12, 0.24, 0.36, 0.48].map((x) => expect.closeTo(x, 9)));
});

test("a person's square lies on the panel, and its arrow over its middle", () => {
  const panel = panelNamed(small, "box.top");
  const { shapes, arrows = [] } = pressedPanelFigure(small, panel, {
    length: mm(300),
    width: mm(300),
    words: "220 N",
  });
  const square = shapes.find(({ what }) => what === "pressed")?.points ?? [];
  const [left, right] = [Math.min(...square.map(({ x }) => x)), Math.max(...square.map(({ x }) => x))];
  expect(right - left).toBeCloseTo(0.3, 9);
  expect(arrows[0]?.at.x).toBeCloseTo((left + right) / 2, 9);
});

test("a shelf shows each thing in its place with its weight over its middle", () => {
  const [part] = small.parts.shelves;
  const { shapes, arrows = [] } = shelfFigure(small, part!);
  const meter = shapes.find(({ words }) => words === "meter")?.points ?? [];
  expect(Math.min(...meter.map(({ x }) => x))).toBeCloseTo(0.05, 9);
  expect(arrows).toHaveLength(1);
  expect(arrows[0]).toMatchObject({ words: "4 kg" });
  expect(arrows[0]?.at.x).toBeCloseTo(0.05 + 0.1, 9);
});

test("a stiffener is drawn where it lies on its panel, by its name", () => {
  const crate = designOf(crateJob);
  const bearing = beamStiffeners(crate);
  expect(bearing.length).toBeGreaterThan(0);
  for (const one of bearing) {
    const { shapes } = stiffenerFigure(crate, one, "1 kPa");
    const drawn = shapes.filter(({ what }) => what === "pressed");
    expect(drawn.map(({ points }) => points[0])).toEqual(
      one.stiffener.zones.map(({ left: x, bottom: y }) => ({ x, y })),
    );
    expect(drawn[0]?.words).toBe(one.stiffener.kind);
  }
});
