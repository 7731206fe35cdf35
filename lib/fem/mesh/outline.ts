/** A panel's outline: a rectangle from 0, 0 to length, width, and what is cut out of it. All in m. */
import {
  type Box2,
  circlesOf,
  contains,
  distanceToSide,
  type Point2,
  roundedBoxOf,
  type Shape,
} from "../../shape/index.js";

/** An opening, or a notch where it reaches the rim. */
export interface Cutout {
  /** What messages call it. */
  readonly name: string;
  /** Its outline, m. */
  readonly shape: Shape;
}

/** x and y, m. */
export type Spot = readonly [x: number, y: number];

/** The panel with its cutouts. */
export interface Outline {
  /** Size along x, m. */
  readonly length: number;
  /** Size along y, m. */
  readonly width: number;
  /** What is cut out of it. */
  readonly cutouts: readonly Cutout[];
  /** Whether triangles mesh it even where straight lines would do: lines run on through whatever shares its sides. */
  readonly freely?: boolean;
}

/** A circle that part of an outline follows. */
export interface Arc {
  /** x of its centre, m. */
  readonly x: number;
  /** y of its centre, m. */
  readonly y: number;
  /** Its radius, m. */
  readonly radius: number;
}

/** The circles a cutout's outline follows. */
export function arcsOf({ shape }: Cutout): readonly Arc[] {
  return circlesOf(shape).map(({ centre: { x, y }, radius }) => ({ x, y, radius }));
}

/** The rectangle with sharp corners that a cutout is, if it is one. */
export function sharpBoxOf({ shape }: Cutout): Box2 | undefined {
  const box = roundedBoxOf(shape);
  return box?.radius === 0 ? box : undefined;
}

/** The rectangles of an outline that straight lines mesh: all its cutouts are such; undefined for any other. */
export function sharpBoxesOf({
  cutouts,
  freely = false,
}: Pick<Outline, "cutouts" | "freely">): readonly Box2[] | undefined {
  if (freely && cutouts.length > 0) return undefined;
  const boxes = cutouts.flatMap((cutout) => sharpBoxOf(cutout) ?? []);
  return boxes.length === cutouts.length ? boxes : undefined;
}

/** Distance of two places. */
export function apart(a: Spot, b: Spot): number {
  const dx = a[0] - b[0];
  const dy = a[1] - b[1];
  return Math.sqrt(dx * dx + dy * dy);
}

/** Share of a panel's sides by which a place must lie inside a cutout's straight side to be cut away. */
const hair = 1e-12;

/** Whether a place is material; the straight sides of a cutout are. */
export function isMaterial({ length, width, cutouts }: Outline, [x, y]: Spot): boolean {
  const place = { x, y };
  const within = x >= 0 && x <= length && y >= 0 && y <= width;
  const near = hair * (length + width);
  return within && !cutouts.some(({ shape }) => contains(shape, place) && !isOnSide(shape, place, near));
}

function isOnSide({ sides }: Shape, place: Point2, near: number): boolean {
  return sides.some((side) => side.kind === "line" && distanceToSide(side, place) < near);
}
