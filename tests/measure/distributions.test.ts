import fc from "fast-check";
import { expect, test } from "vitest";
import { studentFactor } from "../../lib/measure/index.js";
import { ratio } from "../../lib/quantity/index.js";

const confidence = fc.double({ min: 0.5, max: 0.999, noNaN: true }).map(ratio);
const freedom = fc.integer({ min: 1, max: 200 });

test("Student's factor falls as readings are added", () => {
  fc.assert(
    fc.property(confidence, freedom, (share, degreesOfFreedom) => {
      const fewer = studentFactor({ confidence: share, degreesOfFreedom });
      const more = studentFactor({ confidence: share, degreesOfFreedom: degreesOfFreedom + 1 });
      expect(more).toBeLessThan(fewer);
    }),
  );
});

test("Student's factor comes down to the normal one, 1.959964 at 95 %", () => {
  const factor = studentFactor({ confidence: ratio(0.95), degreesOfFreedom: 10_000 });
  expect(factor).toBeCloseTo(1.959964 * (1 + (1.959964 ** 2 + 1) / 40_000), 6);
});

test("Student's factor refuses certainty", () => {
  expect(() => studentFactor({ confidence: ratio(1), degreesOfFreedom: 4 })).toThrow(
    "student.factor: confidence must be below 1, got 1",
  );
});
