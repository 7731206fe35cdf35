/** Strains of a bent panel, taken where they are most exact and averaged at the nodes. */
import {
  dofsPerNode,
  nodePlaces,
  nodesPerElement,
  type Shapes,
  type Sheet,
  shapesAt,
  slopesOf,
  squareFour,
  stretchAt,
} from "../element/index.js";
import { elementCount, elementNodes, elementPlaces, type QuadMesh, type Spot } from "../mesh/index.js";
import type { PanelStructure } from "./panel-structure.js";

/** Stretch ex, ey, gxy of the reference plane, and its change with height kx, ky, kxy (1/m). */
export type Strains = readonly [number, number, number, number, number, number];

/** What strains are told from: a mesh, what its elements are made of, and how its nodes have moved. */
export interface BentMesh {
  /** The mesh and what its elements are made of. */
  readonly structure: Pick<PanelStructure, "mesh" | "sheets">;
  /** u, v, w, bx, by of each node. */
  readonly displacement: Float64Array;
}

/** Strains at the nodes, each make-up by itself: they jump where the make-up changes. */
export interface StrainField {
  /** The make-up. */
  readonly sheet: Sheet;
  /** Six values a node. */
  readonly strains: Float64Array;
  /** 1 for each node that belongs to an element of this make-up. */
  readonly covers: Uint8Array;
}

const kinds = 6;
const places = squareFour.map(({ xi, eta }) => shapesAt(xi, eta));

/** Weights that carry the four places' values on to the nine nodes. */
const carried = nodePlaces.map(([xi, eta]) =>
  squareFour.map((place) => ((1 + xi / place.xi) * (1 + eta / place.eta)) / 4),
);

/** Strains of each make-up in the panel. */
export function strainFields(panel: BentMesh): readonly StrainField[] {
  const { sheets } = panel.structure;
  return [...new Set(sheets)].map((sheet) => strainField(panel, sheet));
}

function strainField(panel: BentMesh, sheet: Sheet): StrainField {
  const { mesh, sheets } = panel.structure;
  const strains = new Float64Array(kinds * mesh.x.length);
  const counts = new Float64Array(mesh.x.length);
  for (let element = 0; element < elementCount(mesh); element++) {
    if (sheets[element] !== sheet) continue;
    const own = elementStrains(panel, element);
    elementNodes(mesh, element).forEach((node, i) => {
      counts[node]! += 1;
      for (let kind = 0; kind < kinds; kind++)
        strains[kinds * node + kind]! += carried[i]!.reduce(
          (sum, weight, g) => sum + weight * own[g]![kind]!,
          0,
        );
    });
  }
  return {
    sheet,
    strains: strains.map((value, at) => value / (counts[Math.floor(at / kinds)]! || 1)),
    covers: Uint8Array.from(counts, (count) => (count > 0 ? 1 : 0)),
  };
}

/** Strains of one element at the four places where they are most exact. */
function elementStrains({ structure, displacement }: BentMesh, element: number): readonly Strains[] {
  return places.map((shapes) => {
    const strains = elementStrainsAt(structure.mesh, element, shapes, displacement);
    return [...strains(0, 1), ...strains(3, 4)];
  });
}

/** Strains at a node. */
export function strainsAt({ strains }: StrainField, node: number): Strains {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = strains.subarray(kinds * node, kinds * (node + 1));
  return [a, b, c, d, e, f];
}

/** Moments Mx, My, Mxy about the reference plane, N: positive where the +z face is pulled. */
export function momentsOf({ coupling, bending }: Sheet, strains: Strains): readonly [number, number, number] {
  const row = (i: 0 | 1 | 2): number =>
    [0, 1, 2].reduce((sum, j) => sum + coupling[i][j]! * strains[j]! + bending[i][j]! * strains[3 + j]!, 0);
  return [row(0), row(1), row(2)];
}

