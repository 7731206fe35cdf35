import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { touch } from "../../lib/design/derive/outline.js";
import {
  areaOf,
  centroidOf,
  circle as circleShape,
  distanceTo,
  perimeterOf,
  polygon as polygonShape,
  rectangle as rectangleShape,
  type Shape,
  sampled,
} from "../../lib/shape/index.js";

const rectangle = (u: number, v: number, width: number, height: number, radius = 0): Shape =>
  rectangleShape(
    { left: u / 1000, bottom: v / 1000, width: width / 1000, height: height / 1000 },
    radius / 1000,
  );
const circle = (u: number, v: number, diameter: number): Shape =>
  circleShape({ x: (u + diameter / 2) / 1000, y: (v + diameter / 2) / 1000 }, diameter / 2000);
const polygon = (points: readonly (readonly [number, number])[]): Shape =>
  polygonShape(points.map(([u, v]) => ({ x: u / 1000, y: v / 1000 })));

describe("area, perimeter and centre", () => {
  test.each([
    ["a square", rectangle(10, 20, 100, 100), 10_000, 400, [60, 70]],
    ["rounded to a circle", rectangle(0, 0, 100, 100, 50), Math.PI * 2500, Math.PI * 100, [50, 50]],
    ["a slot", rectangle(0, 0, 160, 60, 30), 100 * 60 + Math.PI * 900, 200 + Math.PI * 60, [80, 30]],
    ["a circle", circle(10, 10, 100), Math.PI * 2500, Math.PI * 100, [60, 60]],
    [
      "a right triangle",
      polygon([
        [0, 0],
        [60, 0],
        [0, 80],
      ]),
      2400,
      240,
      [20, 80 / 3],
    ],
    [
      "an L",
      polygon([
        [0, 0],
        [40, 0],
        [40, 20],
        [20, 20],
        [20, 40],
        [0, 40],
      ]),
      1200,
      160,
      [50 / 3, 50 / 3],
    ],
  ] as const)("of %s", (_, form, area, perimeter, [u, v]) => {
    expect(areaOf(form) * 1e6).toBeCloseTo(area, 6);
    expect(perimeterOf(form) * 1e3).toBeCloseTo(perimeter, 9);
    expect(centroidOf(form).x * 1e3).toBeCloseTo(u, 9);
    expect(centroidOf(form).y * 1e3).toBeCloseTo(v, 9);
  });

  test("agree with those of a polygon of many chords", () => {
    fc.assert(
      fc.property(
        fc.record({
          width: fc.integer({ min: 1, max: 500 }),
          height: fc.integer({ min: 1, max: 500 }),
          round: fc.double({ min: 0, max: 0.5, noNaN: true }),
        }),
        ({ width, height, round }) => {
          const form = rectangle(7, 11, width, height, round * Math.min(width, height));
          const points = sampled(form, Math.PI / 2000);
          const chords = polygonShape(points);
          expect(areaOf(chords) / areaOf(form)).toBeCloseTo(1, 5);
          expect(perimeterOf(chords) / perimeterOf(form)).toBeCloseTo(1, 5);
        },
      ),
    );
  });
});

describe("distance from a point", () => {
  test.each([
    ["beside a rectangle", rectangle(0, 0, 100, 60), [130, 30], 30],
    ["off its corner", rectangle(0, 0, 100, 60), [130, 100], 50],
    ["inside it", rectangle(0, 0, 100, 60), [10, 30], -10],
    ["off a rounded corner", rectangle(0, 0, 100, 100, 50), [50, 130], 30],
    ["beside a circle", circle(0, 0, 100), [130, 50], 30],
    [
      "beside a polygon",
      polygon([
        [0, 0],
        [60, 0],
        [0, 80],
      ]),
      [-10, 40],
      10,
    ],
    [
      "inside a polygon",
      polygon([
        [0, 0],
        [60, 0],
        [0, 80],
      ]),
      [10, 40],
      -10,
    ],
  ] as const)("%s", (_, form, [u, v], distance) => {
    expect(distanceTo(form, { x: u / 1000, y: v / 1000 }) * 1e3).toBeCloseTo(distance, 9);
  });

  test("is zero on the outline", () => {
    for (const form of [
      rectangle(5, 5, 80, 40, 15),
      circle(5, 5, 60),
      polygon([
        [0, 0],
        [60, 0],
        [0, 80],
      ]),
    ]) {
      for (const point of sampled(form, Math.PI / 48)) expect(distanceTo(form, point)).toBeCloseTo(0, 12);
    }
  });
});

describe("two outlines", () => {
  const square = rectangle(0, 0, 100, 100);
  test.each([
    ["side by side with a gap", rectangle(100.1, 0, 50, 50), false],
    ["side to side", rectangle(100, 0, 50, 50), true],
    ["corner to corner", rectangle(100, 100, 50, 50), true],
    ["crossing", rectangle(50, 50, 100, 100), true],
    ["one in the other", rectangle(40, 40, 10, 10), true],
    ["a circle against a side", circle(100, 20, 40), true],
    ["a circle off a corner, within its box", circle(99, 99, 100), false],
    [
      "a triangle off a corner, within its box",
      polygon([
        [102, 99],
        [110, 110],
        [99, 102],
      ]),
      false,
    ],
  ])("%s", (_, other, expected) => {
    expect(touch(square, other)).toBe(expected);
    expect(touch(other, square)).toBe(expected);
  });
});
