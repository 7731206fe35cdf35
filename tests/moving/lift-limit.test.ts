import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  frequencyMultiplier,
  type LiftAt,
  type LiftDuration,
  LiftRate,
  liftLimit,
  loadConstant,
} from "../../lib/moving/index.js";
import { degree, mm } from "../../lib/quantity/index.js";

const perMinute = (rate: number): LiftRate => LiftRate.of(rate, "lifts/min");

const ideal: LiftAt = {
  reach: mm(250),
  height: mm(750),
  startHeight: mm(750),
  travel: mm(250),
  twist: degree(0),
  rate: perMinute(0.2),
  duration: "up to 1 h",
  grip: "good",
};

describe("the frequency table", () => {
  const rates = [0.2, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15];
  // NIOSH 94-110 (2021), table 5; every row, hands below 75 cm and from 75 cm up
  const table: [LiftDuration, number, number[]][] = [
    [
      "up to 1 h",
      700,
      [1, 0.97, 0.94, 0.91, 0.88, 0.84, 0.8, 0.75, 0.7, 0.6, 0.52, 0.45, 0.41, 0.37, 0, 0, 0],
    ],
    [
      "up to 1 h",
      750,
      [1, 0.97, 0.94, 0.91, 0.88, 0.84, 0.8, 0.75, 0.7, 0.6, 0.52, 0.45, 0.41, 0.37, 0.34, 0.31, 0.28],
    ],
    ["1 to 2 h", 700, [0.95, 0.92, 0.88, 0.84, 0.79, 0.72, 0.6, 0.5, 0.42, 0.35, 0.3, 0.26, 0, 0, 0, 0, 0]],
    [
      "1 to 2 h",
      750,
      [0.95, 0.92, 0.88, 0.84, 0.79, 0.72, 0.6, 0.5, 0.42, 0.35, 0.3, 0.26, 0.23, 0.21, 0, 0, 0],
    ],
    ["2 to 8 h", 700, [0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18, 0, 0, 0, 0, 0, 0, 0]],
    [
      "2 to 8 h",
      750,
      [0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18, 0.15, 0.13, 0, 0, 0, 0, 0],
    ],
  ];

  test.each(table)("%s, hands at %i mm", (duration, height, expected) => {
    const ours = rates.map((rate) =>
      frequencyMultiplier({ rate: perMinute(rate), duration, startHeight: mm(height) }),
    );
    expect(ours).toEqual(expected.map((value) => expect.closeTo(value, 9)));
  });

  test("allows nothing between the last row of a column and the next", () => {
    const at = (rate: number) =>
      frequencyMultiplier({ rate: perMinute(rate), duration: "up to 1 h", startHeight: mm(700) });
    expect(at(12)).toBeCloseTo(0.37, 9);
    expect(at(12.1)).toBe(0);
  });

  test("lifting more often never raises it", () => {
    const rate = fc.double({ min: 0, max: 15, noNaN: true });
    fc.assert(
      fc.property(
        rate,
        rate,
        fc.constantFrom<LiftDuration>("up to 1 h", "1 to 2 h", "2 to 8 h"),
        (a, b, duration) => {
          const [seldom, often] = [Math.min(a, b), Math.max(a, b)].map((one) =>
            frequencyMultiplier({ rate: perMinute(one), duration, startHeight: mm(800) }),
          );
          expect(often).toBeLessThanOrEqual((seldom ?? 0) + 1e-12);
        },
      ),
    );
  });
});

describe("the weight limit", () => {
  const someLift: fc.Arbitrary<LiftAt> = fc.record({
    reach: fc.integer({ min: 0, max: 630 }).map(mm),
    height: fc.integer({ min: 0, max: 1750 }).map(mm),
    startHeight: fc.integer({ min: 0, max: 1750 }).map(mm),
    travel: fc.integer({ min: 0, max: 1750 }).map(mm),
    twist: fc.integer({ min: 0, max: 135 }).map(degree),
    rate: fc.double({ min: 0, max: 15, noNaN: true }).map(perMinute),
    duration: fc.constantFrom("up to 1 h", "1 to 2 h", "2 to 8 h"),
    grip: fc.constantFrom("good", "fair", "poor"),
  });

  test("never exceeds the load constant, which an ideal lift reaches", () => {
    expect(liftLimit(ideal).limit).toBeCloseTo(loadConstant, 9);
    fc.assert(
      fc.property(someLift, (lift) => {
        const { limit } = liftLimit(lift);
        expect(limit).toBeGreaterThanOrEqual(0);
        expect(limit).toBeLessThanOrEqual(loadConstant + 1e-9);
      }),
    );
  });

  test("is the constant times the six multipliers it shows", () => {
    fc.assert(
      fc.property(someLift, (lift) => {
        const { limit, ...multipliers } = liftLimit(lift);
        expect(Object.values(multipliers).reduce<number>((product, one) => product * one, 23)).toBeCloseTo(
          limit,
          9,
        );
      }),
    );
  });

  test("halves at twice the reach", () => {
    expect(liftLimit({ ...ideal, reach: mm(500) }).limit).toBeCloseTo(loadConstant / 2, 9);
  });

  test.each<[string, Partial<LiftAt>, string]>([
    ["beyond reach", { reach: mm(631) }, "lift.limit: reach must be at most 630 mm, got 631 mm"],
    ["above the head", { height: mm(1800) }, "lift.limit: height must be at most 1750 mm, got 1800 mm"],
    ["behind the back", { twist: degree(136) }, "lift.limit: twist must be at most 135°, got 136°"],
    ["in a rush", { rate: perMinute(16) }, "lift.limit: rate must be at most 15 lifts/min, got 16 lifts/min"],
  ])("refuses a lift %s", (_what, change, message) => {
    expect(() => liftLimit({ ...ideal, ...change })).toThrow(new RangeError(message));
  });
});
