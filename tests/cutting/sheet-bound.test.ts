import { expect, test } from "vitest";
import { sheetBound } from "../../lib/cutting/index.js";
import { mm } from "../../lib/quantity/index.js";

const sheet = { sheetLength: mm(2440), sheetWidth: mm(1220), kerf: mm(0), edgeTrim: mm(0) };

test("halves of a sheet fill it until a kerf is lost between them", () => {
  const pieces = [{ length: mm(1220), width: mm(1220), count: 4 }];
  expect(sheetBound({ ...sheet, pieces })).toBe(2);
  expect(sheetBound({ ...sheet, pieces, kerf: mm(3) })).toBe(3);
});

test("trimmed edges leave less", () => {
  const pieces = [{ length: mm(1200), width: mm(1200), count: 4 }];
  expect(sheetBound({ ...sheet, pieces })).toBe(2);
  expect(sheetBound({ ...sheet, pieces, edgeTrim: mm(10), kerf: mm(25) })).toBe(3);
});

test("a piece may lie either way, but not beyond the sheet", () => {
  expect(sheetBound({ ...sheet, pieces: [{ length: mm(600), width: mm(2400), count: 1 }] })).toBe(1);
  expect(() => sheetBound({ ...sheet, pieces: [{ length: mm(1300), width: mm(1250), count: 1 }] })).toThrow(
    new RangeError(
      "sheets.bound: a piece of 1300 mm x 1250 mm does not come from 2440 mm x 1220 mm of usable sheet",
    ),
  );
  expect(() => sheetBound({ ...sheet, pieces: [], edgeTrim: mm(610) })).toThrow(
    new RangeError("sheets.bound: nothing is left of the sheet after its edges are trimmed"),
  );
});
