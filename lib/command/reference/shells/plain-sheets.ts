import { type Sheet, type SheetLayer, sheetOfLayers } from "../../../fem/element/index.js";
import { Angle, Density, Length, Pressure, Ratio } from "../../../quantity/index.js";

/**
 * A layer alike in every direction, in the units of its problem; five sixths of its shear modulus count through it.
 */
export function plainLayer(thickness: number, modulus: number, poisson: number): SheetLayer {
  const shear = modulus / (2 * (1 + poisson));
  return {
    thickness: Length.si(thickness),
    grain: Angle.si(0),
    modulusAlong: Pressure.si(modulus),
    modulusAcross: Pressure.si(modulus),
    shearModulus: Pressure.si(shear),
    poissonRatio: Ratio.si(poisson),
    throughAlong: Pressure.si((5 / 6) * shear),
    throughAcross: Pressure.si((5 / 6) * shear),
    density: Density.si(1),
  };
}

/** A sheet of one such layer. */
export function plainSheet(thickness: number, modulus: number, poisson: number): Sheet {
  return sheetOfLayers([plainLayer(thickness, modulus, poisson)]);
}

/** A slice 1 thick that cannot grow thicker. */
export function planeStrain(modulus: number, poisson: number): Sheet {
  const scale = modulus / ((1 + poisson) * (1 - 2 * poisson));
  const [direct, cross] = [scale * (1 - poisson), scale * poisson];
  return {
    ...plainSheet(1, modulus, 0.3),
    membrane: [
      [direct, cross, 0],
      [cross, direct, 0],
      [0, 0, (direct - cross) / 2],
    ],
  };
}
