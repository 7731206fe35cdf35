/** What a printed value says: the number that it stands for in SI, and the same as TeX. */
import { type QuantityKind, readNumber } from "../quantity/index.js";
import * as quantities from "../quantity/kinds.js";

/** What a number of a unit is in SI. */
type ToSi = (value: number) => number;

/** Every unit of every kind; a unit that two kinds share is the same size in both. */
const units: ReadonlyMap<string, ToSi> = new Map(
  Object.values(quantities)
    .filter((kind): kind is QuantityKind<string> & typeof kind => typeof kind === "object")
    .flatMap((kind) => kind.units.map((unit) => [unit, (value: number) => kind.of(value, unit)] as const)),
);

const shown = /^([-+]?[\d.][\d.\u202f/-]*(?:e-?\d+)?)\s?(\S*)$/;

/** "1200 mm" is 1.2, "3/8 in" is 0.009525, "12.50 USD" is 12.5; undefined for anything else. */
export function shownNumber(text: string): number | undefined {
  const [, number = "", unit = ""] = shown.exec(text.trim()) ?? [];
  const toSi = /^[A-Z]{3}$/.test(unit) ? (value: number) => value : units.get(unit);
  try {
    return toSi?.(readNumber(number.replaceAll("\u202f", "")));
  } catch {
    return undefined;
  }
}

/** Size of a unit in SI; undefined where there is no such unit or it has a zero of its own. */
export function unitSize(unit: string): number | undefined {
  const toSi = units.get(unit);
  return toSi && toSi(0) === 0 ? toSi(1) : undefined;
}

const decimal = String.raw`\d[\d\u202f]*(?:\.\d+)?(?:e-?\d+)?`;
const fraction = String.raw`(?:\d+-)?\d+/\d+`;
const simpleValue = new RegExp(`^(-?)(${fraction}|${decimal})(?:\\s?([^\\d\\s/-]\\S{0,11}))?$`);

/** A shown value as TeX; undefined unless it is one number with at most one unit. */
export function texOfValue(text: string): string | undefined {
  const [, sign, number, unit] = simpleValue.exec(text) ?? [];
  if (number === undefined) return undefined;
  const gap = unit === "°" ? "" : "\\,";
  return [`${sign}${texOfNumber(number)}`, unit && texOfUnit(unit)].filter(Boolean).join(gap);
}

function texOfNumber(number: string): string {
  const [, whole = "", numerator, denominator] = /^(?:(\d+)-)?(\d+)\/(\d+)$/.exec(number) ?? [];
  if (denominator) return `${whole}\\tfrac{${numerator}}{${denominator}}`;
  const [digits = "", exponent] = number.split("e");
  const grouped = digits.replaceAll("\u202f", "\\,");
  return exponent ? `${grouped}\\times10^{${exponent}}` : grouped;
}

/** "kg/m2" -> \mathrm{kg}/\mathrm{m}^{2} */
function texOfUnit(unit: string): string {
  return unit
    .replace(/[#$&_{}\\~^]/g, "")
    .replace(/([A-Za-zµ]+)([\d²³⁴]?)/g, (_, letters: string, power: string) =>
      power ? `\\mathrm{${letters}}^{${plainDigit(power)}}` : `\\mathrm{${letters}}`,
    )
    .replaceAll("µ", "\\text{µ}")
    .replaceAll("°", "{}^{\\circ}")
    .replaceAll("%", "\\%")
    .replaceAll("·", "\\cdot ");
}

function plainDigit(power: string): string {
  return power.replace("²", "2").replace("³", "3").replace("⁴", "4");
}
