/** A prism whose axes lie along those of space, ready to be compared with others. */
import { type Axis, crossProduct, type Vector3, vector3 } from "../../algebra/matrix3.js";
import { Refusal } from "../../refusal.js";
import type { Point2, Shape } from "../../shape/index.js";
import { circleOf } from "../../shape/index.js";
import type { Solid } from "../solid.js";
import { type Region, regionOf, ringOf } from "./region.js";

/** A solid with the box round it and its region in the plane square to its normal. */
export interface Placed<S extends Solid = Solid> {
  /** The solid. */
  readonly solid: S;
  /** Lowest corner of the box round it. */
  readonly low: Vector3;
  /** Highest corner of the box round it. */
  readonly high: Vector3;
  /** The axis along its normal. */
  readonly normal: Axis;
  /** Its outline and holes in the plane of the next two axes, in their order: y, z for x; z, x for y; x, y for z. */
  readonly region: () => Region;
  /** The circle that it is, in that plane. */
  readonly circle?: { readonly centre: Point2; readonly radius: number };
}

/** The axis after another: y for x. */
export function after(axis: Axis): Axis {
  return ((axis + 1) % 3) as Axis;
}

/** The axis after that: z for x. */
export function before(axis: Axis): Axis {
  return ((axis + 2) % 3) as Axis;
}

/** How far a unit vector may lean off an axis. */
const lean = 1e-9;

function axisOf(vector: Vector3): Axis | undefined {
  const axis = ([0, 1, 2] as const).find((i) => Math.abs(Math.abs(vector[i]) - 1) < lean);
  return axis;
}

const known = new WeakMap<Solid, Placed>();

/**
 * A solid among others, made once for each.
 *
 * @throws Refusal when its axes do not lie along those of space
 */
export function placed<S extends Solid>(solid: S): Placed<S> {
  const found = (known.get(solid) as Placed<S> | undefined) ?? newPlaced(solid);
  known.set(solid, found);
  return found;
}

function newPlaced<S extends Solid>(solid: S): Placed<S> {
  const { place, depth, outline, holes } = solid;
  const out = crossProduct(place.x, place.y);
  const normal = axisOf(out);
  if (normal === undefined || axisOf(place.x) === undefined)
    throw new Refusal(`overlap: ${solid.key} must lie along the axes`, {
      measure: `a place of ${solid.key} along the axes`,
      how: "turn it by quarters",
    });
  const toSpace = ({ x, y }: Point2): Vector3 =>
    vector3((i) => place.origin[i] + x * place.x[i] + y * place.y[i]);
  const [u, v] = [after(normal), before(normal)];
  const flat = (point: Point2): Point2 => {
    const at = toSpace(point);
    return { x: at[u], y: at[v] };
  };
  const ends = outline.sides.map(({ from }) => flat(from));
  const [xs, ys] = [ends.map(({ x }) => x), ends.map(({ y }) => y)];
  const base = place.origin[normal];
  const far = base + depth * (out[normal] > 0 ? 1 : -1);
  const bounds: Record<Axis, readonly [number, number]> = { 0: [0, 0], 1: [0, 0], 2: [0, 0] };
  bounds[normal] = [Math.min(base, far), Math.max(base, far)];
  bounds[u] = [Math.min(...xs), Math.max(...xs)];
  bounds[v] = [Math.min(...ys), Math.max(...ys)];
  const round = circleOf(outline);
  let region: Region | undefined;
  return {
    solid,
    low: vector3((i) => bounds[i][0]),
    high: vector3((i) => bounds[i][1]),
    normal,
    region: () => {
      region ??= regionOf([outline, ...holes].map((shape: Shape) => ringOf(shape).map(flat)));
      return region;
    },
    ...(round && holes.length === 0 ? { circle: { centre: flat(round.centre), radius: round.radius } } : {}),
  };
}

/** The box round a solid along the axes. */
export type SolidReach = Pick<Placed, "low" | "high">;

/**
 * How far a solid reaches along each axis.
 *
 * @throws Refusal when its axes do not lie along those of space
 */
export function reachOfSolid(solid: Solid): SolidReach {
  const { low, high } = placed(solid);
  return { low, high };
}
