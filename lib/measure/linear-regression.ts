import { type LeastSquares, leastSquares } from "../algebra/least-squares.js";
import { at } from "../algebra/lists.js";
import {
  asWritten,
  type LongNumber,
  minus,
  negated,
  one,
  over,
  plus,
  root,
  short,
  times,
  total,
  zero,
} from "../algebra/long-number.js";
import { type Formula, formula } from "../formula.js";
import { Count, choice, listOf, Ratio } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import { cite } from "../source.js";

/** Points to fit, and what to fit to them. */
export interface RegressionInputs {
  /** What was set, one list a column, each as long as y. */
  readonly columns: readonly (readonly Ratio[])[];
  /** What was read. */ readonly y: readonly Ratio[];
  /** Highest power of a single column; 1 for several columns. */ readonly degree: number;
  /** Whether the fit may miss the origin. */ readonly intercept: "yes" | "no";
}

/** A fitted curve or plane. */
export type Regression = {
  /** Intercept first where there is one, then by rising power or in the order of the columns. */
  readonly coefficients: readonly Ratio[];
  /** In the same order. */ readonly standardErrors: readonly Ratio[];
  /** Standard deviation of the points about the fit. */ readonly residualDeviation: Ratio;
  /** Share of the scatter of y explained: about its mean with an intercept, about zero without. */
  readonly rSquared: Ratio;
  /** Points less coefficients. */ readonly degreesOfFreedom: number;
};

/**
 * Least-squares polynomial of any degree, or plane through several columns, with standard errors. Columns are
 * centred and scaled, then reduced by Householder reflections in numbers of 32 digits, so that even nearly
 * alike columns keep their digits. Every number is taken as its shortest decimal: what was written down.
 *
 * @throws Refusal for lists of unlike length, for fewer points than coefficients and one more, for powers of
 * several columns, or for columns that depend on each other
 * @example linearRegression(linearRegression.read({ columns: [[4, 5, 6]], y: [3, 4, 4], degree: 1,
 *   intercept: "no" })) // coefficients 0.7273, standardErrors 0.04208, residualDeviation 0.3693, rSquared 0.9933, degreesOfFreedom 2
 */
export const linearRegression: Formula<RegressionInputs, Regression> = formula<RegressionInputs, Regression>({
  id: "regression.linear",
  title: "Curve or plane through scattered points",
  equation: String.raw`\min_b \lVert y - X b\rVert^2,\quad X = QR,\quad s^2 = \frac{\lVert y - X b\rVert^2}{n - p},\quad
    s_{b}^2 = s^2\,\mathrm{diag}\,(R^{T}R)^{-1}`,
  inputs: {
    columns: { symbol: "X", kind: listOf(listOf(Ratio)), meaning: "what was set, a list a column" },
    y: { symbol: "y", kind: listOf(Ratio), meaning: "what was read" },
    degree: { symbol: "d", kind: Count, meaning: "highest power of a single column", min: 1, max: 20 },
    intercept: {
      symbol: "b_0",
      kind: choice("intercept", ["yes", "no"]),
      meaning: "whether the fit may miss the origin",
    },
  },
  result: {
    coefficients: { symbol: "b", kind: listOf(Ratio), meaning: "coefficients" },
    standardErrors: { symbol: "s_b", kind: listOf(Ratio), meaning: "their standard errors" },
    residualDeviation: { symbol: "s", kind: Ratio, meaning: "standard deviation about the fit" },
    rSquared: { symbol: "R^2", kind: Ratio, meaning: "share of the scatter explained" },
    degreesOfFreedom: { symbol: "n - p", kind: Count, meaning: "degrees of freedom" },
  },
  source: [
    cite("statistical-tables", "least squares, any text"),
    cite("regression-datasets", "definitions of R squared and of the standard errors"),
  ],
  validity: "What was set is known well, what was read scatters alike everywhere; look at the residuals.",
  refuse: (inputs) => {
    const reasons = unlikeLists(inputs);
    return reasons.length > 0 || solved(inputs) ? reasons : [dependentColumns];
  },
  compute: (inputs) => {
    const found = solved(inputs);
    if (!found) throw new Refusal(`regression: ${dependentColumns}`);
    const { basis, fit } = found;
    const degreesOfFreedom = inputs.y.length - basis.columns.length;
    const variance = over(fit.unexplained, [degreesOfFreedom, 0]);
    return {
      coefficients: basis.back.map((row) => short(dot(row, fit.solution))),
      standardErrors: basis.back.map((row) => short(root(times(variance, squaredReach(row, fit))))),
      residualDeviation: short(root(variance)),
      rSquared: short(minus(one, over(fit.unexplained, scatterOf(inputs)))),
      degreesOfFreedom,
    };
  },
});

