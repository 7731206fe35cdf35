/** Strains of a bent panel, taken where they are most exact and averaged at the nodes. */

import { solveSquare } from "../../algebra/linear-systems.js";
import { add, at as entry, sumOf } from "../../algebra/lists.js";
import { memoize } from "../../kept/index.js";
import type { Point2 } from "../../shape/index.js";
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
import { elementCount, elementNodes, elementPlaces, type QuadMesh } from "../mesh/index.js";
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
    const nodes = elementNodes(mesh, element);
    for (let i = 0; i < nodes.length; i++) {
      const node = entry(nodes, i);
      add(counts, node, 1);
      for (let g = 0; g < own.length; g++) {
        const weight = entry(entry(carried, i), g);
        for (let kind = 0; kind < kinds; kind++)
          add(strains, kinds * node + kind, weight * entry(entry(own, g), kind));
      }
    }
  }
  return {
    sheet,
    strains: strains.map((value, at) => value / (entry(counts, Math.floor(at / kinds)) || 1)),
    covers: Uint8Array.from(counts, (count) => (count > 0 ? 1 : 0)),
  };
}

/** Strains of one element at the four places where they are most exact, worked out once for all who ask. */
const elementStrains: (panel: BentMesh, element: number) => readonly Strains[] = memoize(
  ({ structure: { mesh }, displacement }: BentMesh, element: number) =>
    places.map((shapes): Strains => {
      const strains = elementStrainsAt(mesh, element, shapes, displacement);
      return [...strains(0, 1), ...strains(3, 4)];
    }),
);

/** Strains at a node. */
export function strainsAt({ strains }: StrainField, node: number): Strains {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = strains.subarray(kinds * node, kinds * (node + 1));
  return [a, b, c, d, e, f];
}

/** Moments Mx, My, Mxy about the reference plane, N: positive where the +z face is pulled. */
export function momentsOf({ coupling, bending }: Sheet, strains: Strains): readonly [number, number, number] {
  const row = (i: 0 | 1 | 2): number =>
    [0, 1, 2].reduce(
      (sum, j) =>
        sum + entry(coupling[i], j) * entry(strains, j) + entry(bending[i], j) * entry(strains, 3 + j),
      0,
    );
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
export function strainSamples(
  panel: BentMesh,
  element: number,
  { x: atX, y: atY }: Point2,
): readonly Sample[] {
  const { x, y } = elementPlaces(panel.structure.mesh, element);
  return elementStrains(panel, element).map((values, g) => {
    const { value } = entry(places, g);
    const sum = (at: Float64Array): number =>
      value.reduce((total, weight, node) => total + weight * entry(at, node), 0);
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
  const bases = samples.map(terms);
  const weights = bases.map(([, , , xx = 0, , yy = 0]) => Math.exp(-(xx + yy)));
  const normal = new Float64Array(36);
  bases.forEach((basis, k) => {
    basis.forEach((a, i) => {
      basis.forEach((b, j) => {
        add(normal, 6 * i + j, entry(weights, k) * a * b);
      });
    });
  });
  // The parabola's value here is its first coefficient: one row of the inverse tells how much each sample counts.
  const row = solveSquare(normal, Float64Array.of(1, 0, 0, 0, 0, 0));
  const counts = bases.map(
    (basis, k) => entry(weights, k) * sumOf(basis.entries(), ([i, a]) => a * entry(row, i)),
  );
  return entry(samples, 0).values.map((_, kind) =>
    sumOf(samples.entries(), ([k, { values }]) => entry(counts, k) * entry(values, kind)),
  );
}
