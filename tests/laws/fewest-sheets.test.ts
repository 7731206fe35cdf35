import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { randomSheetCase } from "../../lib/command/bench/random-sets.js";
import { sheetJobOf } from "../../lib/command/reference/cutting-cases.js";
import { planSheets, type SheetJob, type SheetPlan } from "../../lib/cutting/index.js";
import { mm, money, Time } from "../../lib/quantity/index.js";
import { followCuts, same } from "../cutting/follow-cuts.js";

/** Long enough for any machine: a search that proves its plan ends by itself. */
const patient = Time.of(120, "s");

describe.each([1, 2, 3, 4, 5, 6, 7, 8, 9, 10])("class %i of random sheets, 20 pieces", (kind) => {
  const job = sheetJobOf(randomSheetCase(kind, 20, 1), patient);
  const plan = planSheets(job);

  test("is proven to take the fewest", () => {
    expect(plan.proof.proven).toBe(true);
    expect(plan.sheets).toHaveLength(plan.bound.count);
  });

  test("is cut by following the cuts", () => {
    for (const sheet of plan.sheets) {
      const bench = followCuts(sheet, 0, 0);
      const planned = [...sheet.pieces, ...sheet.offcuts];
      expect(bench).toHaveLength(planned.length);
      expect(planned.filter((part) => !bench.some((lying) => same(lying, part)))).toEqual([]);
    }
    for (const { name, count } of job.pieces) {
      expect(plan.sheets.flatMap(({ pieces }) => pieces).filter((piece) => piece.name === name)).toHaveLength(
        count,
      );
    }
  });
});

type Rectangle = readonly [number, number];

/** Whether rectangles come from a sheet by straight cuts at whole numbers: every cut is tried, nothing else is known. */
function cutsFrom(pieces: readonly Rectangle[], length: number, width: number): boolean {
  if (pieces.length === 0) return true;
  if (pieces.reduce((sum, [a, b]) => sum + a * b, 0) > length * width) return false;
  const [only] = pieces;
  if (pieces.length === 1 && only) return only[0] <= length && only[1] <= width;
  for (let half = 1; half < 2 ** pieces.length - 1; half += 2) {
    const near = pieces.filter((_, i) => (half >> i) & 1);
    const far = pieces.filter((_, i) => !((half >> i) & 1));
    for (let at = 1; at < length; at++) {
      if (cutsFrom(near, at, width) && cutsFrom(far, length - at, width)) return true;
    }
    for (let at = 1; at < width; at++) {
      if (cutsFrom(near, length, at) && cutsFrom(far, length, width - at)) return true;
    }
  }
  return false;
}

/** The fewest sheets: every way to share pieces out is tried. */
function fewestByHand(pieces: readonly Rectangle[], side: number): number {
  let fewest = pieces.length;
  const go = (i: number, groups: Rectangle[][]): void => {
    if (groups.length >= fewest) return;
    const piece = pieces[i];
    if (!piece) {
      if (groups.every((group) => cutsFrom(group, side, side))) fewest = groups.length;
      return;
    }
    for (const group of groups) {
      group.push(piece);
      go(i + 1, groups);
      group.pop();
    }
    go(i + 1, [...groups, [piece]]);
  };
  go(0, []);
  return fewest;
}

const rectangles = fc.array(fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 })), {
  minLength: 1,
  maxLength: 6,
});
const jobOf = (sizes: readonly Rectangle[], change: Partial<SheetJob> = {}): SheetJob => ({
  pieces: sizes.map(([length, width], i) => ({
    name: `piece ${i}`,
    length: mm(length),
    width: mm(width),
    count: 1,
    grain: "along" as const,
  })),
  stock: [{ name: "sheet", length: mm(7), width: mm(7), price: money(1, "USD") }],
  kerf: mm(0),
  timeLimit: patient,
  ...change,
});
const proven = (job: SheetJob): SheetPlan => {
  const plan = planSheets(job);
  expect(plan.proof.proven).toBe(true);
  return plan;
};

describe("the fewest sheets", () => {
  test("are as many as trying everything gives", () => {
    fc.assert(
      fc.property(rectangles, (sizes) => {
        const few = sizes.slice(0, 4);
        expect(proven(jobOf(few)).sheets).toHaveLength(fewestByHand(few, 7));
      }),
      { numRuns: 60 },
    );
  });

  test("are never more with more freedom to cut", () => {
    fc.assert(
      fc.property(rectangles, (sizes) => {
        const [two, three, any] = (["two stages", "three stages", "straight"] as const).map(
          (cuts) => proven(jobOf(sizes, { cuts })).sheets.length,
        );
        expect(two).toBeGreaterThanOrEqual(three as number);
        expect(three).toBeGreaterThanOrEqual(any as number);
      }),
      { numRuns: 30 },
    );
  });
});

/** Two sizes at two prices, one offcut in hand. */
const mixed = fc
  .tuple(rectangles, fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 }))
  .map(([sizes, small, large]) =>
    jobOf(sizes, {
      stock: [
        { name: "large", length: mm(10), width: mm(7), price: money(large, "USD") },
        { name: "small", length: mm(7), width: mm(7), price: money(small, "USD") },
        { name: "offcut", length: mm(5), width: mm(4), price: money(0, "USD"), available: 1 },
      ],
    }),
  );

describe("sheets of two sizes and an offcut", () => {
  test("a cheaper price never raises the bill", () => {
    fc.assert(
      fc.property(mixed, (job) => {
        const cheaper = job.stock.map((one) =>
          one.name === "large" ? { ...one, price: money(one.price.amount * 0.75, "USD") } : one,
        );
        expect(proven({ ...job, stock: cheaper }).cost.amount).toBeLessThanOrEqual(
          proven(job).cost.amount + 1e-9,
        );
      }),
      { numRuns: 30 },
    );
  });

  test("one more piece never lowers the bill", () => {
    fc.assert(
      fc.property(mixed, (job) => {
        const more = {
          ...job,
          pieces: [
            ...job.pieces,
            { name: "more", length: mm(3), width: mm(2), count: 1, grain: "free" as const },
          ],
        };
        expect(proven(more).cost.amount).toBeGreaterThanOrEqual(proven(job).cost.amount - 1e-9);
      }),
      { numRuns: 30 },
    );
  });

  test("the order of the lists does not matter", () => {
    fc.assert(
      fc.property(mixed, (job) => {
        const reversed = { ...job, pieces: job.pieces.toReversed(), stock: job.stock.toReversed() };
        expect(proven(reversed)).toEqual(proven(job));
      }),
      { numRuns: 20 },
    );
  });
});
