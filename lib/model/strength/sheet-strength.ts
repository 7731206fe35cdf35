/** How strong a sheet is: by the handbook of its species, by the builder's own broken strips, and which of them counts. */
import type { BreakTest, Measurements, SheetStock } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { memoize } from "../../kept/index.js";
import { type PlywoodStrength, plywoodStrength } from "../../material/index.js";
import { characteristicStress, stripStrength } from "../../measure/index.js";
import { Pressure } from "../../quantity/index.js";
import { type MissingMeasurement, Refusal } from "../../refusal.js";
import type { Direction } from "../stiffness/sheet-moduli.js";

/** Strength in one direction that 95 of 100 sheets reach. */
export interface CharacteristicBending {
  /** The one that counts: the lower, where there are two. */
  readonly strength: Pressure;
  /** Which it is. */
  readonly from: "handbook" | "tests";
  /** Strips that the builder broke this way. */
  readonly strips: number;
  /** The worked lines behind it. */
  readonly because: readonly WorkedLine[];
}

/** What a sheet stands, before any factor of a code. */
export interface SheetStrength {
  /** Bending with the face grain along the span, or across it. */
  readonly bending: Readonly<Record<Direction, CharacteristicBending>>;
  /** Against shear through it and against twisting; absent for a species without figures. */
  readonly handbook?: {
    /** Against shear through it, of the weaker direction. */
    readonly rolling: Pressure;
    /** Against shear in its plane, which twisting asks for. */
    readonly panelShear: Pressure;
  };
}

/**
 * Characteristic strength of a birch veneer, and of birch plywood in its plane. Bending is what the 40.2 MPa printed for
 * 18 mm of 13 plies come to; rolling, shear and compression in the plane are recalled.
 */
const birch = {
  bending: Pressure.of(70, "MPa"),
  rolling: Pressure.of(2.5, "MPa"),
  panelShear: Pressure.of(9.5, "MPa"),
  compression: Pressure.of(52, "MPa"),
};

/** Birches whose clear wood is at least as strong as that of the handbook's. */
const handbookSpecies: readonly string[] = ["yellow birch", "sweet birch"];

/**
 * What a sheet stands. Small strips run higher than large panels, so the builder's own tests count only where they are
 * the lower; a species without figures has its tests alone.
 */
export function sheetStrength(
  sheet: SheetStock,
  measurements: Measurements,
): SheetStrength | MissingMeasurement {
  return keptStrengths(measurements, sheet);
}

/** Every panel asks. */
const keptStrengths = memoize(
  (measurements: Measurements, sheet: SheetStock): SheetStrength | MissingMeasurement => {
    const published = handbookSpecies.includes(sheet.species)
      ? plywoodStrength.worked({ veneers: sheet.veneers, bending: birch.bending, rolling: birch.rolling })
      : undefined;
    const along = oneWay(sheet, measurements, "along", published);
    const across = oneWay(sheet, measurements, "across", published);
    if (!along || !across) return breakStrips(sheet, along ? "across" : "along");
    return {
      bending: { along, across },
      ...(published
        ? { handbook: { rolling: weakerRolling(published.value), panelShear: birch.panelShear } }
        : {}),
    };
  },
);

/** Of the directions in which veneers roll: three veneers have one. */
export function weakerRolling({ rollingAlong, rollingAcross }: PlywoodStrength): Pressure {
  return rollingAcross > 0 && rollingAcross < rollingAlong ? rollingAcross : rollingAlong;
}

/**
 * How hard the edge of a sheet may be pressed: its veneers that run up bear, the others count nothing.
 *
 * @throws Refusal for a species without figures
 */
export function edgeCompression({ name, species, veneers }: SheetStock, upwards: Direction): Pressure {
  if (!handbookSpecies.includes(species))
    throw new Refusal(`${name}: no compression strength`, {
      measure: `how hard an edge of ${name} may be pressed`,
      how: "ask its maker for its compression strength along and across the grain; until then put protectors or blocks under every strap",
    });
  const bearing = veneers.filter((_, i) => (i % 2 === 0) === (upwards === "along"));
  const sum = (list: readonly number[]): number => list.reduce((all, one) => all + one, 0);
  return Pressure.si((birch.compression * sum(bearing)) / sum(veneers));
}

function breakStrips({ name }: SheetStock, direction: Direction): MissingMeasurement {
  return {
    measure: `the bending strength of ${name} ${direction} its grain`,
    how: `cut at least three strips ${direction} the grain, bend each over two rests until it breaks, goggles on, and write the loads into strength-tests.csv`,
  };
}

function oneWay(
  { name }: SheetStock,
  measurements: Measurements,
  direction: Direction,
  published: (WorkedLine & { readonly value: PlywoodStrength }) | undefined,
): CharacteristicBending | undefined {
  const broken = measurements.breaks.filter((row) => row.sheet === name && row.direction === direction);
  const tested = testedBending(broken);
  const strength = direction === "along" ? published?.value.bendingAlong : published?.value.bendingAcross;
  if (!published || strength === undefined) return tested;
  const handbook: CharacteristicBending = {
    strength,
    from: "handbook",
    strips: broken.length,
    because: [published],
  };
  if (!tested) return handbook;
  const lower = tested.strength < strength ? tested : handbook;
  return { ...lower, strips: broken.length, because: [published, ...tested.because] };
}

/** Fewer strips give no strength. */
const leastStrips = 3;

/**
 * What strips broken one way allow to be counted on.
 *
 * @returns undefined for fewer than three strips
 */
export function testedBending(broken: readonly BreakTest[]): CharacteristicBending | undefined {
  if (broken.length < leastStrips) return undefined;
  const strips = broken.map(({ load, span, width, thickness }) =>
    stripStrength.worked({ load, span, width, thickness }),
  );
  const line = characteristicStress.worked({ stresses: strips.map(({ value }) => value) });
  return { strength: line.value.strength, from: "tests", strips: broken.length, because: [...strips, line] };
}
