/** Slopes of a deflection against plain differences of two panels on the same mesh. */
import { expect, test } from "vitest";
import {
  bent,
  deflectionAt,
  deflectionSlopes,
  factoredPanel,
  largestDeflection,
  type PanelProblem,
  type Sheet,
  sheetOfLayers,
} from "../../lib/fem/index.js";
import { cut, panel, plainLayer, ply, plyLayer, roundedWindow } from "../fem/sheets.js";

const none: Sheet["bending"] = [
  [0, 0, 0],
  [0, 0, 0],
  [0, 0, 0],
];

function windowed(sheet: Sheet): PanelProblem {
  const plain = panel(0.6, 0.4, sheet, { kind: "hinged" }, [{ kind: "pressure", pressure: 1000 }]);
  const cutouts = [cut({ ...roundedWindow, radius: 0 })];
  return { ...plain, outline: { ...plain.outline, cutouts }, places: [] };
}

/** One entry of the bending stiffness, or of the shear stiffness both ways. */
function entry(row: 0 | 1 | 2, column: 0 | 1 | 2): Sheet {
  const bending = none.map((each) => [...each]) as unknown as [number[], number[], number[]];
  bending[row][column] = 1;
  bending[column][row] = 1;
  return {
    ...ply,
    membrane: none,
    coupling: none,
    bending: bending as unknown as Sheet["bending"],
    shear: [0, 0, 0],
  };
}

function plus(sheet: Sheet, change: Sheet, times: number): Sheet {
  const each = (part: "membrane" | "coupling" | "bending"): Sheet["bending"] =>
    sheet[part].map((row, i) =>
      row.map((value, j) => value + times * change[part][i]![j]!),
    ) as unknown as Sheet["bending"];
  return {
    ...sheet,
    membrane: each("membrane"),
    coupling: each("coupling"),
    bending: each("bending"),
    shear: sheet.shear.map((value, i) => value + times * change.shear[i]!) as unknown as Sheet["shear"],
  };
}

const faced = sheetOfLayers([plyLayer(0.009, 30), plainLayer(0.0008, 9e9, 0.3)], 0.0045);
const membrane = { ...entry(0, 0), bending: none, membrane: entry(0, 0).bending };

test.each<[string, Sheet, Sheet, number]>([
  ["bending along x", ply, entry(0, 0), 1],
  ["bending along y", ply, entry(1, 1), 1],
  ["coupling of the two", ply, entry(0, 1), 1],
  ["twist", ply, entry(2, 2), 0.1],
  ["shear through it", ply, { ...entry(0, 0), bending: none, shear: [1, 0, 1] }, 1e4],
  ["bending along x, faced on one side", faced, entry(0, 0), 1],
  ["stretch along x, faced on one side", faced, membrane, 1e5],
])("a change of %s moves the deflection as its slope says", (_, sheet, change, size) => {
  const elementTarget = 30;
  const solved = bent(factoredPanel(windowed(sheet), elementTarget));
  const { at } = largestDeflection(solved);
  const [slope = 0] = deflectionSlopes(solved, at, [change]);
  const [more, less] = [size, -size].map((by) =>
    deflectionAt(bent(factoredPanel(windowed(plus(sheet, change, by)), elementTarget)), at),
  ) as [number, number];
  expect(slope).not.toBe(0);
  expect((more - less) / (2 * size) / slope).toBeCloseTo(1, 3);
});
