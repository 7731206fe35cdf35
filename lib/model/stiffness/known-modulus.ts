/** A modulus of a sheet, and how well it is known. */
import type { WorkedLine } from "../../formula.js";
import { measuredMean, type SpreadResult, studentFactor, type Uncertainty } from "../../measure/index.js";
import { Pressure, ratio } from "../../quantity/index.js";

/** A modulus of a sheet one way, and how well it is known. */
export interface KnownModulus {
  readonly modulus: Pressure;
  readonly from: "measured" | "veneers";
  /** Absent for an estimate from the veneers. */
  readonly uncertainty?: Uncertainty;
  /** Strips or offcuts behind a measured value. */
  readonly strips: number;
  readonly because: readonly WorkedLine[];
}

/** One test of a modulus. */
export interface ModulusTest {
  readonly modulus: SpreadResult<Pressure>;
  readonly worked: WorkedLine;
}

/**
 * What tests of one sheet come to. Several scatter as sheets do, so their own mean counts; a single one has only the
 * scatter of its readings.
 *
 * @returns undefined without a test
 */
export function testedModulus(tests: readonly ModulusTest[]): KnownModulus | undefined {
  const [first, ...others] = tests;
  if (!first) return undefined;
  const { mean, standardUncertainty, degreesOfFreedom } =
    others.length === 0
      ? { ...first.modulus, mean: first.modulus.value }
      : measuredMean(tests.map(({ modulus }) => modulus.value));
  return {
    modulus: mean,
    from: "measured",
    uncertainty: { standard: standardUncertainty, degreesOfFreedom },
    strips: tests.length,
    because: tests.map(({ worked }) => worked),
  };
}

/** Beyond so many, Student's factor is the normal one. */
const manyReadings = 10_000;

/** Half of the 95 % interval about a measured modulus; zero for an estimate, whose scatter nobody measured. */
export function modulusHalfWidth({ uncertainty }: KnownModulus): Pressure {
  if (!uncertainty) return Pressure.si(0);
  const { standard, degreesOfFreedom = manyReadings } = uncertainty;
  return Pressure.si(studentFactor({ confidence: ratio(0.95), degreesOfFreedom }) * standard);
}
