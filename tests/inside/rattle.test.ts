import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mountFrequency, panelFrequency, sagFrequency, transmissibility } from "../../lib/inside/index.js";
import {
  AreaDensity,
  kg,
  Length,
  metre,
  PlateStiffness,
  ratio,
  SpringRate,
  standardGravity,
} from "../../lib/quantity/index.js";

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("rattle", () => {
  test("spring and sag give one frequency", () => {
    fc.assert(
      fc.property(positive(0.1, 50), positive(100, 1e6), (mass, rate) => {
        const sag = Length.si((mass * standardGravity) / rate);
        expect(sagFrequency({ sag })).toBeCloseTo(
          mountFrequency({ mass: kg(mass), stiffness: SpringRate.si(rate) }),
          6,
        );
      }),
    );
  });

  test("a panel turned round hums alike, one twice as large four times as slow", () => {
    const stiffness = {
      alongX: PlateStiffness.si(500),
      alongY: PlateStiffness.si(350),
      coupling: PlateStiffness.si(18),
      twist: PlateStiffness.si(37),
    };
    const turned = { ...stiffness, alongX: stiffness.alongY, alongY: stiffness.alongX };
    fc.assert(
      fc.property(positive(0.2, 1.2), positive(0.2, 1.2), (a, b) => {
        const areaMass = AreaDensity.si(8);
        const hum = (one: number, other: number, of = stiffness) =>
          panelFrequency({ length: metre(one), width: metre(other), stiffness: of, areaMass });
        expect(hum(b, a, turned)).toBeCloseTo(hum(a, b), 9);
        expect(hum(2 * a, 2 * b)).toBeCloseTo(hum(a, b) / 4, 9);
      }),
    );
  });

  test("a mount helps above the root of two, and hurts below it", () => {
    fc.assert(
      fc.property(positive(0.01, 0.9), positive(1.42, 20), positive(0.1, 1.41), (damping, above, below) => {
        expect(transmissibility({ frequencyRatio: ratio(above), damping: ratio(damping) })).toBeLessThan(1);
        expect(transmissibility({ frequencyRatio: ratio(below), damping: ratio(damping) })).toBeGreaterThan(
          1,
        );
      }),
    );
  });
});
