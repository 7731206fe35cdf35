import { expect, test } from "vitest";
import { fillShelves, type ShelfSheet, type Upright } from "../../lib/cutting/shelves.js";

const square = (): ShelfSheet<Upright> => ({ width: 10, room: 10, shelves: [] });
const heights = ({ sheets }: { sheets: readonly ShelfSheet<Upright>[] }): number[][][] =>
  sheets.map(({ shelves }) => shelves.map(({ pieces }) => pieces.map(({ height }) => height)));

test("shorter pieces stand on the first shelf with room, before a new one is opened", () => {
  const pieces = [
    { width: 6, height: 5 },
    { width: 7, height: 4 },
    { width: 4, height: 3 },
    { width: 3, height: 2 },
  ];
  expect(heights(fillShelves(pieces, 0, square))).toEqual([
    [
      [5, 3],
      [4, 2],
    ],
  ]);
});

test("a kerf stands between neighbours but not at the edges", () => {
  const pieces = [
    { width: 4.5, height: 4.5 },
    { width: 4.5, height: 4.5 },
    { width: 4.5, height: 4.5 },
    { width: 4.5, height: 4.5 },
  ];
  expect(heights(fillShelves(pieces, 1, square))).toEqual([
    [
      [4.5, 4.5],
      [4.5, 4.5],
    ],
  ]);
  expect(heights(fillShelves(pieces, 1.01, square))).toEqual([[[4.5]], [[4.5]], [[4.5]], [[4.5]]]);
});

test("a new shelf goes onto the first sheet with room for it", () => {
  const pieces = [
    { width: 10, height: 7 },
    { width: 10, height: 6 },
    { width: 10, height: 3 },
  ];
  expect(heights(fillShelves(pieces, 0, square))).toEqual([[[7], [3]], [[6]]]);
});

test("says which piece found no sheet", () => {
  const pieces = [{ width: 2, height: 2 }];
  expect(fillShelves(pieces, 0, () => undefined)).toEqual({ sheets: [], unplaced: pieces[0] });
});
