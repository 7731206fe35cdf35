/** A case on four casters at the corners of a rectangle: what the formulas for four and for three share. */
import type { FormulaSymbols } from "../formula.js";
import { Force, Length, Mass, standardGravity } from "../quantity/index.js";

/** A case on four casters, seen from above. */
export interface CaseOnCasters {
  /** Case and all that is in it. */
  readonly mass: Mass;
  /** Left to right, caster to caster. */
  readonly across: Length;
  /** Front to back, caster to caster. */
  readonly deep: Length;
  /** From the left casters to the centre of gravity. */
  readonly fromLeft: Length;
  /** From the front casters to the centre of gravity. */
  readonly fromFront: Length;
}

/** The force on each caster. */
export type CasterLoads = {
  /** Upwards, at the front left. */
  readonly frontLeft: Force;
  /** Upwards, at the front right. */
  readonly frontRight: Force;
  /** Upwards, at the back left. */
  readonly backLeft: Force;
  /** Upwards, at the back right. */
  readonly backRight: Force;
};

/** The same with bare numbers. */
export type Loads = { readonly [Caster in keyof CasterLoads]: number };

/** One figure for each corner. */
export function atCorners(load: (left: boolean, front: boolean) => number): Loads {
  return {
    frontLeft: load(true, true),
    frontRight: load(false, true),
    backLeft: load(true, false),
    backRight: load(false, false),
  };
}

/** The weight, and how much of it rests on the right and on the back. */
export function split({
  mass,
  across,
  deep,
  fromLeft,
  fromFront,
}: CaseOnCasters): Record<"weight" | "right" | "back", number> {
  return { weight: mass * standardGravity, right: fromLeft / across, back: fromFront / deep };
}

/** Whether no caster would have to pull the case down, beyond the rounding of sums. */
export function allPush(loads: Loads, { mass }: CaseOnCasters): boolean {
  return Object.values(loads).every((load) => load >= -1e-9 * mass);
}

/** The symbols of a case on casters. */
export const casterInputs: FormulaSymbols<CaseOnCasters> = {
  mass: { symbol: "m", kind: Mass, meaning: "mass", above: 0 },
  across: { symbol: "a", kind: Length, meaning: "left to right between casters", above: 0 },
  deep: { symbol: "d", kind: Length, meaning: "front to back between casters", above: 0 },
  fromLeft: { symbol: "x", kind: Length, meaning: "left casters to the centre of gravity" },
  fromFront: { symbol: "y", kind: Length, meaning: "front casters to the centre of gravity" },
};

/** The symbols of the force on each caster. */
export const casterResult: FormulaSymbols<CasterLoads> = {
  frontLeft: { symbol: "R_{fl}", kind: Force, meaning: "on the front left caster" },
  frontRight: { symbol: "R_{fr}", kind: Force, meaning: "on the front right caster" },
  backLeft: { symbol: "R_{bl}", kind: Force, meaning: "on the back left caster" },
  backRight: { symbol: "R_{br}", kind: Force, meaning: "on the back right caster" },
};
