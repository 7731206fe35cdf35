/** One piece bent over a long and a short span: its modulus and its shear apart, from the table of bend tests. */
import type { WorkedLine } from "../formula.js";
import type { Problem } from "../problem.js";
import { Length, type Pressure } from "../quantity/index.js";
import type { BendReading } from "./bend-reading.js";
import { problemAt } from "./bend-refusal.js";
import { bendModulusWithoutShear, bendOverTwoSpans, type TwoSpanInputs } from "./bend-shear.js";
import { type BentStrip, bentStrips } from "./bend-test.js";
import { type SpreadResult, spread, type Uncertainties, type Uncertainty } from "./spread.js";

/** A piece bent over two spans, measured. */
export interface SpannedPiece {
  readonly piece: string;
  /** Strips of the table that were this piece, the long span first. */
  readonly strips: readonly [string, string];
  /** Free of shear. */
  readonly modulus: SpreadResult<Pressure>;
  /** Through the thickness, along the span. */
  readonly shearModulus: SpreadResult<Pressure>;
  readonly worked: WorkedLine;
}

/** What a table of bend tests tells of pieces bent over two spans. */
export interface SpannedPieces {
  readonly pieces: readonly SpannedPiece[];
  readonly problems: readonly Problem[];
}

/**
 * Pairs the strips of each piece and gives its modulus and its shear modulus, each with its interval. Refused, with
 * row and remedy: a piece without two good strips, spans too much alike, a shear that drowns in the scatter. Strips
 * that `bentStrips` refuses are told there. Never throws on what a builder wrote.
 *
 * @param file name to show in problems
 */
export function spannedPieces(readings: readonly BendReading[], file: string): SpannedPieces {
  const names = [...new Set(readings.flatMap(({ piece }) => piece ?? []))];
  const results = names.map((name) =>
    pieceOf(
      readings.filter(({ piece }) => piece === name),
      name,
      file,
    ),
  );
  return {
    pieces: results.flatMap((result) => ("expected" in result ? [] : [result])),
    problems: results.flatMap((result) => ("expected" in result ? [result] : [])),
  };
}

function pieceOf(readings: readonly BendReading[], piece: string, file: string): SpannedPiece | Problem {
  const [first] = readings as [BendReading];
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
    if (!(error instanceof RangeError)) throw error;
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

/** @throws RangeError when the scatter swallows the shear */
function moduliOf(
  inputs: TwoSpanInputs,
  uncertainties: Uncertainties<TwoSpanInputs>,
): Pick<SpannedPiece, "modulus" | "shearModulus"> {
  const of = (which: "modulus" | "shearModulus"): SpreadResult<Pressure> =>
    spread((moved: TwoSpanInputs) => bendOverTwoSpans(moved)[which], inputs, uncertainties);
  const [modulus, shearModulus] = [of("modulus"), of("shearModulus")];
  if (shearModulus.interval.low <= 0) throw new RangeError("a shear that stands clear of the scatter");
  return { modulus, shearModulus };
}

/**
 * Modulus of a strip, shear taken out with a shear modulus that was measured on another piece of the sheet.
 *
 * @throws RangeError when the whole sag would be shear
 */
export function withoutShear(
  { inputs, uncertainties }: BentStrip,
  shearModulus: { readonly value: Pressure; readonly uncertainty: Uncertainty },
): SpreadResult<Pressure> {
  return spread(
    bendModulusWithoutShear,
    { ...inputs, shearModulus: shearModulus.value },
    { ...uncertainties, shearModulus: shearModulus.uncertainty },
  );
}
