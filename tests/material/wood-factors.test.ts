import fc from "fast-check";
import { expect, test } from "vitest";
import { atGrainAngle, heatGrowth, humidityGrowth, temperatureFactor } from "../../lib/material/index.js";
import { Angle, megapascal, mm, ratio, Temperature } from "../../lib/quantity/index.js";

const unit = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test("strength at an angle lies between that across and that along", () => {
  fc.assert(
    fc.property(unit(0, Math.PI / 2), (angle) => {
      const at = atGrainAngle({
        along: megapascal(40),
        across: megapascal(8),
        angle: Angle.si(angle),
        power: ratio(2),
      });
      expect(at).toBeGreaterThanOrEqual(8e6 * (1 - 1e-9));
      expect(at).toBeLessThanOrEqual(40e6 * (1 + 1e-9));
    }),
  );
});

test("movement adds up over parts and over steps", () => {
  fc.assert(
    fc.property(unit(0.1, 2), unit(270, 330), unit(270, 330), (length, from, to) => {
      const grow = (size: number, a: number, b: number) =>
        heatGrowth({
          length: mm(size * 1000),
          expansion: ratio(2e-5),
          from: Temperature.si(a),
          to: Temperature.si(b),
        });
      expect(grow(length, from, to)).toBeCloseTo(2 * grow(length / 2, from, to), 12);
      expect(grow(length, from, to)).toBeCloseTo(grow(length, from, 300) + grow(length, 300, to), 12);
      const dry = humidityGrowth({
        length: mm(length * 1000),
        expansion: ratio(0.002),
        from: ratio(0.6),
        to: ratio(0.4),
      });
      expect(dry).toBeLessThan(0);
    }),
  );
});

test("wood above 150 °F is refused", () => {
  expect(() => temperatureFactor({ property: "strength", temperature: Temperature.of(80, "°C") })).toThrow(
    "wood.temperature.factor: temperature must be at most 65.56 °C, got 80 °C",
  );
});
