/** From a table of bend tests to the modulus of each strip, and to modulus and shear of each piece bent over two spans. */
import { at } from "../algebra/lists.js";
import type { WorkedLine } from "../formula.js";
import type { Problem } from "../problem.js";
import { Length, Pressure, type Ratio, SpringRate } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import {
  type BendModulusInputs,
  bendModulus,
  bendModulusWithoutShear,
  bendOverTwoSpans,
  type TwoSpanInputs,
} from "./bend-modulus.js";
import { type BendReading, hysteresis, oddLines, refusal, sagOverLoad, scattered } from "./bend-reading.js";
import { type LineFit, lineFit } from "./line-fit.js";
import { propagate, type SpreadResult, type Uncertainties, type Uncertainty } from "./propagate.js";
import { calipersUncertainty, eachNamed, problemAt, ruleUncertainty } from "./readings.js";

/** Standard uncertainties of the rule and the calipers. */
export interface GaugeUncertainty {
  /** Of the span. */ readonly span: Length;
  /** Of the strip's width. */ readonly width: Length;
  /** Of the strip's thickness. */ readonly thickness: Length;
}

/** One strip, measured. */
export interface BentStrip {
  /** Its name in the table. */ readonly strip: string;
  /** Modulus of elasticity with its scatter, and what the scatter comes from. */
  readonly modulus: SpreadResult<Pressure>;
  /** What the modulus was worked out from: load over sag, and the strip's size. */
  readonly inputs: BendModulusInputs;
  /** Standard uncertainty of each. */ readonly uncertainties: Uncertainties<BendModulusInputs>;
  /** Sag over load, a straight line. */ readonly fit: LineFit;
  /** Lines of the file whose sag does not belong to the others. */
  readonly oddLines: readonly number[];
  /** Gap between loading and unloading over the whole sag; absent when no load was read both ways. */
  readonly hysteresis: Ratio | undefined;
  /** The formula with the strip's numbers in it. */ readonly worked: WorkedLine;
}

/** What a table of bend tests gave. */
export interface BentStrips {
  /** Those that could be measured. */ readonly strips: readonly BentStrip[];
  /** Why the others could not. */ readonly problems: readonly Problem[];
}

/** The table that bend tests are written to. */
const bendTestsFile = "bend-tests.csv";

/** A rule read to 1 mm for the span, calipers read to 0.1 mm for the strip. */
const plainGauges: GaugeUncertainty = {
  span: Length.si(ruleUncertainty),
  width: Length.si(calipersUncertainty),
  thickness: Length.si(calipersUncertainty),
};

/**
 * Fits each strip's sag over its loads and gives the modulus with its interval. A strip is refused, with
 * the row and what to do, for fewer than three loads, sag that does not grow, a span below ten
 * thicknesses, rows that disagree about its size, or scatter as large as the modulus. Never throws on
 * what a builder wrote.
 *
 * @param file name to show in problems, that of the table unless said
 */
