import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { AirFlow, fanFlow, stackFlow, ventsInRow } from "../../lib/inside/index.js";
import { Area, Density, mm, Pressure, ratio, Temperature } from "../../lib/quantity/index.js";

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("air", () => {
  test("two vents in a row pass less than either", () => {
    fc.assert(
      fc.property(positive(1e-4, 0.1), positive(1e-4, 0.1), (low, high) => {
        const both = ventsInRow({ low: Area.si(low), high: Area.si(high) });
        expect(both).toBeLessThan(Math.min(low, high));
        expect(both).toBeCloseTo(ventsInRow({ low: Area.si(high), high: Area.si(low) }), 12);
      }),
    );
  });

  test("a fan moves less than its free flow, and its pressure is what the openings take", () => {
    fc.assert(
      fc.property(positive(0.005, 0.1), positive(10, 200), positive(1e-3, 0.05), (free, dead, area) => {
        const flow = fanFlow({
          freeFlow: AirFlow.si(free),
          deadPressure: Pressure.si(dead),
          discharge: ratio(0.6),
          area: Area.si(area),
          airDensity: Density.si(1.2),
        });
        expect(flow).toBeLessThan(free);
        expect((0.6 * (flow / (0.6 * area)) ** 2) / (dead * (1 - flow / free))).toBeCloseTo(1, 6);
      }),
    );
  });

  test("cold air inside does not rise", () => {
    expect(() =>
      stackFlow({
        discharge: ratio(0.6),
        area: Area.si(0.01),
        rise: mm(300),
        inside: Temperature.si(290),
        outside: Temperature.si(300),
      }),
    ).toThrow("heat.stack: inside must be at least as warm as outside");
  });
});
