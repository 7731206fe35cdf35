/** Bending stiffness of a panel as plate formulas want it, from measured or tabulated moduli. */
import { type Formula, formula } from "../formula.js";
import { type Kind, Length, PlateStiffness, Pressure, Ratio, recordOf } from "../quantity/index.js";
import { cite } from "../source.js";

/** A plate's bending stiffness: Mx = -(Dx wxx + D1 wyy), My = -(Dy wyy + D1 wxx), Mxy = -2 Dxy wxy. */
export type OrthotropicStiffness = {
  /** Dx: against bending of strips along x, N m per m. */
  readonly alongX: PlateStiffness;
  /** Dy: against bending of strips along y. */
  readonly alongY: PlateStiffness;
  /** D1: how bending one way stiffens the other, from Poisson's ratio. */
  readonly coupling: PlateStiffness;
  /** Dxy: against twisting, G t3/12. */
  readonly twist: PlateStiffness;
};

/** A plate's bending stiffness as text. */
export const OrthotropicStiffness: Kind<OrthotropicStiffness> = recordOf<OrthotropicStiffness>(
  "plate stiffness",
  { alongX: PlateStiffness, alongY: PlateStiffness, coupling: PlateStiffness, twist: PlateStiffness },
);

/**
 * What is wrong with a plate's stiffness: it must resist every bending, along, across and twisting.
 *
 * @returns reasons, none for a sound stiffness
 */
export function stiffnessFaults(stiffness: OrthotropicStiffness): string[] {
  const { alongX, alongY, coupling, twist } = stiffness;
  const shown = OrthotropicStiffness.show(stiffness);
  const positive = alongX > 0 && alongY > 0 && twist > 0;
  if (!positive) return [`stiffness must be positive along x, along y and in twist, got ${shown}`];
  const sound = coupling * coupling < alongX * alongY;
  return sound ? [] : [`stiffness must have a coupling below the mean of x and y, got ${shown}`];
}

/**
 * The same panel turned by a quarter on its face: x and y change places.
 *
 * @param stiffness as it lay before
 */
export function turnedQuarter(stiffness: OrthotropicStiffness): OrthotropicStiffness {
  return { ...stiffness, alongX: stiffness.alongY, alongY: stiffness.alongX };
}

/** What bend tests along and across the face grain tell, with two moduli that rarely are measured. */
export interface BendTestedPanel {
  /** The panel thickness. */
  readonly thickness: Length;
  /** Modulus from bending strips cut along x. */
  readonly modulusX: Pressure;
  /** Modulus from bending strips cut along y. */
  readonly modulusY: Pressure;
  /** How much a strip along x narrows for its stretch; about 0.05 for cross-banded plywood. */
  readonly poissonXY: Ratio;
  /** Shear modulus in the plane of the panel, from a twist test. */
  readonly shearModulus: Pressure;
}

/**
 * Plate stiffness from bend tests of strips cut both ways.
 *
 * @example orthotropicStiffness(orthotropicStiffness.read({ thickness: "9 mm", modulusX: "9000 MPa",
 *   modulusY: "6000 MPa", poissonXY: 0.05, shearModulus: "620 MPa" })) // alongX 547.7 N·m, alongY 365.1 N·m, coupling 18.26 N·m, twist 37.67 N·m
 */
export const orthotropicStiffness: Formula<BendTestedPanel, OrthotropicStiffness> = formula<
  BendTestedPanel,
  OrthotropicStiffness
