/** A panel's outline: a rectangle from 0, 0 to length, width, and what is cut out of it. All in m. */
import { memoize } from "../../kept/index.js";
import {
  type Box2,
  circleOf,
  circlesOf,
  contains,
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

/** Whether a place is material; the sides of a rectangle that is cut out are not. */
export function isMaterial({ length, width, cutouts }: Outline, place: Point2): boolean {
  const { x, y } = place;
  const within = x >= 0 && x <= length && y >= 0 && y <= width;
  return within && !cutouts.some(({ shape }) => isCut(shape, place));
}

/** The rounded rectangle of a shape that is no circle, looked at once a shape. */
const cutBox = memoize((shape: Shape, _: "cut") => (circleOf(shape) ? undefined : roundedBoxOf(shape)));

function isCut(shape: Shape, { x, y }: Point2): boolean {
  const box = cutBox(shape, "cut");
  if (!box) return contains(shape, { x, y });
  const { left, bottom, width, height, radius } = box;
  const dx = Math.abs(x - left - width / 2);
  const dy = Math.abs(y - bottom - height / 2);
  if (dx > width / 2 || dy > height / 2) return false;
  const cx = dx - (width / 2 - radius);
  const cy = dy - (height / 2 - radius);
  return !(cx > 0 && cy > 0 && Math.hypot(cx, cy) > radius);
}
