/** The number that a shown value stands for, in SI, so that a printed line can be reckoned over. */

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
