import type { BendTest, Measurements, SheetStock } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { plywoodLamination, veneerLayer } from "../../material/index.js";
import {
  type BentStrip,
  bentStrips,
  measuredMean,
  studentFactor,
  twistedSamples,
  type Uncertainty,
} from "../../measure/index.js";
import { Angle, Pressure, Ratio, ratio } from "../../quantity/index.js";

/** Bending modulus of a sheet one way, and how well it is known. */
export interface KnownModulus {
  readonly modulus: Pressure;
  readonly from: "measured" | "veneers";
  /** Absent for an estimate from the veneers. */
  readonly uncertainty?: Uncertainty;
  /** Strips behind a measured value. */
  readonly strips: number;
  readonly because: readonly WorkedLine[];
}

/** All that a bare sheet's bending needs. */
export interface SheetModuli {
  /** Strips cut with the face grain along them. */
  readonly along: KnownModulus;
  readonly across: KnownModulus;
  /** In the plane of the sheet, from twisted offcuts where there are any. */
  readonly shear: Pressure;
  readonly shearFrom: KnownModulus["from"];
  readonly poisson: Ratio;
}

/** A quarter turn. */
const crossGrain = Angle.of(90, "deg");

/**
 * Moduli of a bare sheet: the builder's own bend tests where there are any, or else the veneers with handbook
 * values, which a real sheet may miss by a fifth.
 */
export function sheetModuli(sheet: SheetStock, measurements: Measurements): SheetModuli {
  const veneers = plywoodLamination.worked({
    layers: sheet.veneers.map((thickness, i) =>
      veneerLayer(sheet.species, thickness, i % 2 === 0 ? Angle.si(0) : crossGrain),
    ),
  });
  const { bendingModulusX, bendingModulusY, twist, coupling, alongY, thickness } = veneers.value;
  const known = (direction: BendTest["direction"], estimate: Pressure): KnownModulus =>
    fromStrips(bareStrips(sheet, measurements, direction)) ?? {
      modulus: estimate,
      from: "veneers",
      strips: 0,
      because: [veneers],
    };
  return {
    along: known("along", bendingModulusX),
    across: known("across", bendingModulusY),
    ...(twistedShear(sheet, measurements) ?? {
      shear: Pressure.si((12 * twist) / thickness ** 3),
      shearFrom: "veneers",
    }),
    poisson: Ratio.si(coupling / alongY),
  };
}

/** Mean shear modulus of the offcuts of a sheet that were twisted. */
function twistedShear(
  sheet: SheetStock,
  { twists }: Measurements,
): Pick<SheetModuli, "shear" | "shearFrom"> | undefined {
  const rows = twists.filter((row) => row.sheet === sheet.name);
  const { samples } = twistedSamples(rows, "twist-tests.csv");
  if (samples.length === 0) return undefined;
  const total = samples.reduce((sum, { modulus }) => sum + modulus.value, 0);
  return { shear: Pressure.si(total / samples.length), shearFrom: "measured" };
}

/** Half of the 95 % interval about a measured modulus; zero for an estimate, whose scatter nobody measured. */
export function modulusHalfWidth({ uncertainty }: KnownModulus): Pressure {
  if (!uncertainty) return Pressure.si(0);
  const { standard, degreesOfFreedom = manyReadings } = uncertainty;
  return Pressure.si(studentFactor({ confidence: ratio(0.95), degreesOfFreedom }) * standard);
}

/** Beyond so many, Student's factor is the normal one. */
const manyReadings = 10_000;

/** The strips of bare sheet that could be measured. */
export function bareStrips(
  sheet: SheetStock,
  { bends }: Measurements,
  direction: BendTest["direction"],
): readonly BentStrip[] {
  const rows = bends.filter(
    (row) => row.sheet === sheet.name && row.direction === direction && row.faced === "bare",
  );
  return bentStrips(rows, "bend-tests.csv").strips;
}

function fromStrips(strips: readonly BentStrip[]): KnownModulus | undefined {
  const [first, ...others] = strips;
  if (!first) return undefined;
  const because = strips.map(({ worked }) => worked);
  if (others.length === 0) {
    const { value, standardUncertainty, degreesOfFreedom } = first.modulus;
    return {
      modulus: value,
      from: "measured",
      uncertainty: { standard: standardUncertainty, degreesOfFreedom },
      strips: 1,
      because,
    };
  }
  const { mean, standardUncertainty, degreesOfFreedom } = measuredMean(
    strips.map(({ modulus }) => modulus.value),
  );
  return {
    modulus: mean,
    from: "measured",
    uncertainty: { standard: standardUncertainty, degreesOfFreedom },
    strips: strips.length,
    because,
  };
}
