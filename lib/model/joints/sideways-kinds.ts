/** A nail and a screw pushed sideways: a sheet fastened to a batten. */
import type { SheetStock } from "../../design/index.js";
import { dowelShear, dowelYieldMoment, plywoodEmbedment, timberEmbedment } from "../../fastening/index.js";
import type { WorkedLine } from "../../formula.js";
import { Density, type Force, type Length, megapascal, mm, newton, ratio } from "../../quantity/index.js";

/** Softwood battens of any yard, on the low side; common practice. */
const battenDensity = Density.of(350, "kg/m3");

/** Wire nails and screws of any shop, on the low side; common practice. */
const wireStrength = megapascal(600);

/** One nail or screw through a sheet into a batten, without the help of its head. */
export function sidewaysLine(
  sheet: SheetStock,
  diameter: Length,
  hole: "drilled" | "driven",
): WorkedLine & { readonly value: { readonly strength: Force } } {
  return dowelShear.worked({
    outerThickness: sheet.thickness,
    innerThickness: mm(25),
    outerEmbedment: plywoodEmbedment({ density: sheet.density, diameter }),
    innerEmbedment: timberEmbedment({ density: battenDensity, diameter, hole }),
    diameter,
    yieldMoment: dowelYieldMoment({ tensileStrength: wireStrength, diameter }),
    withdrawal: newton(0),
    helpShare: ratio(0),
  });
}
