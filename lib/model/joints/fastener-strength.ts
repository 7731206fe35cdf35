/** Strength of one fastener in its sheet: by the builder's own tests, or by formula where one exists for its kind. */
import { type Fastening, type PullTest, type SheetStock, sheetPieces } from "../../design/index.js";
import {
  dowelShear,
  dowelYieldMoment,
  type FastenerKind,
  fastenerTraits,
  insertJointPull,
  insertJointShear,
  plywoodEmbedment,
  rivetJointPull,
  rivetJointShear,
  specificGravity,
  strengthOfAllowable,
  timberEmbedment,
} from "../../fastening/index.js";
import { species } from "../../material/index.js";
import { Length, megapascal, newton, Pressure, type Ratio, ratio } from "../../quantity/index.js";
import type { MissingMeasurement } from "../../refusal.js";
import { Refusal } from "../../refusal.js";
import { densityOf } from "../mass/masses.js";
import type { ReviewInput } from "../review-input.js";
import { bearingOf, takesWasher } from "./joint-stack.js";
import { type FastenerStrength, testedStrength } from "./known-strength.js";

/** A strength, or the test that is still to be made. */
export type StrengthOrTest = FastenerStrength | MissingMeasurement;

/**
 * Strength of one fastener of a group: what 95 of 100 hold by the builder's own tests of that fastener in that sheet
 * (three tests at least), or else a formula where one exists for its kind.
 */
export function fastenerStrength(
  fastening: Fastening,
  direction: PullTest["direction"],
  input: ReviewInput,
): StrengthOrTest {
  const sheet = sheetUnder(fastening, input);
  return (
    tested(fastening, sheet, direction, input) ??
    computedStrength(fastening, sheet, direction, input) ??
    asTest(fastening, sheet, direction)
  );
}

/**
 * The sheet that a group of fasteners goes through.
 *
 * @throws Refusal when there is no such panel
 */
export function sheetUnder({ panel: id }: Fastening, { parts }: ReviewInput): SheetStock {
  const panel = sheetPieces(parts).find((one) => one.id === id);
  if (!panel) throw new Refusal(`joints: no panel ${id}`);
  return panel.sheet;
}

function tested(
  fastening: Fastening,
  sheet: SheetStock,
  direction: PullTest["direction"],
  { measurements }: ReviewInput,
): FastenerStrength | undefined {
  const { fastener } = fastening;
  const washer = takesWasher(fastening) ? "yes" : "no";
  const rows = measurements.pulls.filter(
    (row) =>
      row.fastener === fastener.name &&
      row.sheet === sheet.name &&
      row.direction === direction &&
      (direction === "shear" || !fastenerTraits[fastener.kind].endsBehind || row.washer === washer),
  );
  const found = testedStrength(
    rows.map(({ load }) => load),
    `${direction} tests of ${fastener.name}`,
  );
  return found && { ...found, from: "tests", figure: "characteristic" };
}

function asTest(
  { fastener }: Fastening,
  sheet: SheetStock,
  direction: PullTest["direction"],
): MissingMeasurement {
  return {
    measure: `the ${direction === "pull" ? "pull-out" : "shear"} strength of ${fastener.name} in ${sheet.name}`,
    how: `${direction === "pull" ? "pull" : "push sideways"} at least five out of an offcut with a lever and a luggage scale, face shield on, and write the loads into pull-tests.csv`,
  };
}

/** Tensile strength of the soft aluminium that extrusions and hardware are made of: 22 ksi, as an extruder's table of tempers has it for 6063-T5. */
const softAluminium: Pressure = Pressure.of(22, "ksi");

/** Common practice, no source: hardware has its holes two diameters from the rim. */
const rimDiameters = 2;

/** Moisture of ply kept indoors; common practice, no source. */
export const indoorMoisture: Ratio = ratio(0.08);

type Computed = (fastening: Fastening, sheet: SheetStock, input: ReviewInput) => FastenerStrength | undefined;

/** By formula; undefined for a screw in ply, for which none is trusted, and where the maker states no strength. */
function computedStrength(
  fastening: Fastening,
  sheet: SheetStock,
  direction: PullTest["direction"],
  input: ReviewInput,
): FastenerStrength | undefined {
  const known = fastening.fastener.kind === "screw" && direction === "shear" ? screwShear : undefined;
  return (formulas[fastening.fastener.kind]?.[direction] ?? known)?.(fastening, sheet, input);
}

type Directions = Readonly<Record<PullTest["direction"], Computed>>;

