/**
 * Numbers of about 32 digits, each the unevaluated sum of two doubles: T. J. Dekker, A floating-point
 * technique for extending the available precision (1971); D. E. Knuth, The Art of Computer Programming,
 * vol. 2, 4.2.2. Fits whose columns are nearly alike lose half of their digits; sixteen are then too few.
 */

/** A value as high + low, low being less than a rounding of high. */
export type LongNumber = readonly [high: number, low: number];

/** 0 */
export const zero: LongNumber = [0, 0];
/** 1 */
export const one: LongNumber = [1, 0];

function settled(high: number, low: number): LongNumber {
  const sum = high + low;
  return [sum, low - (sum - high)];
}

/** a + b */
export function plus([a, aLow]: LongNumber, [b, bLow]: LongNumber): LongNumber {
  const sum = a + b;
  const part = sum - a;
  const lost = a - (sum - part) + (b - part);
  const lowSum = aLow + bLow;
  const lowPart = lowSum - aLow;
  const lowLost = aLow - (lowSum - lowPart) + (bLow - lowPart);
  const [high, low] = settled(sum, lost + lowSum);
  return settled(high, low + lowLost);
}

/** -a */
export function negated([high, low]: LongNumber): LongNumber {
  return [-high, -low];
}

/** a - b */
export function minus(a: LongNumber, b: LongNumber): LongNumber {
  return plus(a, negated(b));
}

/** 2^27 + 1 cuts a double into two halves whose products are exact. */
const cutter = 2 ** 27 + 1;

function halves(value: number): readonly [number, number] {
  const scaled = cutter * value;
  const high = scaled - (scaled - value);
  return [high, value - high];
}

/** a b */
export function times([a, aLow]: LongNumber, [b, bLow]: LongNumber): LongNumber {
  const product = a * b;
  const [aFirst, aSecond] = halves(a);
  const [bFirst, bSecond] = halves(b);
  const lost = aFirst * bFirst - product + aFirst * bSecond + aSecond * bFirst + aSecond * bSecond;
  return settled(product, lost + a * bLow + aLow * b);
}

/** a / b */
export function over(a: LongNumber, b: LongNumber): LongNumber {
  const first = a[0] / b[0];
  const rest = minus(a, times([first, 0], b));
  const second = rest[0] / b[0];
  const last = minus(rest, times([second, 0], b))[0] / b[0];
  return plus(settled(first, second), [last, 0]);
}

/** The square root of a value from 0 up. */
export function root(value: LongNumber): LongNumber {
  if (value[0] <= 0) return zero;
  const first = Math.sqrt(value[0]);
  const rest = minus(value, times([first, 0], [first, 0]));
  return settled(first, rest[0] / (2 * first));
}

/** Sum of a list. */
export function total(values: readonly LongNumber[]): LongNumber {
  return values.reduce(plus, zero);
}

/** The nearest double. */
export function short([high, low]: LongNumber): number {
  return high + low;
}

/**
 * A number as it was written: 0.1 is a tenth, not the double next to it. The shortest decimal that reads as
 * the double is taken for what was written.
 *
 * @throws RangeError unless the value is finite
 */
export function asWritten(value: number): LongNumber {
  if (!Number.isFinite(value)) throw new RangeError(`long number: expected a finite number, got ${value}`);
  const [digits = "0", exponent = "0"] = Math.abs(value).toExponential().split("e");
  const [whole = "0", fraction = ""] = digits.split(".");
  const figures = (whole + fraction).padEnd(18, "0");
  const mantissa = plus([Number(figures.slice(0, 9)) * 1e9, 0], [Number(figures.slice(9)), 0]);
  const size = scaledByTen(mantissa, Number(exponent) - figures.length + 1);
  return value < 0 ? negated(size) : size;
}

function scaledByTen(value: LongNumber, power: number): LongNumber {
  // Powers of ten are exact in a double up to 22.
  const step = Math.min(22, Math.abs(power));
  if (step === 0) return value;
  const factor: LongNumber = [10 ** step, 0];
  const next = power > 0 ? times(value, factor) : over(value, factor);
  return scaledByTen(next, power > 0 ? power - step : power + step);
}
