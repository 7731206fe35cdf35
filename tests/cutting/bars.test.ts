import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BarJob, type CutBar, type OneLengthJob, planBars } from "../../lib/cutting/index.js";
import { degree, mm, money, Time } from "../../lib/quantity/index.js";
import { someBarJob } from "./arbitrary.js";
import { instances } from "./instances.js";

const usd = (amount: number) => money(amount, "USD");
const twoMetre = { name: "angle 2 m", length: mm(2000), price: usd(9) };
const threeMetre = { name: "angle 3 m", length: mm(3000), price: usd(12) };
const job = (change: Partial<BarJob>): BarJob => ({
  pieces: [{ name: "rail", length: mm(900), count: 4 }],
  stock: [twoMetre],
  kerf: mm(3),
  ...change,
});
const sum = (lengths: readonly number[]): number => lengths.reduce((total, one) => total + one, 0);
const barJobOf = ({ pieces, stockLength, kerf }: OneLengthJob): BarJob => ({
  pieces: pieces.map((piece, i) => ({ ...piece, name: `piece ${i}` })),
  stock: [{ name: "bar", length: stockLength, price: usd(1) }],
  kerf,
});
const names = ({ pieces }: CutBar): string[] => pieces.map(({ name }) => name);

const tenMetre = { name: "bar", length: mm(10), price: usd(1) };
/** Up to three lengths, up to four of each, from bars of 10. */
const fewPieces = fc
  .uniqueArray(fc.integer({ min: 2, max: 8 }), { minLength: 1, maxLength: 3 })
  .chain((lengths) =>
    fc
      .tuple(...lengths.map(() => fc.integer({ min: 1, max: 4 })))
      .map((counts) =>
        lengths.map((length, i) => ({ name: `piece ${i}`, length: mm(length), count: counts[i] as number })),
      ),
  );

/** Tries every way to share pieces out to so many bars, each bar no fuller than the one before; knows nothing else. */
function fewestLayoutsByHand(lengths: readonly number[], demand: readonly number[], bars: number): number {
  const fills = waysToFill(lengths, demand, 10);
  let fewest = bars;
  const go = (from: number, left: readonly number[], bar: number, different: number, last: number): void => {
    if (left.every((count) => count === 0)) fewest = Math.min(fewest, different);
    if (bar === bars || different > fewest) return;
    for (let i = from; i < fills.length; i++) {
      const rest = left.map((count, type) => count - (fills[i]?.[type] as number));
      if (rest.every((count) => count >= 0)) go(i, rest, bar + 1, different + Number(i !== last), i);
    }
  };
  go(0, demand, 0, 0, -1);
  return fewest;
}

function waysToFill(lengths: readonly number[], demand: readonly number[], room: number): number[][] {
  const [length, ...others] = lengths;
  if (length === undefined) return [[]];
  const [most, ...rest] = demand;
  return Array.from({ length: Math.min(most as number, Math.floor(room / length + 1e-9)) + 1 }, (_, count) =>
    waysToFill(others, rest, room - count * length).map((fill) => [count, ...fill]),
  ).flat();
}

