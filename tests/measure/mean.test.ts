import fc from "fast-check";
import { expect, test } from "vitest";
import { meanWithInterval, measuredMean } from "../../lib/measure/index.js";
import { Length, mm, ratio } from "../../lib/quantity/index.js";

const hundredths = fc.integer({ min: -10_000, max: 10_000 }).map((value) => value / 100);
const readings = fc.array(hundredths, { minLength: 2, maxLength: 12 });

test("a mean moves with its readings and its interval does not", () => {
  fc.assert(
    fc.property(readings, fc.double({ min: -50, max: 50, noNaN: true }), (values, shift) => {
      const confidence = ratio(0.95);
      const still = meanWithInterval({ values: values.map(ratio), confidence });
      const moved = meanWithInterval({ values: values.map((value) => ratio(value + shift)), confidence });
      expect(moved.mean).toBeCloseTo(still.mean + shift, 9);
      expect(moved.halfWidth).toBeCloseTo(still.halfWidth, 6);
    }),
  );
});

test("the same readings taken twice over narrow the interval", () => {
  fc.assert(
    fc.property(readings, (values) => {
      fc.pre(new Set(values).size > 1);
      const confidence = ratio(0.95);
      const once = meanWithInterval({ values: values.map(ratio), confidence });
      const twice = meanWithInterval({ values: [...values, ...values].map(ratio), confidence });
      expect(twice.halfWidth).toBeLessThan(once.halfWidth);
    }),
  );
});

test("a measured mean keeps its kind", () => {
  const { mean, interval, degreesOfFreedom } = measuredMean([mm(6.4), mm(6.5), mm(6.6)]);
  expect(Length.show(mean)).toBe("6.5 mm");
  expect(degreesOfFreedom).toBe(2);
  // t(2) = 4.3027, s = 0.1 mm, n = 3.
  expect(Length.in(interval.high, "mm")).toBeCloseTo(6.5 + (4.30265 * 0.1) / Math.sqrt(3), 5);
  expect(Length.in(interval.low, "mm")).toBeCloseTo(6.5 - (4.30265 * 0.1) / Math.sqrt(3), 5);
});

test("one reading has no interval", () => {
  expect(() => measuredMean([mm(6.4)])).toThrow("mean.interval: at least 2 readings, got 1");
});
