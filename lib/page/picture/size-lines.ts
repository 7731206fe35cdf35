/** Sizes of all that is drawn, beside it: width and depth along the nearest lower edges, height along an outer upright. */

import { type Vector3, vector3 } from "../../algebra/matrix3.js";
import type { Solid } from "../../assembly/index.js";
import type { Point2 } from "../../shape/index.js";
import { type Camera, projected } from "./camera.js";
import { type Prism, prismOf, reachAlong } from "./prism.js";

/** A size that is asked for. */
export interface SizeRequest {
  /** Along which axis of the case: x to the right, y to the back, z up. */
  readonly along: "x" | "y" | "z";
  /** What is written. */
  readonly text: string;
}

/** A size line. */
export interface SizeLine {
  /** Where it begins. */
  readonly from: Point2;
  /** Where it ends. */
  readonly to: Point2;
  /** What is written. */
  readonly text: string;
}

/** A size line stands off by this share of what is drawn. */
const offShare = 0.05;

/** How much room solids take along x, y and z of the case, m: the size over metal where metal is among them. */
export function sizeOfSolids(solids: readonly Solid[]): Vector3 {
  const [low, high] = reachOfPrisms(solids.map(prismOf));
  return vector3((i) => high[i] - low[i]);
}

/** The box around prisms: its low and its high corner. */
function reachOfPrisms(prisms: readonly Pick<Prism<Solid>, "box">[]): readonly [Vector3, Vector3] {
  const reaches = vector3((i) => i);
  const spans = reaches.map((axis) => {
    const direction = vector3((i) => (i === axis ? 1 : 0));
    const each = prisms.map(({ box }) => reachAlong(box, direction));
    return [Math.min(...each.map(([low]) => low)), Math.max(...each.map(([, high]) => high))] as const;
  });
  return [vector3((i) => spans[i]?.[0] ?? 0), vector3((i) => spans[i]?.[1] ?? 0)];
}

/** Size lines on the page, in metres; one along the eye's own direction is left out. */
export function sizeLines(
  requests: readonly SizeRequest[],
  prisms: readonly Pick<Prism<Solid>, "box">[],
  camera: Camera,
): readonly SizeLine[] {
  if (requests.length === 0) return [];
  const [low, high] = reachOfPrisms(prisms);
  const size = vector3((i) => high[i] - low[i]);
  const off = offShare * Math.max(...size);
  return requests.flatMap(({ along, text }) => {
    const axis = { x: 0, y: 1, z: 2 }[along];
    const corner = besideEdge(axis, low, high, camera, off);
    const [from, to] = [low, high].map((end) => {
      const place = vector3((i) => (i === axis ? end[i] : (corner[i] ?? 0)));
      return projected(camera, place);
    }) as [Point2, Point2];
    const long = Math.hypot(to.x - from.x, to.y - from.y);
    return long > off ? [{ from, to, text }] : [];
  });
}

/** An edge along an axis, moved off: the lower one nearer to the eye, or the outermost upright at the right. */
function besideEdge(
  axis: number,
  low: Vector3,
  high: Vector3,
  { right, toEye }: Camera,
  off: number,
): Vector3 {
  return vector3((i) => {
    if (i === axis) return 0;
    if (axis === 2) return right[i] >= 0 ? high[i] + off * right[i] : low[i] + off * right[i];
    if (i === 2) return low[2];
    if (Math.abs(toEye[2]) > 1 - 1e-9) return low[i] - off;
    return toEye[i] >= 0 ? high[i] + off : low[i] - off;
  });
}
