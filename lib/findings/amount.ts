import { type Kind, Length, Ratio, type ShowStyle, showNumber } from "../quantity/index.js";
import type { Amount } from "./finding.js";

/** An amount with its number in SI units, so that it can be compared. */
export interface Measured extends Amount {
  /** The number in SI units of its kind; of money, in its own currency. */
  readonly value: number;
}

/**
 * A value of a kind under a name.
 *
 * @throws TypeError for a kind without a number
 */
export function amount<T>(kind: Kind<T>, meaning: string, value: T): Measured {
  const number = kind.measure?.(value);
  if (number === undefined)
    throw new TypeError(`${meaning}: expected a value with a number, got ${kind.show(value)}`);
  return { meaning, value: number, show: (style?: ShowStyle) => kind.show(value, style) };
}

/** A length too small for a rule's fractions, such as a sag or a stack, under a name. */
export function fineAmount(meaning: string, value: Length): Measured {
  return { meaning, value, show: (style?: ShowStyle) => showFine(value, style) };
}

/** The least difference that anybody tells apart with a dial gauge. */
const finest = { inch: { unit: "in", parts: 1000 }, metric: { unit: "mm", parts: 100 } };

/** A sag, a stack or a hole: decimal inches, or millimetres, in steps that a dial gauge shows. */
export function showFine(length: Length, { system = "metric" }: ShowStyle = {}): string {
  const { unit, parts } = finest[system];
  const steps = Math.round(Math.abs(Length.in(length, unit)) * parts);
  if (steps === 0 && length !== 0) return `less than ${1 / parts} ${unit}`;
  return `${showNumber((Math.sign(length) * steps) / parts, 3)} ${unit}`;
}

/** An amount and its limit, both in the unit of the limit: "0.179 MPa of 1.22 MPa". */
export function shownPair<T>(kind: Kind<T>, value: T, limit: T, style: ShowStyle): readonly [string, string] {
  const shown = kind.show(limit, style);
  const [, unit] = /[ \u00a0](\S+)$/.exec(shown) ?? [];
  return [unit === undefined ? kind.show(value, style) : kind.show(value, { unit, digits: 3 }), shown];
}

/** A mesh error below this is no more worth telling apart. */
const leastMeshError = 0.001;

/** The estimated mesh error: one digit is all it is worth. */
export function showMeshError(share: Ratio): string {
  if (share < leastMeshError) return `${Ratio.show(Ratio.si(leastMeshError), { unit: "%", digits: 1 })}`;
  return Ratio.show(share, { unit: "%", digits: 1 });
}

/** "1 rivet", "2 rivets". */
export function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** "a", "a and b", "a, b and c". */
export function listed(items: readonly string[]): string {
  if (items.length < 2) return items.join("");
  return `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;
}

/** "4.2 % more": how far what came out is from what was planned. */
export function offPlan(real: number, planned: number): string {
  const share = 100 * (real / planned - 1);
  return `${showNumber(Math.abs(share), 2)} % ${share < 0 ? "less" : "more"}`;
}

/** Words as the beginning of a sentence, unless they are a name with a dot. */
export function capitalised(words: string): string {
  return /^[a-z][\w-]*( \d+)?\./.test(words) ? words : words.charAt(0).toUpperCase() + words.slice(1);
}

/** "within 3 %". */
export function withinMesh(meshError: Ratio): string {
  return `within ${showMeshError(meshError)}`;
}

/** The units a case is shown in, with inch fractions to a sixteenth. */
export function styleOf({ units }: { readonly units: "inch" | "metric" }): ShowStyle {
  return { system: units, denominator: 16, digits: 3 };
}