export function bentStrips(
  readings: readonly BendReading[],
  file: string = bendTestsFile,
  gauges: GaugeUncertainty = plainGauges,
): BentStrips {
  const { results, problems } = eachNamed(
    readings,
    ({ strip }) => strip,
    (own) => bendOne(own, file, gauges),
  );
  return { strips: results, problems };
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
  const first = at(readings, 0);
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
    modulus: propagate(unguarded, inputs, uncertainties),
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

/** A piece bent over two spans, measured. */
export interface SpannedPiece {
  /** Its name in the table. */ readonly piece: string;
  /** Strips of the table that were this piece, the long span first. */
  readonly strips: readonly [string, string];
  /** Free of shear. */ readonly modulus: SpreadResult<Pressure>;
  /** Through the thickness, along the span. */ readonly shearModulus: SpreadResult<Pressure>;
  /** The formula with the piece's numbers in it. */ readonly worked: WorkedLine;
}

/** What a table of bend tests tells of pieces bent over two spans. */
export interface SpannedPieces {
  /** Those that could be measured. */ readonly pieces: readonly SpannedPiece[];
  /** Why the others could not. */ readonly problems: readonly Problem[];
}

/**
 * Pairs the strips of each piece and gives its modulus and its shear modulus, each with its interval. Refused, with
 * row and remedy: a piece without two good strips, spans too much alike, a shear that drowns in the scatter. Strips
 * that `bentStrips` refuses are told there. Never throws on what a builder wrote.
 *
 * @param file name to show in problems, that of the table unless said
 */
export function spannedPieces(readings: readonly BendReading[], file: string = bendTestsFile): SpannedPieces {
  const { results, problems } = eachNamed(
    readings,
    ({ piece }) => piece,
    (own, piece) => pieceOf(own, piece, file),
  );
  return { pieces: results, problems };
}

/** @throws whatever is no refusal of the formula */
function pieceOf(readings: readonly BendReading[], piece: string, file: string): SpannedPiece | Problem {
  const first = at(readings, 0);
  const { strips } = bentStrips(readings, file);
  const [long, short, ...more] = [...strips].sort((a, b) => b.inputs.span - a.inputs.span);
  if (!long || !short || more.length > 0) {
    const expected = `two strips that can be measured, one piece over a long and a short span, got ${strips.length}`;
    return problemAt(first, file, "piece", piece, expected);
  }
  const inputs = togetherOf(long, short);
  try {
    return {
      piece,
      strips: [long.strip, short.strip],
      ...moduliOf(inputs, uncertaintiesOf(long, short)),
      worked: bendOverTwoSpans.worked(inputs),
    };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const spans = `${Length.show(inputs.longSpan)} and ${Length.show(inputs.shortSpan)}`;
    return problemAt(
      first,
      file,
      "span",
      spans,
      `${told(error)}: heavier loads on the short span, a finer gauge`,
    );
  }
}

/** The formula's reason, without its name. */
function told({ message }: RangeError): string {
  return message.replace(/^[a-z.]+: /, "");
}

function togetherOf(long: BentStrip, short: BentStrip): TwoSpanInputs {
  const { width, thickness } = long.inputs;
  return {
    longSlope: long.inputs.slope,
    longSpan: long.inputs.span,
    shortSlope: short.inputs.slope,
    shortSpan: short.inputs.span,
    width,
    thickness,
  };
}

function uncertaintiesOf(long: BentStrip, short: BentStrip): Uncertainties<TwoSpanInputs> {
  const of = ({ uncertainties }: BentStrip, input: keyof BentStrip["uncertainties"]): Uncertainty =>
    uncertainties[input] ?? { standard: 0 };
  return {
    longSlope: of(long, "slope"),
    longSpan: of(long, "span"),
    shortSlope: of(short, "slope"),
    shortSpan: of(short, "span"),
    width: of(long, "width"),
    thickness: of(long, "thickness"),
  };
}

/** @throws Refusal when the scatter swallows the shear */
function moduliOf(
  inputs: TwoSpanInputs,
  uncertainties: Uncertainties<TwoSpanInputs>,
): Pick<SpannedPiece, "modulus" | "shearModulus"> {
  const of = (which: "modulus" | "shearModulus"): SpreadResult<Pressure> =>
    propagate((moved: TwoSpanInputs) => bendOverTwoSpans(moved)[which], inputs, uncertainties);
  const [modulus, shearModulus] = [of("modulus"), of("shearModulus")];
  if (shearModulus.interval.low <= 0) throw new Refusal("a shear that stands clear of the scatter");
  return { modulus, shearModulus };
}

/**
 * Modulus of a strip, shear taken out with a shear modulus that was measured on another piece of the sheet.
 *
 * @throws Refusal when the whole sag would be shear
 */
export function withoutShear(
  { inputs, uncertainties }: BentStrip,
  shearModulus: { readonly value: Pressure; readonly uncertainty: Uncertainty },
): SpreadResult<Pressure> {
  return propagate(
    bendModulusWithoutShear,
    { ...inputs, shearModulus: shearModulus.value },
    { ...uncertainties, shearModulus: shearModulus.uncertainty },
  );
}