describe("a plan for bars", () => {
  test("saws the longest piece first and fills up with shorter ones", () => {
    const plan = planBars(
      job({
        pieces: [
          { name: "post", length: mm(250), count: 3 },
          { name: "rail", length: mm(1200), count: 2 },
          { name: "stile", length: mm(700), count: 2 },
        ],
      }),
    );
    expect(plan.bars.map(names)).toEqual([
      ["rail", "stile"],
      ["rail", "stile"],
      ["post", "post", "post"],
    ]);
  });

  test("loses a kerf after each piece and starts after the trimmed end", () => {
    const [bar] = planBars(
      job({ pieces: [{ name: "rail", length: mm(900), count: 2 }], endTrim: mm(10) }),
    ).bars;
    expect(bar?.pieces.map(({ start }) => start * 1000)).toEqual([
      expect.closeTo(10, 9),
      expect.closeTo(913, 9),
    ]);
    expect(bar?.kerfLoss).toBeCloseTo(0.006, 12);
    expect(bar?.trimLoss).toBeCloseTo(0.02, 12);
    expect(bar?.remainder).toBeCloseTo(0.174, 12);
  });

  test("needs no last cut where the last piece ends at the end of the bar", () => {
    const [bar] = planBars(job({ pieces: [{ name: "half", length: mm(998.5), count: 2 }] })).bars;
    expect(bar).toMatchObject({ kerfLoss: mm(3), remainder: 0, keep: false });
  });

  test("turns all that is left to dust where it is narrower than the kerf", () => {
    const [bar] = planBars(job({ pieces: [{ name: "long", length: mm(1998), count: 1 }] })).bars;
    expect(bar?.kerfLoss).toBeCloseTo(0.002, 12);
    expect(bar?.remainder).toBe(0);
  });

  test("uses leftovers first, the shortest that fits, without trimming them again", () => {
    const plan = planBars(
      job({
        pieces: [{ name: "post", length: mm(400), count: 2 }],
        offcuts: [
          { name: "end of a rail", length: mm(1000) },
          { name: "stub", length: mm(400) },
        ],
        endTrim: mm(10),
      }),
    );
    expect(plan.bars.map(({ stock, from, trimLoss }) => [stock, from, trimLoss])).toEqual([
      ["stub", "rack", 0],
      ["end of a rail", "rack", 0],
    ]);
    expect(plan.cost).toEqual(usd(0));
    expect(plan.bound).toMatchObject({ count: 0, cost: usd(0) });
  });

  test("says which remainders are worth keeping", () => {
    const pieces = [{ name: "rail", length: mm(1840), count: 1 }];
    const keep = (smallest: number) =>
      planBars(job({ pieces, smallestUseful: mm(smallest) })).bars.map((bar) => bar.keep);
    expect(keep(157)).toEqual([true]);
    expect(keep(158)).toEqual([false]);
  });

  test("widens every cut to the steepest mitre", () => {
    const mitre = { left: degree(45), right: degree(0) };
    const [bar] = planBars(job({ pieces: [{ name: "rail", length: mm(900), count: 2, mitre }] })).bars;
    expect(bar?.kerfLoss).toBeCloseTo(2 * 0.003 * Math.SQRT2, 12);
    expect(bar?.pieces[0]?.mitre).toEqual(mitre);
  });
});

