import { type Formula, formula } from "../formula.js";
import { choice, Density, type Length, SpringRate } from "../quantity/index.js";
import { cite } from "../source.js";
import { shankDiameter } from "./fastener-symbols.js";

/** A fastener between two pieces of wood or panel. */
export interface SlipInputs {
  /** Mean density; of two pieces the root of their product. */
  readonly density: Density;
  readonly diameter: Length;
  readonly shank: "driven nail" | "screw, bolt or drilled";
}

/**
 * Stiffness of one fastener against slip: K = rho^1.5 d / 23, of a driven nail rho^1.5 d^0.8 / 30 (N/mm, kg/m3, mm).
 *
 * @example slipStiffness(slipStiffness.read({ density: "400 kg/m3", diameter: "4 mm", shank: "driven nail" })) // 808.4 N/mm
 */
export const slipStiffness: Formula<SlipInputs, SpringRate> = formula({
  id: "fastener.slip",
  title: "Stiffness of a fastener against slip",
  equation: String.raw`K_{ser} = \frac{\rho^{1.5} d}{23}\ \text{(drilled)},\quad K_{ser} = \frac{\rho^{1.5} d^{0.8}}{30}\ \text{(driven nail)}`,
  inputs: {
    density: { symbol: String.raw`\rho`, kind: Density, meaning: "mean density", above: 0, unit: "kg/m3" },
    diameter: shankDiameter(0.03),
    shank: {
      symbol: String.raw`\text{shank}`,
      kind: choice("shank", ["driven nail", "screw, bolt or drilled"]),
      meaning: "how it sits",
    },
  },
  result: { symbol: "K_{ser}", kind: SpringRate, meaning: "force over slip in use", unit: "N/mm" },
  source: [cite("en-1995", "7.1, table 7.1")],
  validity:
    "One shear plane, wood on wood; with metal on one side twice as stiff. A rivet in ply: an estimate.",
  compute: ({ density, diameter, shank }) => {
    const size = diameter * 1000;
    return 1000 * density ** 1.5 * (shank === "driven nail" ? size ** 0.8 / 30 : size / 23);
  },
});
