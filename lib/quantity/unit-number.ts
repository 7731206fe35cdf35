/**
 * A quantity as a notebook holds it: a number in SI that also knows what it measures, so that it prints with its
 * unit, and a place in a case file can refuse a mass for a width. Rooms below take and give plain numbers.
 */
import type { BareNumber, Kind, Quantity, ShowStyle } from "./kind.js";

/** What a number with its unit can do beside plain arithmetic, which gives bare numbers in SI. */
export interface UnitNumberMethods<Name extends string> {
  /** Its number in a unit: `sag.in("mm")`. @throws RangeError for a unit that the kind does not have */
  in(unit: string): number;
  /** Its text, in a unit of your choice: `sag.show({ unit: "mm", digits: 2 })`. */
  show(style?: ShowStyle): string;
  /** The unit that it prints in: "mm". */
  printsIn(): string;
  /** Its text as a file of a job says it, with all its digits. */
  written(): string;
  /** The sum with another of its kind. */
  plus(other: Quantity<Name>): UnitNumber<Name>;
  /** The difference from another of its kind. */
  minus(other: Quantity<Name>): UnitNumber<Name>;
  /** So many times as much; a half is `times(0.5)`. */
  times(factor: BareNumber): UnitNumber<Name>;
  /** How many times another of its kind it is. */
  over(other: Quantity<Name>): number;
  /** The plain number in SI that the library's own functions give and take. */
  readonly si: Quantity<Name>;
  /** What it measures: "length". */
  readonly kindName: string;
  /** Why there is no such number; undefined for every number that there is. */
  readonly whyNone: string | undefined;
}

/** A number in SI with its unit. */
export type UnitNumber<Name extends string> = Quantity<Name> & UnitNumberMethods<Name>;

/** How Node.js, and so a cell, prints a value. */
const printed: unique symbol = Symbol.for("nodejs.util.inspect.custom") as never;

/** Comparison, arithmetic and formulas take it as the number that it wraps; only === sees an object. */
class UnitNumberValue extends Number implements UnitNumberMethods<string> {
  readonly #kind: Kind<Quantity<string>>;
  readonly #style: ShowStyle;

  constructor(value: number, kind: Kind<Quantity<string>>, style: ShowStyle) {
    super(value);
    this.#kind = kind;
    this.#style = style;
  }

  get si(): Quantity<string> {
    return this.valueOf() as Quantity<string>;
  }

  get kindName(): string {
    return this.#kind.name;
  }

  get whyNone(): string | undefined {
    return undefined;
  }

  in(unit: string): number {
    return this.#kind.in?.(this.si, unit) ?? this.si;
  }

  show(style: ShowStyle = {}): string {
    return this.#kind.show(this.si, { ...this.#style, ...style });
  }

  printsIn(): string {
    return this.#style.unit ?? /[^\d\s.-].*$/.exec(this.show({ exact: true }))?.[0] ?? "";
  }

  written(): string {
    const unit = this.#style.unit ?? unitsOf(this.#kind)[0] ?? "";
    return `${Number(this.in(unit).toPrecision(12))} ${unit}`.trim();
  }

  plus(other: Quantity<string>): UnitNumber<string> {
    return this.#same(this.si + this.#ofKind("plus", other));
  }

  minus(other: Quantity<string>): UnitNumber<string> {
    return this.#same(this.si - this.#ofKind("minus", other));
  }

  times(factor: BareNumber): UnitNumber<string> {
    return this.#same(this.si * Number(factor));
  }

  over(other: Quantity<string>): number {
    return this.si / this.#ofKind("over", other);
  }

  override toString(): string {
    return this.show();
  }

  [printed](): string {
    return this.show();
  }

  #same(value: number): UnitNumber<string> {
    return unitNumber(this.#kind, value, this.#style);
  }

  /** @throws TypeError for a quantity of another kind */
  #ofKind(doing: string, other: number): number {
    if (isUnitNumber(other) && other.kindName !== this.kindName) {
      throw new TypeError(
        `${this.show()}: ${doing} takes a ${this.kindName} too, got ${other.show()}, which is a ${other.kindName}`,
      );
    }
    return Number(other);
  }
}

/** Stands where a number cannot be given: it prints why, and refuses to be reckoned with. Never NaN. */
class MissingNumber extends UnitNumberValue {
  readonly #refusal: Error;

  constructor(kind: Kind<Quantity<string>>, refusal: Error) {
    super(0, kind, {});
    this.#refusal = refusal;
  }

  override get whyNone(): string {
    return this.#refusal.message;
  }

  override valueOf(): never {
    throw this.#refusal;
  }

  override in(): never {
    throw this.#refusal;
  }

  override show(): string {
    return `no answer: ${this.whyNone}`;
  }

  override printsIn(): string {
    return "";
  }

  override toFixed(): never {
    throw this.#refusal;
  }

  override toPrecision(): never {
    throw this.#refusal;
  }

  override toExponential(): never {
    throw this.#refusal;
  }

  override toLocaleString(): string {
    return this.show();
  }
}

function unitsOf(kind: object): readonly string[] {
  return "units" in kind ? (kind.units as readonly string[]) : [];
}

/**
 * A number of a kind, with its unit.
 *
 * @param style how it prints unless told otherwise
 * @throws RangeError unless it is finite
 */
export function unitNumber<Name extends string>(
  kind: Kind<Quantity<Name>>,
  value: number,
  style: ShowStyle = {},
): UnitNumber<Name> {
  if (!Number.isFinite(Number(value))) {
    throw new RangeError(`${kind.name}: expected a finite number, got ${value}`);
  }
  return new UnitNumberValue(
    Number(value),
    kind as unknown as Kind<Quantity<string>>,
    style,
  ) as unknown as UnitNumber<Name>;
}

/**
 * Stands in a list for a number that cannot be given, so that the others of the list are not lost with it. It prints
 * why; reckoning with it, comparing it or handing it to a formula throws the refusal.
 */
export function missingNumber<Name extends string>(
  kind: Kind<Quantity<Name>>,
  refusal: Error,
): UnitNumber<Name> {
  return new MissingNumber(kind as unknown as Kind<Quantity<string>>, refusal) as unknown as UnitNumber<Name>;
}

/** Whether a value is a number with its unit. */
export function isUnitNumber(value: unknown): value is UnitNumber<string> {
  return value instanceof UnitNumberValue;
}

/** The same with plain numbers where units stood, at any depth; the very same where none stood. */
export function withoutUnits<T>(value: T): T {
  if (isUnitNumber(value)) return value.si as never;
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) {
    const plain = value.map(withoutUnits);
    return plain.some((one, i) => one !== value[i]) ? (plain as T) : value;
  }
  if (Object.getPrototypeOf(value) !== Object.prototype) return value;
  const entries = Object.entries(value);
  const plain = entries.map(([name, one]): [string, unknown] => [name, withoutUnits(one)]);
  return plain.some(([, one], i) => one !== entries[i]?.[1]) ? (Object.fromEntries(plain) as T) : value;
}
