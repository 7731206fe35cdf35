/**
 * Classical lamination theory: R. M. Jones, Mechanics of Composite Materials, ch. 2 (layer) and 4 (laminate).
 * Strains vary in a straight line through the panel, layers do not slip, shear through the thickness is left out.
 */

import { inverse, type Matrix3, product, weightedSum } from "../algebra/matrix3.js";
import type { Layer } from "./layer.js";

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
