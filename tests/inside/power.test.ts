import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  batteryTime,
  cableDrop,
  meanLoad,
  Resistance,
  wireResistance,
  wireSize,
} from "../../lib/inside/index.js";
import {
  Area,
  Charge,
  Current,
  hour,
  metre,
  Power,
  ratio,
  Temperature,
  Voltage,
} from "../../lib/quantity/index.js";

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

describe("batteries and loads", () => {
  const battery = {
    capacity: Charge.of(50, "Ah"),
    ratedTime: hour(20),
    voltage: Voltage.si(12),
    efficiency: ratio(0.9),
    usable: ratio(0.8),
  };

  test("run time falls with load, and an ideal battery gives the same energy at every load", () => {
    fc.assert(
      fc.property(positive(5, 500), positive(1, 1.4), (load, peukert) => {
        const at = (watts: number, k: number) =>
          batteryTime({ ...battery, peukert: ratio(k), load: Power.si(watts) }).time;
        expect(at(load * 1.1, peukert)).toBeLessThan(at(load, peukert));
        expect((load * at(load, 1)) / 3600).toBeCloseTo(50 * 12 * 0.9 * 0.8, 6);
      }),
    );
  });

  test("a battery without voltage is refused", () => {
    expect(() =>
      batteryTime({ ...battery, voltage: Voltage.si(0), peukert: ratio(1), load: Power.si(10) }),
    ).toThrow("power.battery: voltage must be positive, got 0 mV");
  });

  test("the mean is never above all loads on, and duty scales it", () => {
    const load = fc.record({ power: positive(0, 500), duty: positive(0, 1) });
    fc.assert(
      fc.property(fc.array(load, { maxLength: 8 }), (loads) => {
        const named = loads.map(({ power, duty }) => ({
          name: "lamp",
          power: Power.si(power),
          duty: ratio(duty),
        }));
        const { mean, peak } = meanLoad({ loads: named });
        expect(mean).toBeLessThanOrEqual(peak + 1e-9);
        const half = meanLoad({ loads: named.map((one) => ({ ...one, duty: ratio(one.duty / 2) })) });
        expect(half.mean).toBeCloseTo(mean / 2, 9);
      }),
    );
    expect(() => meanLoad({ loads: [{ name: "lamp", power: Power.si(5), duty: ratio(2) }] })).toThrow(
      "power.mean: lamp: power at least 0 and duty from 0 to 1",
    );
  });
});
