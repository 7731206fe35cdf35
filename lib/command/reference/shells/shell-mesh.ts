/** Shells as facets: nine-node elements, each flat in its own plane, on corners that lie on the surface. */
import { nodePlaces } from "../../../fem/element/index.js";

/** x, y, z. */
export type Vector = readonly [x: number, y: number, z: number];

/** A patch of a surface by two parameters from 0 to 1, and how many elements it has along each. */
export interface SurfacePatch {
  readonly along: number;
  readonly across: number;
  readonly at: (s: number, t: number) => Vector;
  /** Whether nodes between corners lie on the surface too: only where that keeps every element flat. */
  readonly follows?: boolean;
}

/** A mesh of facets. */
export interface ShellMesh {
  readonly nodes: readonly Vector[];
  /** The parameters of each node. */
  readonly parameters: readonly (readonly [s: number, t: number])[];
  /** Nine nodes an element, in the element's order. */
  readonly elements: readonly (readonly number[])[];
}

/** Meshes a patch. */
export function shellMesh({ along, across, at, follows = false }: SurfacePatch): ShellMesh {
  const [columns, rows] = [2 * along + 1, 2 * across + 1];
  const number = (i: number, j: number): number => j * columns + i;
  const placed = (i: number, j: number): Vector => {
    if (follows) return at(i / (2 * along), j / (2 * across));
    const ends = (k: number): readonly number[] => (k % 2 === 0 ? [k, k] : [k - 1, k + 1]);
    const corners = ends(i).flatMap((a) => ends(j).map((b) => at(a / (2 * along), b / (2 * across))));
    return scaled(corners.reduce(plus), 1 / 4);
  };
  const every = Array.from(
    { length: columns * rows },
    (_, k) => [k % columns, Math.floor(k / columns)] as const,
  );
  return {
    nodes: every.map(([i, j]) => placed(i, j)),
    parameters: every.map(([i, j]) => [i / (2 * along), j / (2 * across)]),
    elements: Array.from({ length: along * across }, (_, e) => {
      const [i, j] = [2 * (e % along) + 1, 2 * Math.floor(e / along) + 1];
      return nodePlaces.map(([xi, eta]) => number(i + xi, j + eta));
    }),
  };
}

/** a + b */
export function plus(a: Vector, b: Vector): Vector {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

/** a times a number. */
export function scaled(a: Vector, by: number): Vector {
  return [by * a[0], by * a[1], by * a[2]];
}

/** Sum of products. */
export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** The vector across both. */
export function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** The same direction, 1 long. */
export function unit(a: Vector): Vector {
  return scaled(a, 1 / Math.hypot(...a));
}
