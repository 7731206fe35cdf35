import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cableDrop, Resistance, wireResistance, wireSize } from "../../lib/inside/index.js";
import { Area, Current, metre, ratio, Temperature, Voltage } from "../../lib/quantity/index.js";

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("wires", () => {
  test("six gauges up halve the diameter, to half a percent", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 34 }), (gauge) => {
        expect(wireSize({ gauge }).diameter / wireSize({ gauge: gauge + 6 }).diameter).toBeCloseTo(2.005, 3);
      }),
    );
  });

  test("length adds, section divides, heat adds", () => {
    fc.assert(
      fc.property(positive(0.1, 10), positive(1, 100), positive(1, 100), (area, one, other) => {
        const at = (length: number, kelvin = 293.15, section = area) =>
          wireResistance({
            area: Area.of(section, "mm2"),
            length: metre(length),
            temperature: Temperature.si(kelvin),
            stranding: ratio(1),
          });
        expect(at(one + other)).toBeCloseTo(at(one) + at(other), 9);
        expect(at(one, 293.15, 2 * area)).toBeCloseTo(at(one) / 2, 9);
        expect(at(one, 348)).toBeGreaterThan(at(one));
      }),
    );
  });

  test("a cable that would take everything is refused", () => {
    expect(() =>
      cableDrop({ current: Current.si(100), oneWay: Resistance.si(1), supply: Voltage.si(120) }),
    ).toThrow("power.cable.drop: the cable would take the whole supply");
  });
});
