/** Random cutting jobs, in whole millimetres. */
import fc from "fast-check";
import type { BarCut, BarJob, SheetJob } from "../../lib/cutting/index.js";
import { type Length, mm, money, Time } from "../../lib/quantity/index.js";

const kerf = fc.integer({ min: 0, max: 6 }).map(mm);

/** Cuts that come from a 2 m bar trimmed by 10 mm at each end. */
export const someCuts: fc.Arbitrary<{ pieces: BarCut[]; kerf: Length }> = fc.record({
  pieces: fc.array(
    fc.record({
      length: fc.integer({ min: 1, max: 1980 }).map(mm),
      count: fc.integer({ min: 0, max: 6 }),
    }),
    { maxLength: 12 },
  ),
  kerf,
});

/** Two lengths of stock, some leftovers, pieces that come from the longer bar at least. */
export const someBarJob: fc.Arbitrary<BarJob> = fc.record({
  pieces: fc
    .array(
      fc.record({ length: fc.integer({ min: 1, max: 2960 }).map(mm), count: fc.integer({ min: 0, max: 5 }) }),
      {
        maxLength: 10,
      },
    )
    .map((pieces) => pieces.map((piece, i) => ({ ...piece, name: `piece ${i}` }))),
  stock: fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 40 })).map(([short, long]) => [
    { name: "2 m", length: mm(2000), price: money(short, "USD") },
    { name: "3 m", length: mm(3000), price: money(long, "USD") },
  ]),
  offcuts: fc
    .array(fc.integer({ min: 30, max: 1500 }), { maxLength: 3 })
    .map((lengths) => lengths.map((length, i) => ({ name: `leftover ${i}`, length: mm(length) }))),
  kerf,
  endTrim: fc.integer({ min: 0, max: 20 }).map(mm),
  smallestUseful: fc.constant(mm(150)),
});

/** Two sizes of sheet, pieces of every grain that lie on the larger sheet at least. */
export const someSheetJob: fc.Arbitrary<SheetJob> = fc.record({
  pieces: fc
    .array(
      fc.record({
        length: fc.integer({ min: 20, max: 1180 }).map(mm),
        width: fc.integer({ min: 20, max: 1180 }).map(mm),
        count: fc.integer({ min: 0, max: 4 }),
        grain: fc.constantFrom("along" as const, "across" as const, "free" as const),
      }),
      { maxLength: 8 },
    )
    .map((pieces) => pieces.map((piece, i) => ({ ...piece, name: `piece ${i}` }))),
  stock: fc.tuple(fc.integer({ min: 1, max: 90 }), fc.integer({ min: 1, max: 90 })).map(([small, large]) => [
    { name: "half", length: mm(1220), width: mm(1220), price: money(small, "USD") },
    { name: "full", length: mm(2440), width: mm(1220), price: money(large, "USD") },
  ]),
  kerf,
  edgeTrim: fc.integer({ min: 0, max: 15 }).map(mm),
  timeLimit: fc.constant(Time.of(0.003, "s")),
});
