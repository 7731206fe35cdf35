import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CutSheet, planSheets, type SheetArea, type SheetJob } from "../../lib/cutting/index.js";
import { mm, money } from "../../lib/quantity/index.js";
import { someSheetJob } from "./arbitrary.js";
import { followCuts, same } from "./follow-cuts.js";

const usd = (amount: number) => money(amount, "USD");
const ply = { name: "ply", length: mm(2440), width: mm(1220), price: usd(80) };
const half = { name: "half", length: mm(1220), width: mm(1220), price: usd(45) };
const side = { name: "side", length: mm(600), width: mm(400), count: 2, grain: "along" as const };
const job = (change: Partial<SheetJob>): SheetJob => ({
  pieces: [side],
  stock: [ply],
  kerf: mm(3),
  ...change,
});
const area = (parts: readonly SheetArea[]): number =>
  parts.reduce((sum, { length, width }) => sum + length * width, 0);

describe("a plan for sheets", () => {
  test("lays pieces along, across and either way as their grain asks", () => {
    const plan = planSheets(
      job({
        pieces: [
          { ...side, name: "along", length: mm(1300), width: mm(300), count: 1 },
          { ...side, name: "across", length: mm(1100), width: mm(300), count: 1, grain: "across" },
          { ...side, name: "free", length: mm(300), width: mm(2300), count: 1, grain: "free" },
        ],
      }),
    );
    const laid = plan.sheets.flatMap(({ pieces }) => pieces);
    expect(Object.fromEntries(laid.map(({ name, turned }) => [name, turned]))).toEqual({
      along: false,
      across: true,
      free: true,
    });
    expect(laid.find(({ name }) => name === "across")).toMatchObject({ length: mm(300), width: mm(1100) });
  });

  test("chooses the order of cuts that buys less", () => {
    const pieces = [
      { ...side, name: "tall", length: mm(400), width: mm(1200), count: 3 },
      { ...side, name: "flat", length: mm(1200), width: mm(590), count: 2 },
    ];
    const plan = planSheets(job({ pieces }));
    expect(plan.sheets).toHaveLength(1);
  });

  test("turns free pieces where that buys less", () => {
    const nine = { ...side, length: mm(400), width: mm(810), count: 9 };
    const sheets = (grain: "along" | "free") => planSheets(job({ pieces: [{ ...nine, grain }] })).sheets;
    expect(sheets("along")).toHaveLength(2);
    expect(sheets("free")).toHaveLength(1);
  });

  test("buys the cheaper size, and exchanges a sheet for a smaller one that still holds its shelves", () => {
    const two = [{ ...side, length: mm(1200), width: mm(1200), count: 3 }];
    expect(planSheets(job({ pieces: two, stock: [ply, half] })).purchases).toEqual([
      { stock: "half", count: 1, price: usd(45), cost: usd(45) },
      { stock: "ply", count: 1, price: usd(80), cost: usd(80) },
    ]);
    const cheapHalf = { ...half, price: usd(30) };
    expect(planSheets(job({ pieces: two, stock: [ply, cheapHalf] })).cost).toEqual(usd(90));
  });

  test("uses an offcut, given as a free sheet, where that saves buying one", () => {
    const offcut = { name: "offcut", length: mm(700), width: mm(420), price: usd(0), available: 1 };
    const plan = planSheets(job({ pieces: [{ ...side, count: 1 }], stock: [ply, offcut] }));
    expect(plan.purchases).toEqual([{ stock: "offcut", count: 1, price: usd(0), cost: usd(0) }]);
  });

  test("tells how it was found and why no plan can buy less", () => {
    const plan = planSheets(job({}));
    expect(plan.method).toMatch(/^filled in many orders and by several rules; this plan is number \d+$/);
    expect(plan.proof).toEqual({ proven: true, gap: usd(0) });
    expect(plan.bound).toEqual({
      count: 1,
      cost: usd(80),
      because: "the area of all pieces and kerfs against the largest sheet",
    });
  });

  test("of equal plans takes the one with the largest offcut", () => {
    const [sheet] = planSheets(
      job({ pieces: [{ ...side, length: mm(1200), width: mm(600), count: 1 }] }),
    ).sheets;
    const largest = Math.max(...(sheet?.offcuts ?? []).map(({ length, width }) => length * width));
    expect(largest).toBeCloseTo((2.44 - 1.2 - 0.003) * 1.22, 9);
  });
});

