/** Plywood: its layers by species, and the whole stiffness matrices of such a stack. */
import { inverse, type Matrix3, product } from "../algebra/matrix3.js";
import { type Formula, formula } from "../formula.js";
import {
  AreaDensity,
  Length,
  listOf,
  MembraneStiffness,
  PlateMoment,
  PlateStiffness,
  Pressure,
} from "../quantity/index.js";
import { cite } from "../source.js";
import { freeBending, type Laminate, Layer, laminate, layerFaults } from "./laminate.js";
import { type OrthotropicStiffness, orthotropicStiffness } from "./plate-stiffness.js";

/** A bonded stack. */
export interface LayerStack {
  /** The layers from the bottom face up; a facing is a layer like any other. */
  readonly layers: readonly Layer[];
}

/** What the stack amounts to as one panel. It is also an OrthotropicStiffness for the plate formulas. */
export type LaminatedPanel = OrthotropicStiffness & {
  readonly thickness: Length;
  /** Modulus a bent strip along x would show if the panel were one material. */
  readonly bendingModulusX: Pressure;
  /** The same for a strip along y. */
  readonly bendingModulusY: Pressure;
  /** In-plane force per width for unit stretch along x with y held, A11. */
  readonly membraneX: MembraneStiffness;
  /** A22 */
  readonly membraneY: MembraneStiffness;
  /** A12 */
  readonly membraneCoupling: MembraneStiffness;
  /** A66 */
  readonly membraneShear: MembraneStiffness;
  /** Modulus of a strip pulled along x. */
  readonly stretchModulusX: Pressure;
  /** Modulus of a strip pulled along y. */
  readonly stretchModulusY: Pressure;
  /** Height above the bottom face that keeps its length when a strip along x bends. */
  readonly neutralX: Length;
  /** The same for a strip along y. */
  readonly neutralY: Length;
  /** Without glue. */
  readonly massPerArea: AreaDensity;
};

/**
 * Plywood, faced or bare, from its layers of any thickness and grain.
 *
 * @example plywoodLamination(plywoodLamination.read({ layers: [{ thickness: "9 mm", grain: "0 deg",
 *   modulusAlong: "9000 MPa", modulusAcross: "9000 MPa", shearModulus: "4500 MPa", poissonRatio: 0,
 *   density: "700 kg/m3" }, { thickness: "1 mm", grain: "0 deg", modulusAlong: "10000 MPa",
 *   modulusAcross: "10000 MPa", shearModulus: "5000 MPa", poissonRatio: 0, density: "700 kg/m3" }] })) // alongX 770.1 N·m, alongY 770.1 N·m, coupling 0 N·m, twist 385.1 N·m, thickness 10 mm, bendingModulusX 9.241 GPa, bendingModulusY 9.241 GPa, membraneX 91 MN/m, membraneY 91 MN/m, membraneCoupling 0 N/m, membraneShear 45.5 MN/m, stretchModulusX 9.1 GPa, stretchModulusY 9.1 GPa, neutralX 5.049 mm, neutralY 5.049 mm, massPerArea 7 kg/m2
 */
