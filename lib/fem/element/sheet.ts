/**
 * What a sheet resists and weighs, per unit of its area, about its own reference plane: by itself, from its layers
 * (Jones, Mechanics of Composite Materials, ch. 4), or with a batten glued on.
 */

import { matrix3, vector3, weightedSum } from "../../algebra/matrix3.js";
import { type Laminate, type Layer, laminate, layerFaults } from "../../material/index.js";
import type { Pressure } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";

/** Stiffness and mass of a sheet; rows and columns x, y, shear; +z is one face. */
export interface Sheet {
  /** A, N/m. */
  readonly membrane: Laminate["membrane"];
  /** B, N; all zero when the reference plane is the neutral one. */
  readonly coupling: Laminate["coupling"];
  /** D, N m. */
  readonly bending: Laminate["bending"];
  /** Stiffness against shear through the thickness on x, y and both, N/m. */
  readonly shear: readonly [xx: number, xy: number, yy: number];
  /** Mass and its first and second moments about the reference plane: kg/m2, kg/m, kg. */
  readonly mass: readonly [plain: number, first: number, second: number];
  /** The +z and -z faces, m from the reference plane. */
  readonly faces: readonly [top: number, bottom: number];
}

/** How a sheet's stiffness grows with something, from the sheets a step before and behind, so far apart; without mass. */
export function sheetSlope(before: Sheet, behind: Sheet, apart: number): Sheet {
  const matrix = (of: (sheet: Sheet) => Laminate["bending"]): Laminate["bending"] =>
    matrix3((i, j) => (of(behind)[i][j] - of(before)[i][j]) / apart);
  return {
    membrane: matrix(({ membrane }) => membrane),
    coupling: matrix(({ coupling }) => coupling),
    bending: matrix(({ bending }) => bending),
    shear: vector3((k) => (behind.shear[k] - before.shear[k]) / apart),
    mass: [0, 0, 0],
    faces: before.faces,
  };
}

/** Whether stretching and bending act on each other. */
export function isCoupled({ coupling }: Sheet): boolean {
  return coupling.some((row) => row.some((value) => value !== 0));
}

/** One layer with its own grain, and how it shears through its thickness. */
export interface SheetLayer extends Layer {
  /** Shear modulus through the thickness on planes along the grain, any correction included. */
  readonly throughAlong: Pressure;
  /** The same across the grain: rolling shear. */
  readonly throughAcross: Pressure;
}

/**
 * Adds up the layers from the bottom face (-z) up.
 *
 * @param layers at least one
 * @param reference height of the reference plane above the bottom face, m; the middle when left out
 * @throws Refusal when a layer is nothing or gives way: thickness, moduli or Poisson's ratio
 */
export function sheetOfLayers(layers: readonly SheetLayer[], reference?: number): Sheet {
  const faults = [...layerFaults(layers), ...throughFaults(layers)];
  if (faults.length > 0) throw new Refusal(`sheet: ${faults.join("; ")}`);
  const { thickness, membrane, coupling, bending } = laminate(layers);
  const bottom = -(reference ?? thickness / 2);
  const middle = bottom + thickness / 2;
  const limit = 1e-12 * thickness * membrane[0][0];
  const shifted = weightedSum([
    { matrix: coupling, weight: 1 },
    { matrix: membrane, weight: middle },
  ]);
  return {
    membrane,
    coupling: matrix3((i, j) => (Math.abs(shifted[i][j]) < limit ? 0 : shifted[i][j])),
    bending: weightedSum([
      { matrix: bending, weight: 1 },
      { matrix: coupling, weight: 2 * middle },
      { matrix: membrane, weight: middle ** 2 },
    ]),
    shear: throughShear(layers),
    mass: massMoments(layers, bottom),
    faces: [bottom + thickness, bottom],
  };
}

function throughFaults(layers: readonly SheetLayer[]): string[] {
  return layers.flatMap((layer, i) =>
    (["throughAlong", "throughAcross"] as const)
      .filter((field) => !(layer[field] > 0))
      .map((field) => `${field} of layer ${i + 1} must be positive, got ${layer[field]}`),
  );
}

