/** Geometry that a hand can check: a box of 522 mm outside, and a door of the demo. */
import { expect, test } from "vitest";
import { hangingDoorFigure, rackedFigure } from "../../../lib/findings/figures/box-figures.js";
import { openJob } from "../../../lib/job/index.js";
import { designOf, smallJob } from "../../design/small-job.js";

test("a pushed box is held at its two lower corners and leans away from the push, at its top most", () => {
  const input = designOf(smallJob);
  const section = input.parts.sections[0]?.name ?? "";
  const asked = { section, axis: "x", push: "100 N", outcome: "Its top moves 1 mm", racks: "1 mm" } as const;
  const { arrows = [], places = [], shapes } = rackedFigure(input, asked);
  const atRest = shapes.find(({ what }) => what === "hidden")?.points ?? [];
  const [left, right] = [Math.min(...atRest.map(({ x }) => x)), Math.max(...atRest.map(({ x }) => x))];
  expect(right - left).toBeCloseTo(input.parts.sections[0]?.outside.size.x ?? 0, 9);
  expect(places.filter(({ what }) => what === "edge").map(({ at }) => at.x)).toEqual([left, right]);
  const top = places.find(({ words }) => words === "1 mm")?.at;
  expect(top?.x).toBeGreaterThan(right);
  expect(top?.y).toBeCloseTo(Math.max(...atRest.map(({ y }) => y)), 9);
  expect(arrows).toMatchObject([{ way: 0, acts: "pushing", words: "100 N" }]);
});

test("an open door hangs beside its case: its weight halfway out, its upper hinge pulled off, its lower pressed on", () => {
  const job = openJob("soil-lab");
  const leaf = job.parts.panels.find(({ id }) => id === "lower.left.side door");
  if (!leaf) throw new Error("the demo has no such door");
  const hinges = job.parts.hardware.filter(
    ({ item, panels }) => item.duty === "hinge" && panels.includes(leaf.id),
  );
  const { arrows = [], shapes } = hangingDoorFigure(job, leaf, hinges, "1 kg");
  const face = job.parts.sections.find(({ name }) => name === "lower")?.outside.low.x ?? Number.NaN;
  const open = shapes.at(-1)?.points.map(({ x }) => x) ?? [];
  expect(Math.max(...open)).toBeCloseTo(face, 9);
  expect(Math.max(...open) - Math.min(...open)).toBeCloseTo(leaf.width, 9);
  const [weight, upper, lower] = arrows;
  expect(weight?.at.x).toBeCloseTo((Math.max(...open) + Math.min(...open)) / 2, 9);
  expect(upper?.at.y).toBeGreaterThan(lower?.at.y ?? Number.NaN);
  // Off the case is to the left; the lower hinge is pressed to the right, towards the case.
  expect([upper?.way, lower?.way]).toEqual([Math.PI, 0]);
});

test("a lid is no door that hangs beside its case", () => {
  const job = openJob("soil-lab");
  const [top] = job.parts.panels.filter(({ face }) => face === "top");
  if (!top) throw new Error("the demo has no top");
  expect(() => hangingDoorFigure(job, top, [], "1 kg")).toThrow("it is no door of a side");
});
