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
