/** How a face's own axes (u to the right, v up, seen from outside) lie in the section's x, y, z. */
import type { EdgeName, Face, PanelSide } from "../place.js";
import { edgeNames, facesAt } from "../place.js";

/** A direction of a section. */
export type Axis = "x" | "y" | "z";

/** One axis of a face: the section axis it lies along, and whether it points to that axis' low end. */
export interface FaceDirection {
  /** The axis of the section. */
  readonly axis: Axis;
  /** Whether it points to the low end of that axis. */
  readonly reversed: boolean;
}

/** Where a face is and how its axes lie. */
export interface FaceAxes {
  /** The axis it is square to, and whether it closes the low or the high end of it. */
  readonly normal: Axis;
  /** The end of that axis which the face closes. */
  readonly end: "low" | "high";
  /** To the right, seen from outside. */
  readonly u: FaceDirection;
  /** Up, seen from outside. */
  readonly v: FaceDirection;
}

const along = (axis: Axis): FaceDirection => ({ axis, reversed: false });
const against = (axis: Axis): FaceDirection => ({ axis, reversed: true });

/** The axes of each face. */
export const faceAxes: Readonly<Record<Face, FaceAxes>> = {
  front: { normal: "y", end: "low", u: along("x"), v: along("z") },
  back: { normal: "y", end: "high", u: against("x"), v: along("z") },
  left: { normal: "x", end: "low", u: against("y"), v: along("z") },
  right: { normal: "x", end: "high", u: along("y"), v: along("z") },
  top: { normal: "z", end: "high", u: along("x"), v: along("y") },
  bottom: { normal: "z", end: "low", u: against("x"), v: along("y") },
};

const ends: Readonly<Record<Axis, Readonly<Record<"low" | "high", Face>>>> = {
  x: { low: "left", high: "right" },
  y: { low: "front", high: "back" },
  z: { low: "bottom", high: "top" },
};

/** The face that meets a face at one of its sides. */
export function neighbour(face: Face, side: PanelSide): Face {
  const { u, v } = faceAxes[face];
  const { axis, reversed } = side === "left" || side === "right" ? u : v;
  const atStart = side === "left" || side === "bottom";
  return ends[axis][atStart === reversed ? "high" : "low"];
}

/** The edge between two faces that meet. */
export function edgeBetween(one: Face, other: Face): EdgeName {
  const edge = edgeNames.find((name) => name === `${one}-${other}` || name === `${other}-${one}`);
  if (!edge) throw new RangeError(`case edges: ${one} and ${other} do not meet`);
  return edge;
}

/** The axis that an edge runs along. */
export function edgeAxis(edge: EdgeName): Axis {
  const normals = facesAt(edge).map((face) => faceAxes[face].normal);
  return (["x", "y", "z"] as const).find((axis) => !normals.includes(axis)) as Axis;
}
