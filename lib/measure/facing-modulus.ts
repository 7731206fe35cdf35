import { type Formula, formula } from "../formula.js";
import { Length, Pressure } from "../quantity/index.js";
import { cite } from "../source.js";

/** A strip bent bare, and one like it bent with a facing glued on. */
export interface FacedStripInputs {
  /** From bending the bare strip. */
  readonly bareModulus: Pressure;
  readonly bareThickness: Length;
  /** From bending the faced strip, as if it were one material of its whole thickness. */
  readonly facedModulus: Pressure;
  readonly facedThickness: Length;
}

const inputs = {
  bareModulus: { symbol: "E_b", kind: Pressure, meaning: "bending modulus, bare", above: 0 },
  bareThickness: { symbol: "h", kind: Length, meaning: "thickness, bare", above: 0 },
  facedModulus: { symbol: "E_H", kind: Pressure, meaning: "bending modulus, faced", above: 0 },
  facedThickness: { symbol: "H", kind: Length, meaning: "thickness, faced", above: 0 },
} as const;
const result = { symbol: "E_f", kind: Pressure, meaning: "modulus of the facing" } as const;
const source = [cite("strength-of-materials", "composite beam, parallel-axis rule")] as const;
const validity = "Full bond; the modulus of the bare strip taken along the same grain, and alike through it.";

function refusals({ bareModulus, bareThickness, facedModulus, facedThickness }: FacedStripInputs): string[] {
  if (facedThickness <= bareThickness) {
    return [
      `facedThickness must exceed the bare one (${Length.show(bareThickness)}), got ${Length.show(facedThickness)}`,
    ];
  }
  const gained = facedModulus * facedThickness ** 3 - bareModulus * bareThickness ** 3;
  return gained > 0 ? [] : ["the faced strip must be stiffer than the bare one: bend both anew"];
}

/**
 * Modulus of a facing glued on both faces: E_f = (E_H H^3 - E_b h^3) / (H^3 - h^3).
 *
 * @throws RangeError when the faced strip is no thicker or no stiffer
 * @example facingModulusBothFaces(facingModulusBothFaces.read({ bareModulus: "9000 MPa",
 *   bareThickness: "9 mm", facedModulus: "9452.2915101427 MPa", facedThickness: "11 mm" })) // 10 GPa
 */
export const facingModulusBothFaces: Formula<FacedStripInputs, Pressure> = formula({
  id: "facing.modulus.both",
  title: "Modulus of a facing on both faces, from bent strips",
  equation: String.raw`E_f = \frac{E_H H^3 - E_b h^3}{H^3 - h^3}`,
  inputs,
  result,
  source,
  validity,
  refuse: refusals,
  compute: ({ bareModulus, bareThickness, facedModulus, facedThickness }) =>
    (facedModulus * facedThickness ** 3 - bareModulus * bareThickness ** 3) /
    (facedThickness ** 3 - bareThickness ** 3),
});

/**
 * Modulus of a facing glued on one face, whose neutral line it moves: with x = E_f t / E_b, t = H - h and
 * S = E_H H^3 / (12 E_b), S = h^3/12 + x t^2/12 + h x (H/2)^2 / (h + x), solved for x.
 *
 * @throws RangeError when the faced strip is no thicker or no stiffer
 * @example facingModulusOneFace(facingModulusOneFace.read({ bareModulus: "9000 MPa", bareThickness: "9 mm",
 *   facedModulus: "9241.329672 MPa", facedThickness: "10 mm" })) // 10 GPa
 */
export const facingModulusOneFace: Formula<FacedStripInputs, Pressure> = formula({
  id: "facing.modulus.one",
  title: "Modulus of a facing on one face, from bent strips",
  equation: String.raw`\frac{E_H H^3}{12 E_b} = \frac{h^3}{12} + \frac{x t^2}{12} + \frac{h x}{h + x}\,\frac{H^2}{4},\quad
    x = \frac{E_f t}{E_b},\ t = H - h`,
  inputs,
  result,
  source,
  validity,
  refuse: refusals,
  compute: ({ bareModulus, bareThickness: h, facedModulus, facedThickness }) => {
    const t = facedThickness - h;
    const gained = (facedModulus * facedThickness ** 3) / (12 * bareModulus) - h ** 3 / 12;
    const square = t ** 2 / 12;
    const linear = square * h + (h * facedThickness ** 2) / 4 - gained;
    const x = (-linear + Math.sqrt(linear ** 2 + 4 * square * gained * h)) / (2 * square);
    return (x * bareModulus) / t;
  },
});
