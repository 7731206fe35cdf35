import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { propagate, studentFactor } from "../../lib/measure/index.js";
import { mm, type Ratio, ratio } from "../../lib/quantity/index.js";

interface Pair {
  readonly a: Ratio;
  readonly b: Ratio;
}
const positive = fc.double({ min: 1, max: 100, noNaN: true });

describe("spread of a computed value", () => {
  test("of a sum adds uncertainties as the sides of a right angle", () => {
    const sum = ({ a, b }: Pair) => ratio(a + b);
    fc.assert(
      fc.property(positive, positive, (a, b) => {
        const { standardUncertainty } = propagate(
          sum,
          { a: ratio(a), b: ratio(b) },
          { a: { standard: 3 }, b: { standard: 4 } },
        );
        expect(standardUncertainty).toBeCloseTo(5, 9);
      }),
    );
  });

  test("of a product adds relative uncertainties as the sides of a right angle", () => {
    const product = ({ a, b }: Pair) => ratio(a * b);
    fc.assert(
      fc.property(positive, positive, (a, b) => {
        const { value, standardUncertainty } = propagate(
          product,
          { a: ratio(a), b: ratio(b) },
          { a: { standard: 0.03 * a }, b: { standard: 0.04 * b } },
        );
        expect(standardUncertainty / value).toBeCloseTo(0.05, 9);
      }),
    );
  });

  test("names the input that matters most first, shares summing to 1", () => {
    const cube = ({ a, b }: Pair) => ratio(a * b ** 3);
    const { shares } = propagate(
      cube,
      { a: ratio(10), b: ratio(10) },
      { a: { standard: 0.01 }, b: { standard: 0.01 } },
    );
    expect(shares.map(({ input }) => input)).toEqual(["b", "a"]);
    // Powers 3 and 1: variances as 9 to 1.
    expect(shares[0]?.share).toBeCloseTo(0.9, 5);
    expect(shares.reduce((total, { share }) => total + share, 0)).toBeCloseTo(1, 12);
  });

  test("takes Student's factor of the readings behind it", () => {
    const same = ({ a }: Pair) => a;
    const { interval, degreesOfFreedom } = propagate(
      same,
      { a: ratio(7), b: ratio(1) },
      { a: { standard: 0.5, degreesOfFreedom: 4 } },
    );
    const factor = studentFactor({ confidence: ratio(0.95), degreesOfFreedom: 4 });
    expect(degreesOfFreedom).toBe(4);
    expect(interval.high).toBeCloseTo(7 + 0.5 * factor, 9);
    expect(interval.low).toBeCloseTo(7 - 0.5 * factor, 9);
  });

  test("has effective degrees of freedom by Welch-Satterthwaite", () => {
    const sum = ({ a, b }: Pair) => ratio(a + b);
    const twin = { standard: 1, degreesOfFreedom: 5 };
    // Equal parts: (1 + 1)^2 / (1/5 + 1/5) = 10.
    expect(propagate(sum, { a: ratio(1), b: ratio(1) }, { a: twin, b: twin }).degreesOfFreedom).toBe(10);
  });

  test("is nothing when every input is exact", () => {
    const sum = ({ a, b }: Pair) => ratio(a + b);
    const { interval, shares } = propagate(sum, { a: ratio(1), b: ratio(2) }, { a: { standard: 0 } });
    expect(interval).toEqual({ low: 3, high: 3 });
    expect(shares).toEqual([{ input: "a", share: 0 }]);
  });

  test("shrinks as readings are added", () => {
    const same = ({ a }: Pair) => a;
    const width = (readings: number): number => {
      const { interval } = propagate(
        same,
        { a: ratio(7), b: ratio(1) },
        { a: { standard: 1 / Math.sqrt(readings), degreesOfFreedom: readings - 1 } },
      );
      return interval.high - interval.low;
    };
    expect([2, 3, 5, 10, 30].map(width)).toEqual([2, 3, 5, 10, 30].map(width).sort((a, b) => b - a));
  });

  test("refuses a negative uncertainty", () => {
    expect(() =>
      propagate(({ a }: Pair) => a, { a: ratio(1), b: ratio(1) }, { a: { standard: -1 } }),
    ).toThrow("propagate: uncertainty of a must be a number from 0 up, got -1");
  });

  test("leaves words and lists of an input record alone", () => {
    const inputs = { span: mm(100), support: "clamped", loads: [1, 2] };
    const result = propagate(({ span }: typeof inputs) => span, inputs, { span: { standard: 0.001 } });
    expect(result.standardUncertainty).toBeCloseTo(0.001, 12);
    expect(() =>
      // @ts-expect-error a word has no uncertainty
      propagate(({ span }: typeof inputs) => span, inputs, { support: { standard: 1 } }),
    ).toThrow("uncertainty: input support must be a number, got clamped");
  });
});
