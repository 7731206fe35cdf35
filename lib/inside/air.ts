/** Air that carries heat out of a case. */
import { type Formula, formula } from "../formula.js";
import { Power, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { AirFlow, Altitude, TemperatureRise } from "./kinds.js";

/** Heat that a cubic metre of air takes for each degree: density 1.2 kg/m3 times 1006 J/(kg K). */
export const airHeat: number = 1.2 * 1006;

/**
 * Air needed to carry heat away: P / (rho c dT), at 1.2 kg/m3 and 1006 J/(kg K).
 *
 * @source heat transfer, heat balance of a stream
 * @throws RangeError unless the rise is positive
 * @example airNeeded({ power: Power.si(300), rise: TemperatureRise.si(10), thinness: ratio(1) }) // 89.46 m3/h
 */
export const airNeeded: Formula<
  { readonly power: Power; readonly rise: TemperatureRise; readonly thinness: Ratio },
  AirFlow
> = formula({
  id: "heat.air",
  title: "Air that carries heat away",
  equation: String.raw`Q=\frac{P}{1.2\cdot1006\,(\rho/\rho_0)\,\Delta T}`,
  inputs: {
    power: { symbol: "P", kind: Power, meaning: "heat", min: 0 },
    rise: { symbol: String.raw`\Delta T`, kind: TemperatureRise, meaning: "allowed rise", above: 0 },
    thinness: {
      symbol: String.raw`\rho/\rho_0`,
      kind: Ratio,
      meaning: "density over that near sea level",
      above: 0,
    },
  },
  result: { symbol: "Q", kind: AirFlow, meaning: "air" },
  source: [cite("heat-transfer", "heat balance of a stream")],
  validity: "Well mixed air; what stands in a corner gets hotter.",
  compute: ({ power, rise, thinness }) => power / (airHeat * thinness * rise),
});

/**
 * Density of air over that at sea level: (1 - 2.25577e-5 z)^4.25588.
 *
 * @source International Standard Atmosphere
 * @throws RangeError unless the height is from -500 to 11 000 m
 * @example airThinness(airThinness.read({ height: "0 m" })) // 1
 */
export const airThinness: Formula<{ readonly height: Altitude }, Ratio> = formula({
  id: "heat.altitude",
  title: "Thinner air higher up",
  equation: String.raw`\rho/\rho_0=(1-2.25577\cdot10^{-5}z)^{4.25588}`,
  inputs: {
    height: {
      symbol: "z",
      kind: Altitude,
      meaning: "height above the sea",
      min: -500,
      max: 11_000,
      unit: "m",
    },
  },
  result: { symbol: String.raw`\rho/\rho_0`, kind: Ratio, meaning: "share of the density" },
  source: [cite("ashrae", "standard atmosphere")],
  validity: "A standard day.",
  compute: ({ height }) => (1 - 2.25577e-5 * height) ** 4.25588,
});
