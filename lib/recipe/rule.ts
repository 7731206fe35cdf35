/** Lengths and masses as the builder's rule and scale read them, in one system of units. */
import type { Case } from "../design/index.js";
import { Area, Length, Mass, type ShowStyle, showInches } from "../quantity/index.js";

/** A hyphen at which no line is broken. */
export const unbreakableHyphen = "\u2011";

/** How one case's lengths are written; a number and its unit never part at the end of a line. */
export interface Rule {
  /** The units that every other quantity is shown in. */
  readonly style: ShowStyle;
  /** A length to mark or cut: "23-5/8 in" or "600 mm". */
  length(value: Length): string;
  /** Two lengths of a rectangle: "23-5/8 × 15-3/4 in" or "600 × 400 mm". */
  size(...values: readonly Length[]): string;
  /** Running marks: "3/8, 5-1/2 in" or "9.5, 139.7 mm". */
  marks(values: readonly Length[]): string;
  /** A thickness, gap or hole, too small for a fraction: "0.236 in" or "6 mm". */
  fine(value: Length): string;
  /** Lengths in the builder's unit alone, where room is short: "23-5/8 in", "600 × 400 mm". */
  drawn(...values: readonly Length[]): string;
  /** The same in the builder's unit and in the other one, for the shop: "23-5/8 × 15-3/4 in (600 × 400 mm)". */
  inShop(...values: readonly Length[]): string;
  /** One running mark without its unit, which stands beside the drawing once: "23-5/8", "600". */
  running(value: Length): string;
  /** The unit of running marks. */
  readonly unit: "in" | "mm";
  /** A mass: "12.5 lb" or "5.67 kg". */
  mass(value: Mass): string;
  /** A mass for the kitchen scale: "6.28 oz" or "178 g". */
  smallMass(value: Mass): string;
  /** An area in the builder's unit. */
  area(value: Area): string;
}

/** The rule of a builder who works in inches or in millimetres. */
export function ruleOf(units: Case["units"]): Rule {
  return units === "inch" ? inchRule : metricRule;
}

/** Millimetres to the nearest tenth, without the unit. */
export function tenths(value: Length): string {
  return String(Math.round(value * 10_000) / 10);
}

/** Finest division of an inch on a tape that marks are read from. */
const finest = 32;

/** Inches without the unit; the hyphen of a mixed fraction never ends a line, or 20-11/16 could be read as 20. */
function inchesOf(value: Length): string {
  return showInches(Length.in(value, "in"), finest).replace(" in", "").replace("-", unbreakableHyphen);
}

function inInches(values: readonly Length[], separator: string): string {
  return `${values.map(inchesOf).join(separator)}\u00a0in`;
}

function inMillimetres(values: readonly Length[], separator: string): string {
  return `${values.map(tenths).join(separator)}\u00a0mm`;
}

const inchRule: Rule = {
  style: { system: "inch" },
  length: (value) => inInches([value], ""),
  size: (...values) => inInches(values, " × "),
  marks: (values) => inInches(values, ", "),
  fine: (value) => `${Length.in(value, "in").toFixed(3)}\u00a0in`,
  drawn: (...values) => inInches(values, " × "),
  running: (value) => inchesOf(value),
  unit: "in",
  inShop: (...values) => `${inInches(values, " × ")} (${inMillimetres(values, " × ")})`,
  mass: (value) => Mass.show(value, { system: "inch", digits: 3 }),
  smallMass: (value) => Mass.show(value, { unit: "oz", digits: 3 }),
  area: (value) => Area.show(value, { unit: "ft2", digits: 3 }).replace("ft2", "ft²"),
};

const metricRule: Rule = {
  style: { system: "metric" },
  length: (value) => inMillimetres([value], ""),
  size: (...values) => inMillimetres(values, " × "),
  marks: (values) => inMillimetres(values, ", "),
  fine: (value) => `${hundredths(value)}\u00a0mm`,
  drawn: (...values) => inMillimetres(values, " × "),
  running: tenths,
  unit: "mm",
  inShop: (...values) => `${inMillimetres(values, " × ")} (${inInches(values, " × ")})`,
  mass: (value) => Mass.show(value, { digits: 3 }),
  smallMass: (value) => Mass.show(value, { unit: "g", digits: 3 }),
  area: (value) => Area.show(value, { unit: "m2", digits: 3 }).replace("m2", "m²"),
};

function hundredths(value: Length): string {
  return String(Math.round(value * 100_000) / 100);
}
