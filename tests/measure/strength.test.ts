import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { characteristicStrength, toleranceFactor } from "../../lib/measure/index.js";
import { newton, ratio } from "../../lib/quantity/index.js";

const share = ratio(0.95);
const confidence = ratio(0.75);

describe("the factor for a lower bound", () => {
  test("falls with every further test, towards the normal point", () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 60 }), (tests) => {
        const factor = toleranceFactor({ tests, share, confidence });
        expect(toleranceFactor({ tests: tests + 1, share, confidence })).toBeLessThan(factor);
        expect(factor).toBeGreaterThan(1.6449);
      }),
      { numRuns: 15 },
    );
  });

  test("is refused for two tests", () => {
    expect(() => toleranceFactor({ tests: 2, share, confidence })).toThrow(
      "tolerance.factor: tests must be at least 3, got 2",
    );
  });
});

describe("strength from tests", () => {
  const loads = fc.array(fc.double({ min: 500, max: 900, noNaN: true }), { minLength: 3, maxLength: 12 });

  test("lies below the lowest of a few tests' median, and grows in proportion", () => {
    fc.assert(
      fc.property(loads, fc.double({ min: 0.5, max: 4, noNaN: true }), (values, by) => {
        const { strength, median } = characteristicStrength({ loads: values.map(newton) });
        expect(strength).toBeLessThan(median);
        const scaled = characteristicStrength({ loads: values.map((one) => newton(one * by)) });
        expect(scaled.strength / strength).toBeCloseTo(by, 6);
      }),
      { numRuns: 25 },
    );
  });

  test("comes nearer to the median when the same tests are made twice", () => {
    fc.assert(
      fc.property(loads, (values) => {
        const once = characteristicStrength({ loads: values.map(newton) });
        const twice = characteristicStrength({ loads: [...values, ...values].map(newton) });
        expect(twice.strength).toBeGreaterThan(once.strength);
      }),
      { numRuns: 25 },
    );
  });

  test("is not given from two tests", () => {
    expect(() => characteristicStrength({ loads: [newton(700), newton(710)] })).toThrow(
      "strength.characteristic: at least 3 tests, got 2: pull more",
    );
  });
});
