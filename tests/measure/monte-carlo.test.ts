import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { monteCarlo, propagate } from "../../lib/measure/index.js";
import { mm } from "../../lib/quantity/given-units.js";
import { Area, Length, type Ratio, ratio } from "../../lib/quantity/index.js";
import { Refusal } from "../../lib/refusal.js";

interface Two {
  readonly a: Ratio;
  readonly b: Ratio;
}
const at: Two = { a: ratio(3), b: ratio(5) };
const sum = ({ a, b }: Two): Ratio => ratio(a + b);

describe("drawn spread", () => {
  test("is the same for the same seed and another for another", () => {
    const run = (seed: number) =>
      monteCarlo(sum, at, { a: { standard: 0.1 }, b: { standard: 0.2 } }, { seed, draws: 1000 });
    expect(run(7)).toEqual(run(7));
    expect(run(7).mean).not.toBe(run(8).mean);
  });

  test("of a straight sum agrees with first order, correlated or not", () => {
    fc.assert(
      fc.property(fc.double({ min: -0.95, max: 0.95, noNaN: true }), (coefficient) => {
        const correlations = [{ between: ["a", "b"] as const, coefficient }];
        const known = { a: { standard: 0.3 }, b: { standard: 0.4 } };
        const drawn = monteCarlo(sum, at, known, { correlations, draws: 20_000 });
        const straight = propagate(sum, at, known, ratio(0.95), correlations);
        expect(Math.abs(drawn.standardUncertainty / straight.standardUncertainty - 1)).toBeLessThan(0.03);
        const shares = new Map(straight.shares.map(({ input, share }) => [input, share]));
        for (const { input, share } of drawn.shares)
          expect(Math.abs(share - (shares.get(input) ?? 0))).toBeLessThan(0.05);
      }),
      { numRuns: 20 },
    );
  });

  test("of a square has the mean and scatter of a chi-square, which first order cannot see", () => {
    const square = monteCarlo(
      ({ a }) => ratio(a ** 2),
      { a: ratio(0) },
      { a: { standard: 1 } },
      { draws: 100_000 },
    );
    expect(square.value).toBe(0);
    expect(Math.abs(square.mean - 1)).toBeLessThan(0.02);
    expect(Math.abs(square.standardUncertainty - Math.SQRT2)).toBeLessThan(0.04);
    // 95 % of a chi-square with one degree of freedom: between 0.000982 and 5.0239.
    expect(Math.abs(square.interval.high - 5.0239)).toBeLessThan(0.15);
    expect(square.shares[0]?.share).toBeLessThan(0.05);
  });

  test("of an input from few readings has the tails of Student's t", () => {
    const drawn = monteCarlo(
      ({ a }) => a,
      { a: ratio(0) },
      { a: { standard: 1, degreesOfFreedom: 4 } },
      { draws: 100_000 },
    );
    // GUM table G.2: 2.78 for 4 degrees of freedom.
    expect(Math.abs(drawn.interval.high - 2.78)).toBeLessThan(0.06);
  });

  test("shrinks with the uncertainty of its inputs", () => {
    const width = (standard: number) => {
      const { low, high } = monteCarlo(sum, at, { a: { standard } }, { draws: 2000 }).interval;
      return high - low;
    };
    expect(width(0.1)).toBeCloseTo(width(0.2) / 2, 9);
  });

  test("leaves a few draws out of range, and refuses many", () => {
    const positive = ({ a }: { readonly a: Ratio }): Ratio => {
      if (a <= 0) throw new Refusal("a must be positive");
      return a;
    };
    const few = monteCarlo(positive, { a: ratio(3) }, { a: { standard: 1 } });
    expect(few.left).toBeGreaterThan(0);
    expect(few.left + few.draws).toBe(20_000);
    expect(() => monteCarlo(positive, { a: ratio(1) }, { a: { standard: 1 } })).toThrow(
      /^monte carlo: \d+ of 20000 draws fall outside the range of the computation: measure better$/,
    );
  });

  test("leaves no bug out: what is thrown that is no refusal comes through", () => {
    const broken = (): Ratio => {
      throw new RangeError("Invalid array length");
    };
    expect(() => monteCarlo(broken, { a: ratio(3) }, { a: { standard: 1 } })).toThrow("Invalid array length");
  });

  test.each([
    [{ draws: 10 }, "monte carlo: draws must be a whole number of at least 1000, got 10"],
    [
      { correlations: [{ between: ["a", "c"] as const, coefficient: 0.5 }] },
      "correlation: expected two different inputs among a, b, got a and c",
    ],
    [
      { correlations: [{ between: ["a", "b"] as const, coefficient: 1.5 }] },
      "correlation: a and b must be from -1 to 1, got 1.5",
    ],
  ])("refuses %j", (options, message) => {
    expect(() => monteCarlo(sum, at, { a: { standard: 1 }, b: { standard: 1 } }, options)).toThrow(message);
  });

  test("refuses correlations that contradict each other", () => {
    const three = { a: ratio(1), b: ratio(2), c: ratio(3) };
    const each = { a: { standard: 1 }, b: { standard: 1 }, c: { standard: 1 } };
    const pair = (one: string, other: string, coefficient: number) => ({
      between: [one, other] as const,
      coefficient,
    });
    const correlations = [pair("a", "b", 1), pair("b", "c", 1), pair("a", "c", -1)];
    expect(() => monteCarlo(({ a }) => a, three, each, { correlations })).toThrow(
      "correlation: the coefficients contradict each other",
    );
  });
});

