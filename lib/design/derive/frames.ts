/** Where flat pieces lie in space. */
import { type Vector3, vector3 } from "../../algebra/matrix3.js";
import type { Point2 } from "../../shape/index.js";
import type { PanelPart } from "../parts.js";
import type { Box, Face } from "../place.js";
import { type Axis, faceAxes } from "./axes.js";

/** A plane in the case with its own axes: across, up, and outwards from a panel's inside. */
export interface PieceFrame {
  /** Where its own 0, 0 is, on the inside of a sheet. */
  readonly origin: Vector3;
  /** Unit direction of x. */
  readonly x: Vector3;
  /** Unit direction of y. */
  readonly y: Vector3;
  /** Unit direction outwards, x cross y. */
  readonly out: Vector3;
}

const axisNames: readonly Axis[] = ["x", "y", "z"];

/** The three numbers of a point of the case. */
export function vectorOf(point: Readonly<Record<Axis, number>>): Vector3 {
  return vector3((axis) => point[axisNames[axis] ?? "x"]);
}

/** The unit vector along an axis of the case, or against it. */
function directionAlong(axis: Axis, reversed: boolean): Vector3 {
  const index = axisNames.indexOf(axis);
  return vector3((i) => (i === index ? (reversed ? -1 : 1) : 0));
}

/** Outwards from a face. */
export function outwards(face: Face): Vector3 {
  const { normal, end } = faceAxes[face];
  return directionAlong(normal, end === "low");
}

/** The frame of a box that lies in a face: its inside corner at the low end of across and up. */
export function frameOn(face: Face, { low, size }: Box): PieceFrame {
  const { u, v, normal, end } = faceAxes[face];
  const corner: Record<Axis, number> = { x: 0, y: 0, z: 0 };
  corner[u.axis] = low[u.axis] + (u.reversed ? size[u.axis] : 0);
  corner[v.axis] = low[v.axis] + (v.reversed ? size[v.axis] : 0);
  corner[normal] = low[normal] + (end === "low" ? size[normal] : 0);
  return {
    origin: vectorOf(corner),
    x: directionAlong(u.axis, u.reversed),
    y: directionAlong(v.axis, v.reversed),
    out: outwards(face),
  };
}

/** The frame of a piece of sheet: that of its face, or for a shelf its underside seen from above. */
export function frameOf({ face, box }: PanelPart): PieceFrame {
  return face ? frameOn(face, box) : frameOn("top", box);
}

/** The point of a frame so far across, up and outwards. */
export function pointIn({ origin, x, y, out }: PieceFrame, at: Point2, off: number): Vector3 {
  return vector3((i) => origin[i] + at.x * x[i] + at.y * y[i] + off * out[i]);
}
