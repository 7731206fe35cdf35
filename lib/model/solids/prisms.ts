/** Prisms that stand on flat pieces. */
import { axes, unitVector } from "../../algebra/matrix3.js";
import type { Placement, Solid } from "../../assembly/index.js";
import { type Box, type PieceFrame, pointIn, vectorOf } from "../../design/index.js";
import { type Box2, circle, type Point2, rectangle, type Shape } from "../../shape/index.js";

/** The prism of an outline, without a key. */
export type Prism = Omit<Solid, "key">;

/** An outline of a frame's plane, pushed outwards from one distance to another. */
export function plate(
  frame: PieceFrame,
  outline: Shape,
  [from, to]: readonly [number, number],
  holes: readonly Shape[] = [],
): Prism {
  const place: Placement = { origin: pointIn(frame, { x: 0, y: 0 }, from), x: frame.x, y: frame.y };
  return { outline, holes, place, depth: to - from };
}

/** A rectangle of a frame's plane, pushed outwards. */
export function block(frame: PieceFrame, box: Box2, way: readonly [number, number]): Prism {
  return plate(frame, rectangle(box), way);
}

/** A round rod square to a frame's plane, between two distances outwards. */
export function rod(
  frame: PieceFrame,
  centre: Point2,
  diameter: number,
  way: readonly [number, number],
): Prism {
  return plate(frame, circle(centre, diameter / 2), way);
}

/** A box along the axes of the case. */
export function boxPrism({ low, size }: Box): Prism {
  return {
    outline: rectangle({ left: 0, bottom: 0, width: size.x, height: size.y }),
    holes: [],
    place: { origin: vectorOf(low), x: unitVector(axes[0]), y: unitVector(axes[1]) },
    depth: size.z,
  };
}
