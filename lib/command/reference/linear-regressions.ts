import { linearRegression, type Ratio, type Regression } from "../../index.js";
import type { ReferenceOutcome } from "./outcome.js";

/** One set of points with its certified fit, as it stands in a file. */
interface RegressionCase {
  /** Name of the published set. */
  readonly name: string;
  /** Whether the line may miss the origin. */
  readonly intercept: boolean;
  /** Highest power of one column; null or 1 for several. */
  readonly degree: number | null;
  /** One number a point, or a row of numbers. */
  readonly x: readonly (number | readonly number[])[];
  /** Values to be fitted. */
  readonly y: readonly number[];
  /** Digits that must agree; 12 on straight lines and 7 on the others unless said. */
  readonly digits?: number;
  /** What was published of it. */
  readonly expect: {
    readonly coefficients: readonly number[];
    readonly standardErrors: readonly number[];
    readonly residualStandardDeviation: number;
    readonly rSquared: number;
  };
}

/**
 * Fits every set and tells how many digits agree; the worst of a list of coefficients counts.
 *
 * @throws TypeError when it holds no sets; RangeError naming a set that cannot be fitted
 */
export function regressionOutcomes(content: unknown): readonly ReferenceOutcome[] {
  const { cases, known = "not said" } = (content ?? {}) as {
    readonly cases?: unknown;
    readonly known?: string;
  };
  if (!Array.isArray(cases)) throw new TypeError('expected { kind: "linear-regression", cases: [...] }');
  return cases.flatMap((one: RegressionCase) => {
    try {
      return caseOutcomes(one, fitted(one), known.split(":")[0] ?? known);
    } catch (error) {
      throw new RangeError(`${one.name}: ${(error as Error).message}`);
    }
  });
}

function fitted({ x, y, intercept, degree }: RegressionCase): Regression {
  const rows = x.map((one) => (typeof one === "number" ? [one] : one));
  return linearRegression({
    columns: (rows[0] ?? []).map((_, j) => rows.map((row) => row[j] as Ratio)),
    y: y as readonly Ratio[],
    degree: degree ?? 1,
    intercept: intercept ? "yes" : "no",
  });
}

function caseOutcomes(
  { name, degree, expect, digits = degree === 1 ? 12 : 7 }: RegressionCase,
  fit: Regression,
  known: string,
): ReferenceOutcome[] {
  const pairs: readonly [string, readonly number[], readonly number[]][] = [
    ["coefficients", expect.coefficients, fit.coefficients],
    ["standard errors", expect.standardErrors, fit.standardErrors],
    ["residual deviation", [expect.residualStandardDeviation], [fit.residualDeviation]],
    ["R squared", [expect.rSquared], [fit.rSquared]],
  ];
  return pairs.map(([result, expected, ours]) => {
    const [worst] = expected
      .map((value, i) => ({ value, ours: ours[i] ?? Number.NaN, agreed: digitsAgreed(value, ours[i]) }))
      .sort((a, b) => a.agreed - b.agreed) as [{ value: number; ours: number; agreed: number }];
    return {
      item: name,
      result,
      expected: String(worst.value),
      ours: String(worst.ours),
      error: `${worst.agreed.toFixed(1)} digits`,
      tolerance: `${digits} digits`,
      holds: worst.agreed >= digits,
      known,
    };
  });
}

/** A double holds fifteen digits for certain; of an expected zero, decimal places count. */
function digitsAgreed(expected: number, ours = Number.NaN): number {
  const error = Math.abs(ours - expected) / (expected === 0 ? 1 : Math.abs(expected));
  return Number.isNaN(error) ? 0 : Math.min(15, -Math.log10(error));
}
