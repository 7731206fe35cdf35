/** Layers glued together, bonded as one: their stiffness in bending. */

import { inverse, type Matrix3, product, weightedSum } from "../algebra/matrix3.js";
import { Angle, Density, type Kind, Length, Pressure, Ratio, recordOf } from "../quantity/index.js";
import type { SheetMaterial } from "./sheet-material.js";
import { elasticRatios, modulusAlong, species, type VeneerSpecies, woodDensity } from "./species.js";

/** One layer, with its elastic constants along and across its own grain. */
export interface Layer {
  /** The thickness of the layer. */
  readonly thickness: Length;
  /** Grain from the panel's x axis: 0 along the face grain, 90 degrees for a crossband. */
  readonly grain: Angle;
  /** E1, modulus along the grain. */
  readonly modulusAlong: Pressure;
  /** E2, modulus across the grain. */
  readonly modulusAcross: Pressure;
  /** G12, shear modulus in the plane of the layer. */
  readonly shearModulus: Pressure;
  /** nu12, narrowing across when pulled along the grain. */
  readonly poissonRatio: Ratio;
  /** The density of the layer. */
  readonly density: Density;
}

/** A layer as text. */
export const Layer: Kind<Layer> = recordOf<Layer>("layer", {
  thickness: Length,
  grain: Angle,
  modulusAlong: Pressure,
  modulusAcross: Pressure,
  shearModulus: Pressure,
  poissonRatio: Ratio,
  density: Density,
});

/** Moisture of the tabulated species. */
const tabulatedMoisture = Ratio.si(0.12);

/**
 * A peeled veneer of a tabulated species, at 12 % moisture.
 *
 * @param name species
 * @param thickness of the veneer
 * @param grain from the panel's x axis
 */
export function veneerLayer(name: VeneerSpecies, thickness: Length, grain: Angle): Layer {
  const { tangential, shearTangential, poisson } = elasticRatios[name];
  const { bendingModulus, specificGravity } = species[name];
  const along = modulusAlong({ bendingModulus: bendingModulus.value });
  return {
    thickness,
    grain,
    modulusAlong: along,
    modulusAcross: Pressure.si(along * tangential.value),
    shearModulus: Pressure.si(along * shearTangential.value),
    poissonRatio: poisson.value,
    density: woodDensity({ specificGravity: specificGravity.value, moisture: tabulatedMoisture }),
  };
}

/**
 * A bonded sheet that is alike in every direction, such as a laminate or metal facing.
 *
 * @param material modulus, Poisson's ratio and density
 * @param thickness of the sheet
 */
export function sheetLayer({ modulus, poissonRatio, density }: SheetMaterial, thickness: Length): Layer {
  return {
    thickness,
    grain: Angle.si(0),
    modulusAlong: modulus,
    modulusAcross: modulus,
    shearModulus: Pressure.si(modulus / (2 * (1 + poissonRatio))),
    poissonRatio,
    density,
  };
}

/**
 * What is wrong with a stack of layers.
 *
 * @returns reasons with the number of the layer, counted from 1 at the bottom
 */
export function layerFaults(layers: readonly Layer[]): string[] {
  if (layers.length === 0) return ["layers must hold at least one layer"];
  return layers.flatMap((layer, i) => {
    const wrong = (["thickness", "modulusAlong", "modulusAcross", "shearModulus"] as const)
      .filter((field) => !(layer[field] > 0))
      .map((field) => `${field} of layer ${i + 1} must be positive, got ${layer[field]}`);
    const { poissonRatio, modulusAlong: along, modulusAcross: across } = layer;
    const sound = poissonRatio >= 0 && poissonRatio ** 2 * across < along;
    return sound
      ? wrong
      : [...wrong, `poissonRatio of layer ${i + 1} does not fit its moduli, got ${poissonRatio}`];
  });
}

/** Stiffnesses of a bonded stack about its mid-plane; rows and columns x, y, shear. */
export interface Laminate {
  /** m */
  readonly thickness: number;
  /** A, in-plane, N/m. */
  readonly membrane: Matrix3;
  /** B, between stretching and bending, N. */
  readonly coupling: Matrix3;
  /** D, bending with the mid-plane kept from stretching, N m. */
  readonly bending: Matrix3;
}

/**
 * Adds up the layers, from the bottom face up.
 *
 * @param layers sound layers, at least one
 */
export function laminate(layers: readonly Layer[]): Laminate {
  const thickness = layers.reduce((sum, layer) => sum + layer.thickness, 0);
  const moment = (power: 1 | 2 | 3): Matrix3 => {
    let low = -thickness / 2;
    return weightedSum(
      layers.map((layer) => {
        const high = low + layer.thickness;
        const weight = (high ** power - low ** power) / power;
        low = high;
        return { matrix: reducedStiffness(layer), weight };
      }),
    );
  };
  return { thickness, membrane: moment(1), coupling: moment(2), bending: moment(3) };
}

/**
 * Bending stiffness of a panel whose edges may slide in its plane: D* = D - B A^-1 B, N m.
 *
 * @param stack the laminate
 */
export function freeBending({ membrane, coupling, bending }: Laminate): Matrix3 {
  const relief = product(product(coupling, inverse(membrane)), coupling);
  return weightedSum([
    { matrix: bending, weight: 1 },
    { matrix: relief, weight: -1 },
  ]);
}

/** Stress over strain of one layer in the panel's axes, Jones eq. 2.84 (Q-bar), Pa. */
function reducedStiffness(layer: Layer): Matrix3 {
  const { modulusAlong, modulusAcross, poissonRatio, shearModulus } = layer;
  const share = 1 - (poissonRatio ** 2 * modulusAcross) / modulusAlong;
  const along = modulusAlong / share;
  const across = modulusAcross / share;
  const both = poissonRatio * across;
  const [c, s] = [Math.cos(layer.grain), Math.sin(layer.grain)];
  const [c2, s2, cs] = [c * c, s * s, c * s];
  const mixed = both + 2 * shearModulus;
  const xx = along * c2 * c2 + 2 * mixed * c2 * s2 + across * s2 * s2;
  const yy = along * s2 * s2 + 2 * mixed * c2 * s2 + across * c2 * c2;
  const xy = (along + across - 4 * shearModulus) * c2 * s2 + both * (c2 * c2 + s2 * s2);
  const shear = (along + across - 2 * both) * c2 * s2 + shearModulus * (c2 - s2) ** 2;
  const xs = (along - mixed) * c2 * cs + (mixed - across) * s2 * cs;
  const ys = (along - mixed) * s2 * cs + (mixed - across) * c2 * cs;
  return [
    [xx, xy, xs],
    [xy, yy, ys],
    [xs, ys, shear],
  ];
}