export const plywoodLamination: Formula<LayerStack, LaminatedPanel> = formula<LayerStack, LaminatedPanel>({
  id: "plywood.lamination",
  title: "Plywood stiffness from its veneers and facings",
  equation: String.raw`D^{*}=D-B A^{-1}B,\quad (A,B,D)=\sum_k \bar Q_k \int_k (1,z,z^2)\,dz`,
  inputs: {
    layers: {
      symbol: String.raw`\{t,\theta,E_1,E_2,G_{12},\nu_{12},\rho\}_k`,
      kind: listOf(Layer),
      meaning: "layers from the bottom face up",
    },
  },
  result: {
    ...orthotropicStiffness.declaration.result,
    thickness: { symbol: "t", kind: Length, meaning: "panel thickness" },
    bendingModulusX: { symbol: "E_{f,x}", kind: Pressure, meaning: "bending modulus of a strip along x" },
    bendingModulusY: { symbol: "E_{f,y}", kind: Pressure, meaning: "bending modulus of a strip along y" },
    membraneX: { symbol: "A_{11}", kind: MembraneStiffness, meaning: "in-plane stiffness along x" },
    membraneY: { symbol: "A_{22}", kind: MembraneStiffness, meaning: "in-plane stiffness along y" },
    membraneCoupling: { symbol: "A_{12}", kind: MembraneStiffness, meaning: "in-plane coupling" },
    membraneShear: { symbol: "A_{66}", kind: MembraneStiffness, meaning: "in-plane shear stiffness" },
    stretchModulusX: { symbol: "E_{m,x}", kind: Pressure, meaning: "in-plane modulus along x" },
    stretchModulusY: { symbol: "E_{m,y}", kind: Pressure, meaning: "in-plane modulus along y" },
    neutralX: { symbol: "z_x", kind: Length, meaning: "neutral height, strip along x" },
    neutralY: { symbol: "z_y", kind: Length, meaning: "neutral height, strip along y" },
    massPerArea: { symbol: "m", kind: AreaDensity, meaning: "mass per area" },
  },
  source: [cite("composite-mechanics", "ch. 4, eq. 4.22 to 4.27"), cite("wood-handbook", "ch. 12, plywood")],
  validity:
    "Fully bonded layers, panel free to shift in its own plane at the edges. Voids, glue and shear through the thickness (which adds a few percent to the sag of short spans) are left out; a bend test outranks it.",
  refuse: ({ layers }) => layerFaults(layers),
  warn: ({ layers }) => skewWarning(freeBending(laminate(layers))),
  compute: ({ layers }) => {
    const stack = laminate(layers);
    return { ...bendingOf(stack), ...stretchOf(stack), massPerArea: massOf(layers) };
  },
});

type Bared<Field extends keyof LaminatedPanel> = { readonly [F in Field]: number };

function bendingOf(
  stack: Laminate,
): Bared<
  keyof OrthotropicStiffness | "thickness" | "bendingModulusX" | "bendingModulusY" | "neutralX" | "neutralY"
> {
  const bending = freeBending(stack);
  const compliance = inverse(bending);
  const shift = product(inverse(stack.membrane), stack.coupling);
  const { thickness } = stack;
  const modulus = (axis: 0 | 1): number => 12 / (thickness ** 3 * compliance[axis][axis]);
  return {
    alongX: bending[0][0],
    alongY: bending[1][1],
    coupling: bending[0][1],
    twist: bending[2][2],
    thickness,
    bendingModulusX: modulus(0),
    bendingModulusY: modulus(1),
    neutralX: thickness / 2 + shift[0][0],
    neutralY: thickness / 2 + shift[1][1],
  };
}

function stretchOf({
  membrane,
  thickness,
}: Laminate): Bared<`membrane${"X" | "Y" | "Coupling" | "Shear"}` | `stretchModulus${"X" | "Y"}`> {
  const compliance = inverse(membrane);
  return {
    membraneX: membrane[0][0],
    membraneY: membrane[1][1],
    membraneCoupling: membrane[0][1],
    membraneShear: membrane[2][2],
    stretchModulusX: 1 / (thickness * compliance[0][0]),
    stretchModulusY: 1 / (thickness * compliance[1][1]),
  };
}

function massOf(layers: readonly Layer[]): number {
  return layers.reduce((sum, { thickness, density }) => sum + thickness * density, 0);
}

/** Share of the bending stiffness above which a lay-up with slanted grain twists noticeably as it bends. */
const skewLimit = 0.03;

function skewWarning(bending: Matrix3): string[] {
  const skew =
    Math.max(Math.abs(bending[0][2]), Math.abs(bending[1][2])) / Math.min(bending[0][0], bending[1][1]);
  return skew < skewLimit
    ? []
    : ["slanted grain makes this panel twist as it bends, which the plate formulas leave out"];
}

/** A place in a stiffness matrix, by row and column. */
export type Entry = "11" | "22" | "12" | "66" | "16" | "26";

/** A, B and D, entry by entry; 1 and 2 are the panel's axes, 6 is shear. */
export type LaminateStiffness = {
  readonly [E in Entry as `A${E}`]: MembraneStiffness;
} & { readonly [E in Entry as `B${E}`]: PlateMoment } & { readonly [E in Entry as `D${E}`]: PlateStiffness };

