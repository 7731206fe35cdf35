/** A strip of bonded layers as a beam. */
import { type Formula, formula } from "../formula.js";
import { type Kind, Length, listOf, PlateStiffness, Pressure, recordOf } from "../quantity/index.js";
import { cite } from "../source.js";

/** One layer of a strip. */
export interface BeamLayer {
  /** The thickness of the layer. */
  readonly thickness: Length;
  /** The modulus along the strip; zero for a layer that adds nothing, such as a crossband. */
  readonly modulus: Pressure;
}

/** A bonded strip. */
export interface BeamStack {
  /** The layers from the bottom face up. */
  readonly layers: readonly BeamLayer[];
}

/** The strip as one piece. */
export type CompositeBeam = {
  /** EI per width. */
  readonly stiffness: PlateStiffness;
  /** The total thickness of the strip. */
  readonly thickness: Length;
  /** Height of the neutral line above the bottom face. */
  readonly neutral: Length;
  /** Modulus of a solid strip that bends alike. */
  readonly modulus: Pressure;
};

const BeamLayer: Kind<BeamLayer> = recordOf<BeamLayer>("beam layer", {
  thickness: Length,
  modulus: Pressure,
});

/**
 * Bending stiffness of a strip of bonded layers by the parallel-axis rule.
 *
 * @example compositeBeam(compositeBeam.read({ layers: [{ thickness: "9 mm", modulus: "9000 MPa" },
 *   { thickness: "1 mm", modulus: "10000 MPa" }] })) // stiffness 770.1 N·m, thickness 10 mm, neutral 5.049 mm, modulus 9.241 GPa
 */
export const compositeBeam: Formula<BeamStack, CompositeBeam> = formula<BeamStack, CompositeBeam>({
  id: "composite.beam",
  title: "Bending stiffness of a bonded strip",
  equation: String.raw`EI=\sum_k E_k\left(\tfrac{t_k^3}{12}+t_k(z_k-\bar z)^2\right),\quad \bar z=\frac{\sum E_k t_k z_k}{\sum E_k t_k}`,
  inputs: {
    layers: {
      symbol: String.raw`\{t,E\}_k`,
      kind: listOf(BeamLayer),
      meaning: "layers from the bottom face up",
    },
  },
  result: {
    stiffness: { symbol: "EI", kind: PlateStiffness, meaning: "bending stiffness per width" },
    thickness: { symbol: "t", kind: Length, meaning: "total thickness" },
    neutral: { symbol: String.raw`\bar z`, kind: Length, meaning: "neutral line above the bottom face" },
    modulus: { symbol: "E_f", kind: Pressure, meaning: "bending modulus of the whole" },
  },
  source: [
    cite("strength-of-materials", "composite beams, transformed section"),
    cite("wood-handbook", "ch. 12, ply sum"),
  ],
  validity: "Fully bonded layers, narrow strip; a wide panel is a little stiffer, by Poisson's ratio.",
  refuse: ({ layers }) => [
    ...(layers.some(({ modulus }) => modulus > 0) ? [] : ["layers must hold at least one stiff layer"]),
    ...layers.flatMap(({ thickness, modulus }, i) =>
      thickness > 0 && modulus >= 0
        ? []
        : [`layer ${i + 1} must have a positive thickness and a modulus of at least zero`],
    ),
  ],
  compute: ({ layers }) => {
    const slices = placed(layers);
    const total = sum(slices, ({ stretch }) => stretch);
    const neutral = sum(slices, ({ stretch, height }) => stretch * height) / total;
    const stiffness = sum(slices, ({ stretch, thickness, height }) => {
      return stretch * (thickness ** 2 / 12 + (height - neutral) ** 2);
    });
    const thickness = sum(slices, (slice) => slice.thickness);
    return { stiffness, thickness, neutral, modulus: (12 * stiffness) / thickness ** 3 };
  },
});

interface Slice {
  /** The thickness of the layer, m. */
  readonly thickness: number;
  /** The height of its middle above the bottom face, m. */
  readonly height: number;
  /** E t, N/m */
  readonly stretch: number;
}

function placed(layers: readonly BeamLayer[]): Slice[] {
  let top = 0;
  return layers.map(({ thickness, modulus }) => {
    top += thickness;
    return { thickness, height: top - thickness / 2, stretch: modulus * thickness };
  });
}

function sum(slices: readonly Slice[], part: (slice: Slice) => number): number {
  return slices.reduce((total, slice) => total + part(slice), 0);
}
