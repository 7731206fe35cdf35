import type { BendTest, Measurements, SheetStock } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import {
  type BentStrip,
  bentStrips,
  type DrawnSpread,
  type FacedStripInputs,
  facingModulusBothFaces,
  facingModulusOneFace,
  monteCarlo,
  type Uncertainty,
} from "../../measure/index.js";
import { Length, Pressure } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { bareStrips } from "./sheet-moduli.js";

/** Modulus of a facing, from strips of one sheet bent bare and faced. */
export interface MeasuredFacing {
  /** The sheet whose strips were bent. */
  readonly sheet: string;
  /** Of the strips, against the face grain. */
  readonly direction: BendTest["direction"];
  /** Whether the strips were faced on one side or on both. */
  readonly faced: "one face" | "both faces";
  /** Drawn: a difference of two measured stiffnesses scatters far more than either. */
  readonly modulus: DrawnSpread<Pressure>;
  /** The worked line. */
  readonly because: readonly WorkedLine[];
}

/**
 * Moduli of facings that bend tests allow to be told: strips of a sheet, one way, both bare and faced. Strips
 * whose scatter swallows the facing are left out.
 */
export function facingModuli(
  sheets: readonly SheetStock[],
  measurements: Measurements,
): readonly MeasuredFacing[] {
  return sheets.flatMap((sheet) =>
    (["along", "across"] as const).flatMap((direction) =>
      (["one face", "both faces"] as const).flatMap((faced) =>
        measured(sheet, direction, faced, measurements),
      ),
    ),
  );
}

function measured(
  sheet: SheetStock,
  direction: MeasuredFacing["direction"],
  faced: MeasuredFacing["faced"],
  measurements: Measurements,
): MeasuredFacing[] {
  const rows = measurements.bends.filter(
    (row) => row.sheet === sheet.name && row.direction === direction && row.faced === faced,
  );
  const { strips } = bentStrips(rows);
  const bare = bareStrips(sheet, measurements, direction);
  if (strips.length === 0 || bare.length === 0) return [];
  const bareRows = measurements.bends.filter((row) => bare.some(({ strip }) => strip === row.strip));
  const [own, covered] = [pooled(bare), pooled(strips)];
  const inputs: FacedStripInputs = {
    bareModulus: own.modulus,
    bareThickness: meanThickness(bareRows),
    facedModulus: covered.modulus,
    facedThickness: meanThickness(rows),
  };
  const formula = faced === "one face" ? facingModulusOneFace : facingModulusBothFaces;
  try {
    const modulus = monteCarlo(formula, inputs, {
      bareModulus: own.uncertainty,
      facedModulus: covered.uncertainty,
    });
    return [{ sheet: sheet.name, direction, faced, modulus, because: [formula.worked(inputs)] }];
  } catch (error) {
    if (error instanceof Refusal) return [];
    throw error;
  }
}

/**
 * Mean of strips cut side by side from one piece, which differ by their readings alone: their uncertainties and
 * degrees of freedom pooled (GUM 4.2.4).
 */
function pooled(strips: readonly BentStrip[]): {
  readonly modulus: Pressure;
  readonly uncertainty: Uncertainty;
} {
  const sum = (pick: (strip: BentStrip) => number): number =>
    strips.reduce((total, strip) => total + pick(strip), 0);
  return {
    modulus: Pressure.si(sum(({ modulus }) => modulus.value) / strips.length),
    uncertainty: {
      standard: Math.sqrt(sum(({ modulus }) => modulus.standardUncertainty ** 2)) / strips.length,
      degreesOfFreedom: sum(({ modulus }) => modulus.degreesOfFreedom),
    },
  };
}

function meanThickness(rows: readonly BendTest[]): Length {
  return Length.si(rows.reduce((sum, { thickness }) => sum + thickness, 0) / rows.length);
}
