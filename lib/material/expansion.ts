/** How much the materials of a case grow with heat and with the air's humidity. */
import { Ratio } from "../quantity/index.js";
import { customary, recalled, type Sourced, seen } from "./sourced.js";

/** One material's growth, free to move. */
export interface Expansion {
  readonly title: string;
  /** A kelvin, as a share. */
  readonly heat: Sourced<Ratio>;
  /** From 0 to 100 % relative humidity, as a share. */
  readonly humidity: Sourced<Ratio>;
}

function row(title: string, heat: Sourced<number>, humidity: Sourced<number>): Expansion {
  return {
    title,
    heat: { ...heat, value: Ratio.si(heat.value) },
    humidity: { ...humidity, value: Ratio.si(humidity.value) },
  };
}

/** A material of the table. */
export type ExpandingMaterial = "plywood" | "aluminium" | "steel" | "high-pressure laminate" | "ABS";

/**
 * Plywood in its plane 3.4e-6 a degree Fahrenheit and 0.0002 for each tenth of humidity (panel industry);
 * metals from any table; the laminate grows mostly with humidity, more across its sheet than along it.
 */
export const expansions: Readonly<Record<ExpandingMaterial, Expansion>> = {
  plywood: row("plywood, in its plane", seen(6.1e-6), seen(0.002)),
  aluminium: row("aluminium extrusion", recalled(23.1e-6), customary(0)),
  steel: row("mild steel", recalled(12e-6), customary(0)),
  "high-pressure laminate": row("high-pressure laminate", customary(20e-6), customary(0.007)),
  ABS: row("ABS sheet", recalled(85e-6), customary(0.002)),
};
