/** Faces, axes and places of a box, as the case names them. */
import { at } from "../../algebra/lists.js";
import type { Face, Point } from "../../design/index.js";
import { type BoxSeam, type BoxSpot, type FaceName, spaceDofs } from "../../fem/index.js";

/** Which face of the box each face is, and whether its u runs against the box's axis. */
export const boxFaces: Readonly<Record<Face, readonly [FaceName, boolean]>> = {
  front: ["y0", false],
  back: ["y1", true],
  left: ["x0", true],
  right: ["x1", false],
  top: ["top", false],
  bottom: ["bottom", true],
};

const faceWords: Readonly<Record<FaceName, string>> = {
  y0: "front",
  y1: "back",
  x0: "left",
  x1: "right",
  top: "top",
  bottom: "bottom",
};

/** A seam in the builder's words: "lower, bottom to front". */
export function seamName(section: string, { faces: [one, other] }: Pick<BoxSeam, "faces">): string {
  return `${section}, ${faceWords[one]} to ${faceWords[other]}`;
}

/** An axis of a box. */
export type Axis = 0 | 1 | 2;

/** A place or a movement of which each coordinate is worked out by itself. */
export function perAxis(coordinate: (axis: Axis) => number): BoxSpot {
  return [coordinate(0), coordinate(1), coordinate(2)];
}

/** A place moved by another. */
export function plus(a: BoxSpot, b: BoxSpot): BoxSpot {
  return perAxis((axis) => a[axis] + b[axis]);
}

/** The way from one place to another. */
export function minus(a: BoxSpot, b: BoxSpot): BoxSpot {
  return perAxis((axis) => a[axis] - b[axis]);
}

/** A place with one or more of its coordinates set to others. */
export function placed(place: BoxSpot, ...coordinates: readonly (readonly [Axis, number])[]): BoxSpot {
  const others = new Map<number, number>(coordinates);
  return perAxis((axis) => others.get(axis) ?? place[axis]);
}

/** A point of the design as numbers. */
export function spotOf({ x, y, z }: Point): BoxSpot {
  return [x, y, z];
}

/** The first three freedoms of a node: its movement along x, y and z, or the force on it. */
export function atNode(values: Float64Array, node: number): BoxSpot {
  return perAxis((axis) => at(values, spaceDofs * node + axis));
}

/** The last three freedoms of a node: its turns about x, y and z, or the moment on it. */
export function turnsAtNode(values: Float64Array, node: number): BoxSpot {
  return perAxis((axis) => at(values, spaceDofs * node + 3 + axis));
}
