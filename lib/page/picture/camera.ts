/** From where a picture is seen: parallel rays, so that lengths along an axis stay in proportion. */
import { scalarProduct, type Vector3, vector3 } from "../../algebra/matrix3.js";
import type { Point2 } from "../../shape/index.js";

/** Sides and corners that a case is seen from. */
export type NamedSight =
  | "front"
  | "back"
  | "left"
  | "right"
  | "top"
  | "front left"
  | "front right"
  | "back left"
  | "back right";

/** Where the eye stands, in degrees. */
export interface Sight {
  /** How far around from the front, to the right. */
  readonly around: number;
  /** How far above level; below where negative. */
  readonly above: number;
}

/** Corners show both walls, the front one more, and enough of the top to see what is on it. */
const corner = { around: 33, above: 20 } as const;

const named: Readonly<Record<NamedSight, Sight>> = {
  front: { around: 0, above: 0 },
  right: { around: 90, above: 0 },
  back: { around: 180, above: 0 },
  left: { around: 270, above: 0 },
  top: { around: 0, above: 90 },
  "front right": corner,
  "front left": { ...corner, around: -corner.around },
  "back left": { ...corner, around: 180 + corner.around },
  "back right": { ...corner, around: 180 - corner.around },
};

/** Three square directions of a picture. */
export interface Camera {
  /** To the right on the page. */
  readonly right: Vector3;
  /** Up on the page. */
  readonly up: Vector3;
  /** From the case to the eye. */
  readonly toEye: Vector3;
}

/** The camera of a sight. */
export function cameraOf(sight: NamedSight | Sight): Camera {
  const { around, above } = typeof sight === "string" ? named[sight] : sight;
  const [a, e] = [around, above].map((degrees) => (degrees * Math.PI) / 180) as [number, number];
  const clean = (value: number): number => (Math.abs(value) < 1e-12 ? 0 : value);
  const direction = (x: number, y: number, z: number): Vector3 => [clean(x), clean(y), clean(z)];
  return {
    right: direction(Math.cos(a), Math.sin(a), 0),
    up: direction(-Math.sin(a) * Math.sin(e), Math.cos(a) * Math.sin(e), Math.cos(e)),
    toEye: direction(Math.sin(a) * Math.cos(e), -Math.cos(a) * Math.cos(e), Math.sin(e)),
  };
}

/** A place of space on the page, y up. */
export function projected({ right, up }: Camera, place: Vector3): Point2 {
  return { x: scalarProduct(right, place), y: scalarProduct(up, place) };
}

/** A place some way along a direction. */
export function along(from: Vector3, direction: Vector3, by: number): Vector3 {
  return vector3((i) => from[i] + by * direction[i]);
}
