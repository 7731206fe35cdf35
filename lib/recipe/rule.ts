/** Lengths and masses as the builder's rule and scale read them, with millimetres and kilograms beside. */
import type { Case } from "../design/index.js";
import { Area, Length, Mass, type ShowStyle, showInches } from "../quantity/index.js";

/** How one case's lengths are written. */
export interface Rule {
  readonly style: ShowStyle;
  /** A length to mark or cut: "23-5/8 in (600 mm)" or "600 mm". */
  length(value: Length): string;
  /** Two lengths of a rectangle: "23-5/8 × 15-3/4 in (600 × 400 mm)". */
  size(...values: readonly Length[]): string;
  /** Running marks: "3/8, 5-1/2 in (9.5, 139.7 mm)". */
  marks(values: readonly Length[]): string;
  /** A thickness, gap or hole, too small for a fraction: "0.236 in (6 mm)". */
  fine(value: Length): string;
  /** A length in the builder's unit alone, for a drawing: "23-5/8 in" or "600 mm". */
  drawn(value: Length): string;
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

const inchesOf = (value: Length): string => showInches(Length.in(value, "in")).replace(" in", "");

function joined(values: readonly Length[], separator: string): string {
  return `${values.map(inchesOf).join(separator)} in (${values.map(tenths).join(separator)} mm)`;
}

const inchRule: Rule = {
  style: { system: "inch" },
  length: (value) => joined([value], ""),
  size: (...values) => joined(values, " × "),
  marks: (values) => joined(values, ", "),
  fine: (value) => `${Length.in(value, "in").toFixed(3)} in (${hundredths(value)} mm)`,
  drawn: (value) => `${inchesOf(value)} in`,
  mass: (value) => `${Mass.show(value, { system: "inch", digits: 3 })} (${Mass.show(value, { digits: 3 })})`,
  area: (value) => Area.show(value, { unit: "ft2", digits: 3 }).replace("ft2", "ft²"),
};

const metricRule: Rule = {
  style: { system: "metric" },
  length: (value) => `${tenths(value)} mm`,
  size: (...values) => `${values.map(tenths).join(" × ")} mm`,
  marks: (values) => `${values.map(tenths).join(", ")} mm`,
  fine: (value) => `${hundredths(value)} mm`,
  drawn: (value) => `${tenths(value)} mm`,
  mass: (value) => Mass.show(value, { digits: 3 }),
  area: (value) => Area.show(value, { unit: "m2", digits: 3 }).replace("m2", "m²"),
};

function hundredths(value: Length): string {
  return String(Math.round(value * 100_000) / 100);
}
