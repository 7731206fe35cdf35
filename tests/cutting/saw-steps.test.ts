import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { benchStates, planBars, planSheets, sawSteps, stopSettings } from "../../lib/cutting/index.js";
import { degree, mm, money } from "../../lib/quantity/index.js";
import { someBarJob, someSheetJob } from "./arbitrary.js";
import { followCuts, same } from "./follow-cuts.js";

const ply = { name: "ply", length: mm(2440), width: mm(1220), price: money(80, "USD") };
const side = { name: "side", length: mm(600), width: mm(400), count: 6, grain: "along" as const };

describe("the steps at the saw", () => {
  test("name what stays and what falls off, cuts of one setting together", () => {
    const [sheet] = planSheets({ pieces: [side], stock: [ply], kerf: mm(3) }).sheets;
    if (!sheet) throw new Error("no sheet");
    const steps = sawSteps(sheet, mm(3));
    expect(steps.map(({ number }) => number)).toEqual(steps.map((_, i) => i + 1));
    const done = steps.flatMap(({ keeps, fallsOff }) => [keeps, ...(fallsOff ? [fallsOff] : [])]);
    expect(done.filter(({ piece }) => piece === "side")).toHaveLength(6);
    const settings = new Set(steps.map(({ direction, fence }) => `${direction} ${Math.round(fence * 1e6)}`));
    expect(steps.at(-1)?.setting).toBe(settings.size);
  });

  test("every piece and every offcut comes off the saw exactly once", () => {
    fc.assert(
      fc.property(someSheetJob, (some) => {
        for (const sheet of planSheets(some).sheets) {
          if (sheet.cuts.length === 0) continue;
          const steps = sawSteps(sheet, some.kerf);
          const done = steps.flatMap(({ keeps, fallsOff }) => [keeps, ...(fallsOff ? [fallsOff] : [])]);
          expect(done.filter(({ is }) => is === "piece")).toHaveLength(sheet.pieces.length);
          expect(done.filter(({ is }) => is === "offcut")).toHaveLength(sheet.offcuts.length);
          expect(done.filter(({ is }) => is === "cut further")).toHaveLength(steps.length - 1);
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe("the bench while a sheet is sawn up", () => {
  test("holds after every cut what a bench that only follows the cuts holds", () => {
    fc.assert(
      fc.property(someSheetJob, (some) => {
        for (const sheet of planSheets(some).sheets) {
          const states = benchStates(sawSteps(sheet, some.kerf));
          states.forEach(({ parts }, i) => {
            const followed = followCuts(
              { ...sheet, cuts: sheet.cuts.slice(0, i + 1) },
              some.edgeTrim ?? 0,
              some.kerf,
            );
            expect(parts).toHaveLength(followed.length);
            expect(followed.every((one) => parts.some((part) => same(part, one)))).toBe(true);
          });
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe("stop settings for bars", () => {
  test("one for each length and pair of mitres, the longest first", () => {
    const mitre = { left: degree(45), right: degree(45) };
    const pieces = [
      { name: "post", length: mm(500), count: 2 },
      { name: "rail", length: mm(500), count: 2, mitre },
      { name: "stile", length: mm(700), count: 1 },
    ];
    const stock = [{ name: "angle", length: mm(3000), price: money(9, "USD") }];
    const { bars } = planBars({ pieces, stock, kerf: mm(3) });
    expect(
      stopSettings(bars).map(({ length, mitre: { left }, cuts }) => [
        Math.round(length * 1000),
        left > 0,
        cuts,
      ]),
    ).toEqual([
      [700, false, [{ bar: 0, pieces: ["stile"] }]],
      [500, true, [{ bar: 0, pieces: ["rail", "rail"] }]],
      [500, false, [{ bar: 0, pieces: ["post", "post"] }]],
    ]);
  });

  test("following them leaves of every bar what the plan says", () => {
    fc.assert(
      fc.property(someBarJob, (some) => {
        const { bars } = planBars(some);
        const bench = bars.map(({ length, trimLoss }) => length - trimLoss);
        for (const { length, cuts } of stopSettings(bars)) {
          for (const { bar, pieces } of cuts) {
            for (const _ of pieces) {
              const left = (bench[bar] ?? 0) - length;
              expect(left).toBeGreaterThanOrEqual(-1e-9);
              bench[bar] = Math.max(0, left - some.kerf);
            }
          }
        }
        expect(bench.map((left, i) => Math.abs(left - (bars[i]?.remainder ?? 0)) < 1e-6)).toEqual(
          bars.map(() => true),
        );
      }),
      { numRuns: 50 },
    );
  });
});
