/** The kinds of quantities as a notebook reads them: what comes out of text keeps its unit. */
import type { Quantity, ShowStyle } from "./kind.js";
import * as plainKinds from "./kinds.js";
import type { QuantityKind } from "./quantity-kind.js";
import { type UnitNumber, unitNumber } from "./unit-number.js";

/** A kind of quantity whose values print with their unit. */
export interface UnitKind<Name extends string> {
  /** Reads text: `Pressure.read("9 GPa")`. */
  read(text: string): UnitNumber<Name>;
  /** A number of a unit: `Pressure.of(9, "GPa")`. */
  of(value: number, unit: string): UnitNumber<Name>;
  /** A value as text: `Pressure.show(modulus, { unit: "GPa" })`. */
  show(value: Quantity<Name>, style?: ShowStyle): string;
  /** The names of its units. */
  readonly units: readonly string[];
}

/** The kinds among names. */
export type KindsOf<Kinds> = {
  readonly [Name in keyof Kinds as Kinds[Name] extends
    | QuantityKind<string>
    | { readonly units: readonly string[] }
    ? Name
    : never]: Kinds[Name] extends QuantityKind<infer Kind> ? UnitKind<Kind> : never;
};

function withUnits<Name extends string>(kind: QuantityKind<Name>): UnitKind<Name> {
  return {
    read: (text) => unitNumber(kind, kind.read(text)),
    of: (value, unit) => unitNumber(kind, kind.of(value, unit), { unit }),
    show: (value, style) => kind.show(value, style),
    units: kind.units,
  };
}

/** Every kind of quantity by its name. */
export const kinds: KindsOf<typeof plainKinds> = Object.fromEntries(
  Object.entries(plainKinds).flatMap(([name, kind]) =>
    typeof kind === "object" ? [[name, withUnits(kind as QuantityKind<string>)]] : [],
  ),
) as KindsOf<typeof plainKinds>;