>({
  id: "plate.stiffness.orthotropic",
  title: "Plate stiffness from bend tests along and across",
  equation: String.raw`D_x=\frac{E_x t^3}{12(1-\nu_{xy}\nu_{yx})},\; D_y=\frac{E_y}{E_x}D_x,\; D_1=\nu_{yx}D_x,\; D_{xy}=\frac{G t^3}{12},\; \nu_{yx}=\nu_{xy}\frac{E_y}{E_x}`,
  inputs: {
    thickness: { symbol: "t", kind: Length, meaning: "panel thickness", above: 0 },
    modulusX: { symbol: "E_x", kind: Pressure, meaning: "bending modulus of strips along x", above: 0 },
    modulusY: { symbol: "E_y", kind: Pressure, meaning: "bending modulus of strips along y", above: 0 },
    poissonXY: {
      symbol: String.raw`\nu_{xy}`,
      kind: Ratio,
      meaning: "Poisson's ratio, pulled along x",
      min: 0,
    },
    shearModulus: { symbol: "G", kind: Pressure, meaning: "in-plane shear modulus", above: 0 },
  },
  result: {
    alongX: { symbol: "D_x", kind: PlateStiffness, meaning: "bending stiffness along x" },
    alongY: { symbol: "D_y", kind: PlateStiffness, meaning: "bending stiffness along y" },
    coupling: { symbol: "D_1", kind: PlateStiffness, meaning: "coupling of the two bendings" },
    twist: { symbol: "D_{xy}", kind: PlateStiffness, meaning: "twisting stiffness" },
  },
  source: [cite("plates-shells", "art. 85, eq. (d)"), cite("anisotropic-plates", "ch. 9")],
  validity:
    "Thin panels whose grain runs along or across their sides. Do not replace the measured twisting modulus by an estimate from the bending moduli: for cross-banded plywood that sags a third too little.",
  refuse: ({ modulusX, modulusY, poissonXY }) =>
    poissonXY ** 2 * modulusY < modulusX
      ? []
      : [`poissonXY must be below ${Math.sqrt(modulusX / modulusY).toPrecision(3)} for these moduli`],
  compute: ({ thickness, modulusX, modulusY, poissonXY, shearModulus }) => {
    const poissonYX = (poissonXY * modulusY) / modulusX;
    const cube = thickness ** 3 / 12 / (1 - poissonXY * poissonYX);
    return {
      alongX: modulusX * cube,
      alongY: modulusY * cube,
      coupling: poissonYX * modulusX * cube,
      twist: (shearModulus * thickness ** 3) / 12,
    };
  },
});

/** A sheet that is alike in every direction, such as metal. */
export interface PlainSheet {
  /** The sheet thickness. */
  readonly thickness: Length;
  /** The modulus of elasticity. */
  readonly modulus: Pressure;
  /** The Poisson's ratio: 0.33 for aluminium, 0.3 for steel. */
  readonly poissonRatio: Ratio;
}

/**
 * Plate stiffness of a sheet that is alike in every direction.
 *
 * @example isotropicStiffness(isotropicStiffness.read({ thickness: "3 mm", modulus: "69 GPa",
 *   poissonRatio: 0.33 })) // alongX 174.2 N·m, alongY 174.2 N·m, coupling 57.49 N·m, twist 58.36 N·m
 */
export const isotropicStiffness: Formula<PlainSheet, OrthotropicStiffness> = formula<
  PlainSheet,
  OrthotropicStiffness
>({
  id: "plate.stiffness.isotropic",
  title: "Plate stiffness of a plain sheet",
  equation: String.raw`D=\frac{E t^3}{12(1-\nu^2)},\quad D_1=\nu D,\quad D_{xy}=\tfrac{1-\nu}{2}D`,
  inputs: {
    thickness: { symbol: "t", kind: Length, meaning: "sheet thickness", above: 0 },
    modulus: { symbol: "E", kind: Pressure, meaning: "modulus of elasticity", above: 0 },
    poissonRatio: { symbol: String.raw`\nu`, kind: Ratio, meaning: "Poisson's ratio", min: 0, max: 0.5 },
  },
  result: orthotropicStiffness.declaration.result,
  source: [cite("plates-shells", "eq. (3)"), cite("stress-strain", "ch. 11, notation")],
  validity: "Thin sheets of one material, alike in every direction.",
  compute: ({ thickness, modulus, poissonRatio }) => {
    const stiffness = (modulus * thickness ** 3) / 12 / (1 - poissonRatio ** 2);
    return {
      alongX: stiffness,
      alongY: stiffness,
      coupling: poissonRatio * stiffness,
      twist: ((1 - poissonRatio) / 2) * stiffness,
    };
  },
});
