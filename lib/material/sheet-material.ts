/** Sheets alike in every direction that face or edge a case. */
import { Density, Pressure, Ratio } from "../quantity/index.js";
import type { Known } from "../source.js";

/** One material. */
export interface SheetMaterial {
  readonly title: string;
  readonly modulus: Pressure;
  readonly poissonRatio: Ratio;
  readonly density: Density;
  /** How all three are known. */
  readonly known: Known;
}

/** A material of the table. */
export type SheetMaterialName = "aluminium" | "steel" | "high-pressure laminate";

function row(
  title: string,
  gigapascals: number,
  poissonRatio: number,
  density: number,
  known: Known,
): SheetMaterial {
  return {
    title,
    modulus: Pressure.of(gigapascals, "GPa"),
    poissonRatio: Ratio.si(poissonRatio),
    density: Density.si(density),
    known,
  };
}

/**
 * Modulus, Poisson's ratio, density. The metals are in every engineering table; the laminate figures are
 * the usual floor of the trade and vary with make and direction by a third.
 */
export const sheetMaterials: Readonly<Record<SheetMaterialName, SheetMaterial>> = {
  aluminium: row("aluminium extrusion or sheet", 69, 0.33, 2700, "memory"),
  steel: row("mild steel", 205, 0.29, 7850, "memory"),
  "high-pressure laminate": row("high-pressure decorative laminate", 9, 0.3, 1400, "common practice"),
};
