import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { equilibriumMoisture, propertyAtMoisture, swelling } from "../../lib/material/index.js";
import { megapascal, mm, ratio, Temperature } from "../../lib/quantity/index.js";

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
