import { expect, test } from "vitest";
import { joined, thinned } from "../../../lib/fem/panel/contour-lines.js";

test("pieces in any order and direction become one line, a ring ends where it began", () => {
  const [a, b, c, d] = [
    { x: 0, y: 0 },
    { x: 1, y: 0 },
    { x: 1, y: 1 },
    { x: 0, y: 1 },
  ] as const;
  expect(
    joined([
      [c, b],
      [a, b],
      [d, c],
    ]),
  ).toHaveLength(1);
  expect(
    joined([
      [c, b],
      [a, b],
      [d, c],
    ])[0],
  ).toHaveLength(4);
  const [ring] = joined([
    [a, b],
    [c, d],
    [c, b],
    [d, a],
  ]);
  expect(ring).toHaveLength(5);
  expect(ring?.[0]).toEqual(ring?.at(-1));
});

test("pieces that do not meet are lines of their own", () => {
  const far = joined([
    [
      { x: 0, y: 0 },
      { x: 1, y: 0 },
    ],
    [
      { x: 5, y: 0 },
      { x: 6, y: 0 },
    ],
  ]);
  expect(far).toHaveLength(2);
});

test("points on a straight stretch go, a corner stays", () => {
  const line = [0, 0.25, 0.5, 0.75, 1].map((x) => ({ x, y: x <= 0.5 ? 0 : x - 0.5 }));
  expect(thinned(line, 0.001)).toEqual([line[0], line[2], line[4]]);
  expect(thinned(line, 1)).toEqual([line[0], line[4]]);
});
