/** Moduli of a sheet, and how well they are known. */
import type { BendTest, Measurements, SheetStock } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { memoize } from "../../kept/index.js";
import { plywoodLamination, veneerLayer } from "../../material/index.js";
import {
  type BentStrip,
  bentStrips,
  measuredMean,
  type SpannedPiece,
  type SpreadResult,
  spannedPieces,
  studentFactor,
  twistedSamples,
  type Uncertainty,
  withoutShear,
} from "../../measure/index.js";
import { Angle, Pressure, Ratio, ratio } from "../../quantity/index.js";

/** All that a bare sheet's bending needs. */
export interface SheetModuli {
  /** Strips cut with the face grain along them. */
  readonly along: KnownModulus;
  /** Strips cut with the face grain across them. */
  readonly across: KnownModulus;
  /** In the plane of the sheet, from twisted offcuts where there are any. */
  readonly shear: KnownModulus;
  /** Through the thickness, the softer way; absent until a piece was bent over two spans. */
  readonly throughShear?: KnownModulus;
  /** Poisson's ratio in bending. */
  readonly poisson: Ratio;
}

/** Along or across the grain, as a strip was cut. */
export type Direction = BendTest["direction"];

/** A quarter turn. */
const crossGrain = Angle.of(90, "deg");

/**
 * Moduli of a bare sheet: the builder's own tests where there are any, or else the veneers with handbook values,
 * which a real sheet may miss by a fifth. Bent strips have their shear taken out where a piece of the sheet was bent
 * over two spans the same way.
 */
export function sheetModuli(sheet: SheetStock, measurements: Measurements): SheetModuli {
  return keptModuli(measurements, sheet);
}

/** Every panel of a review asks; fits are made once. */
const keptModuli = memoize((measurements: Measurements, sheet: SheetStock): SheetModuli => {
  const veneers = plywoodLamination.worked({
    layers: sheet.veneers.map((thickness, i) =>
      veneerLayer(sheet.species, thickness, i % 2 === 0 ? Angle.si(0) : crossGrain),
    ),
  });
  const { bendingModulusX, bendingModulusY, twist, coupling, alongY, thickness } = veneers.value;
  const estimate = (modulus: Pressure): KnownModulus => ({
    modulus,
    from: "veneers",
    strips: 0,
    because: [veneers],
  });
  const throughShear = softerThrough(sheet, measurements);
  return {
    along: testedModulus(bendTests(sheet, measurements, "along")) ?? estimate(bendingModulusX),
    across: testedModulus(bendTests(sheet, measurements, "across")) ?? estimate(bendingModulusY),
    shear: twistedShear(sheet, measurements) ?? estimate(Pressure.si((12 * twist) / thickness ** 3)),
    ...(throughShear ? { throughShear } : {}),
    poisson: Ratio.si(coupling / alongY),
  };
});

/** Mean shear modulus of the offcuts of a sheet that were twisted. */
function twistedShear(sheet: SheetStock, { twists }: Measurements): KnownModulus | undefined {
  const rows = twists.filter((row) => row.sheet === sheet.name);
  return testedModulus(twistedSamples(rows).samples);
}

/** A panel bends both ways, so the softer of the two counts. */
function softerThrough(sheet: SheetStock, measurements: Measurements): KnownModulus | undefined {
  const ways = (["along", "across"] as const).flatMap(
    (direction) => throughShear(sheet, measurements, direction) ?? [],
  );
  return ways.sort((a, b) => a.modulus - b.modulus)[0];
}

/** Shear modulus through the thickness of a sheet, one way, from pieces bent over two spans. */
export function throughShear(
  sheet: SheetStock,
  measurements: Measurements,
  direction: Direction,
): KnownModulus | undefined {
  return testedModulus(
    sheetPiecesBent(sheet, measurements, direction).map(({ shearModulus, worked }) => ({
      modulus: shearModulus,
      worked,
    })),
  );
}

/** Pieces of bare sheet that were bent over two spans. */
export function sheetPiecesBent(
  sheet: SheetStock,
  measurements: Measurements,
  direction: Direction,
): readonly SpannedPiece[] {
  return spannedPieces(bareRows(sheet, measurements, direction)).pieces;
}

/** The strips of bare sheet that were bent over one span and could be measured. */
export function bareStrips(
  sheet: SheetStock,
  measurements: Measurements,
  direction: Direction,
): readonly BentStrip[] {
  const rows = bareRows(sheet, measurements, direction).filter(({ piece }) => piece === undefined);
  return bentStrips(rows).strips;
}

function bareRows(sheet: SheetStock, { bends }: Measurements, direction: Direction): readonly BendTest[] {
  return bends.filter(
    (row) => row.sheet === sheet.name && row.direction === direction && row.faced === "bare",
  );
}

/** Every test of bending one way: pieces as they are, strips freed of shear by what the pieces say. */
function bendTests(sheet: SheetStock, measurements: Measurements, direction: Direction): ModulusTest[] {
  const through = throughShear(sheet, measurements, direction);
  const strips = bareStrips(sheet, measurements, direction);
  const freed = strips.map((strip) =>
    through?.uncertainty
      ? {
          ...strip,
          modulus: withoutShear(strip, { value: through.modulus, uncertainty: through.uncertainty }),
        }
      : strip,
  );
  return [...freed, ...sheetPiecesBent(sheet, measurements, direction)];
}

/** A modulus of a sheet one way, and how well it is known. */
export interface KnownModulus {
  /** The best known value. */
  readonly modulus: Pressure;
  /** Measured, or estimated from the veneers. */
  readonly from: "measured" | "veneers";
  /** Absent for an estimate from the veneers. */
  readonly uncertainty?: Uncertainty;
  /** Strips or offcuts behind a measured value. */
  readonly strips: number;
  /** The worked lines behind it. */
  readonly because: readonly WorkedLine[];
}

/** One test of a modulus. */
interface ModulusTest {
  /** The modulus with its scatter. */
  readonly modulus: SpreadResult<Pressure>;
  /** The worked line. */
  readonly worked: WorkedLine;
}

/**
 * What tests of one sheet come to. Several scatter as sheets do, so their own mean counts; a single one has only the
 * scatter of its readings.
 *
 * @returns undefined without a test
 */
function testedModulus(tests: readonly ModulusTest[]): KnownModulus | undefined {
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
