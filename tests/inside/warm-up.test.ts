import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  AirFlow,
  fitWarmUp,
  HeatCapacity,
  HeatConductance,
  HeatConductivity,
  HeatResistance,
  steadyRise,
  TemperatureRise,
  ventedRise,
  wallTransmittance,
  warmUp,
} from "../../lib/inside/index.js";
import { Area, minute, mm, Power, ratio, Temperature, Time } from "../../lib/quantity/index.js";

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const vented = (power: number, area = 0.004) =>
  ventedRise({
    power: Power.si(power),
    conductance: HeatConductance.si(4),
    area: Area.si(area),
    discharge: ratio(0.65),
    apart: mm(450),
    outside: Temperature.si(303),
    thinness: ratio(1),
  });

describe("warmth", () => {
  test("the rise goes to zero with the power, vented or shut", () => {
    fc.assert(
      fc.property(positive(0.1, 500), (power) => {
        const shut = (watts: number) =>
          steadyRise({
            power: Power.si(watts),
            conductance: HeatConductance.si(4),
            flow: AirFlow.si(0),
            thinness: ratio(1),
          });
        expect(vented(power / 1000).rise).toBeLessThan(vented(power).rise / 100);
        expect(shut(power / 1000)).toBeCloseTo(shut(power) / 1000, 9);
      }),
    );
    expect(vented(0)).toEqual({ rise: 0, flow: 0 });
  });

  test("more power is warmer, vents never warmer than none, larger vents never warmer", () => {
    fc.assert(
      fc.property(positive(1, 500), positive(0.001, 0.02), (power, area) => {
        const { rise } = vented(power, area);
        expect(vented(power * 1.2, area).rise).toBeGreaterThan(rise);
        expect(rise).toBeLessThan(power / 4);
        expect(vented(power, area * 1.5).rise).toBeLessThan(rise);
      }),
    );
  });

  test("what walls and vents carry is what is put in", () => {
    fc.assert(
      fc.property(positive(1, 500), (power) => {
        const { rise, flow } = vented(power);
        expect(4 * rise + 1.2 * 1006 * flow * rise).toBeCloseTo(power, 6);
      }),
    );
  });

  test("warm-up starts at nothing, rises, and ends at its final rise", () => {
    const at = (seconds: number) =>
      warmUp({
        finalRise: TemperatureRise.si(12),
        capacity: HeatCapacity.si(3e4),
        conductance: HeatConductance.si(8),
        time: Time.si(seconds),
      });
    expect(at(0)).toBe(0);
    expect(at(1e6)).toBeCloseTo(12, 9);
    fc.assert(
      fc.property(positive(0, 2e4), (time) => {
        expect(at(time + 60)).toBeGreaterThan(at(time));
      }),
    );
  });

  test("a log of any case gives back its final rise and time constant", () => {
    fc.assert(
      fc.property(positive(1, 40), positive(300, 6000), (final, constant) => {
        const readings = [0.2, 0.5, 1, 1.5, 2.5, 4].map((share) => ({
          time: Time.si(share * constant),
          rise: TemperatureRise.si(final * (1 - Math.exp(-share))),
        }));
        const fit = fitWarmUp({ readings });
        expect(fit.finalRise / final).toBeCloseTo(1, 5);
        expect(fit.timeConstant / constant).toBeCloseTo(1, 4);
      }),
      { numRuns: 30 },
    );
  });

  test("a log that ends early is warned of, one too short is refused", () => {
    const reading = (at: number) => ({
      time: minute(at),
      rise: TemperatureRise.si(20 * (1 - Math.exp(-at / 100))),
    });
    expect(fitWarmUp.worked({ readings: [5, 10, 20, 30].map(reading) }).warnings).toEqual([
      "the log ends while it still rises: the final rise is a guess",
    ]);
    expect(() => fitWarmUp({ readings: [0, 10].map(reading) })).toThrow(
      "heat.log.fit: at least 3 readings, got 2",
    );
  });

  test("each further layer of a wall lets less through", () => {
    const film = HeatResistance.si(0.13);
    const layer = { thickness: mm(9), conductivity: HeatConductivity.si(0.13) };
    const through = (count: number) =>
      wallTransmittance({
        layers: Array.from({ length: count }, () => layer),
        insideFilm: film,
        outsideFilm: film,
      });
    expect(through(1)).toBeLessThan(through(0));
    expect(through(2)).toBeLessThan(through(1));
    expect(() =>
      wallTransmittance({ layers: [{ ...layer, thickness: mm(0) }], insideFilm: film, outsideFilm: film }),
    ).toThrow("heat.wall: each layer has a thickness and a conductivity");
  });
});