const meanings = {
  A: "in-plane stiffness",
  B: "coupling of stretch and bending",
  D: "bending stiffness about the middle plane",
} as const;

function symbol<Name extends keyof typeof meanings, K>(name: Name, entry: Entry, kind: K) {
  return { symbol: `${name}_{${entry}}`, kind, meaning: `${meanings[name]}, ${entry}` };
}

/**
 * A, B and D of any stack: unequal layers, each with its own grain.
 *
 * @example laminateStiffness(laminateStiffness.read({ layers: [{ thickness: "1.4 mm", grain: "30 deg",
 *   modulusAlong: "15000 MPa", modulusAcross: "750 MPa", shearModulus: "1000 MPa", poissonRatio: 0.43,
 *   density: "600 kg/m3" }] })) // A11 13.21 MN/m, A22 3.142 MN/m, A12 3.408 MN/m, A66 4.352 MN/m, A16 6.064 MN/m, A26 2.655 MN/m, B11 0 N·m/m, B22 0 N·m/m, B12 0 N·m/m, B66 0 N·m/m, B16 0 N·m/m, B26 0 N·m/m, D11 2.158 N·m, D22 0.5132 N·m, D12 0.5566 N·m, D66 0.7108 N·m, D16 0.9905 N·m, D26 0.4337 N·m
 */
export const laminateStiffness: Formula<LayerStack, LaminateStiffness> = formula<
  LayerStack,
  LaminateStiffness
>({
  id: "laminate.stiffness",
  title: "Stiffness matrices of a bonded stack",
  equation: String.raw`(A, B, D) = \sum_k \bar Q_k \int_k (1, z, z^2)\,dz`,
  inputs: {
    layers: {
      symbol: String.raw`\{t,\theta,E_1,E_2,G_{12},\nu_{12}\}_k`,
      kind: listOf(Layer),
      meaning: "layers from the bottom face up",
    },
  },
  result: {
    A11: symbol("A", "11", MembraneStiffness),
    A22: symbol("A", "22", MembraneStiffness),
    A12: symbol("A", "12", MembraneStiffness),
    A66: symbol("A", "66", MembraneStiffness),
    A16: symbol("A", "16", MembraneStiffness),
    A26: symbol("A", "26", MembraneStiffness),
    B11: symbol("B", "11", PlateMoment),
    B22: symbol("B", "22", PlateMoment),
    B12: symbol("B", "12", PlateMoment),
    B66: symbol("B", "66", PlateMoment),
    B16: symbol("B", "16", PlateMoment),
    B26: symbol("B", "26", PlateMoment),
    D11: symbol("D", "11", PlateStiffness),
    D22: symbol("D", "22", PlateStiffness),
    D12: symbol("D", "12", PlateStiffness),
    D66: symbol("D", "66", PlateStiffness),
    D16: symbol("D", "16", PlateStiffness),
    D26: symbol("D", "26", PlateStiffness),
  },
  source: [cite("composite-mechanics", "ch. 4, eq. 4.22 to 4.24")],
  validity: "Fully bonded thin layers; shear through the thickness is left out.",
  refuse: ({ layers }) => layerFaults(layers),
  compute: ({ layers }) => {
    const { membrane, coupling, bending } = laminate(layers);
    return { ...entries("A", membrane), ...entries("B", coupling), ...entries("D", bending) };
  },
});

function entries<Name extends string>(
  name: Name,
  matrix: Matrix3,
): { readonly [E in Entry as `${Name}${E}`]: number } {
  const [[xx, xy, xs], [, yy, ys], [, , ss]] = matrix;
  const values: Readonly<Record<Entry, number>> = {
    "11": xx,
    "22": yy,
    "12": xy,
    "66": ss,
    "16": xs,
    "26": ys,
  };
  return Object.fromEntries(Object.entries(values).map(([entry, value]) => [`${name}${entry}`, value])) as {
    readonly [E in Entry as `${Name}${E}`]: number;
  };
}
