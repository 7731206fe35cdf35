import { expect, test } from "vitest";
import { casePlane, posed, turnedAbout } from "../../../lib/findings/figures/case-plane.js";
import { designOf, rolling, smallJob } from "../../design/small-job.js";

const input = designOf(rolling(smallJob));

test("the outside is the inside with twice ply and laminate, on its casters", () => {
  const front = casePlane(input, "x").box;
  expect([front.width, front.height, front.bottom].map((one) => Math.round(1e6 * one) / 1e6)).toEqual([
    0.622, 0.522, 0.12,
  ]);
  expect(casePlane(input, "y").box.width).toBeCloseTo(0.422, 9);
});

test("the openings of the front are seen from the front, where the case file has them", () => {
  const windows = casePlane(input, "x").shapes.filter(({ what }) => what === "opening");
  expect(windows).toHaveLength(2);
  const xs = windows[0]?.points.map(({ x }) => x) ?? [];
  expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(0.2, 9);
  expect(casePlane(input, "y").shapes.filter(({ what }) => what === "opening")).toEqual([]);
});

test("a pose turns to the left about its point and keeps distances", () => {
  const [shape] = posed(
    [{ what: "sheet", points: [{ x: 2, y: 1 }] }],
    turnedAbout({ x: 1, y: 1 }, Math.PI / 2),
  );
  expect(shape?.points[0]?.x).toBeCloseTo(1, 12);
  expect(shape?.points[0]?.y).toBeCloseTo(2, 12);
});

test("a case without such a section has no picture", () => {
  expect(() => casePlane(input, "x", ["attic"])).toThrow(/no such section/);
});
