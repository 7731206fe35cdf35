/** What the air's moisture does to wood. */
import { type Formula, formula } from "../formula.js";
import { Length, Pressure, Ratio, Temperature } from "../quantity/index.js";
import { cite } from "../source.js";

/** Air around a piece of wood. */
export interface AirClimate {
  /** The temperature of the air. */
  readonly temperature: Temperature;
  /** The relative humidity of the air. */
  readonly humidity: Ratio;
}

/**
 * Moisture content that wood comes to in steady air: M = 1800/W [Kh/(1-Kh) + (K1 K h + 2 K1 K2 K^2 h^2) /
 * (1 + K1 K h + K1 K2 K^2 h^2)], in percent, the constants being quadratics in the temperature.
 *
 * @example equilibriumMoisture(equilibriumMoisture.read({ temperature: "70 °F", humidity: 0.3 })) // 0.0617
 */
export const equilibriumMoisture: Formula<AirClimate, Ratio> = formula({
  id: "wood.moisture.equilibrium",
  title: "Moisture that wood comes to in steady air",
  equation: String.raw`M = \frac{1800}{W}\left(\frac{Kh}{1-Kh} + \frac{K_1 K h + 2 K_1 K_2 K^2 h^2}{1 + K_1 K h + K_1 K_2 K^2 h^2}\right)\%`,
  inputs: {
    temperature: { symbol: "T", kind: Temperature, meaning: "of the air", min: 244.15, max: 344.15 },
    humidity: { symbol: "h", kind: Ratio, meaning: "relative humidity", min: 0, max: 0.98 },
  },
  result: { symbol: "M", kind: Ratio, meaning: "moisture content" },
  source: [cite("wood-handbook", "eq. 4-5, table 4-2")],
  validity: "Solid wood left for weeks; plywood and facings lag behind, glue lines take a little less.",
  compute: ({ temperature, humidity: h }) => {
    const t = temperature - 273.15;
    const w = 349 + 1.29 * t + 0.0135 * t ** 2;
    const kh = (0.805 + 0.000736 * t - 2.73e-6 * t ** 2) * h;
    const k1 = 6.27 - 0.00938 * t - 0.000303 * t ** 2;
    const k2 = 1.91 + 0.0407 * t - 0.000293 * t ** 2;
    const bound = k1 * kh + k1 * k2 * kh ** 2;
    return (18 / w) * (kh / (1 - kh) + (bound + k1 * k2 * kh ** 2) / (1 + bound));
  },
});

/** A property known green and at 12 %. */
export interface MoistureProperty {
  /** The property at 12 % moisture. */
  readonly dry: Pressure;
  /** The property of green wood. */
  readonly green: Pressure;
  /** The moisture content asked about. */
  readonly moisture: Ratio;
  /** Where drying begins to tell: 25 % for most woods. */
  readonly turningPoint: Ratio;
}

/**
 * A strength or modulus at any moisture: P = P12 (P12 / Pg)^((12 - M) / (Mp - 12)), in percent.
 *
 * @example propertyAtMoisture(propertyAtMoisture.read({ dry: "114 MPa", green: "57 MPa", moisture: "8 %", turningPoint: "27 %" })) // 137.1 MPa
 */
export const propertyAtMoisture: Formula<MoistureProperty, Pressure> = formula({
  id: "wood.moisture.property",
  title: "Strength or modulus of wood at a moisture",
  equation: String.raw`P = P_{12}\left(\frac{P_{12}}{P_g}\right)^{\frac{12 - M}{M_p - 12}}`,
  inputs: {
    dry: { symbol: "P_{12}", kind: Pressure, meaning: "at 12 %", above: 0 },
    green: { symbol: "P_g", kind: Pressure, meaning: "green", above: 0 },
    moisture: { symbol: "M", kind: Ratio, meaning: "moisture content", min: 0.05 },
    turningPoint: {
      symbol: "M_p",
      kind: Ratio,
      meaning: "moisture at which drying tells",
      min: 0.2,
      max: 0.3,
    },
  },
  result: { symbol: "P", kind: Pressure, meaning: "at that moisture" },
  source: [cite("wood-handbook", "eq. 5-3, table 5-13")],
  validity: "Clear wood at room temperature, from 5 % up to the turning point.",
  refuse: ({ moisture, turningPoint }) =>
    moisture <= turningPoint
      ? []
      : [
          `moisture must be at most the turning point (${Ratio.show(turningPoint)}), got ${Ratio.show(moisture)}`,
        ],
  compute: ({ dry, green, moisture, turningPoint }) =>
    dry * (dry / green) ** ((0.12 - moisture) / (turningPoint - 0.12)),
});

/** A piece of wood that dries or takes up water. */
export interface SwellingPiece {
  /** The size across the grain. */
  readonly size: Length;
  /** Change of size for each percent of moisture, as a share. */
  readonly coefficient: Ratio;
  /** The moisture content before. */
  readonly from: Ratio;
  /** The moisture content after. */
  readonly to: Ratio;
}

/**
 * How much a board grows or shrinks: dD = D C (M2 - M1), M in percent; negative when it shrinks.
 *
 * @example swelling(swelling.read({ size: "300 mm", coefficient: 0.00338, from: "8 %", to: "12 %" })) // 4.056 mm
 */
export const swelling: Formula<SwellingPiece, Length> = formula({
  id: "wood.swelling",
  title: "Swelling or shrinking of a board across the grain",
  equation: String.raw`\Delta D = D\,C\,(M_2 - M_1)`,
  inputs: {
    size: { symbol: "D", kind: Length, meaning: "size across the grain", above: 0 },
    coefficient: { symbol: "C", kind: Ratio, meaning: "change a percent of moisture", above: 0, max: 0.01 },
    from: { symbol: "M_1", kind: Ratio, meaning: "moisture before", min: 0.06, max: 0.14 },
    to: { symbol: "M_2", kind: Ratio, meaning: "moisture after", min: 0.06, max: 0.14 },
  },
  result: { symbol: String.raw`\Delta D`, kind: Length, meaning: "change of size" },
  source: [cite("wood-handbook", "eq. 13-2, table 13-5")],
  validity: "Solid wood between 6 and 14 % moisture; plywood moves ten times less in its plane.",
  compute: ({ size, coefficient, from, to }) => size * coefficient * 100 * (to - from),
});
