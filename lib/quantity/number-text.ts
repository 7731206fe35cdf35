/** Numbers as a workshop writes them, decimals and inch fractions. */

/**
 * Reads one number as a workshop writes it: 12, 0.5, .5, 1e-3, 3/8, 2-1/2, 2 1/2, -3.
 *
 * @throws RangeError on anything else; a comma is refused, since it means thousands to one reader and
 * decimals to another.
 */
export function readNumber(text: string): number {
  const trimmed = text.trim();
  if (trimmed.includes(",")) throw new RangeError(`a number without commas, got "${trimmed}"`);
  const value = readMixedFraction(trimmed) ?? readDecimal(trimmed);
  if (value === undefined || !Number.isFinite(value)) throw new RangeError(`a number, got "${trimmed}"`);
  return value;
}

const decimal = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

function readDecimal(text: string): number | undefined {
  if (!decimal.test(text)) return undefined;
  const value = Number(text);
  return Number.isFinite(value) ? value : undefined;
}

const mixedFraction = /^([+-]?)(?:(\d+)(?:\s*-\s*|\s+))?(\d+)\s*\/\s*(\d+)$/;

function readMixedFraction(text: string): number | undefined {
  const match = mixedFraction.exec(text);
  if (!match) return undefined;
  const [, sign, whole = "0", numerator, denominator] = match;
  if (Number(denominator) === 0) return undefined;
  const size = Number(whole) + Number(numerator) / Number(denominator);
  return sign === "-" ? -size : size;
}

/** Shows a decimal with so many significant digits, without a trailing zero or a needless exponent. */
export function showNumber(value: number, digits = 4): string {
  const rounded = Number(value.toPrecision(digits));
  if (rounded === 0) return "0";
  const size = Math.abs(rounded);
  if (size >= 1e9 || size < 1e-4) return rounded.toExponential().replace("e+", "e");
  return groupThousands(rounded);
}

/** Thin no-break spaces between groups of three from 10 000 on, as the SI brochure has it. */
function groupThousands(value: number): string {
  const [whole = "", fraction] = String(value).split(".");
  const digits = whole.replace("-", "");
  if (digits.length < 5) return String(value);
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, "\u202f");
  return fraction ? `${grouped}.${fraction}` : grouped;
}

/**
 * Shows inches as a rule reads: 14-1/2 in, 3/8 in, 0 in.
 *
 * @param inches length in inches
 * @param denominator finest division of the rule, a power of two from 1 to 128
 * @throws RangeError when the denominator is not such a power
 */
export function showInches(inches: number, denominator = 16): string {
  if (![1, 2, 4, 8, 16, 32, 64, 128].includes(denominator)) {
    throw new RangeError(`inch fraction: denominator must be a power of two up to 128, got ${denominator}`);
  }
  const parts = Math.round(Math.abs(inches) * denominator);
  // Beyond all rules: no fraction can be told of it.
  if (!Number.isSafeInteger(parts)) return `${showNumber(inches)} in`;
  const sign = inches < 0 && parts > 0 ? "-" : "";
  const whole = Math.floor(parts / denominator);
  const fraction = reduce(parts % denominator, denominator);
  if (!fraction) return `${sign}${whole} in`;
  return whole === 0 ? `${sign}${fraction} in` : `${sign}${whole}-${fraction} in`;
}

function reduce(numerator: number, denominator: number): string {
  if (numerator === 0) return "";
  return numerator % 2 === 0 ? reduce(numerator / 2, denominator / 2) : `${numerator}/${denominator}`;
}

/**
 * The next whole number from 0 up, where a quotient that is whole but for its rounding stays where it is:
 * 3 packs of 100 hold 300.0000000001 screws.
 */
export function wholeUp(value: number): number {
  return Math.max(0, Math.ceil(value - 1e-9 * Math.max(1, Math.abs(value))));
}
