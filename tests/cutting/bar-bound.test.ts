import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { barBound, firstFitBars } from "../../lib/cutting/index.js";
import { mm } from "../../lib/quantity/index.js";
import { someCuts } from "./arbitrary.js";
import { instances } from "./instances.js";

const none = { kerf: mm(0), endTrim: mm(0) };

describe.each(instances)("instance $name", ({ job, fewest }) => {
  test("the bound does not exceed the fewest bars", () => {
    expect(barBound(job).bars).toBeLessThanOrEqual(fewest);
  });

  test("first fit takes no fewer than the fewest and no more than 11/9 of it plus 6/9", () => {
    expect(firstFitBars(job)).toBeGreaterThanOrEqual(fewest);
    expect(firstFitBars(job)).toBeLessThanOrEqual(Math.floor((11 * fewest + 6) / 9));
  });
});

test("pieces longer than half a bar take a bar each", () => {
  const pieces = [{ length: mm(501), count: 7 }];
  expect(barBound({ pieces, stockLength: mm(1000), ...none })).toEqual({ byLength: 4, byHalf: 7, bars: 7 });
});

test("two pieces of exactly half a bar share it, until a kerf is lost between them", () => {
  const pieces = [{ length: mm(500), count: 2 }];
  expect(barBound({ pieces, stockLength: mm(1000), ...none }).bars).toBe(1);
  expect(barBound({ pieces, stockLength: mm(1000), kerf: mm(1), endTrim: mm(0) }).bars).toBe(2);
});

test("nothing to cut needs no bar", () => {
  expect(barBound({ pieces: [], stockLength: mm(1000), ...none }).bars).toBe(0);
  expect(firstFitBars({ pieces: [], stockLength: mm(1000), ...none })).toBe(0);
});

test("the bound never exceeds what first fit takes", () => {
  fc.assert(
    fc.property(someCuts, ({ pieces, kerf }) => {
      const job = { pieces, stockLength: mm(2000), kerf, endTrim: mm(10) };
      expect(barBound(job).bars).toBeLessThanOrEqual(firstFitBars(job));
    }),
  );
});

test("one more piece never lowers the bound", () => {
  fc.assert(
    fc.property(someCuts, fc.integer({ min: 1, max: 1980 }), ({ pieces, kerf }, more) => {
      const job = { stockLength: mm(2000), kerf, endTrim: mm(10) };
      const before = barBound({ ...job, pieces }).bars;
      expect(
        barBound({ ...job, pieces: [...pieces, { length: mm(more), count: 1 }] }).bars,
      ).toBeGreaterThanOrEqual(before);
    }),
  );
});

test("a wider kerf never lowers the bound", () => {
  fc.assert(
    fc.property(someCuts, ({ pieces, kerf }) => {
      const job = { pieces, stockLength: mm(2000), endTrim: mm(10) };
      expect(barBound({ ...job, kerf: mm(8) }).bars).toBeGreaterThanOrEqual(barBound({ ...job, kerf }).bars);
    }),
  );
});

test("bounds and counts refuse what no bar can give", () => {
  const pieces = [{ length: mm(990), count: 1 }];
  expect(() => barBound({ pieces, stockLength: mm(1000), kerf: mm(3), endTrim: mm(10) })).toThrow(
    new RangeError("bars.bound: a piece of 990 mm does not come from 980 mm of usable bar"),
  );
  expect(() => firstFitBars({ pieces, stockLength: mm(1000), kerf: mm(-3), endTrim: mm(0) })).toThrow(
    new RangeError("bars.first.fit: kerf must be at least 0 mm, got -3 mm"),
  );
  expect(() => barBound({ pieces, stockLength: mm(1000), kerf: mm(3), endTrim: mm(500) })).toThrow(
    new RangeError("bars.bound: nothing is left of a 1000 mm bar after its ends are trimmed"),
  );
});
