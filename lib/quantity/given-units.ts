/** Quantities as a notebook writes them: mm(12), inch(3 / 8), pound(40), each with its unit. */
import { Angle, Area, Force, Length, Mass, Pressure, Ratio, Time } from "./kinds.js";
import type { QuantityKind } from "./quantity-kind.js";
import { type UnitNumber, unitNumber } from "./unit-number.js";

/** As many digits as anybody writes down, without those of a sum in binary. */
const digits = 8;

function given<Name extends string>(
  kind: QuantityKind<Name>,
  unit: string,
): (value: number) => UnitNumber<Name> {
  return (value) => unitNumber(kind, kind.of(value, unit), { unit, digits });
}

/** Millimetres, as a length. */
export const mm: (value: number) => UnitNumber<"length"> = given(Length, "mm");
/** Metres, as a length. */
export const metre: (value: number) => UnitNumber<"length"> = given(Length, "m");
/** Inches, as a length. */
export const inch: (value: number) => UnitNumber<"length"> = given(Length, "in");
/** Feet, as a length. */
export const foot: (value: number) => UnitNumber<"length"> = given(Length, "ft");
/** Thousandths of an inch, as a length. */
export const mil: (value: number) => UnitNumber<"length"> = given(Length, "mil");
/** Square metres, as an area. */
export const squareMetre: (value: number) => UnitNumber<"area"> = given(Area, "m2");
/** Kilograms, as a mass. */
export const kg: (value: number) => UnitNumber<"mass"> = given(Mass, "kg");
/** Grams, as a mass. */
export const gram: (value: number) => UnitNumber<"mass"> = given(Mass, "g");
/** Pounds (avoirdupois), as a mass. */
export const pound: (value: number) => UnitNumber<"mass"> = given(Mass, "lb");
/** Newtons, as a force. */
export const newton: (value: number) => UnitNumber<"force"> = given(Force, "N");
/** Kilograms-force, as a force. */
export const kgf: (value: number) => UnitNumber<"force"> = given(Force, "kgf");
/** Pounds-force, as a force. */
export const lbf: (value: number) => UnitNumber<"force"> = given(Force, "lbf");
/** Pascals, as a pressure. */
export const pascal: (value: number) => UnitNumber<"pressure"> = given(Pressure, "Pa");
/** Megapascals, which are N/mm2, as a pressure. */
export const megapascal: (value: number) => UnitNumber<"pressure"> = given(Pressure, "MPa");
/** Pounds-force a square inch, as a pressure. */
export const psi: (value: number) => UnitNumber<"pressure"> = given(Pressure, "psi");
/** Minutes, as a time. */
export const minute: (value: number) => UnitNumber<"time"> = given(Time, "min");
/** Hours, as a time. */
export const hour: (value: number) => UnitNumber<"time"> = given(Time, "h");
/** Degrees, as an angle. */
export const degree: (value: number) => UnitNumber<"angle"> = given(Angle, "°");
/** A share or a factor, as a ratio. */
export const ratio: (value: number) => UnitNumber<"ratio"> = given(Ratio, "");
