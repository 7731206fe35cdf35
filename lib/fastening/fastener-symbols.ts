/** Symbols that several rules of fasteners share. */
import type { FormulaSymbol } from "../formula.js";
import { Density, Length } from "../quantity/index.js";

/** Diameter of a shank, up to the largest that a rule knows. */
export function shankDiameter(max: number): FormulaSymbol<Length> {
  return { symbol: "d", kind: Length, meaning: "diameter of the shank", above: 0, max, unit: "mm" };
}

/** Density of something a shank presses on. */
export function densityOf(what: string): FormulaSymbol<Density> {
  return {
    symbol: String.raw`\rho`,
    kind: Density,
    meaning: `density of the ${what}`,
    above: 0,
    unit: "kg/m3",
  };
}
