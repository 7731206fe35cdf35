/** Random but sound layers for tests. */
import fc from "fast-check";
import { Layer } from "../../lib/material/index.js";
import { Angle, Density, Length, Pressure, Ratio } from "../../lib/quantity/index.js";

export const right = Angle.of(90, "deg");

/** One veneer, as text would give it. */
export const birchText = {
  thickness: "1.4 mm",
  grain: "0 deg",
  modulusAlong: "15 GPa",
  modulusAcross: "0.75 GPa",
  shearModulus: "1 GPa",
  poissonRatio: 0.43,
  density: "700 kg/m3",
};

export const birch: Layer = Layer.read(birchText);

/** Any layer with its grain along or across. */
export const anyLayer: fc.Arbitrary<Layer> = fc
  .record({
    thickness: fc.double({ min: 0.3, max: 5, noNaN: true }),
    crossed: fc.boolean(),
    along: fc.double({ min: 5, max: 70, noNaN: true }),
    softness: fc.double({ min: 0.03, max: 1, noNaN: true }),
    shear: fc.double({ min: 0.4, max: 5, noNaN: true }),
    poisson: fc.double({ min: 0, max: 0.49, noNaN: true }),
    density: fc.double({ min: 300, max: 2700, noNaN: true }),
  })
  .map(({ thickness, crossed, along, softness, shear, poisson, density }) => ({
    thickness: Length.of(thickness, "mm"),
    grain: crossed ? right : Angle.si(0),
    modulusAlong: Pressure.of(along, "GPa"),
    modulusAcross: Pressure.of(along * softness, "GPa"),
    shearModulus: Pressure.of(shear, "GPa"),
    poissonRatio: Ratio.si(poisson),
    density: Density.si(density),
  }));

export const anyStack: fc.Arbitrary<readonly Layer[]> = fc.array(anyLayer, { minLength: 1, maxLength: 9 });

/** Within a relative error of the larger size. */
export function close(a: number, b: number, tolerance = 1e-9): boolean {
  return Math.abs(a - b) <= tolerance * Math.max(Math.abs(a), Math.abs(b));
}