const dependentColumns = "the columns depend on each other: leave one out";

function unlikeLists({ columns, y, degree, intercept }: RegressionInputs): string[] {
  if (columns.length === 0) return ["at least one column, got none"];
  const short = columns.findIndex((column) => column.length !== y.length);
  if (short >= 0) {
    return [`column ${short + 1} must have as many values as y (${y.length}), got ${columns[short]?.length}`];
  }
  if (columns.length > 1 && degree > 1) return [`degree must be 1 for several columns, got ${degree}`];
  const needed = columns.length * degree + (intercept === "yes" ? 1 : 0) + 1;
  if (y.length < needed) return [`at least ${needed} points for ${needed - 1} coefficients, got ${y.length}`];
  return y.some((value) => value !== (intercept === "yes" ? y[0] : 0))
    ? []
    : ["y must differ between points"];
}

interface Solved {
  /** The columns that were fitted. */ readonly basis: RegressionBasis;
  /** What was found for them. */ readonly fit: LeastSquares;
}

function solved({ columns, y, degree, intercept }: RegressionInputs): Solved | undefined {
  const centred = intercept === "yes";
  const basis =
    columns.length === 1 ? powerBasis(columns[0] ?? [], degree, centred) : columnBasis(columns, centred);
  const fit = leastSquares(basis.columns, y.map(asWritten));
  return fit && { basis, fit };
}

function dot(a: readonly LongNumber[], b: readonly LongNumber[]): LongNumber {
  return total(a.map((one, i) => times(one, b[i] ?? zero)));
}

/** What one coefficient's variance is, of the variance about the fit. */
function squaredReach(row: readonly LongNumber[], { inverseTriangle }: LeastSquares): LongNumber {
  const parts = inverseTriangle.map((_, j) =>
    dot(
      row,
      inverseTriangle.map((entries) => entries[j] ?? zero),
    ),
  );
  return dot(parts, parts);
}

function scatterOf({ y, intercept }: RegressionInputs): LongNumber {
  const values = y.map(asWritten);
  const middle = intercept === "yes" ? over(total(values), [values.length, 0]) : zero;
  return total(values.map((value) => times(minus(value, middle), minus(value, middle))));
}

/** What a fit is made of. */
interface RegressionBasis {
  /** Fitted columns. */ readonly columns: readonly (readonly LongNumber[])[];
  /** Coefficients of the columns as given = this matrix times those of the fitted columns. */
  readonly back: readonly (readonly LongNumber[])[];
}

/** Middle and half range of a column. */
interface Scale {
  /** What is taken off every value. */ readonly middle: LongNumber;
  /** What every value is divided by. */ readonly reach: LongNumber;
}

/**
 * 1, u, u^2, ... of one column, u being x less its mean over its reach; without an intercept x is only scaled.
 *
 * @param degree highest power
 */
function powerBasis(x: readonly number[], degree: number, intercept: boolean): RegressionBasis {
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
function columnBasis(columns: readonly (readonly number[])[], intercept: boolean): RegressionBasis {
  const given = columns.map((column) => column.map(asWritten));
  const scales = given.map((column) => scaleOf(column, intercept));
  const fitted = given.map((column, j) => column.map((value) => scaled(value, at(scales, j))));
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
