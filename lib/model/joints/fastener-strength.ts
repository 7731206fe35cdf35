import { type Fastening, type PullTest, type SheetStock, sheetPieces } from "../../design/index.js";
import type { MissingMeasurement } from "../../refusal.js";
import type { ReviewInput } from "../review-input.js";
import { computedStrength } from "./computed-strength.js";
import { endsBehind } from "./joint-stack.js";
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

/** The sheet that a group of fasteners goes through. */
export function sheetUnder({ panel: id }: Fastening, { parts }: ReviewInput): SheetStock {
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
      (direction === "shear" || !endsBehind(fastener) || row.washer === washer),
  );
  const found = testedStrength(
    rows.map(({ load }) => load),
    `${direction} tests of ${fastener.name}`,
  );
  return found && { ...found, from: "tests" };
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
