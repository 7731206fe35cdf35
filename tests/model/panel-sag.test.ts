/** The sag of a panel by its true openings, under the whole load of its clear span. */
import { expect, test } from "vitest";
import type { PanelPart } from "../../lib/design/index.js";
import { openJob } from "../../lib/job/index.js";
import { panelSag, type SagCase } from "../../lib/model/stiffness/panel-sag.js";
import { sheetModuli } from "../../lib/model/stiffness/sheet-moduli.js";
import { Pressure } from "../../lib/quantity/index.js";
import { circle, ellipse, polygon, rectangle, type Shape } from "../../lib/shape/index.js";

const job = openJob("soil-lab-draft");
const panel = job.parts.panels.find(({ id }) => id === "upper.front")!;
const asked = Pressure.of(500, "Pa");
const caseOf = (changed: PanelPart): SagCase => ({
  panel: changed,
  moduli: sheetModuli(panel.sheet, job.measurements),
  pressure: asked,
  edges: "hinged",
});

/** The panel with one opening of an outline, in m from its lower left corner. */
function withOpening(outline: Shape): PanelPart {
  const [first] = panel.openings;
  return { ...panel, openings: [{ ...first!, outline }] };
}

const sagWith = (outline: Shape): number => panelSag(caseOf(withOpening(outline))).sag;

/** By hand from the case file: window 18 by 13.5 with corners of 1.5, port 5 across, slot 16 by 3 with round ends. */
const cutAway =
  0.0254 ** 2 *
  (18 * 13.5 - (4 - Math.PI) * 1.5 ** 2 + Math.PI * 2.5 ** 2 + (16 - 3) * 3 + Math.PI * 1.5 ** 2);
const clearSpan = panel.clearWidth * panel.clearHeight;

test("what is left of the clear span carries the whole pressure on the clear span", () => {
  const force = panelSag(caseOf(panel)).pressure * (clearSpan - cutAway);
  expect(force / (asked * clearSpan)).toBeCloseTo(1, 9);
});

test("that is 1.9 % more than by the share of the cut panel, and the ratio of the demo's front rises by as much", () => {
  const byClearSpan = 1 / (1 - cutAway / clearSpan);
  const byCutPanel = 1 / (1 - cutAway / panel.grossArea);
  expect(byClearSpan / byCutPanel).toBeCloseTo(1.019, 3);
  const before = 1.4053285758;
  const { ratio } = job.review.findings.find(({ id }) => id === "stiffness.upper.front")!;
  expect(ratio! / before).toBeCloseTo(byClearSpan / byCutPanel, 3);
});

/** In a corner, so that the place that sags most is left whatever the shape. */
const box = { left: 0.06, bottom: 0.05, width: 0.2, height: 0.15 };
const [right, top] = [box.left + box.width, box.bottom + box.height];
const middle = { x: box.left + box.width / 2, y: box.bottom + box.height / 2 };
const corners = [
  { x: box.left, y: box.bottom },
  { x: right, y: box.bottom },
  { x: right, y: top },
  { x: box.left, y: top },
];

test("a triangle, a diamond and a rectangle of the same bounds sag differently, the rectangle most", () => {
  const triangle = sagWith(polygon([corners[0]!, corners[1]!, { x: middle.x, y: top }]));
  const diamond = sagWith(
    polygon([
      { x: middle.x, y: box.bottom },
      { x: right, y: middle.y },
      { x: middle.x, y: top },
      { x: box.left, y: middle.y },
    ]),
  );
  const whole = sagWith(rectangle(box));
  expect(whole).toBeGreaterThan(1.02 * triangle);
  expect(whole).toBeGreaterThan(1.02 * diamond);
  expect(Math.abs(triangle / diamond - 1)).toBeGreaterThan(1e-4);
});

test("a polygon that is a rectangle sags as the rectangle does", () => {
  expect(sagWith(polygon(corners)) / sagWith(rectangle(box))).toBeCloseTo(1, 9);
});

test("a polygon of 48 sides and an ellipse nearly round sag as the circle they follow, within 1 %", () => {
  const radius = 0.06;
  const round = sagWith(circle(middle, radius));
  const chords = Array.from({ length: 48 }, (_, i) => ({
    x: middle.x + radius * Math.cos((i * Math.PI) / 24),
    y: middle.y + radius * Math.sin((i * Math.PI) / 24),
  }));
  expect(Math.abs(sagWith(polygon(chords)) / round - 1)).toBeLessThan(0.01);
  const nearly = ellipse({ left: middle.x - 0.06, bottom: middle.y - 0.0594, width: 0.12, height: 0.1188 });
  expect(Math.abs(sagWith(nearly) / round - 1)).toBeLessThan(0.01);
});