function throughShear(layers: readonly SheetLayer[]): Sheet["shear"] {
  const shear: [number, number, number] = [0, 0, 0];
  for (const { thickness, grain, throughAlong, throughAcross } of layers) {
    const [c, s] = [Math.cos(grain), Math.sin(grain)];
    shear[0] += thickness * (throughAlong * c * c + throughAcross * s * s);
    shear[1] += thickness * (throughAlong - throughAcross) * c * s;
    shear[2] += thickness * (throughAlong * s * s + throughAcross * c * c);
  }
  return shear;
}

function massMoments(layers: readonly SheetLayer[], bottom: number): Sheet["mass"] {
  const mass: [number, number, number] = [0, 0, 0];
  let low = bottom;
  for (const { thickness, density } of layers) {
    const high = low + thickness;
    mass[0] += density * thickness;
    mass[1] += (density * (high ** 2 - low ** 2)) / 2;
    mass[2] += (density * (high ** 3 - low ** 3)) / 3;
    low = high;
  }
  return mass;
}

/** A strip of wood glued or fastened on a sheet. */
export interface Batten {
  /** Axis of the panel it runs along. */
  readonly along: "x" | "y";
  /** How far it stands off the sheet, m. */
  readonly height: number;
  /** Modulus along it, Pa. */
  readonly modulus: number;
  /** Modulus across it, Pa; nothing where left out, as of a narrow strip. */
  readonly across?: number;
  /** Share of it that works together with the sheet: 1 glued, as where left out, less where it slips on fasteners. */
  readonly share?: number;
  /** Share of its twisting stiffness as a strip of plate that it has; all where left out. */
  readonly twist?: number;
  /** The side that it lies on; +z where left out. */
  readonly side?: 1 | -1;
  /** In its plane and through its height, Pa. */
  readonly shearModulus: number;
  /** kg/m3 */
  readonly density: number;
}

/**
 * A sheet with a batten on it, about the sheet's own reference plane. As a strip of plate the batten twists like a
 * flat bar, which is too stiff for one higher than wide unless its share of that is told.
 *
 * @param sheet bare
 * @param batten on one of its sides
 * @throws Refusal when the batten is nothing
 */
export function withBatten(sheet: Sheet, batten: Batten): Sheet {
  const { height, modulus, shearModulus, density, along } = batten;
  if (!(height > 0 && modulus > 0 && shearModulus > 0))
    throw new Refusal(
      `batten: height and moduli must be positive, got ${height} m, ${modulus} Pa, ${shearModulus} Pa`,
    );
  const { across = 0, share = 1, twist = 1, side = 1 } = batten;
  const low = side === 1 ? sheet.faces[0] : sheet.faces[1] - height;
  const high = low + height;
  const moments = [height, (high ** 2 - low ** 2) / 2, (high ** 3 - low ** 3) / 3] as const;
  const axis = along === "x" ? 0 : 1;
  // What it does by itself, about its own middle, and what it does together with the sheet.
  const own = height ** 3 / 12;
  const stiffened = (matrix: Sheet["bending"], together: number, alone: number): Sheet["bending"] =>
    matrix3((i, j) => {
      if (i !== j) return matrix[i][j];
      const added = i === axis ? modulus : i === 2 ? shearModulus : across;
      return matrix[i][j] + added * (share * together + (i === 2 ? twist : 1) * alone);
    });
  const through = shearModulus * height;
  return {
    membrane: stiffened(sheet.membrane, moments[0], 0),
    coupling: stiffened(sheet.coupling, moments[1], 0),
    bending: stiffened(sheet.bending, moments[2] - own, own),
    shear: [sheet.shear[0] + through, sheet.shear[1], sheet.shear[2] + through],
    mass: vector3((power) => sheet.mass[power] + density * moments[power]),
    faces: side === 1 ? [high, sheet.faces[1]] : [sheet.faces[0], low],
  };
}
