import { mean, sum } from "simple-statistics";
import { at } from "../algebra/lists.js";
import { type Formula, formula } from "../formula.js";
import { listOf, Ratio, ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { studentFactor } from "./distributions.js";
import { linearRegression } from "./linear-regression.js";

/** Points of a plot, one list a coordinate. */
export interface LinePoints {
  /** What was set. */ readonly x: readonly Ratio[];
  /** What was read at each x. */ readonly y: readonly Ratio[];
}

/** The straight line y = intercept + slope x through scattered points. */
export type LineFit = {
  /** Rise of the line. */ readonly slope: Ratio;
  /** Where the line stands at x = 0. */ readonly intercept: Ratio;
  /** Standard error of the slope, with n - 2 degrees of freedom. */ readonly slopeError: Ratio;
  /** Standard error of the intercept, with n - 2 degrees of freedom. */ readonly interceptError: Ratio;
  /** Standard deviation of the points about the line. */ readonly residualDeviation: Ratio;
  /** Share of the scatter of y that the line explains. */ readonly rSquared: Ratio;
};

/**
 * Least-squares straight line with the standard errors of slope and intercept, in whatever units x and y
 * have. Assumes that x is known well and y scatters.
 *
 * @throws Refusal for lists of unlike length, fewer than three points, or all x or all y the same
 * @example lineFit(lineFit.read({ x: [1, 2, 3, 4], y: [1, 3, 2, 4] })) // slope 0.8, intercept 0.5, slopeError 0.4243, interceptError 1.162, residualDeviation 0.9487, rSquared 0.64
 */
export const lineFit: Formula<LinePoints, LineFit> = formula<LinePoints, LineFit>({
  id: "line.fit",
  title: "Straight line through scattered points",
  equation: String.raw`b = \frac{\sum (x_i-\bar{x})(y_i-\bar{y})}{\sum (x_i-\bar{x})^2},\quad
    s^2 = \frac{\sum e_i^2}{n-2},\quad s_b^2 = \frac{s^2}{\sum (x_i-\bar{x})^2}`,
  inputs: {
    x: { symbol: "x_i", kind: listOf(Ratio), meaning: "what was set" },
    y: { symbol: "y_i", kind: listOf(Ratio), meaning: "what was read" },
  },
  result: {
    slope: { symbol: "b", kind: Ratio, meaning: "slope" },
    intercept: { symbol: "a", kind: Ratio, meaning: "intercept" },
    slopeError: { symbol: "s_b", kind: Ratio, meaning: "standard error of the slope" },
    interceptError: { symbol: "s_a", kind: Ratio, meaning: "standard error of the intercept" },
    residualDeviation: { symbol: "s", kind: Ratio, meaning: "standard deviation about the line" },
    rSquared: { symbol: "R^2", kind: Ratio, meaning: "share of the scatter explained" },
  },
  source: [cite("statistical-tables", "least squares, any text"), cite("gum", "annex H.3")],
  validity: "For points that lie on a straight line but for scatter; look at the residuals.",
  refuse: ({ x, y }) => [
    ...(x.length === y.length ? [] : [`as many y as x, got ${y.length} and ${x.length}`]),
    ...(x.length >= 3 ? [] : [`at least 3 points, got ${x.length}`]),
    ...(varies(x) ? [] : ["x must differ between points"]),
    ...(varies(y) ? [] : ["y must differ between points"]),
  ],
  compute: ({ x, y }) => {
    const fit = linearRegression({ columns: [x], y, degree: 1, intercept: "yes" });
    const { coefficients, standardErrors, residualDeviation, rSquared } = fit;
    return {
      slope: at(coefficients, 1),
      intercept: at(coefficients, 0),
      slopeError: at(standardErrors, 1),
      interceptError: at(standardErrors, 0),
      residualDeviation,
      rSquared,
    };
  },
});

function varies(values: readonly number[]): boolean {
  return values.some((value) => value !== values[0]);
}

function scatter(
  x: readonly number[],
  y: readonly number[],
  slope: number,
  intercept: number,
): { readonly unexplained: number; readonly xScatter: number; readonly xMean: number } {
  const xMean = mean([...x]);
  return {
    unexplained: sum(x.map((one, i) => ((y[i] ?? 0) - intercept - slope * one) ** 2)),
    xScatter: sum(x.map((one) => (one - xMean) ** 2)),
    xMean,
  };
}

/** How far each point lies from the line, y less the line. */
export function residuals({ x, y }: LinePoints, { slope, intercept }: LineFit): readonly number[] {
  return x.map((one, i) => (y[i] ?? 0) - intercept - slope * one);
}

/**
 * Which points do not belong to the line: those that a line through the others would not expect, by
 * Student's t at 5 % shared over all points. Needs five points; fewer give an empty list, since no point
 * can then be told from the scatter.
 */
export function outliers(points: LinePoints, fit: LineFit): readonly number[] {
  const n = points.x.length;
  if (n < 5) return [];
  const limit = studentFactor({ confidence: ratio(1 - 0.05 / n), degreesOfFreedom: n - 3 });
  const { unexplained, xScatter, xMean } = scatter(points.x, points.y, fit.slope, fit.intercept);
  const rounding = 1e-9 * Math.max(...points.y.map(Math.abs));
  return residuals(points, fit).flatMap((residual, i) => {
    // What is left of a point's variance after the line has bent towards it.
    const freedom = 1 - 1 / n - ((points.x[i] ?? 0) - xMean) ** 2 / xScatter;
    const withoutIt = Math.max(0, unexplained - residual ** 2 / freedom) / (n - 3);
    return residual ** 2 > limit ** 2 * withoutIt * freedom + rounding ** 2 ? [i] : [];
  });
}
