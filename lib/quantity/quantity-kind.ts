import { type Kind, messageOf, type Quantity, type ShowStyle } from "./kind.js";
import { readNumber, showInches, showNumber } from "./number-text.js";

/** One unit of a kind: SI value = (number + zero) x scale. */
export interface Unit {
  /** The size of the unit in SI. */
  readonly scale: number;
  /** Only temperatures have one. */
  readonly zero?: number;
}

/** What a kind is made of. */
export interface QuantityDeclaration {
  /** The name as an error says it: "length". */
  readonly name: string;
  /** Unit names as written, with their size in SI. The unit "" is a bare number. */
  readonly units: Readonly<Record<string, number | Unit>>;
  /** The metric units to show in, smallest first; the largest that leaves a number of at least 1 is taken. */
  readonly metric: readonly string[];
  /** The units of the inch system to show in, chosen the same way. */
  readonly inch: readonly string[];
  /** A text that an error gives as an example. */
  readonly example: string;
}

/** A kind whose values are numbers in SI. */
export interface QuantityKind<Name extends string> extends Kind<Quantity<Name>> {
  /** Labels a number already in SI. Throws RangeError unless it is finite. */
  si(value: number): Quantity<Name>;
  /** A number of the given unit. */
  of(value: number, unit: string): Quantity<Name>;
  /** The number of the given unit that a value is. */
  in(value: Quantity<Name>, unit: string): number;
  /** The names of all its units. */
  readonly units: readonly string[];
  /** The unit that its example is written in, which suits a heading. */
  readonly usual: string;
  measure(value: Quantity<Name>): number;
  showMeasure(value: number, style?: ShowStyle): string;
}

/**
 * Declares a kind of quantity from its units.
 *
 * @example
 * const Radius = quantityKind<"radius">({ name: "radius", units: { m: 1, mm: 0.001 }, metric: ["mm"], inch: ["mm"], example: "12 mm" });
 * Radius.read("12 mm") // 0.012
 */
export function quantityKind<Name extends string>(declaration: QuantityDeclaration): QuantityKind<Name> {
  const { name } = declaration;
  const unitNamed = (unit: string): Unit => {
    const found = declaration.units[unit];
    if (found === undefined)
      throw new RangeError(`${name}: no unit "${unit}", expected ${unitList(declaration)}`);
    return typeof found === "number" ? { scale: found } : found;
  };
  const si = (value: number): Quantity<Name> => {
    // A number with its unit is an object to Number.isFinite.
    const plain = Number(value);
    if (!Number.isFinite(plain)) throw new RangeError(`${name}: expected a finite number, got ${value}`);
    return plain as Quantity<Name>;
  };
  const toSi = (value: number, unit: string): number => {
    const { scale, zero = 0 } = unitNamed(unit);
    return (value + zero) * scale;
  };
  const fromSi = (value: number, unit: string): number => {
    const { scale, zero = 0 } = unitNamed(unit);
    return value / scale - zero;
  };
  const show = (value: number, style: ShowStyle = {}): string => {
    const unit =
      style.unit ?? pickUnit(style.system === "inch" ? declaration.inch : declaration.metric, value, fromSi);
    if (unit === "in" && name === "length" && !style.exact)
      return showInches(fromSi(value, unit), style.denominator);
    const number = showNumber(fromSi(value, unit), style.digits);
    // SI brochure 5.4.3: a space before every unit but the degree of an angle.
    return unit === "" || unit === "°" ? `${number}${unit}` : `${number} ${unit}`;
  };
  const expected = `${/^[aeiou]/.test(name) ? "an" : "a"} ${name} such as "${declaration.example}"`;
  return {
    name,
    expected,
    fault: (value) => (Number.isFinite(value) ? undefined : expected),
    si,
    of: (value, unit) => si(toSi(value, unit)),
    in: fromSi,
    units: Object.keys(declaration.units),
    usual: splitTerms(declaration.example.split(/,| or /)[0] ?? "")?.[0]?.unit ?? "",
    read: (text) => si(readTerms(text, declaration, expected, toSi)),
    show,
    measure: (value) => value,
    showMeasure: show,
  };
}

function unitList(declaration: QuantityDeclaration): string {
  return Object.keys(declaration.units)
    .map((unit) => unit || "a bare number")
    .join(", ");
}

function pickUnit(
  names: readonly string[],
  value: number,
  fromSi: (value: number, unit: string) => number,
): string {
  const fitting = names.filter((unit) => Math.abs(fromSi(value, unit)) >= 1);
  return fitting.at(-1) ?? names[0] ?? "";
}

const numberText = String.raw`[+-]?(?:\d+(?:\s*-\s*|\s+)\d+\s*/\s*\d+|\d+\s*/\s*\d+|(?:\d[\d.,]*|\.\d+)(?:e[+-]?\d+)?)`;
const unitText = String.raw`['"]|[A-Za-z°%µΩ][^\s'"]*`;
const term = new RegExp(String.raw`\s*(${numberText})\s*(${unitText})?`, "gy");

function readTerms(
  text: unknown,
  declaration: QuantityDeclaration,
  expected: string,
  toSi: (value: number, unit: string) => number,
): number {
  if (typeof text === "number") text = String(text);
  if (typeof text !== "string")
    throw new TypeError(`expected ${expected}, got ${JSON.stringify(text) ?? String(text)}`);
  const terms = splitTerms(text);
  const unknown = terms?.find(({ unit }) => declaration.units[unit] === undefined);
  if (!terms || unknown) {
    throw new RangeError(`expected ${expected} (units: ${unitList(declaration)}), got "${text.trim()}"`);
  }
  try {
    return sumTerms(terms, toSi);
  } catch (error) {
    throw new RangeError(`expected ${expected}: ${messageOf(error)}, got "${text.trim()}"`);
  }
}

/** A unit with the figures of its squares and cubes on the line, as the names of units have them: "m2" for "m²". */
export function onTheLine(unit: string): string {
  return unit.replaceAll("²", "2").replaceAll("³", "3");
}

interface Term {
  /** The number, as written. */
  readonly number: string;
  /** The name of the unit, empty for a bare number. */
  readonly unit: string;
}

function splitTerms(text: string): Term[] | undefined {
  const terms: Term[] = [];
  term.lastIndex = 0;
  const trimmed = text.trim();
  while (term.lastIndex < trimmed.length) {
    const match = term.exec(trimmed);
    if (!match) return undefined;
    terms.push({ number: match[1] ?? "", unit: onTheLine(match[2] ?? "") });
  }
  return terms.length === 0 ? undefined : terms;
}

/** "1 ft 2-1/2 in" is one length; each further term must be positive and of a smaller unit. */
function sumTerms(terms: readonly Term[], toSi: (value: number, unit: string) => number): number {
  const values = terms.map(({ number, unit }) => toSi(readNumber(number), unit));
  const sizes = terms.map(({ unit }) => toSi(1, unit) - toSi(0, unit));
  const ordered = values.every(
    (value, i) => i === 0 || (value >= 0 && (sizes[i] ?? 0) < (sizes[i - 1] ?? 0)),
  );
  if (!ordered) throw new RangeError("each further part must be positive and in a smaller unit");
  const [first = 0, ...rest] = values;
  const negative = terms[0]?.number.startsWith("-") ?? false;
  return rest.reduce((sum, value) => (negative ? sum - value : sum + value), first);
}
