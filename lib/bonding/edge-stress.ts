/** What heat and damp do to the edge of a glued facing, and to the flatness of the panel. */
import { type Formula, formula } from "../formula.js";
import { Length, Pressure, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** Two bonded layers that want different lengths. */
export interface MismatchedLayers {
  /** Modulus of elasticity of the facing. */ readonly facingModulus: Pressure;
  /** Thickness of the facing. */ readonly facingThickness: Length;
  /** Modulus of elasticity of the sheet. */ readonly sheetModulus: Pressure;
  /** Thickness of the sheet. */ readonly sheetThickness: Length;
  /** Growth of the one less growth of the other, each if it were free. */ readonly mismatch: Ratio;
}

/** The layers with their glue line. */
export interface EdgeStressInputs extends MismatchedLayers {
  /** Length of the bond. */ readonly length: Length;
  /** Shear modulus of the glue. */ readonly glueShearModulus: Pressure;
  /** Thickness of the glue line. */ readonly glueThickness: Length;
}

/** What the edge of the glue line bears. */
export type EdgeStress = {
  /** Shear in the glue at the very edge. */ readonly shear: Pressure;
  /** Pull that lifts the facing's edge; an upper bound. */ readonly peel: Pressure;
  /** From the edge inwards, over which most of it is passed. */ readonly reach: Length;
};

const layers = {
  facingModulus: { symbol: "E_1", kind: Pressure, meaning: "modulus of the facing", above: 0 },
  facingThickness: { symbol: "t_1", kind: Length, meaning: "thickness of the facing", above: 0 },
  sheetModulus: { symbol: "E_2", kind: Pressure, meaning: "modulus of the sheet", above: 0 },
  sheetThickness: { symbol: "t_2", kind: Length, meaning: "thickness of the sheet", above: 0 },
  mismatch: {
    symbol: String.raw`\Delta\varepsilon`,
    kind: Ratio,
    meaning: "difference of growth",
    min: 0,
    max: 0.05,
  },
} as const;

/** A glue's modulus in pull over that in shear, Poisson's ratio being 0.35 to 0.4. */
const pullOverShear = 2.75;

/**
 * Shear and peel at the edge of a facing whose growth differs from its sheet's: shear lag with
 * lambda^2 = (G_a / t_a)(1/(E1 t1) + 1/(E2 t2)), tau = G_a de tanh(lambda L / 2) / (t_a lambda); the force so
 * passed, at half the facing's thickness, bends its edge up on the glue as on springs: sigma = 2 beta^2 N t1 / 2,
 * beta^4 = E_a / (4 t_a D_1).
 *
 * @example facingEdgeStress(facingEdgeStress.read({ facingModulus: "9000000000.0 Pa",
 *   facingThickness: "0.001 m", sheetModulus: "9000000000.0 Pa", sheetThickness: "0.0091 m", mismatch: 0.0005,
 *   length: "0.05 m", glueShearModulus: "400000.0 Pa", glueThickness: "0.0002 m" })) // shear 23.79 kPa, peel 12.57 kPa, reach 63.67 mm
 */
export const facingEdgeStress: Formula<EdgeStressInputs, EdgeStress> = formula<EdgeStressInputs, EdgeStress>({
  id: "facing.edge.stress",
  title: "Shear and peel at the edge of a facing",
  equation: String.raw`\tau = \frac{G_a\,\Delta\varepsilon}{t_a\lambda}\tanh\frac{\lambda L}{2},\quad
    \lambda^2 = \frac{G_a}{t_a}\left(\frac1{E_1 t_1} + \frac1{E_2 t_2}\right),\quad
    \sigma = \beta^2 N t_1,\quad \beta^4 = \frac{E_a}{4\,t_a D_1}`,
  inputs: {
    ...layers,
    length: { symbol: "L", kind: Length, meaning: "length of the bond", above: 0 },
    glueShearModulus: { symbol: "G_a", kind: Pressure, meaning: "shear modulus of the glue", above: 0 },
    glueThickness: { symbol: "t_a", kind: Length, meaning: "thickness of the glue", above: 0 },
  },
  result: {
    shear: { symbol: String.raw`\tau`, kind: Pressure, meaning: "shear at the edge" },
    peel: { symbol: String.raw`\sigma`, kind: Pressure, meaning: "peel at the edge, at most" },
    reach: { symbol: String.raw`1/\lambda`, kind: Length, meaning: "reach of the edge" },
  },
  source: [
    cite("bonded-joints", "shear lag of unequal strains"),
    cite("stress-strain", "ch. 8, beam on an elastic foundation"),
  ],
  validity:
    "Elastic glue; contact glue creeps and bears less within hours. Peel takes all force as passed at the edge.",
  compute: (inputs) => {
    const { facingModulus, facingThickness, glueShearModulus, glueThickness, mismatch, length } = inputs;
    const yields = 1 / (facingModulus * facingThickness) + 1 / (inputs.sheetModulus * inputs.sheetThickness);
    const decay = Math.sqrt((glueShearModulus / glueThickness) * yields);
    const held = (mismatch / yields) * (1 - 1 / Math.cosh(Math.min(700, (decay * length) / 2)));
    const bending = (facingModulus * facingThickness ** 3) / 12;
    const square = Math.sqrt((pullOverShear * glueShearModulus) / (4 * glueThickness * bending));
    return {
      shear: ((glueShearModulus * mismatch) / (glueThickness * decay)) * Math.tanh((decay * length) / 2),
      peel: square * held * facingThickness,
      reach: 1 / decay,
    };
  },
});

/** A panel faced on one side only. */
export interface FacingWarpInputs extends MismatchedLayers {
  /** Of the free panel. */ readonly span: Length;
}

/**
 * How far a panel faced on one side bows, free, when the two grow unlike: two strips bonded,
 * kappa = 6 de (1 + m)^2 / (h (3 (1 + m)^2 + (1 + m n)(m^2 + 1/(m n)))), m = t1/t2, n = E1/E2, bow kappa L^2 / 8.
 *
 * @example facingWarp(facingWarp.read({ facingModulus: "70 GPa", facingThickness: "1 mm",
 *   sheetModulus: "70 GPa", sheetThickness: "1 mm", mismatch: 0.001, span: "100 mm" })) // 0.9375 mm
 */
export const facingWarp: Formula<FacingWarpInputs, Length> = formula({
  id: "facing.warp",
  title: "Bow of a panel faced on one side",
  equation: String.raw`w = \frac{L^2}{8}\,\frac{6\,\Delta\varepsilon\,(1+m)^2}{h\left(3(1+m)^2 + (1+mn)\left(m^2 + \frac{1}{mn}\right)\right)},\quad m = \frac{t_1}{t_2},\ n = \frac{E_1}{E_2}`,
  inputs: { ...layers, span: { symbol: "L", kind: Length, meaning: "span of the panel", above: 0 } },
  result: { symbol: "w", kind: Length, meaning: "bow in the middle" },
  source: [cite("bimetal", "eq. 4")],
  validity: "A free strip; in the box the edges hold it flatter. Face both sides alike and it stays flat.",
  compute: ({ facingModulus, facingThickness, sheetModulus, sheetThickness, mismatch, span }) => {
    const [m, n] = [facingThickness / sheetThickness, facingModulus / sheetModulus];
    const sum = 3 * (1 + m) ** 2 + (1 + m * n) * (m ** 2 + 1 / (m * n));
    const curvature = (6 * mismatch * (1 + m) ** 2) / ((facingThickness + sheetThickness) * sum);
    return (curvature * span ** 2) / 8;
  },
});
