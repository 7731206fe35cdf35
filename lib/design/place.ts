/**
 * Where things are. A section's axes: x to the right, y to the back, z up, seen from the front. The stacked
 * case has its origin at the outside lower left front corner of the lowest section, casters not counted.
 * A panel's axes are those of its face seen from outside: u to the right, v up. The top is seen from above
 * and the bottom from below, each with the front edge nearest the reader (v = towards the back).
 */
import type { Length } from "../quantity/index.js";

/** The six faces of a section. */
export type Face = "front" | "back" | "left" | "right" | "top" | "bottom";
/** The six faces, in the order that lists show them. */
export const faces: readonly Face[] = ["front", "back", "left", "right", "top", "bottom"];

/** The faces that stand upright. */
export const uprightFaces = ["front", "back", "left", "right"] as const;
/** A face that stands upright. */
export type UprightFace = (typeof uprightFaces)[number];

/** The twelve edges of a section, named by the two faces that meet. */
export type EdgeName =
  | "top-front"
  | "top-back"
  | "top-left"
  | "top-right"
  | "bottom-front"
  | "bottom-back"
  | "bottom-left"
  | "bottom-right"
  | "front-left"
  | "front-right"
  | "back-left"
  | "back-right";
/** The twelve edges, in the order that lists show them. */
export const edgeNames: readonly EdgeName[] = [
  "top-front",
  "top-back",
  "top-left",
  "top-right",
  "bottom-front",
  "bottom-back",
  "bottom-left",
  "bottom-right",
  "front-left",
  "front-right",
  "back-left",
  "back-right",
];

/** The two faces that meet at an edge. */
export function facesAt(edge: EdgeName): readonly [Face, Face] {
  return edge.split("-") as [Face, Face];
}

/** The four sides of a face seen from outside. */
export type PanelSide = "left" | "right" | "bottom" | "top";
/** The four sides of a face. */
export const panelSides: readonly PanelSide[] = ["left", "right", "bottom", "top"];

/** A corner of a panel seen from outside. */
export type PanelCorner = "bottom-left" | "bottom-right" | "top-left" | "top-right";
/** The four corners of a panel. */
export const panelCorners: readonly PanelCorner[] = ["bottom-left", "bottom-right", "top-left", "top-right"];

/** A point in the case. */
export interface Point {
  /** To the right, seen from the front. */
  readonly x: Length;
  /** To the back. */
  readonly y: Length;
  /** Up. */
  readonly z: Length;
}

/** A box along the axes. */
export interface Box {
  /** Lower left front corner. */
  readonly low: Point;
  /** Width, depth, height. */
  readonly size: Point;
}
