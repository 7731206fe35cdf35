/** A square offcut on three corners, loaded at the fourth: the shear modulus in its plane. */
import { at } from "../algebra/lists.js";
import { type Formula, formula, type WorkedLine } from "../formula.js";
import type { Problem } from "../problem.js";
import { Force, Length, Pressure, ratio, SpringRate } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import { cite } from "../source.js";
import { type LineFit, lineFit } from "./line-fit.js";
import { propagate, type SpreadResult } from "./propagate.js";
import { calipersUncertainty, eachNamed, problemAt, type Reading, ruleUncertainty } from "./readings.js";

/** A rectangular offcut under three rests and one load. */
export interface TwistInputs {
  /** Load over drop of the loaded corner. */ readonly slope: SpringRate;
  /** Between the corner rests. */ readonly width: Length;
  /** Height between the corner rests. */ readonly height: Length;
  /** Thickness of the offcut. */ readonly thickness: Length;
}

/**
 * Shear modulus from a twist: G = 3 k a b / t^3. Corner forces P twist a plate evenly, Mxy = P/2 = 2 D_xy w_xy
 * with D_xy = G t^3/12, and the free corner drops by w = w_xy a b.
 *
 * @throws Refusal for an offcut thicker than a tenth of its smaller side
 * @example twistModulus(twistModulus.read({ slope: "2000 N/m", width: "300 mm", height: "300 mm", thickness: "9 mm" })) // 740.7 MPa
 */
export const twistModulus: Formula<TwistInputs, Pressure> = formula({
  id: "twist.modulus",
  title: "Shear modulus from twisting an offcut",
  equation: String.raw`G = \frac{3\,k\,a\,b}{t^3}`,
  inputs: {
    slope: { symbol: "k", kind: SpringRate, meaning: "load over drop of the corner", above: 0 },
    width: { symbol: "a", kind: Length, meaning: "width between rests", above: 0 },
    height: { symbol: "b", kind: Length, meaning: "height between rests", above: 0 },
    thickness: { symbol: "t", kind: Length, meaning: "thickness", above: 0 },
  },
  result: { symbol: "G", kind: Pressure, meaning: "shear modulus in the plane" },
  source: [
    cite("plates-shells", "art. 10, twist by corner forces"),
    cite("anisotropic-plates", "pure twist"),
  ],
  validity: "Grain along or across the sides; drop below half the thickness; rests at the very corners.",
  refuse: ({ width, height, thickness }) =>
    thickness <= 0.1 * Math.min(width, height)
      ? []
      : [
          `thickness must be at most a tenth of the smaller side, got ${Length.show(thickness)}: cut a larger piece`,
        ],
  compute: ({ slope, width, height, thickness }) => (3 * slope * width * height) / thickness ** 3,
});

/** One load on one offcut; a row of twist-tests.csv. */
export interface TwistReading extends Reading {
  /** Rows of one offcut share its name. */ readonly sample: string;
  /** Width between the corner rests. */ readonly width: Length;
  /** Height between the corner rests. */ readonly height: Length;
  /** Thickness of the offcut. */ readonly thickness: Length;
  /** Hung on the free corner. */ readonly load: Force;
  /** Of the loaded corner, from any fixed mark. */ readonly drop: Length;
}

/** One offcut, measured. */
export interface TwistedSample {
  /** Its name in the table. */ readonly sample: string;
  /** Shear modulus in the plane, with its scatter. */ readonly modulus: SpreadResult<Pressure>;
  /** Drop over load, a straight line. */ readonly fit: LineFit;
  /** The formula with the offcut's numbers in it. */ readonly worked: WorkedLine;
}

/**
 * Fits each offcut's drop over its loads and gives the shear modulus with its interval. Refused with row and
 * remedy: fewer than three loads, a drop that does not grow, sizes that change. Never throws on what a
 * builder wrote.
 *
 * @param file name to show in problems, that of the table unless said
 */
export function twistedSamples(
  readings: readonly TwistReading[],
  file: string = "twist-tests.csv",
): { readonly samples: readonly TwistedSample[]; readonly problems: readonly Problem[] } {
  const { results, problems } = eachNamed(
    readings,
    ({ sample }) => sample,
    (own) => twistOne(own, file),
  );
  return { samples: results, problems };
}

/** @throws whatever is no refusal of the formula */
function twistOne(readings: readonly TwistReading[], file: string): TwistedSample | Problem {
  const first = at(readings, 0);
  const wrong = refusal(readings);
  const problem = (expected: string): Problem => problemAt(first, file, "sample", first.sample, expected);
  if (wrong) return problem(wrong);
  const fit = lineFit(pointsOf(readings));
  const inputs: TwistInputs = { slope: SpringRate.si(1 / fit.slope), ...sizeOf(first) };
  try {
    const worked = twistModulus.worked(inputs);
    const modulus = propagate(twistModulus, inputs, {
      slope: { standard: fit.slopeError / fit.slope ** 2, degreesOfFreedom: readings.length - 2 },
      width: { standard: ruleUncertainty },
      height: { standard: ruleUncertainty },
      thickness: { standard: calipersUncertainty },
    });
    return { sample: first.sample, modulus, fit, worked };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return problem(error.message);
  }
}

function sizeOf({ width, height, thickness }: TwistReading): Omit<TwistInputs, "slope"> {
  return { width, height, thickness };
}

function pointsOf(readings: readonly TwistReading[]): Parameters<typeof lineFit>[0] {
  return { x: readings.map(({ load }) => ratio(load)), y: readings.map(({ drop }) => ratio(drop)) };
}

function refusal(readings: readonly TwistReading[]): string | undefined {
  const first = at(readings, 0);
  const loads = new Set(readings.map(({ load }) => load)).size;
  if (loads < 3) return `at least 3 different loads on an offcut, got ${loads}: hang more weights on it`;
  const size = (one: TwistReading): string => Object.values(sizeOf(one)).join(" ");
  if (readings.some((one) => size(one) !== size(first))) {
    return "one size in all rows of an offcut: give another offcut another name";
  }
  const flat = readings.every(({ drop }) => drop === first.drop);
  return flat || lineFit(pointsOf(readings)).slope <= 0
    ? `a drop that grows with the load (up to ${Force.show(Force.si(Math.max(...readings.map(({ load }) => load))))}): read it again`
    : undefined;
}
