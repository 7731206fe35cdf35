import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type StripJob, shortestStrip } from "../../lib/cutting/index.js";
import { Length, mm, Time } from "../../lib/quantity/index.js";

const lining = { name: "lining", length: mm(600), width: mm(400), count: 6, grain: "free" as const };
const job = (change: Partial<StripJob>): StripJob => ({ pieces: [lining], width: mm(1200), ...change });
const inMm = (length: Length): number => Length.in(length, "mm");

describe("the shortest strip", () => {
  test("turns pieces to fill the width", () => {
    const { length, proven } = shortestStrip(job({}));
    expect(inMm(length)).toBeCloseTo(1200, 2);
    expect(proven).toBe(true);
  });

  test("keeps the grain", () => {
    const { length } = shortestStrip(
      job({ pieces: [{ ...lining, grain: "across", count: 2 }], width: mm(800) }),
    );
    expect(inMm(length)).toBeCloseTo(800, 2);
  });

  test("counts a kerf between pieces and none behind the last", () => {
    const { length } = shortestStrip(
      job({ pieces: [{ ...lining, grain: "along", count: 2 }], width: mm(400), kerf: mm(3) }),
    );
    expect(inMm(length)).toBeCloseTo(1203, 2);
  });

  test("is nothing for no pieces", () => {
    expect(shortestStrip(job({ pieces: [] }))).toEqual({ length: 0, bound: 0, proven: true });
  });
});

test("no strip is shorter than its bound, straight cuts or not", () => {
  const somePieces = fc
    .array(fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 40 })), {
      minLength: 1,
      maxLength: 8,
    })
    .map((sizes) =>
      sizes.map(([length, width], i) => ({
        name: `piece ${i}`,
        length: mm(length),
        width: mm(width),
        count: 1,
        grain: "free" as const,
      })),
    );
  fc.assert(
    fc.property(somePieces, fc.constantFrom("straight" as const, "any shape" as const), (pieces, cuts) => {
      const { length, bound } = shortestStrip({
        pieces,
        width: mm(45),
        cuts,
        timeLimit: Time.of(0.004, "s"),
      });
      expect(length).toBeGreaterThanOrEqual(bound - 1e-9);
    }),
    { numRuns: 40 },
  );
});

test.each<[string, Partial<StripJob>, string]>([
  ["a piece wider than the strip", { width: mm(300) }, "strip: lining is wider than the strip, 300 mm"],
  ["a negative kerf", { kerf: mm(-1) }, "strip: kerf must be at least 0 mm, got -1 mm"],
  [
    "half a piece",
    { pieces: [{ ...lining, count: 0.5 }] },
    "strip: lining: expected a whole number from 0 up, got 0.5",
  ],
])("refuses %s", (_what, change, message) => {
  expect(() => shortestStrip(job(change))).toThrow(new RangeError(message));
});