describe("the purchase", () => {
  test("is the cheaper stock, not the fewer bars", () => {
    const dear = { ...threeMetre, price: usd(30) };
    expect(planBars(job({ stock: [dear, twoMetre] })).purchases).toEqual([
      { stock: "angle 2 m", count: 2, price: usd(9), cost: usd(18) },
    ]);
  });

  test("exchanges the last bar for a shorter one that still holds its pieces", () => {
    const pieces = [{ name: "rail", length: mm(900), count: 5 }];
    const plan = planBars(job({ pieces, stock: [twoMetre, { ...threeMetre, price: usd(11) }] }));
    expect(plan.purchases.map(({ stock, count }) => [stock, count])).toEqual([
      ["angle 2 m", 1],
      ["angle 3 m", 1],
    ]);
    expect(plan.cost).toEqual(usd(20));
  });

  test("falls back on other stock when one is sold out", () => {
    const plan = planBars(
      job({
        stock: [
          { ...twoMetre, available: 1 },
          { ...threeMetre, price: usd(99) },
        ],
      }),
    );
    expect(plan.purchases.map(({ stock, count }) => [stock, count])).toEqual([
      ["angle 2 m", 1],
      ["angle 3 m", 1],
    ]);
  });

  test("tells how it was found, and that no plan is cheaper", () => {
    expect(planBars(job({}))).toMatchObject({
      method: "first-fit decreasing, leftovers first, which the bound shows to be as cheap as any",
      proof: { proven: true, gap: usd(0) },
    });
  });

  test("is searched for where first-fit wastes a bar", () => {
    const pieces = [
      { name: "rail", length: mm(800), count: 2 },
      { name: "stile", length: mm(600), count: 4 },
    ];
    const plan = planBars(job({ pieces, kerf: mm(0) }));
    expect(plan.bars).toHaveLength(2);
    expect(plan).toMatchObject({
      method: "column generation and a search over ways to fill a bar",
      proof: { proven: true },
    });
  });

  test("says how much a better plan could save when it is stopped at once", () => {
    const [triplets] = instances.filter(({ name }) => name === "t60_00");
    if (!triplets) throw new Error("no such instance");
    const { bound, cost, proof } = planBars({ ...barJobOf(triplets.job), timeLimit: Time.of(0, "s") });
    expect(proof).toEqual({ proven: false, gap: usd(cost.amount - 20) });
    expect(bound.cost).toEqual(usd(20));
    expect(cost.amount).toBeLessThanOrEqual(23);
  });

  test("repeats one layout where that buys no more", () => {
    const pieces = [
      { name: "long", length: mm(1000), count: 2 },
      { name: "short", length: mm(500), count: 4 },
    ];
    expect(planBars(job({ pieces, kerf: mm(0) }))).toMatchObject({ layouts: 1, cost: usd(18) });
  });

  test("takes few different layouts, and proves that none takes fewer", () => {
    fc.assert(
      fc.property(fewPieces, (pieces) => {
        const plan = planBars(job({ pieces, kerf: mm(0), stock: [tenMetre] }));
        const demand = pieces.map(({ count }) => count);
        const fewest = fewestLayoutsByHand(
          pieces.map(({ length }) => length * 1000),
          demand,
          plan.bars.length,
        );
        expect([plan.layouts, plan.layoutsAtLeast]).toEqual([fewest, fewest]);
      }),
      { numRuns: 60 },
    );
  });

  test("stands beside the reason for its bound", () => {
    expect(planBars(job({ pieces: [{ name: "long", length: mm(1100), count: 3 }] })).bound).toEqual({
      count: 3,
      cost: usd(27),
      because: "pieces longer than half the longest bar, no two of which share one",
    });
    expect(planBars(job({})).bound).toMatchObject({
      count: 2,
      because: "all pieces and kerfs against the longest bar",
    });
  });
});

