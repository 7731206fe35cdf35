import { expect, test } from "vitest";
import { type DrawingMark, drawing, drawingSvg } from "../../lib/page/index.js";
import { sampleDrawing } from "./sample-views.js";

function svgOf(...marks: DrawingMark[]): string {
  return String(drawingSvg(drawing("t", "d", marks)));
}

function viewBox(svg: string): number[] {
  return (/viewBox="([^"]+)"/.exec(svg)?.[1] ?? "").split(" ").map(Number);
}

test("shapes keep their size and place, with y turned over", () => {
  const svg = svgOf({
    mark: "rectangle",
    role: "panel",
    at: { x: 10, y: 20 },
    width: 300,
    height: 100,
    radius: 5,
  });
  expect(svg).toContain('<rect x="10" y="-120" width="300" height="100" rx="5"');
});

test("the frame holds every mark with the dimension lines", () => {
  const [left = 0, top = 0, width = 0, height = 0] = viewBox(String(drawingSvg(sampleDrawing)));
  expect(left).toBeLessThan(-45);
  expect(top).toBeLessThan(-565);
  expect(left + width).toBeGreaterThan(760);
  expect(top + height).toBeGreaterThan(0);
});

test.each([
  [{ x: 0, y: 0 }, { x: 100, y: 0 }, "rotate(0)"],
  [{ x: 100, y: 0 }, { x: 0, y: 0 }, "rotate(0)"],
  [{ x: 0, y: 0 }, { x: 0, y: 100 }, "rotate(-90)"],
  [{ x: 0, y: 100 }, { x: 0, y: 0 }, "rotate(-90)"],
])("a dimension's words are never upside down: %j to %j", (from, to, turn) => {
  expect(
    svgOf({ mark: "dimension", from, to, offset: 10, text: "100 mm" }).replace("rotate(-0)", "rotate(0)"),
  ).toContain(turn);
});

test("nothing to draw and wrong numbers are refused", () => {
  expect(() => drawing("t", "d", [])).toThrow('drawing "t": nothing to draw');
  expect(() =>
    drawing("t", "d", [{ mark: "circle", role: "opening", at: { x: 0, y: Number.NaN }, radius: 1 }]),
  ).toThrow('drawing "t": a circle has a coordinate that is no finite number');
});
