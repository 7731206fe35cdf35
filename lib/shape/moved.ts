/** Shapes moved, scaled, turned and mirrored: each point goes where a map of the plane puts it. */

import { Refusal } from "../refusal.js";
import type { Point2 } from "./point.js";
import type { Shape } from "./shape.js";
import { reversed, type Side } from "./side.js";

/** A map of the plane that keeps circles round and leaves level what is level, or stands it upright. */
interface Similarity {
  /** Where a point goes. */
  readonly point: (at: Point2) => Point2;
  /** Where a direction goes, rad. */
  readonly direction: (angle: number) => number;
  /** What lengths are multiplied by. */
  readonly scale: number;
  /** Whether left and right change places. */
  readonly mirrors: boolean;
}

function mapped({ sides }: Shape, { point, direction, scale, mirrors }: Similarity): Shape {
  const moved = sides.map((side): Side => {
    const ends = { from: point(side.from), to: point(side.to) };
    if (side.kind === "line") return { kind: "line", ...ends };
    return {
      kind: "arc",
      ...ends,
      centre: point(side.centre),
      radius: scale * side.radius,
      start: direction(side.start),
      sweep: mirrors ? -side.sweep : side.sweep,
    };
  });
  return { sides: mirrors ? moved.map(reversed).reverse() : moved };
}

/** The shape moved by so much. */
export function moved(shape: Shape, by: Point2): Shape {
  return mapped(shape, {
    point: ({ x, y }) => ({ x: x + by.x, y: y + by.y }),
    direction: (angle) => angle,
    scale: 1,
    mirrors: false,
  });
}

/**
 * The shape made larger or smaller about a point that stays where it is.
 *
 * @throws Refusal when the factor is not positive
 */
export function scaled(shape: Shape, factor: number, about: Point2): Shape {
  if (!(factor > 0)) throw new Refusal(`scaled shape: factor must be positive, got ${factor}`);
  return mapped(shape, {
    point: ({ x, y }) => ({ x: about.x + factor * (x - about.x), y: about.y + factor * (y - about.y) }),
    direction: (angle) => angle,
    scale: factor,
    mirrors: false,
  });
}

/**
 * The shape turned to the left about a point.
 *
 * @param quarters how many quarter turns, a whole number
 * @throws Refusal when the number is not whole
 */
export function turned(shape: Shape, quarters: number, about: Point2): Shape {
  if (!Number.isInteger(quarters))
    throw new Refusal(`turned shape: quarter turns must be a whole number, got ${quarters}`);
  const ways = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ] as const;
  const [cos, sin] = ways[((quarters % 4) + 4) % 4] ?? ways[0];
  return mapped(shape, {
    point: ({ x, y }) => ({
      x: about.x + cos * (x - about.x) - sin * (y - about.y),
      y: about.y + sin * (x - about.x) + cos * (y - about.y),
    }),
    direction: (angle) => angle + (quarters * Math.PI) / 2,
    scale: 1,
    mirrors: false,
  });
}

/** The shape with left and right changed about an upright line, its path still running the same way round. */
export function mirrored(shape: Shape, x: number): Shape {
  return mapped(shape, {
    point: (at) => ({ x: 2 * x - at.x, y: at.y }),
    direction: (angle) => Math.PI - angle,
    scale: 1,
    mirrors: true,
  });
}
