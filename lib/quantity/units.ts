/** Short constructors for a notebook: mm(12), inch(3 / 8), pounds(40). */
import { Angle, Area, Force, Length, Mass, Pressure, Ratio, Time } from "./kinds.js";

/** Millimetres to a length. */
export const mm = (value: number): Length => Length.of(value, "mm");
/** Metres to a length. */
export const metre = (value: number): Length => Length.of(value, "m");
/** Inches to a length. */
export const inch = (value: number): Length => Length.of(value, "in");
/** Feet to a length. */
export const foot = (value: number): Length => Length.of(value, "ft");
/** Thousandths of an inch to a length. */
export const mil = (value: number): Length => Length.of(value, "mil");
/** Square metres to an area. */
export const squareMetre = (value: number): Area => Area.si(value);
/** Kilograms to a mass. */
export const kg = (value: number): Mass => Mass.si(value);
/** Grams to a mass. */
export const gram = (value: number): Mass => Mass.of(value, "g");
/** Pounds (avoirdupois) to a mass. */
export const pound = (value: number): Mass => Mass.of(value, "lb");
/** Newtons to a force. */
export const newton = (value: number): Force => Force.si(value);
/** Kilograms-force to a force. */
export const kgf = (value: number): Force => Force.of(value, "kgf");
/** Pounds-force to a force. */
export const lbf = (value: number): Force => Force.of(value, "lbf");
/** Pascals to a pressure. */
export const pascal = (value: number): Pressure => Pressure.si(value);
/** Megapascals (N/mm2) to a pressure or a modulus. */
export const megapascal = (value: number): Pressure => Pressure.of(value, "MPa");
/** Pounds-force a square inch to a pressure or a modulus. */
export const psi = (value: number): Pressure => Pressure.of(value, "psi");
/** Minutes to a time. */
export const minute = (value: number): Time => Time.of(value, "min");
/** Hours to a time. */
export const hour = (value: number): Time => Time.of(value, "h");
/** Degrees to an angle. */
export const degree = (value: number): Angle => Angle.of(value, "deg");
/** A plain number as a ratio. */
export const ratio = (value: number): Ratio => Ratio.si(value);
