/** A sheet from its layers, about any reference plane (Jones, Mechanics of Composite Materials, ch. 4). */
import { type Laminate, type Layer, laminate, layerFaults } from "../../material/index.js";
import type { Pressure } from "../../quantity/index.js";
import type { Sheet } from "./sheet.js";

/** One layer with its own grain, and how it shears through its thickness. */
export interface SheetLayer extends Layer {
  /** Shear modulus through the thickness on planes along the grain, any correction included. */
  readonly throughAlong: Pressure;
  /** The same across the grain: rolling shear. */
  readonly throughAcross: Pressure;
}

type Rows = Laminate["membrane"];

/**
 * Adds up the layers from the bottom face (-z) up.
 *
 * @param layers at least one
 * @param reference height of the reference plane above the bottom face, m; the middle when left out
 * @throws RangeError when a layer is nothing or gives way: thickness, moduli or Poisson's ratio
 */
export function sheetOfLayers(layers: readonly SheetLayer[], reference?: number): Sheet {
  const faults = [...layerFaults(layers), ...throughFaults(layers)];
  if (faults.length > 0) throw new RangeError(`sheet: ${faults.join("; ")}`);
  const { thickness, membrane, coupling, bending } = laminate(layers);
  const bottom = -(reference ?? thickness / 2);
  const middle = bottom + thickness / 2;
  const limit = 1e-12 * thickness * membrane[0][0];
  const shifted = combined([coupling, membrane], [1, middle]);
  return {
    membrane,
    coupling: eachOf((i, j) => (Math.abs(shifted[i]![j]!) < limit ? 0 : shifted[i]![j]!)),
    bending: combined([bending, coupling, membrane], [1, 2 * middle, middle ** 2]),
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

function combined(matrices: readonly Rows[], weights: readonly number[]): Rows {
  return eachOf((i, j) => matrices.reduce((sum, matrix, k) => sum + weights[k]! * matrix[i]![j]!, 0));
}

function eachOf(entry: (row: number, column: number) => number): Rows {
  const row = (i: number): [number, number, number] => [entry(i, 0), entry(i, 1), entry(i, 2)];
  return [row(0), row(1), row(2)];
}