describe("what the saw can do", () => {
  test("two stages change direction once, then only trim", () => {
    fc.assert(
      fc.property(
        someSheetJob,
        fc.constantFrom("two stages" as const, "three stages" as const),
        (some, cuts) => {
          for (const sheet of planSheets({ ...some, cuts }).sheets) {
            const deepest = Math.max(0, ...sheet.pieces.map((piece) => turnsBefore(piece, sheet.cuts)));
            expect(deepest).toBeLessThanOrEqual(cuts === "two stages" ? 2 : 3);
          }
        },
      ),
      { numRuns: 30 },
    );
  });

  test("cuts of any shape make a pinwheel that straight cuts cannot", () => {
    const arm = { name: "arm", length: mm(1500), width: mm(900), count: 4, grain: "free" as const };
    const pieces = [arm, { ...arm, name: "core", length: mm(600), width: mm(600), count: 1 }];
    const stock = [{ name: "square", length: mm(2400), width: mm(2400), price: usd(50) }];
    const given = { pieces, stock, kerf: mm(0) };
    expect(planSheets({ ...given, cuts: "any shape" }).sheets).toHaveLength(1);
    expect(planSheets(given).sheets).toHaveLength(2);
  });

  test("pieces, offcuts and dust of a routed sheet add up, and nothing overlaps", () => {
    fc.assert(
      fc.property(someSheetJob, (some) => {
        for (const sheet of planSheets({ ...some, cuts: "any shape" }).sheets) {
          const { pieces, offcuts, kerfArea, trimArea, length, width } = sheet;
          expect(area(pieces) + area(offcuts) + kerfArea + trimArea).toBeCloseTo(length * width, 9);
          expect(kerfArea).toBeGreaterThanOrEqual(-1e-9);
          const parts = [...pieces, ...offcuts];
          expect(parts.filter((a, i) => parts.slice(i + 1).some((b) => !apart(a, b, 0)))).toEqual([]);
        }
      }),
      { numRuns: 30 },
    );
  });

  test("reports every better plan", () => {
    const seen: number[] = [];
    planSheets(job({ pieces: [{ ...side, count: 20, grain: "free" }] }), ({ cost, bound }) => {
      expect(cost.amount).toBeGreaterThanOrEqual(bound.amount);
      seen.push(cost.amount);
    });
    expect(seen).toEqual([...seen].sort((a, b) => b - a));
    expect(seen.length).toBeGreaterThan(0);
  });
});

/** How often the direction changes, the first counted, in the cuts a piece has seen with trimming left out. */
function turnsBefore(piece: SheetArea, cuts: CutSheet["cuts"]): number {
  const inside = ({ part }: CutSheet["cuts"][number]): boolean =>
    piece.x >= part.x - 1e-9 &&
    piece.y >= part.y - 1e-9 &&
    piece.x + piece.length <= part.x + part.length + 1e-9 &&
    piece.y + piece.width <= part.y + part.width + 1e-9;
  const seen = cuts.filter(inside).map(({ direction }) => direction);
  const turns = seen.filter((direction, i) => direction !== seen[i - 1]).length;
  const trimmed = cuts.filter(inside).at(-1);
  return trimmed && isTrim(trimmed, piece) ? turns - 1 : turns;
}

function isTrim({ part, direction, at }: CutSheet["cuts"][number], piece: SheetArea): boolean {
  return direction === "along"
    ? Math.abs(at - piece.y - piece.width) < 1e-9 && Math.abs(part.length - piece.length) < 1e-9
    : Math.abs(at - piece.x - piece.length) < 1e-9 && Math.abs(part.width - piece.width) < 1e-9;
}

