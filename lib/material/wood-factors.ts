/** Factors on the strength and stiffness of wood: time under load, heat, slanted grain; and growth with heat and humidity. */
import { type Formula, formula } from "../formula.js";
import { Angle, choice, type Kind, Length, Pressure, Ratio, Temperature } from "../quantity/index.js";
import { cite } from "../source.js";

/** How long a load lasts, as NDS table 2.3.2 has it. */
export type LoadDuration = "permanent" | "ten years" | "two months" | "seven days" | "ten minutes" | "impact";

/** NDS 2018 table 2.3.2, as a page on that section prints it. */
const durationFactors: Readonly<Record<LoadDuration, number>> = {
  permanent: 0.9,
  "ten years": 1,
  "two months": 1.15,
  "seven days": 1.25,
  "ten minutes": 1.6,
  impact: 2,
};

const LoadDuration: Kind<LoadDuration> = choice("load duration", [
  "permanent",
  "ten years",
  "two months",
  "seven days",
  "ten minutes",
  "impact",
]);

/** A load by how long it stays. */
export interface LastingLoad {
  /** How long the load stays in all. */
  readonly duration: LoadDuration;
}

/**
 * How much more a brief load may be than one of ten years.
 *
 * @example durationFactor(durationFactor.read({ duration: "impact" })) // 2
 */
export const durationFactor: Formula<LastingLoad, Ratio> = formula<LastingLoad, Ratio>({
  id: "wood.duration.factor",
  title: "Load duration factor of wood",
  equation: String.raw`F' = C_D\,F`,
  inputs: { duration: { symbol: "d", kind: LoadDuration, meaning: "how long the load stays in all" } },
  result: { symbol: "C_D", kind: Ratio, meaning: "factor on an allowable stress" },
  source: [cite("nds", "table 2.3.2")],
  validity:
    "On allowable stresses of wood and its fasteners, never on stiffness. Check the standard where someone could be hurt.",
  compute: ({ duration }) => durationFactors[duration],
});

/** Material and climate: the rule of NDS 3.5.2, or a service class of EN 1995-1-1 table 3.2. */
export type CreepCase =
  | "solid wood, dry"
  | "solid wood, wet"
  | "plywood, dry"
  | "plywood, class 1"
  | "plywood, class 2"
  | "plywood, class 3";

/** K_cr of NDS 3.5.2, and 1 + k_def of EN 1995-1-1 table 3.2, as stored copies of both print them. */
const creepFactors: Readonly<Record<CreepCase, number>> = {
  "solid wood, dry": 1.5,
  "solid wood, wet": 2,
  "plywood, dry": 2,
  "plywood, class 1": 1.8,
  "plywood, class 2": 2,
  "plywood, class 3": 3.5,
};

const CreepCase: Kind<CreepCase> = choice("creep case", [
  "solid wood, dry",
  "solid wood, wet",
  "plywood, dry",
  "plywood, class 1",
  "plywood, class 2",
  "plywood, class 3",
]);

/** A part that stays loaded. */
export interface CreepingPart {
  /** Class 1 is a heated room, class 2 under a roof, class 3 in the weather. */
  readonly material: CreepCase;
}

/**
 * How much the sag from a lasting load grows.
 *
 * @example creepFactor(creepFactor.read({ material: "plywood, dry" })) // 2
 */
export const creepFactor: Formula<CreepingPart, Ratio> = formula<CreepingPart, Ratio>({
  id: "wood.creep.factor",
  title: "Creep factor of wood and plywood",
  equation: String.raw`K_{cr}\ \text{or}\ 1+k_{def}`,
  inputs: { material: { symbol: "c", kind: CreepCase, meaning: "material and climate" } },
  result: { symbol: "K_{cr}", kind: Ratio, meaning: "long-term over first sag" },
  source: [cite("nds", "3.5.2"), cite("en-1995", "table 3.2")],
  validity: "For loads that stay for years at no more than the allowable stress.",
  compute: ({ material }) => creepFactors[material],
});

/** A property along and across the grain, wanted in between. */
export interface GrainAngleInputs {
  /** The strength along the grain. */
  readonly along: Pressure;
  /** The strength across the grain. */
  readonly across: Pressure;
  /** The angle between load and grain. */
  readonly angle: Angle;
  /** The power: 2 for compression and bearing, 1.5 to 2 for tension and bending. */
  readonly power: Ratio;
}

/**
 * Strength or modulus at an angle to the grain: N = P Q / (P sin^n + Q cos^n).
 *
 * @example atGrainAngle(atGrainAngle.read({ along: "40 MPa", across: "8 MPa", angle: "0 deg", power: 2 })) // 40 MPa
 */
export const atGrainAngle: Formula<GrainAngleInputs, Pressure> = formula({
  id: "wood.grain.angle",
  title: "Strength of wood at an angle to the grain",
  equation: String.raw`N = \frac{P\,Q}{P\sin^n\theta + Q\cos^n\theta}`,
  inputs: {
    along: { symbol: "P", kind: Pressure, meaning: "along the grain", above: 0 },
    across: { symbol: "Q", kind: Pressure, meaning: "across the grain", above: 0 },
    angle: {
      symbol: String.raw`\theta`,
      kind: Angle,
      meaning: "between load and grain",
      min: 0,
      max: Math.PI / 2,
    },
    power: { symbol: "n", kind: Ratio, meaning: "power", min: 1.5, max: 3 },
  },
  result: { symbol: "N", kind: Pressure, meaning: "at the angle" },
  source: [cite("wood-handbook", "eq. 5-1"), cite("nds", "appendix J")],
  validity: "Straight-grained wood; the power depends on the property.",
  compute: ({ along, across, angle, power }) =>
    (along * across) /
    // A cosine of a right angle is a rounding of zero, and may be below it.
    (along * Math.sin(angle) ** power + across * Math.max(0, Math.cos(angle)) ** power),
});

/** Wood kept warm while it bears a load. */
export interface WarmWood {
  /** What is asked for. */
  readonly property: "stiffness" | "strength";
  /** The temperature of the wood. */
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
  /** The length of the part. */
  readonly length: Length;
  /** Growth a kelvin, as a share: 23.1e-6 for aluminium. */
  readonly expansion: Ratio;
  /** The temperature before. */
  readonly from: Temperature;
  /** The temperature after. */
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
  /** The length of the panel. */
  readonly length: Length;
  /** Growth from a whole change of relative humidity, 0 to 100 %, as a share: 0.002 for plywood. */
  readonly expansion: Ratio;
  /** The relative humidity before. */
  readonly from: Ratio;
  /** The relative humidity after. */
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