const through: Directions = { pull: throughPull, shear: throughShear };

/** The formulas of each kind of fastener; undefined where none is trusted. */
const formulas: Readonly<Record<FastenerKind, Directions | undefined>> = {
  rivet: through,
  bolt: through,
  screw: undefined,
  insert: { pull: insertPull, shear: insertShear },
};

/** Screws of any shop, on the low side; common practice. */
const wireStrength = megapascal(600);

/** A screw through a panel into wood behind it, sideways, without the help of its head; else undefined. */
function screwShear(
  { fastener: { diameter }, into }: Fastening,
  sheet: SheetStock,
  input: ReviewInput,
): FastenerStrength | undefined {
  if (!into) return undefined;
  const line = dowelShear.worked({
    outerThickness: sheet.thickness,
    innerThickness: into.depth,
    outerEmbedment: plywoodEmbedment({ density: densityOf(input, sheet), diameter }),
    innerEmbedment: timberEmbedment({ density: into.density, diameter, hole: "drilled" }),
    diameter,
    yieldMoment: dowelYieldMoment({ tensileStrength: wireStrength, diameter }),
    withdrawal: newton(0),
    helpShare: ratio(0),
  });
  return { strength: line.value.strength, from: "formula", figure: "characteristic", because: [line] };
}

/** A rivet or a bolt, sheared between metal and ply; undefined without metal, or without the maker's strength. */
export function shearLine(
  { fastener, stack }: Fastening,
  sheet: SheetStock,
  input: ReviewInput,
): ReturnType<typeof rivetJointShear.worked> | undefined {
  const metal = stack.find(({ what }) => what === "metal");
  if (!metal || fastener.shear === undefined) return undefined;
  return rivetJointShear.worked({
    rivetShear: fastener.shear,
    diameter: fastener.diameter,
    metalThickness: metal.thickness,
    metalStrength: softAluminium,
    metalEdge: Length.si(rimDiameters * fastener.diameter),
    plyThickness: sheet.thickness,
    plyDensity: densityOf(input, sheet),
  });
}

function throughShear(
  fastening: Fastening,
  sheet: SheetStock,
  input: ReviewInput,
): FastenerStrength | undefined {
  const line = shearLine(fastening, sheet, input);
  return line && { strength: line.value.strength, from: "formula", figure: "ultimate", because: [line] };
}

function throughPull(
  fastening: Fastening,
  sheet: SheetStock,
  input: ReviewInput,
): FastenerStrength | undefined {
  const { fastener } = fastening;
  if (fastener.tension === undefined) return undefined;
  const gravity = specificGravity.worked({ density: densityOf(input, sheet), moisture: indoorMoisture });
  const line = rivetJointPull.worked({
    rivetTension: fastener.tension,
    bearingDiameter: bearingOf(fastening),
    plyThickness: sheet.thickness,
    plyGravity: gravity.value,
  });
  const { safetyFactor } = input.case.demands;
  const ply = strengthOfAllowable.worked({ allowable: line.value.ply, safetyFactor });
  // The maker's tension is a strength, the code's pull of a head through ply an allowable: they meet before the factor.
  return line.value.rivet < ply.value
    ? { strength: line.value.rivet, from: "formula", figure: "ultimate", because: [gravity, line] }
    : { strength: ply.value, from: "formula", figure: "allowable", because: [gravity, line, ply] };
}

function insertPull({ fastener }: Fastening, sheet: SheetStock): FastenerStrength | undefined {
  const { tension, insertDiameter, insertLength } = fastener;
  if (tension === undefined || !insertDiameter || !insertLength) return undefined;
  const line = insertJointPull.worked({
    screwTension: tension,
    insertDiameter,
    insertLength,
    plyThickness: sheet.thickness,
    shearStrength: species[sheet.species].shearStrength.value,
  });
  return { strength: line.value.strength, from: "formula", figure: "ultimate", because: [line] };
}

function insertShear(
  { fastener }: Fastening,
  sheet: SheetStock,
  input: ReviewInput,
): FastenerStrength | undefined {
  const { shear, insertDiameter, insertLength } = fastener;
  if (shear === undefined || !insertDiameter || !insertLength) return undefined;
  const line = insertJointShear.worked({
    screwShear: shear,
    insertDiameter,
    insertLength,
    plyThickness: sheet.thickness,
    plyDensity: densityOf(input, sheet),
  });
  return { strength: line.value.strength, from: "formula", figure: "ultimate", because: [line] };
}