describe("laws", () => {
  test("pieces, kerf, trim and remainder add up to every bar", () => {
    fc.assert(
      fc.property(someBarJob, (some) => {
        for (const { length, pieces, kerfLoss, trimLoss, remainder } of planBars(some).bars) {
          expect(sum(pieces.map((piece) => piece.length)) + kerfLoss + trimLoss + remainder).toBeCloseTo(
            length,
            9,
          );
          expect(remainder).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });

  test("every piece is sawn as often as it was asked for, and none overlaps the next", () => {
    fc.assert(
      fc.property(someBarJob, (some) => {
        const { bars } = planBars(some);
        for (const { name, count } of some.pieces) {
          expect(bars.flatMap(names).filter((sawn) => sawn === name)).toHaveLength(count);
        }
        for (const { pieces } of bars) {
          const gaps = pieces
            .slice(1)
            .map(({ start }, i) => start - (pieces[i]?.start ?? 0) - (pieces[i]?.length ?? 0));
          expect(gaps.every((gap) => Math.abs(gap - some.kerf) < 1e-9)).toBe(true);
        }
      }),
    );
  });

  test("no plan beats its bound", () => {
    fc.assert(
      fc.property(someBarJob, (some) => {
        const { purchases, cost, bound } = planBars(some);
        expect(sum(purchases.map(({ count }) => count))).toBeGreaterThanOrEqual(bound.count);
        expect(cost.amount).toBeGreaterThanOrEqual(bound.cost.amount - 1e-9);
      }),
    );
  });

  test("one more piece never lowers the bound, leftovers or not", () => {
    fc.assert(
      fc.property(someBarJob, fc.integer({ min: 1, max: 2960 }), (some, more) => {
        const pieces = [...some.pieces, { name: "more", length: mm(more), count: 1 }];
        const [before, after] = [planBars(some).bound, planBars({ ...some, pieces }).bound];
        expect(after.count).toBeGreaterThanOrEqual(before.count);
        expect(after.cost.amount).toBeGreaterThanOrEqual(before.cost.amount - 1e-9);
      }),
    );
  });

  test("the order of the lists does not matter", () => {
    fc.assert(
      fc.property(someBarJob, (some) => {
        const reversed = {
          ...some,
          pieces: some.pieces.toReversed(),
          stock: some.stock.toReversed(),
          offcuts: (some.offcuts ?? []).toReversed(),
        };
        expect(planBars(reversed)).toEqual(planBars(some));
      }),
    );
  });

  test("a cheaper price never raises the bill", () => {
    fc.assert(
      fc.property(someBarJob, (some) => {
        const [first, ...others] = some.stock;
        if (!first) return;
        const cheaper = { ...first, price: usd(first.price.amount * 0.75) };
        const [before, after] = [planBars(some), planBars({ ...some, stock: [cheaper, ...others] })];
        fc.pre(before.proof.proven && after.proof.proven);
        expect(after.cost.amount).toBeLessThanOrEqual(before.cost.amount + 1e-9);
      }),
    );
  });

  test("one more piece never lowers the bill", () => {
    fc.assert(
      fc.property(someBarJob, fc.integer({ min: 1, max: 2960 }), (some, more) => {
        const pieces = [...some.pieces, { name: "more", length: mm(more), count: 1 }];
        const [before, after] = [planBars(some), planBars({ ...some, pieces })];
        fc.pre(before.proof.proven && after.proof.proven);
        expect(after.cost.amount).toBeGreaterThanOrEqual(before.cost.amount - 1e-9);
      }),
    );
  });

  test.each(instances)("instance $name: the plan takes the proved fewest bars", ({ job: given, fewest }) => {
    const { bars, bound, proof } = planBars(barJobOf(given));
    expect([bars.length, bound.count, proof.proven]).toEqual([fewest, fewest, true]);
  });
});

test.each<[string, Partial<BarJob>, string]>([
  [
    "a piece longer than every bar",
    { pieces: [{ name: "rail", length: mm(1990), count: 1 }], endTrim: mm(10) },
    "bars: rail (1990 mm) is longer than every bar, 1980 mm at most after trimming",
  ],
  ["a negative kerf", { kerf: mm(-3) }, "bars: kerf must be at least 0 mm, got -3 mm"],
  [
    "two pieces of one name",
    {
      pieces: [
        { name: "rail", length: mm(9), count: 1 },
        { name: "rail", length: mm(8), count: 1 },
      ],
    },
    'bars: two pieces are named "rail"',
  ],
  [
    "a piece without length, and half a piece",
    {
      pieces: [
        { name: "rail", length: mm(0), count: 1 },
        { name: "post", length: mm(9), count: 0.5 },
      ],
    },
    "bars: post: expected a whole number from 0 up, got 0.5; rail: sizes must be positive, got 0 mm",
  ],
  ["no stock", { stock: [] }, "bars: no stock to buy from"],
  [
    "two currencies",
    { stock: [twoMetre, { ...threeMetre, price: money(9, "EUR") }] },
    "bars: stock is priced in USD and EUR",
  ],
  [
    "a price below zero",
    { stock: [{ ...twoMetre, price: usd(-1) }] },
    "bars: angle 2 m: price must be at least 0, got -1",
  ],
  [
    "a bar trimmed away",
    { endTrim: mm(1000) },
    "bars: angle 2 m (2000 mm) is used up by trimming its ends; rail (900 mm) is longer than every bar, 0 mm at most after trimming",
  ],
  [
    "an impossible mitre",
    { pieces: [{ name: "rail", length: mm(9), count: 1, mitre: { left: degree(90), right: degree(0) } }] },
    "bars: rail: a mitre must be from 0 to below 90 degrees off square",
  ],
  [
    "too few bars",
    { stock: [{ ...twoMetre, available: 1 }] },
    "bars: not enough stock: no bar is left for rail (900 mm)",
  ],
])("refuses %s", (_what, change, message) => {
  expect(() => planBars(job(change))).toThrow(new RangeError(message));
});
