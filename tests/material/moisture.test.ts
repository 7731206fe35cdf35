import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  atGrainAngle,
  equilibriumMoisture,
  heatGrowth,
  humidityGrowth,
  type Layer,
  laminateStiffness,
  propertyAtMoisture,
  swelling,
  temperatureFactor,
} from "../../lib/material/index.js";
import { Angle, Density, megapascal, mm, ratio, Temperature } from "../../lib/quantity/index.js";

const unit = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("wood and moisture", () => {
  test("damper air makes wetter wood", () => {
    fc.assert(
      fc.property(unit(0, 0.9), unit(250, 340), (humidity, kelvin) => {
        const at = (h: number) =>
          equilibriumMoisture({ temperature: Temperature.si(kelvin), humidity: ratio(h) });
        expect(at(humidity + 0.05)).toBeGreaterThan(at(humidity));
      }),
    );
  });

  test("drier wood is stronger", () => {
    fc.assert(
      fc.property(unit(0.05, 0.2), (moisture) => {
        const at = (one: number) =>
          propertyAtMoisture({
            dry: megapascal(114),
            green: megapascal(57),
            moisture: ratio(one),
            turningPoint: ratio(0.25),
          });
        expect(at(moisture)).toBeGreaterThan(at(moisture + 0.01));
      }),
    );
  });

  test("beyond the turning point is refused", () => {
    expect(() =>
      propertyAtMoisture({
        dry: megapascal(9),
        green: megapascal(6),
        moisture: ratio(0.28),
        turningPoint: ratio(0.25),
      }),
    ).toThrow("wood.moisture.property: moisture must be at most the turning point (0.25), got 0.28");
  });

  test("a board that swells and shrinks back ends as it began", () => {
    fc.assert(
      fc.property(unit(0.06, 0.14), unit(0.06, 0.14), (from, to) => {
        const board = { size: mm(300), coefficient: ratio(0.003) };
        const there = swelling({ ...board, from: ratio(from), to: ratio(to) });
        expect(there + swelling({ ...board, from: ratio(to), to: ratio(from) })).toBeCloseTo(0, 12);
      }),
    );
  });
});

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

describe("the matrices of a stack", () => {
  const layer = (thickness: number, grain: number): Layer => ({
    thickness: mm(thickness),
    grain: Angle.of(grain, "deg"),
    modulusAlong: megapascal(15000),
    modulusAcross: megapascal(750),
    shearModulus: megapascal(1000),
    poissonRatio: ratio(0.43),
    density: Density.si(600),
  });
  const stack = fc.array(fc.tuple(unit(0.5, 3), fc.integer({ min: -90, max: 90 })), {
    minLength: 1,
    maxLength: 5,
  });

  test("turned upside down change the sign of B and nothing else, for straight grain", () => {
    fc.assert(
      fc.property(stack, (plies) => {
        const layers = plies.map(([t, angle]) => layer(t, angle > 0 ? 90 : 0));
        const [up, down] = [
          laminateStiffness({ layers }),
          laminateStiffness({ layers: [...layers].reverse() }),
        ];
        expect(down.B11).toBeCloseTo(-up.B11, 3);
        expect(down.D11 / up.D11).toBeCloseTo(1, 9);
        expect(down.A22 / up.A22).toBeCloseTo(1, 9);
      }),
    );
  });

  test("mirrored about the middle have no B, whatever the angles", () => {
    fc.assert(
      fc.property(stack, (plies) => {
        const half = plies.map(([t, angle]) => layer(t, angle));
        const { B11, B16, B66, D11, thickness } = {
          ...laminateStiffness({ layers: [...half, ...[...half].reverse()] }),
          thickness: half.reduce((sum, one) => sum + one.thickness, 0),
        };
        for (const entry of [B11, B16, B66]) expect(Math.abs(entry) * thickness).toBeLessThan(1e-9 * D11);
      }),
    );
  });

  test("keep A11 + A22 + 2 A12 when the whole stack turns", () => {
    fc.assert(
      fc.property(stack, fc.integer({ min: -90, max: 90 }), (plies, by) => {
        const trace = (turn: number) => {
          const { A11, A22, A12 } = laminateStiffness({
            layers: plies.map(([t, angle]) => layer(t, angle + turn)),
          });
          return A11 + A22 + 2 * A12;
        };
        expect(trace(by) / trace(0)).toBeCloseTo(1, 9);
      }),
    );
  });
});
