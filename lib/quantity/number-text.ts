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
  if (value === undefined) throw new RangeError(`a number, got "${trimmed}"`);
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
