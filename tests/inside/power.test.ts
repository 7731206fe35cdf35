import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { batteryTime, meanLoad } from "../../lib/inside/index.js";
import { Charge, hour, Power, ratio, Voltage } from "../../lib/quantity/index.js";

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

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
