import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bestValueSheet, type ValueJob } from "../../lib/cutting/index.js";
import { mm, Time } from "../../lib/quantity/index.js";

const piece = (name: string, length: number, width: number, value: number, max?: number) => ({
  name,
  length: mm(length),
  width: mm(width),
  value,
  ...(max === undefined ? {} : { max }),
});
const job = (change: Partial<ValueJob>): ValueJob => ({
  length: mm(600),
  width: mm(400),
  pieces: [piece("shelf", 300, 200, 1)],
  ...change,
});

describe("the best use of a sheet", () => {
  test("lays out what it counts", () => {
    const { value, pieces, proven } = bestValueSheet(job({}));
    expect([value, proven]).toEqual([4, true]);
    expect(new Set(pieces.map(({ x, y }) => `${Math.round(x * 1000)},${Math.round(y * 1000)}`))).toEqual(
      new Set(["0,0", "300,0", "0,200", "300,200"]),
    );
  });

  test("counts the kerf between pieces, not at the edges", () => {
    expect(bestValueSheet(job({ kerf: mm(1) })).value).toBe(1);
    expect(bestValueSheet(job({ length: mm(601), width: mm(401), kerf: mm(1) })).value).toBe(4);
  });

  test("cuts no more than asked for", () => {
    expect(bestValueSheet(job({ pieces: [piece("shelf", 300, 200, 1, 3)] })).value).toBe(3);
  });

  test("turns pieces where that is allowed, and counts both ways as one piece", () => {
    const pieces = [piece("slat", 400, 100, 1, 5)];
    expect(bestValueSheet(job({ pieces })).value).toBe(4);
    expect(bestValueSheet(job({ pieces, turn: true })).value).toBe(5);
  });

  test("a pinwheel needs cuts of any shape", () => {
    const pieces = [piece("long", 3, 2, 6, 2), piece("tall", 2, 3, 6, 2), piece("core", 1, 1, 1, 1)];
    const square = { length: mm(5), width: mm(5), pieces };
    expect(bestValueSheet({ ...square, cuts: "any shape" })).toMatchObject({ value: 25, proven: true });
    expect(bestValueSheet(square).value).toBeLessThan(25);
  });

  test("says how much more there could be when it is stopped at once", () => {
    const pieces = [piece("a", 3, 2, 6, 2), piece("b", 2, 3, 6, 2), piece("c", 1, 1, 1, 1)];
    const stopped = bestValueSheet({ length: mm(5), width: mm(5), pieces, timeLimit: Time.of(-1, "s") });
    expect(stopped.proven).toBe(false);
    expect(stopped.bound).toBeGreaterThanOrEqual(stopped.value);
  });
});

const someSizes = fc
  .array(
    fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 30 })),
    {
      minLength: 1,
      maxLength: 4,
    },
  )
  .map((sizes) => sizes.map(([length, width, value], i) => piece(`piece ${i}`, length, width, value)));
const sheet = { length: mm(8), width: mm(7) };

describe("laws", () => {
  test("limits never raise the value, and none at all is the same as many", () => {
    fc.assert(
      fc.property(someSizes, fc.integer({ min: 0, max: 3 }), (pieces, max) => {
        const free = bestValueSheet({ ...sheet, pieces }).value;
        const limited = pieces.map((one) => ({ ...one, max }));
        const many = pieces.map((one) => ({ ...one, max: 56 }));
        expect(bestValueSheet({ ...sheet, pieces: limited }).value).toBeLessThanOrEqual(free);
        expect(bestValueSheet({ ...sheet, pieces: many }).value).toBe(free);
      }),
      { numRuns: 40 },
    );
  });

  test("cuts of any shape are worth at least as much as straight ones", () => {
    fc.assert(
      fc.property(someSizes, (pieces) => {
        const limited = { ...sheet, pieces: pieces.map((one) => ({ ...one, max: 2 })) };
        const straight = bestValueSheet(limited).value;
        expect(bestValueSheet({ ...limited, cuts: "any shape" }).value).toBeGreaterThanOrEqual(straight);
      }),
      { numRuns: 40 },
    );
  });
});

test.each<[string, Partial<ValueJob>, string]>([
  ["a negative kerf", { kerf: mm(-1) }, "best value: kerf must be at least 0 mm, got -1 mm"],
  [
    "a piece without length",
    { pieces: [piece("shelf", 0, 200, 1)] },
    "best value: shelf: sizes must be positive, got 0 x 200 mm",
  ],
  [
    "cuts of any shape without limits",
    { cuts: "any shape" },
    "best value: cuts of any shape need a largest number of every piece",
  ],
  [
    "sizes without a common step",
    { length: mm(600.001) },
    "best value: sizes need a common step of at least 0.12 mm",
  ],
])("refuses %s", (_what, change, message) => {
  expect(() => bestValueSheet(job(change))).toThrow(new RangeError(message));
});
