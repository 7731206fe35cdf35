/** Figures as the builder would write them: round ones, in the units of the case. */
import { Mass } from "../quantity/index.js";

/** The systems of units that a case may be in. */
export type Units = "inch" | "metric";

/** Newton in a pound-force; BIPM SI brochure by way of NIST SP 811, exact. */
const pound = 4.4482216152605;
/** Metres in an inch, exact. */
const inch = 0.0254;

/** Steps of a decade in which ratings are asked for: a coarse row, so that proposals share their figures. */
const ratingRow = [1, 1.5, 2, 3, 4, 5, 7] as const;

/** The next figure of the row at or above a value. */
function nextOfRow(value: number): number {
  const decade = 10 ** Math.floor(Math.log10(value));
  const steps = [...ratingRow.map((step) => step * decade), 10 * decade];
  return steps.find((step) => step >= value - 1e-9) ?? 10 * decade;
}

/** A force that is at least so much, in round figures: "300 lbf", "1500 N". */
export function roundForce(newton: number, units: Units): string {
  const [each, unit] = units === "inch" ? [pound, "lbf"] : [1, "N"];
  return `${Number(nextOfRow(newton / each).toPrecision(6))} ${unit}`;
}

/** A length to a hundredth of an inch or a tenth of a millimetre: "0.53 in". */
export function fineLength(metres: number, units: Units): string {
  return units === "inch"
    ? `${Number((metres / inch).toFixed(2))} in`
    : `${Number((1000 * metres).toFixed(1))} mm`;
}

/** The same, never less: for what must clear something. */
export function lengthAtLeast(metres: number, units: Units): string {
  return fineLength(metres + (units === "inch" ? 0.005 * inch : 0.00005), units);
}

/** The same, never more: for what must stay inside something. */
export function lengthAtMost(metres: number, units: Units): string {
  return fineLength(metres - (units === "inch" ? 0.005 * inch : 0.00005), units);
}

/** A mass as text. */
export function massText(kilograms: number, units: Units): string {
  return Mass.show(Mass.si(kilograms), { system: units });
}
