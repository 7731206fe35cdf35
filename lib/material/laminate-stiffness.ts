/** The whole stiffness of a bonded stack, as laminate theory writes it. */

import type { Matrix3 } from "../algebra/matrix3.js";
import { type Formula, formula } from "../formula.js";
import { listOf, MembraneStiffness, PlateMoment, PlateStiffness } from "../quantity/index.js";
import { cite } from "../source.js";
import { laminate } from "./laminate.js";
import { Layer, layerFaults } from "./layer.js";
import type { LayerStack } from "./plywood.js";

type Entry = "11" | "22" | "12" | "66" | "16" | "26";

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
