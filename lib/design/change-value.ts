/** Values of a change: text as the files say it, and quantities, which are written with their unit. */
import { isUnitNumber, type Kind, Length, Mass, type UnitNumber } from "../quantity/index.js";

/** What the last word of a place in the case file measures, where that word always means the same. */
const measuredBy = {
  width: Length,
  height: Length,
  depth: Length,
  diameter: Length,
  across: Length,
  up: Length,
  overlap: Length,
  clearance: Length,
  gap: Length,
  pitch: Length,
  oversize: Length,
  "corner radius": Length,
  "end distance": Length,
  "set back": Length,
  mass: Mass,
} as const;

/** What a place measures, by its last word; never where the word does not say. */
export type KindAt<At extends string> = At extends `${string}.${infer Rest}`
  ? KindAt<Rest>
  : At extends keyof typeof measuredBy
    ? (typeof measuredBy)[At] extends Kind<infer Value>
      ? KindName<Value>
      : never
    : never;

/** The name of the kind of a value. */
export type KindName<Value> = Value extends Length ? "length" : Value extends Mass ? "mass" : never;

/** How a notebook writes what a word of the case file measures. */
export interface Examples {
  readonly length: "mm(600) or inch(24)";
  readonly mass: "kg(5) or pound(11)";
}

/**
 * A value, where it may be put at a place: text as in the file, a quantity of what the place measures, and elsewhere any
 * number or words too. Otherwise words for the compiler to say, in whose error they stand.
 */
export type PutAt<At, Value> = At extends string
  ? [KindAt<At>] extends [never]
    ? Value
    : Value extends string | UnitNumber<KindAt<At>>
      ? Value
      : Value extends UnitNumber<string>
        ? `this place measures a ${KindAt<At>}: write ${Examples[KindAt<At>]}`
        : `write the unit too: ${Examples[KindAt<At>]}`
  : Value;

/** Any value that a change can write. */
export type ChangeValue = string | number | boolean | readonly string[];

/**
 * A value as the case file says it.
 *
 * @throws RangeError for a number without a unit where one is needed, or a quantity that the place does not measure
 */
export function caseText(at: string, value: ChangeValue): string {
  const kind = kindOf.get(at.split(".").at(-1) ?? "");
  if (isUnitNumber(value)) {
    if (kind !== undefined && value.kindName !== kind.name) {
      throw new RangeError(
        `set ${at}: expected a ${kind.name} such as ${exampleOf(kind)}, got ${value.show()}, a ${value.kindName}`,
      );
    }
    return value.written();
  }
  if (typeof value === "number" && kind !== undefined) {
    throw new RangeError(`set ${at}: write the unit too, such as ${exampleOf(kind, value)}; got ${value}`);
  }
  return textOf(`set ${at}`, value);
}

type NamedKind = Pick<Kind<unknown>, "name">;

/** What each word of a case file measures. */
const kindOf: ReadonlyMap<string, NamedKind> = new Map(Object.entries(measuredBy));

/** A quantity of a kind as a notebook writes it, in both systems. */
function exampleOf(kind: NamedKind, value = 600): string {
  return kind.name === "mass" ? `kg(${value}) or pound(${value})` : `mm(${value}) or inch(${value})`;
}

/**
 * A value as text.
 *
 * @throws RangeError for a number that is none, with what is being done
 */
export function textOf(doing: string, value: ChangeValue): string {
  if (isUnitNumber(value)) return value.written();
  if (typeof value === "object") return `[${value.map((word) => JSON.stringify(word)).join(", ")}]`;
  if (typeof value === "number" && !Number.isFinite(value)) {
    throw new RangeError(`${doing}: expected a finite number, got ${value}`);
  }
  return String(value);
}

/** A bare number as a table holds it. */
const bareText = /^\s*[-+]?[\d.,/\s-]*\s*$/;

/**
 * A text with a unit as the number that belongs under a header that names one: "600 mm" under "width (in)". Any other
 * text as it stands, for the check of the files to tell.
 *
 * @param kinds what headers may measure
 */
export function underHeader(header: string, text: string, kinds: readonly HeaderKind[]): string {
  const unit = /\(([^()]*)\)\s*$/.exec(header)?.[1]?.trim();
  if (unit === undefined || bareText.test(text)) return text;
  const fitting = kinds.filter(({ units }) => units.includes(unit));
  const numbers = fitting.flatMap((kind) => numberIn(kind, text, unit));
  return numbers[0] ?? text;
}

/** The number of a unit that a text is; nothing for a text of another kind. */
function numberIn(kind: HeaderKind, text: string, unit: string): readonly string[] {
  try {
    return [String(Number(kind.in(kind.read(text), unit).toPrecision(12)))];
  } catch (error) {
    if (error instanceof RangeError) return [];
    throw error;
  }
}

/** A kind whose values have units. */
export interface HeaderKind {
  /** The names of all its units. */
  readonly units: readonly string[];
  /** Reads text. */
  read(text: unknown): never;
  /** The number of a unit. */
  in(value: never, unit: string): number;
}
