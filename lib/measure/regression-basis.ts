/** Columns of a fit, centred and scaled so that they are as unlike as they can be, and the way back. */
import {
  asWritten,
  type LongNumber,
  minus,
  negated,
  one,
  over,
  plus,
  times,
  total,
  zero,
} from "../algebra/long-number.js";

/** What a fit is made of. */
export interface RegressionBasis {
  /** Fitted columns. */
  readonly columns: readonly (readonly LongNumber[])[];
  /** Coefficients of the columns as given = this matrix times those of the fitted columns. */
  readonly back: readonly (readonly LongNumber[])[];
}

/** Middle and half range of a column. */
interface Scale {
  readonly middle: LongNumber;
  readonly reach: LongNumber;
}

/**
 * 1, u, u^2, ... of one column, u being x less its mean over its reach; without an intercept x is only scaled.
 *
 * @param degree highest power
 */
export function powerBasis(x: readonly number[], degree: number, intercept: boolean): RegressionBasis {
  const values = x.map(asWritten);
  const scale = scaleOf(values, intercept);
  const powers = [values.map(() => one)];
  for (let power = 1; power <= degree; power++) {
    const last = powers[power - 1] ?? [];
    powers.push(values.map((value, i) => times(scaled(value, scale), last[i] ?? one)));
  }
  const first = intercept ? 0 : 1;
  const shifts = shiftedPowers(scale, degree);
  return {
    columns: powers.slice(first),
    back: powers.slice(first).map((_, i) => shifts.slice(first).map((row) => row[i + first] ?? zero)),
  };
}

/** Several columns, each less its mean over its reach, with a column of ones before them for an intercept. */
export function columnBasis(columns: readonly (readonly number[])[], intercept: boolean): RegressionBasis {
  const given = columns.map((column) => column.map(asWritten));
  const scales = given.map((column) => scaleOf(column, intercept));
  const fitted = given.map((column, j) => column.map((value) => scaled(value, scales[j] as Scale)));
  const slopes = scales.map(({ reach }, i) => scales.map((_, j) => (i === j ? over(one, reach) : zero)));
  if (!intercept) return { columns: fitted, back: slopes };
  const shift = scales.map(({ middle, reach }) => negated(over(middle, reach)));
  return {
    columns: [(given[0] ?? []).map(() => one), ...fitted],
    back: [[one, ...shift], ...slopes.map((row) => [zero, ...row])],
  };
}

function scaleOf(values: readonly LongNumber[], centred: boolean): Scale {
  const middle = centred ? over(total(values), [values.length, 0]) : zero;
  const reach = Math.max(...values.map((value) => Math.abs(minus(value, middle)[0])));
  return { middle, reach: reach === 0 ? one : [reach, 0] };
}

function scaled(value: LongNumber, { middle, reach }: Scale): LongNumber {
  return over(minus(value, middle), reach);
}

/** Powers of u = (x - m) / r as polynomials in x: row k holds the coefficients of u^k. */
function shiftedPowers({ middle, reach }: Scale, degree: number): LongNumber[][] {
  const rows: LongNumber[][] = [[one]];
  for (let power = 1; power <= degree; power++) {
    const last = rows[power - 1] ?? [];
    rows.push(
      Array.from({ length: power + 1 }, (_, i) =>
        over(plus(last[i - 1] ?? zero, negated(times(middle, last[i] ?? zero))), reach),
      ),
    );
  }
  return rows;
}
