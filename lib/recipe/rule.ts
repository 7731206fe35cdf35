/** Lengths and masses as the builder's rule and scale read them, with millimetres and kilograms beside. */
import type { Case } from "../design/index.js";
import { Area, Length, Mass, type ShowStyle, showInches } from "../quantity/index.js";

/** A hyphen at which no line is broken. */
export const unbreakableHyphen = "\u2011";

/** How one case's lengths are written; a number and its unit never part at the end of a line. */
export interface Rule {
  /** The units that every other quantity is shown in. */
  readonly style: ShowStyle;
  /** A length to mark or cut: "23-5/8 in (600 mm)" or "600 mm". */
  length(value: Length): string;
  /** Two lengths of a rectangle: "23-5/8 × 15-3/4 in (600 × 400 mm)". */
  size(...values: readonly Length[]): string;
  /** Running marks: "3/8, 5-1/2 in (9.5, 139.7 mm)". */
  marks(values: readonly Length[]): string;
  /** A thickness, gap or hole, too small for a fraction: "0.236 in (6 mm)". */
  fine(value: Length): string;
  /** Lengths in the builder's unit alone, where room is short: "23-5/8 in", "600 × 400 mm". */
  drawn(...values: readonly Length[]): string;
  /** A mass: "12.5 lb (5.67 kg)". */
  mass(value: Mass): string;
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

/** Inches without the unit; the hyphen of a mixed fraction never ends a line, or 20-11/16 could be read as 20. */
function inchesOf(value: Length): string {
  return showInches(Length.in(value, "in")).replace(" in", "").replace("-", unbreakableHyphen);
}

function joined(values: readonly Length[], separator: string): string {
  return `${values.map(inchesOf).join(separator)}\u00a0in (${values.map(tenths).join(separator)}\u00a0mm)`;
}

const inchRule: Rule = {
  style: { system: "inch" },
  length: (value) => joined([value], ""),
  size: (...values) => joined(values, " × "),
  marks: (values) => joined(values, ", "),
  fine: (value) => `${Length.in(value, "in").toFixed(3)}\u00a0in (${hundredths(value)}\u00a0mm)`,
  drawn: (...values) => `${values.map(inchesOf).join(" × ")}\u00a0in`,
  mass: (value) => `${Mass.show(value, { system: "inch", digits: 3 })} (${Mass.show(value, { digits: 3 })})`,
  area: (value) => Area.show(value, { unit: "ft2", digits: 3 }).replace("ft2", "ft²"),
};

const metricRule: Rule = {
  style: { system: "metric" },
  length: (value) => `${tenths(value)}\u00a0mm`,
  size: (...values) => `${values.map(tenths).join(" × ")}\u00a0mm`,
  marks: (values) => `${values.map(tenths).join(", ")}\u00a0mm`,
  fine: (value) => `${hundredths(value)}\u00a0mm`,
  drawn: (...values) => `${values.map(tenths).join(" × ")}\u00a0mm`,
  mass: (value) => Mass.show(value, { digits: 3 }),
  area: (value) => Area.show(value, { unit: "m2", digits: 3 }).replace("m2", "m²"),
};

function hundredths(value: Length): string {
  return String(Math.round(value * 100_000) / 100);
}
