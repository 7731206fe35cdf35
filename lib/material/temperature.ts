/** What heat does: to the strength of wood, and to the length of everything. */
import { type Formula, formula } from "../formula.js";
import { choice, Length, Ratio, Temperature } from "../quantity/index.js";
import { cite } from "../source.js";

/** Wood kept warm while it bears a load. */
export interface WarmWood {
  readonly property: "stiffness" | "strength";
  readonly temperature: Temperature;
}

const warm = Temperature.of(100, "°F");
const hot = Temperature.of(125, "°F");

/**
 * Factor on the strength or stiffness of dry wood that stays warm: 1 up to 100 °F, then 0.9 and 0.8, or 0.7.
 *
 * @example temperatureFactor(temperatureFactor.read({ property: "strength", temperature: "90 °F" })) // 1
 */
export const temperatureFactor: Formula<WarmWood, Ratio> = formula({
  id: "wood.temperature.factor",
  title: "Temperature factor of dry wood",
  equation: String.raw`F' = C_t\,F`,
  inputs: {
    property: {
      symbol: "F",
      kind: choice("property", ["stiffness", "strength"]),
      meaning: "what is asked for",
    },
    temperature: { symbol: "T", kind: Temperature, meaning: "of the wood", max: Temperature.of(150, "°F") },
  },
  result: { symbol: "C_t", kind: Ratio, meaning: "factor" },
  source: [cite("nds", "2.3.3, table 2.3.3")],
  validity:
    "Dry wood (below 19 %) kept warm for long; up to 150 °F (66 °C), as in a closed vehicle in the sun.",
  compute: ({ property, temperature }) => {
    if (temperature <= warm) return 1;
    if (property === "stiffness") return 0.9;
    return temperature <= hot ? 0.8 : 0.7;
  },
});

/** A part that warms up. */
export interface HeatedPart {
  readonly length: Length;
  /** Growth a kelvin, as a share: 23.1e-6 for aluminium. */
  readonly expansion: Ratio;
  readonly from: Temperature;
  readonly to: Temperature;
}

/**
 * Growth of a part with heat: dL = alpha L dT; negative when it cools.
 *
 * @example heatGrowth(heatGrowth.read({ length: "1200 mm", expansion: 0.00007, from: "10 °C", to: "40 °C" })) // 2.52 mm
 */
export const heatGrowth: Formula<HeatedPart, Length> = formula({
  id: "movement.heat",
  title: "Growth of a part with heat",
  equation: String.raw`\Delta L = \alpha\,L\,\Delta T`,
  inputs: {
    length: { symbol: "L", kind: Length, meaning: "length", above: 0 },
    expansion: { symbol: String.raw`\alpha`, kind: Ratio, meaning: "growth a kelvin", min: 0, max: 3e-4 },
    from: { symbol: "T_1", kind: Temperature, meaning: "before", above: 0 },
    to: { symbol: "T_2", kind: Temperature, meaning: "after", above: 0 },
  },
  result: { symbol: String.raw`\Delta L`, kind: Length, meaning: "growth" },
  source: [cite("strength-of-materials", "thermal strain")],
  validity: "Free to move; held, the same strain becomes stress.",
  compute: ({ length, expansion, from, to }) => expansion * length * (to - from),
});

/** A panel in air whose humidity changes. */
export interface MoistPanel {
  readonly length: Length;
  /** Growth from a whole change of relative humidity, 0 to 100 %, as a share: 0.002 for plywood. */
  readonly expansion: Ratio;
  readonly from: Ratio;
  readonly to: Ratio;
}

/**
 * Growth of a panel in its plane with the air's humidity: dL = beta L dH; negative when it dries.
 *
 * @example humidityGrowth(humidityGrowth.read({ length: "1220 mm", expansion: 0.002, from: "30 %", to: "70 %" })) // 0.976 mm
 */
export const humidityGrowth: Formula<MoistPanel, Length> = formula({
  id: "movement.humidity",
  title: "Growth of a panel with the air's humidity",
  equation: String.raw`\Delta L = \beta\,L\,\Delta H`,
  inputs: {
    length: { symbol: "L", kind: Length, meaning: "length", above: 0 },
    expansion: {
      symbol: String.raw`\beta`,
      kind: Ratio,
      meaning: "growth over all humidities",
      min: 0,
      max: 0.1,
    },
    from: { symbol: "H_1", kind: Ratio, meaning: "relative humidity before", min: 0, max: 1 },
    to: { symbol: "H_2", kind: Ratio, meaning: "relative humidity after", min: 0, max: 1 },
  },
  result: { symbol: String.raw`\Delta L`, kind: Length, meaning: "growth" },
  source: [cite("wood-handbook", "movement of panels in their plane; 0.0002 for each tenth of humidity")],
  validity: "Left in that air for weeks; a facing on both sides slows it.",
  compute: ({ length, expansion, from, to }) => length * expansion * (to - from),
});
