import { describe, expect, test } from "vitest";
import { readCushionCurve } from "../../lib/moving/index.js";
import { Pressure, ratio } from "../../lib/quantity/index.js";

describe("cushion curves", () => {
  const points = [
    { stress: Pressure.si(1000), deceleration: ratio(80) },
    { stress: Pressure.si(3000), deceleration: ratio(50) },
  ];

  test("pass through their points", () => {
    for (const { stress, deceleration } of points)
      expect(readCushionCurve({ points, stress })).toBe(deceleration);
  });

  test("of one point, falling pressures or a pressure beyond are refused", () => {
    const stress = Pressure.si(2000);
    expect(() => readCushionCurve({ points: points.slice(0, 1), stress })).toThrow(
      "cushion.curve: a curve has at least 2 points, got 1",
    );
    expect(() => readCushionCurve({ points: [...points].reverse(), stress })).toThrow(
      "cushion.curve: pressures must rise from point to point",
    );
    expect(() => readCushionCurve({ points, stress: Pressure.si(5000) })).toThrow(
      "cushion.curve: stress must be within the curve, 1 kPa to 3 kPa, got 5 kPa",
    );
  });
});