describe("laws", () => {
  test("pieces, offcuts, kerf and trim add up to every sheet", () => {
    fc.assert(
      fc.property(someSheetJob, (some) => {
        for (const { pieces, offcuts, kerfArea, trimArea, length, width } of planSheets(some).sheets) {
          expect(area(pieces) + area(offcuts) + kerfArea + trimArea).toBeCloseTo(length * width, 9);
        }
      }),
    );
  });

  test("following the cuts leaves the pieces and the offcuts on the bench, and nothing else", () => {
    fc.assert(
      fc.property(someSheetJob, (some) => {
        for (const sheet of planSheets(some).sheets) {
          const bench = followCuts(sheet, some.edgeTrim ?? 0, some.kerf);
          const planned = [...sheet.pieces, ...sheet.offcuts];
          expect(bench).toHaveLength(planned.length);
          expect(planned.filter((part) => !bench.some((lying) => same(lying, part)))).toEqual([]);
        }
      }),
    );
  });

  test("no two parts overlap, and a kerf stands between pieces", () => {
    fc.assert(
      fc.property(someSheetJob, (some) => {
        for (const { pieces } of planSheets(some).sheets) {
          const touching = pieces.flatMap((a, i) =>
            pieces.slice(i + 1).filter((b) => !apart(a, b, some.kerf)),
          );
          expect(touching).toEqual([]);
        }
      }),
    );
  });

  test("every piece is cut as often as it was asked for, in its size and along its grain", () => {
    fc.assert(
      fc.property(someSheetJob, (some) => {
        const placed = planSheets(some).sheets.flatMap(({ pieces }) => pieces);
        for (const { name, count, length, width, grain } of some.pieces) {
          const mine = placed.filter((piece) => piece.name === name);
          expect(mine).toHaveLength(count);
          for (const { turned, ...lying } of mine) {
            expect(turned ? [lying.width, lying.length] : [lying.length, lying.width]).toEqual([
              expect.closeTo(length, 9),
              expect.closeTo(width, 9),
            ]);
            if (grain !== "free") expect(turned).toBe(grain === "across");
          }
        }
      }),
    );
  });

  test("no plan beats its bound, and one more piece never lowers the bound", () => {
    fc.assert(
      fc.property(someSheetJob, (some) => {
        const { sheets, cost, bound } = planSheets(some);
        expect(sheets.length).toBeGreaterThanOrEqual(bound.count);
        expect(cost.amount).toBeGreaterThanOrEqual(bound.cost.amount - 1e-9);
        const more = { ...some, pieces: [...some.pieces, { ...side, name: "more", count: 1 }] };
        expect(planSheets(more).bound.count).toBeGreaterThanOrEqual(bound.count);
      }),
    );
  });

  test("the order of the lists does not matter", () => {
    fc.assert(
      fc.property(someSheetJob, ({ timeLimit: _, ...some }) => {
        const reversed = { ...some, pieces: some.pieces.toReversed(), stock: some.stock.toReversed() };
        expect(planSheets(reversed)).toEqual(planSheets(some));
      }),
      { numRuns: 8 },
    );
  });

  test("a free piece may be written either way round", () => {
    fc.assert(
      fc.property(someSheetJob, ({ timeLimit: _, ...some }) => {
        const free = some.pieces.map((piece) => ({ ...piece, grain: "free" as const }));
        const swapped = free.map((piece) => ({ ...piece, length: piece.width, width: piece.length }));
        const cost = (pieces: SheetJob["pieces"]) => planSheets({ ...some, pieces }).cost.amount;
        expect(cost(swapped)).toBe(cost(free));
      }),
      { numRuns: 8 },
    );
  });
});

function apart(a: SheetArea, b: SheetArea, kerf: number): boolean {
  const gaps = [a.x - b.x - b.length, b.x - a.x - a.length, a.y - b.y - b.width, b.y - a.y - a.width];
  return Math.max(...gaps) >= kerf - 1e-9;
}

test.each<[string, Partial<SheetJob>, string]>([
  [
    "a piece whose grain keeps it off every sheet",
    { pieces: [{ ...side, length: mm(1300), width: mm(300), grain: "across" }], stock: [ply, half] },
    "sheets: side (1300 x 300 mm, grain across) does not lie on any sheet, 2440 x 1220 mm or 1220 x 1220 mm after trimming",
  ],
  ["a negative kerf", { kerf: mm(-1) }, "sheets: kerf must be at least 0 mm, got -1 mm"],
  ["a negative trim", { edgeTrim: mm(-1) }, "sheets: edge trim must be at least 0 mm, got -1 mm"],
  ["two pieces of one name", { pieces: [side, side] }, 'sheets: two pieces are named "side"'],
  ["two stocks of one name", { stock: [ply, ply] }, 'sheets: two stocks are named "ply"'],
  [
    "a piece without width",
    { pieces: [{ ...side, width: mm(0) }] },
    "sheets: side: sizes must be positive, got 600 x 0 mm",
  ],
  [
    "too few sheets",
    { stock: [{ ...ply, available: 0 }] },
    "sheets: not enough stock: no plan was found that lays all pieces on the sheets there are, the largest 600 x 400 mm",
  ],
  [
    "a sheet trimmed away",
    { edgeTrim: mm(610) },
    "sheets: ply (2440 x 1220 mm) is used up by trimming its edges; side (600 x 400 mm, grain along) does not lie on any sheet, 1220 x 0 mm after trimming",
  ],
])("refuses %s", (_what, change, message) => {
  expect(() => planSheets(job(change))).toThrow(new RangeError(message));
});