describe("the end gauge of GUM H.1", () => {
  interface EndGauge {
    /** nm */
    readonly standard: Ratio;
    readonly difference: Ratio;
    /** 1/K */
    readonly expansion: Ratio;
    readonly expansionDifference: Ratio;
    /** K from 20 °C */
    readonly temperature: Ratio;
    readonly temperatureDifference: Ratio;
  }
  const length = (of: EndGauge): Ratio =>
    ratio(
      of.standard +
        of.difference -
        of.standard * (of.expansionDifference * of.temperature + of.expansion * of.temperatureDifference),
    );
  const gauge: EndGauge = {
    standard: ratio(50_000_623),
    difference: ratio(215),
    expansion: ratio(11.5e-6),
    expansionDifference: ratio(0),
    temperature: ratio(-0.1),
    temperatureDifference: ratio(0),
  };
  const known = {
    standard: { standard: 25, degreesOfFreedom: 18 },
    difference: { standard: 9.7, degreesOfFreedom: 25 },
    expansion: { standard: 1.2e-6 },
    expansionDifference: { standard: 0.58e-6, degreesOfFreedom: 50 },
    temperature: { standard: 0.41 },
    temperatureDifference: { standard: 0.029, degreesOfFreedom: 2 },
  };

  test("first order: 32 nm, 16 degrees of freedom, 93 nm at 99 %", () => {
    const found = propagate(length, gauge, known, ratio(0.99));
    expect(found.value).toBe(50_000_838);
    expect(Math.abs(found.standardUncertainty - 32)).toBeLessThan(0.5);
    expect(found.degreesOfFreedom).toBe(16);
    expect(Math.abs(found.interval.high - found.value - 93)).toBeLessThan(1);
    expect(found.shares[0]?.input).toBe("standard");
  });

  test("drawn, the products that first order leaves out show: H.1.7 has 34 nm", () => {
    // Student's t of 2 degrees of freedom has no variance; as a plain normal it has.
    const plain = { ...known, temperatureDifference: { standard: 0.029 }, standard: { standard: 25 } };
    const drawn = monteCarlo(length, gauge, plain, { draws: 100_000, seed: 11 });
    expect(Math.abs(drawn.standardUncertainty - 34)).toBeLessThan(0.8);
  });
});

test("inputs with their units spread as plain ones do", () => {
  const plain = { width: Length.of(50, "mm"), depth: Length.of(9, "mm") };
  const areaOf = ({ width, depth }: typeof plain): Area => Area.si(width * depth);
  const off = { width: { standard: 3e-4 } };
  const given = { width: mm(50), depth: mm(9) };
  expect(propagate(areaOf, given, off)).toEqual(propagate(areaOf, plain, off));
  expect(monteCarlo(areaOf, given, off, { seed: 3 }).shares).toEqual(
    monteCarlo(areaOf, plain, off, { seed: 3 }).shares,
  );
});
