/** What both withdrawal rules of the European code are made of. */
import type { FormulaSymbols } from "../formula.js";
import { Density, Length } from "../quantity/index.js";

/** A screw in wood, as the code sees it. */
interface CodeScrew {
  readonly density: Density;
  readonly diameter: Length;
  readonly penetration: Length;
}

/** Its symbols. */
export const codeScrew: FormulaSymbols<CodeScrew> = {
  density: {
    symbol: String.raw`\rho`,
    kind: Density,
    meaning: "density, low one of the batch",
    above: 0,
    unit: "kg/m3",
  },
  diameter: {
    symbol: "d",
    kind: Length,
    meaning: "diameter over the thread",
    above: 0,
    max: 0.012,
    unit: "mm",
  },
  penetration: { symbol: "l", kind: Length, meaning: "thread in the wood", above: 0, unit: "mm" },
};

/** Said of screws thinner than the code knows. */
export function thinnerThanCode({ diameter }: CodeScrew): string[] {
  return diameter < 0.006 ? ["below 6 mm the code leaves the value to tests"] : [];
}

/** Pull of one screw square to the grain, N (EN 1995-1-1, eq. 8.38 to 8.40; MPa, mm, kg/m3). */
export function squareWithdrawal({ density, diameter, penetration }: CodeScrew): number {
  const [d, l] = [diameter * 1000, penetration * 1000];
  return 0.52 * d ** -0.5 * l ** -0.1 * density ** 0.8 * d * l * Math.min(d / 8, 1);
}
