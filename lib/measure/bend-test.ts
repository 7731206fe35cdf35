/** From a table of bend tests to the modulus of each strip. */
import type { WorkedLine } from "../formula.js";
import type { Problem } from "../problem.js";
import { Length, Pressure, type Ratio, SpringRate } from "../quantity/index.js";
import { type BendModulusInputs, bendModulus } from "./bend-modulus.js";
import { oddLines, scattered } from "./bend-odd.js";
import { type BendReading, hysteresis, sagOverLoad } from "./bend-reading.js";
import { refusal } from "./bend-refusal.js";
import { type LineFit, lineFit } from "./line-fit.js";
import { type SpreadResult, spread, type Uncertainties } from "./spread.js";

/** Standard uncertainties of the rule and the calipers. */
export interface GaugeUncertainty {
  readonly span: Length;
  readonly width: Length;
  readonly thickness: Length;
}

/** One strip, measured. */
export interface BentStrip {
  readonly strip: string;
  /** Modulus of elasticity with its scatter, and what the scatter comes from. */
  readonly modulus: SpreadResult<Pressure>;
  /** What the modulus was worked out from: load over sag, and the strip's size. */
  readonly inputs: BendModulusInputs;
  /** Standard uncertainty of each. */
  readonly uncertainties: Uncertainties<BendModulusInputs>;
  /** Sag over load, a straight line. */
  readonly fit: LineFit;
  /** Lines of the file whose sag does not belong to the others. */
  readonly oddLines: readonly number[];
  /** Gap between loading and unloading over the whole sag; absent when no load was read both ways. */
  readonly hysteresis: Ratio | undefined;
  readonly worked: WorkedLine;
}

/** What a table of bend tests gave. */
export interface BentStrips {
  readonly strips: readonly BentStrip[];
  readonly problems: readonly Problem[];
}

/**
 * Calipers read to 0.1 mm and a rule read to 1 mm: a division evenly likely anywhere within itself, so
 * division / sqrt(12). Source: GUM 4.3.7.
 */
export const plainGauges: GaugeUncertainty = {
  span: Length.of(1 / Math.sqrt(12), "mm"),
  width: Length.of(0.1 / Math.sqrt(12), "mm"),
  thickness: Length.of(0.1 / Math.sqrt(12), "mm"),
};

/**
 * Fits each strip's sag over its loads and gives the modulus with its interval. A strip is refused, with
 * the row and what to do, for fewer than three loads, sag that does not grow, a span below ten
 * thicknesses, rows that disagree about its size, or scatter as large as the modulus. Never throws on
 * what a builder wrote.
 *
 * @param file name to show in problems
 */
export function bentStrips(
  readings: readonly BendReading[],
  file: string,
  gauges: GaugeUncertainty = plainGauges,
): BentStrips {
  const names = [...new Set(readings.map(({ strip }) => strip))];
  const results = names.map((strip) =>
    bendOne(
      readings.filter((reading) => reading.strip === strip),
      file,
      gauges,
    ),
  );
  return {
    strips: results.flatMap((result) => ("expected" in result ? [] : [result])),
    problems: results.flatMap((result) => ("expected" in result ? [result] : [])),
  };
}

function bendOne(
  readings: readonly BendReading[],
  file: string,
  gauges: GaugeUncertainty,
): BentStrip | Problem {
  const refused = refusal(readings, file);
  if (refused) return refused;
  const strip = measured(readings, gauges);
  return strip.modulus.interval.low > 0 ? strip : scattered(readings, strip.fit, file);
}

function measured(readings: readonly BendReading[], gauges: GaugeUncertainty): BentStrip {
  const [first] = readings as [BendReading];
  const points = sagOverLoad(readings);
  const fit = lineFit(points);
  const slope = SpringRate.si(1 / fit.slope);
  const inputs = { slope, span: first.span, width: first.width, thickness: first.thickness };
  const uncertainties: Uncertainties<BendModulusInputs> = {
    slope: { standard: (slope * fit.slopeError) / fit.slope, degreesOfFreedom: readings.length - 2 },
    span: { standard: gauges.span },
    width: { standard: gauges.width },
    thickness: { standard: gauges.thickness },
  };
  return {
    strip: first.strip,
    modulus: spread(unguarded, inputs, uncertainties),
    inputs,
    uncertainties,
    fit,
    oddLines: oddLines(readings, fit),
    hysteresis: hysteresis(readings),
    worked: bendModulus.worked(inputs),
  };
}

/** Stepping a span of just ten thicknesses down by its uncertainty must not be refused. */
function unguarded(inputs: BendModulusInputs): Pressure {
  return Pressure.si(bendModulus.declaration.compute(inputs));
}