/** Strains ex, ey, gxy at a height over the reference plane. */
export function strainsAtHeight(strains: Strains, height: number): readonly [number, number, number] {
  return [
    strains[0] + height * strains[3],
    strains[1] + height * strains[4],
    strains[2] + height * strains[5],
  ];
}

/** Strains of one element where they are most exact, seen from a place. */
export function strainSamples(panel: BentMesh, element: number, [atX, atY]: Spot): readonly Sample[] {
  const { x, y } = elementPlaces(panel.structure.mesh, element);
  return elementStrains(panel, element).map((values, g) => {
    const { value } = places[g]!;
    const sum = (at: Float64Array): number =>
      value.reduce((total, weight, node) => total + weight * at[node]!, 0);
    return { dx: sum(x) - atX, dy: sum(y) - atY, values };
  });
}

/**
 * Strains ex, ey, gxy of the pair of degrees of freedom that move along x and along y: 0 and 1, or 3 and 4 for
 * turning.
 */
export type PairStrains = (first: number, second: number) => [number, number, number];

/**
 * Strains at one place of an element.
 *
 * @param shapes of the place
 * @param displacement of the whole mesh
 */
export function elementStrainsAt(
  mesh: QuadMesh,
  element: number,
  shapes: Shapes,
  displacement: Float64Array,
): PairStrains {
  const { x, y } = elementPlaces(mesh, element);
  const nodes = elementNodes(mesh, element);
  const { alongX, alongY } = slopesOf(shapes, stretchAt(shapes, x, y));
  const slope = (along: Float64Array, dof: number): number => {
    let sum = 0;
    for (let i = 0; i < nodesPerElement; i++) sum += along[i]! * displacement[dofsPerNode * nodes[i]! + dof]!;
    return sum;
  };
  return (first, second) => [
    slope(alongX, first),
    slope(alongY, second),
    slope(alongY, first) + slope(alongX, second),
  ];
}

/** A value at a distance from the place. */
export interface Sample {
  /** From the place, m. */
  readonly dx: number;
  /** From the place along y, m. */
  readonly dy: number;
  /** What is known there. */
  readonly values: readonly number[];
}

/**
 * Values at the place itself, by weighted least squares (O. C. Zienkiewicz, J. Z. Zhu, The superconvergent patch
 * recovery, Int. J. Numer. Methods Eng. 33, 1992, with weights that fade with the distance).
 *
 * @param samples around the place, more than six
 * @param reach distance at which a sample counts little, m
 * @returns one value for each of the samples' values
 */
export function fittedHere(samples: readonly Sample[], reach: number): readonly number[] {
  const terms = ({ dx, dy }: Sample): readonly number[] => {
    const [x, y] = [dx / reach, dy / reach];
    return [1, x, y, x * x, x * y, y * y];
  };
  const count = samples[0]!.values.length;
  const rows = Array.from({ length: 6 }, () => new Array<number>(6 + count).fill(0));
  for (const sample of samples) {
    const basis = terms(sample);
    const weight = Math.exp(-(basis[3]! + basis[5]!));
    const all = [...basis, ...sample.values];
    basis.forEach((a, i) => {
      all.forEach((b, j) => {
        rows[i]![j]! += weight * a * b;
      });
    });
  }
  return solved(rows).slice(0, count);
}

/** The first unknown for each right-hand side, by elimination with the largest pivot. */
function solved(rows: number[][]): readonly number[] {
  const size = rows.length;
  for (let column = size - 1; column >= 0; column--) {
    const largest = rows
      .slice(0, column + 1)
      .reduce((best, row, i) => (Math.abs(row[column]!) > Math.abs(rows[best]![column]!) ? i : best), 0);
    [rows[column], rows[largest]] = [rows[largest]!, rows[column]!];
    const pivot = rows[column]!;
    for (let row = 0; row < column; row++) {
      const share = rows[row]![column]! / pivot[column]!;
      pivot.forEach((value, j) => {
        rows[row]![j]! -= share * value;
      });
    }
  }
  return rows[0]!.slice(size).map((value) => value / rows[0]![0]!);
}
