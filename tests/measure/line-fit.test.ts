import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lineFit, outliers, residuals } from "../../lib/measure/index.js";
import { ratio } from "../../lib/quantity/index.js";

const points = (x: readonly number[], y: readonly number[]) => ({ x: x.map(ratio), y: y.map(ratio) });

describe("a straight line", () => {
  test("through exact points is found exactly", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        fc.double({ min: -50, max: 50, noNaN: true }),
        (slope, intercept) => {
          const x = [1, 2.5, 4, 7];
          const fit = lineFit(
            points(
              x,
              x.map((one) => intercept + slope * one),
            ),
          );
          expect(fit.slope).toBeCloseTo(slope, 9);
          expect(fit.intercept).toBeCloseTo(intercept, 9);
          expect(fit.residualDeviation).toBeCloseTo(0, 9);
        },
      ),
    );
  });

  test("leaves residuals that sum to nothing", () => {
    const y = fc.array(fc.integer({ min: -10, max: 10 }), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(y, (values) => {
        fc.pre(new Set(values).size > 1);
        const set = points([1, 2, 3, 5], values);
        const rest = residuals(set, lineFit(set));
        expect(rest.reduce((sum, one) => sum + one, 0)).toBeCloseTo(0, 9);
      }),
    );
  });

  test("does not care in which order points are read", () => {
    const forward = lineFit(points([1, 2, 3, 5], [1, 3, 2, 6]));
    const backward = lineFit(points([5, 3, 2, 1], [6, 2, 3, 1]));
    expect(backward.slope).toBeCloseTo(forward.slope, 12);
    expect(backward.slopeError).toBeCloseTo(forward.slopeError, 12);
  });

  test.each([
    [[1, 2], [1, 2], "line.fit: at least 3 points, got 2"],
    [[1, 2, 3], [1, 2], "line.fit: as many y as x, got 2 and 3"],
    [[2, 2, 2], [1, 2, 3], "line.fit: x must differ between points"],
    [[1, 2, 3], [4, 4, 4], "line.fit: y must differ between points"],
  ])("is refused for x %j, y %j", (x, y, message) => {
    expect(() => lineFit(points(x, y))).toThrow(message);
  });
});

describe("outliers", () => {
  const x = [1, 2, 3, 4, 5, 6];
  const scattered = [1.02, 1.98, 3.01, 4.03, 4.97, 6.01];

  test("a misread point is found among points that scatter a little", () => {
    const set = points(x, scattered.with(3, 5.2));
    expect(outliers(set, lineFit(set))).toEqual([3]);
  });

  test("a misread point is found among points without scatter", () => {
    const set = points(x, x.with(2, 4));
    expect(outliers(set, lineFit(set))).toEqual([2]);
  });

  test.each([
    ["ordinary scatter", scattered],
    ["an exact line", x],
  ])("none are found in %s", (_name, y) => {
    const set = points(x, y);
    expect(outliers(set, lineFit(set))).toEqual([]);
  });

  test("four points are too few to tell", () => {
    const set = points([1, 2, 3, 4], [1, 2, 9, 4]);
    expect(outliers(set, lineFit(set))).toEqual([]);
  });
});
