import { type Fastening, type PullTest, type SheetStock, sheetPieces } from "../../design/index.js";
import { rivetJointPull, rivetJointShear, specificGravity } from "../../fastening/index.js";
import { Length, Pressure, ratio } from "../../quantity/index.js";
import type { MissingMeasurement } from "../finding.js";
import { densityOf } from "../masses.js";
import type { ReviewInput } from "../review-input.js";
import { type KnownStrength, testedStrength } from "./known-strength.js";

/** Strength of one fastener in its panel, one way, and where it comes from. */
export interface FastenerStrength extends KnownStrength {
  readonly from: "tests" | "formula";
}

/** A strength, or the test that is still to be made. */
export type StrengthOrTest = FastenerStrength | MissingMeasurement;

/** Tensile strength of the soft aluminium that extrusions and hardware are made of: 22 ksi, from memory, fairly sure. */
const softAluminium = Pressure.of(22, "ksi");

/** Common practice, no source: hardware has its holes two diameters from the rim. */
const rimDiameters = 2;

/** Moisture of ply kept indoors; common practice, no source. */
const indoorMoisture = ratio(0.08);

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
    computed(fastening, sheet, direction, input) ??
    asTest(fastening, sheet, direction)
  );
}

function sheetUnder({ panel: id }: Fastening, { parts }: ReviewInput): SheetStock {
  const panel = sheetPieces(parts).find((one) => one.id === id);
  if (!panel) throw new RangeError(`joints: no panel ${id}`);
  return panel.sheet;
}

function tested(
  { fastener, backIsBareWood }: Fastening,
  sheet: SheetStock,
  direction: PullTest["direction"],
  { measurements }: ReviewInput,
): FastenerStrength | undefined {
  const washer = backIsBareWood ? "yes" : "no";
  const rows = measurements.pulls.filter(
    (row) =>
      row.fastener === fastener.name &&
      row.sheet === sheet.name &&
      row.direction === direction &&
      (direction === "shear" || fastener.kind === "screw" || row.washer === washer),
  );
  const found = testedStrength(
    rows.map(({ load }) => load),
    `${direction} tests of ${fastener.name}`,
  );
  return found && { ...found, from: "tests" };
}

function computed(
  fastening: Fastening,
  sheet: SheetStock,
  direction: PullTest["direction"],
  input: ReviewInput,
): FastenerStrength | undefined {
  const { fastener } = fastening;
  if (fastener.kind === "screw") return undefined;
  return direction === "shear"
    ? computedShear(fastening, sheet, input)
    : computedPull(fastening, sheet, input);
}

function computedShear(
  { fastener, stack }: Fastening,
  sheet: SheetStock,
  input: ReviewInput,
): FastenerStrength | undefined {
  const metal = stack.find(({ what }) => what === "metal");
  if (!metal || fastener.shear === undefined) return undefined;
  const line = rivetJointShear.worked({
    rivetShear: fastener.shear,
    diameter: fastener.diameter,
    metalThickness: metal.thickness,
    metalStrength: softAluminium,
    metalEdge: Length.si(rimDiameters * fastener.diameter),
    plyThickness: sheet.thickness,
    plyDensity: densityOf(input, sheet),
  });
  return { strength: line.value.strength, from: "formula", because: [line] };
}

function computedPull(
  { fastener, backIsBareWood }: Fastening,
  sheet: SheetStock,
  input: ReviewInput,
): FastenerStrength | undefined {
  if (fastener.tension === undefined) return undefined;
  const gravity = specificGravity.worked({ density: densityOf(input, sheet), moisture: indoorMoisture });
  const line = rivetJointPull.worked({
    rivetTension: fastener.tension,
    bearingDiameter: backIsBareWood ? fastener.washerDiameter : fastener.headDiameter,
    plyThickness: sheet.thickness,
    plyGravity: gravity.value,
  });
  return { strength: line.value.strength, from: "formula", because: [gravity, line] };
}

function asTest(
  { fastener }: Fastening,
  sheet: SheetStock,
  direction: PullTest["direction"],
): MissingMeasurement {
  return {
    measure: `${direction === "pull" ? "pull-out" : "shear"} strength of ${fastener.name} in ${sheet.name}`,
    how: `${direction === "pull" ? "pull" : "push sideways"} at least five out of an offcut with a lever and a luggage scale, face shield on, and write the loads into pull-tests.csv`,
  };
}
