/**
 * Clear wood at 12 % moisture. USDA Wood Handbook, tables 5-3a and 5-3b: specific gravity, modulus of
 * rupture (MPa), bending modulus (GPa), shear strength along the grain (MPa).
 */
import { Pressure, Ratio } from "../quantity/index.js";
import { recalled, type Sourced, seen } from "./sourced.js";

/** Small clear specimens, mean values: a board is weaker, and one board differs from the next by a fifth. */
export interface Species {
  /** Oven-dry mass over volume at 12 % moisture, against water. */
  readonly specificGravity: Sourced<Ratio>;
  /** Modulus of rupture in bending. */
  readonly bendingStrength: Sourced<Pressure>;
  /** Bending modulus as the table has it, a little low since it contains the sag from shear. */
  readonly bendingModulus: Sourced<Pressure>;
  /** Shear strength along the grain. */
  readonly shearStrength: Sourced<Pressure>;
}

function row(
  gravity: Sourced<number>,
  strength: Sourced<number>,
  modulus: Sourced<number>,
  shear: Sourced<number>,
): Species {
  return {
    specificGravity: { ...gravity, value: Ratio.si(gravity.value) },
    bendingStrength: { ...strength, value: Pressure.of(strength.value, "MPa") },
    bendingModulus: { ...modulus, value: Pressure.of(modulus.value, "GPa") },
    shearStrength: { ...shear, value: Pressure.of(shear.value, "MPa") },
  };
}

/** A species of the table. */
export type SpeciesName =
  | "yellow birch"
  | "sweet birch"
  | "paper birch"
  | "red maple"
  | "sugar maple"
  | "yellow-poplar"
  | "quaking aspen"
  | "basswood"
  | "american beech"
  | "white ash"
  | "northern red oak"
  | "douglas-fir"
  | "shortleaf pine"
  | "slash pine"
  | "ponderosa pine"
  | "red pine"
  | "virginia pine"
  | "western white pine"
  | "sugar pine"
  | "spruce pine"
  | "longleaf pine"
  | "loblolly pine"
  | "sitka spruce";

/** Every species, by name. */
export const species: Readonly<Record<SpeciesName, Species>> = {
  "yellow birch": row(seen(0.62), seen(114), seen(13.9), seen(13.0)),
  "sweet birch": row(seen(0.65), recalled(117), seen(15.0), seen(15.4)),
  "paper birch": row(seen(0.55), recalled(85), seen(11.0), seen(8.3)),
  "red maple": row(seen(0.54), recalled(92), seen(11.3), recalled(12.8)),
  "sugar maple": row(recalled(0.63), recalled(109), recalled(12.6), recalled(16.1)),
  "yellow-poplar": row(recalled(0.42), recalled(70), recalled(10.9), recalled(8.2)),
  "quaking aspen": row(seen(0.38), recalled(58), seen(8.1), seen(5.9)),
  basswood: row(seen(0.37), recalled(60), seen(10.1), seen(6.8)),
  "american beech": row(seen(0.64), recalled(103), seen(11.9), seen(13.9)),
  "white ash": row(seen(0.6), recalled(103), seen(12.0), seen(13.2)),
  "northern red oak": row(recalled(0.63), recalled(99), recalled(12.5), recalled(12.3)),
  "douglas-fir": row(seen(0.48), recalled(85), recalled(13.4), recalled(7.8)),
  "shortleaf pine": row(seen(0.51), seen(90), seen(12.1), seen(9.6)),
  "slash pine": row(seen(0.59), seen(112), seen(13.7), seen(11.6)),
  "ponderosa pine": row(seen(0.4), seen(65), seen(8.9), seen(7.8)),
  "red pine": row(seen(0.46), seen(76), seen(11.2), seen(8.4)),
  "virginia pine": row(seen(0.48), seen(90), seen(10.5), seen(9.3)),
  "western white pine": row(recalled(0.38), seen(67), seen(10.1), seen(7.2)),
  "sugar pine": row(seen(0.36), seen(57), seen(8.2), seen(7.8)),
  "spruce pine": row(seen(0.44), seen(72), seen(8.5), seen(10.3)),
  "longleaf pine": row(recalled(0.59), recalled(100), recalled(13.7), recalled(10.4)),
  "loblolly pine": row(seen(0.51), recalled(88), recalled(12.3), recalled(9.6)),
  "sitka spruce": row(seen(0.4), recalled(70), recalled(10.8), recalled(7.9)),
};
