import { type LeastSquares, leastSquares } from "../algebra/least-squares.js";
import {
  asWritten,
  type LongNumber,
  minus,
  one,
  over,
  root,
  short,
  times,
  total,
  zero,
} from "../algebra/long-number.js";
import { type Formula, formula } from "../formula.js";
import { Count, choice, listOf, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { columnBasis, powerBasis, type RegressionBasis } from "./regression-basis.js";

/** Points to fit, and what to fit to them. */
export interface RegressionInputs {
  /** What was set, one list a column, each as long as y. */
  readonly columns: readonly (readonly Ratio[])[];
  /** What was read. */
  readonly y: readonly Ratio[];
  /** Highest power of a single column; 1 for several columns. */
  readonly degree: number;
  /** Whether the fit may miss the origin. */
  readonly intercept: "yes" | "no";
}

/** A fitted curve or plane. */
export type Regression = {
  /** Intercept first where there is one, then by rising power or in the order of the columns. */
  readonly coefficients: readonly Ratio[];
  /** In the same order. */
  readonly standardErrors: readonly Ratio[];
  /** Standard deviation of the points about the fit. */
  readonly residualDeviation: Ratio;
  /** Share of the scatter of y explained: about its mean with an intercept, about zero without. */
  readonly rSquared: Ratio;
  /** Points less coefficients. */
  readonly degreesOfFreedom: number;
};

/**
 * Least-squares polynomial of any degree, or plane through several columns, with standard errors. Columns are
 * centred and scaled, then reduced by Householder reflections in numbers of 32 digits, so that even nearly
 * alike columns keep their digits. Every number is taken as its shortest decimal: what was written down.
 *
 * @throws RangeError for lists of unlike length, for fewer points than coefficients and one more, for powers of
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
    return reasons.length > 0 || solved(inputs)
      ? reasons
      : ["the columns depend on each other: leave one out"];
  },
  compute: (inputs) => {
    const { basis, fit } = solved(inputs) as Solved;
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
  readonly basis: RegressionBasis;
  readonly fit: LeastSquares;
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
