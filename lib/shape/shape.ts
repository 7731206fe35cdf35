/**
 * A shape is the inside of one closed path of straight lines and arcs of circles. What it measures: its area, its
 * centroid, its distance from a point. Plain numbers, in one unit throughout, x to the right and y up.
 */

import { Refusal } from "../refusal.js";
import { apart, between, type Point2, turnOf } from "./point.js";
import { crossings, distanceToSide, lengthOf, reversed, type Side, sideGap } from "./side.js";

/** The inside of a closed path. */
export interface Shape {
  /** The sides in order, each beginning where the one before ends, the first where the last ends. */
  readonly sides: readonly Side[];
}

/** A rectangle along the axes. */
export interface Box2 {
  /** x of its left side. */
  readonly left: number;
  /** y of its lower side. */
  readonly bottom: number;
  /** Its size along x. */
  readonly width: number;
  /** Its size along y. */
  readonly height: number;
}

/** The area, positive when the path runs counterclockwise. */
function signedArea({ sides }: Shape): number {
  const [first] = sides;
  if (!first) return 0;
  return sides.reduce((sum, side) => {
    const chord = turnOf(first.from, side.from, side.to) / 2;
    return (
      sum + chord + (side.kind === "arc" ? (side.radius ** 2 * (side.sweep - Math.sin(side.sweep))) / 2 : 0)
    );
  }, 0);
}

/** The area inside a shape. */
export function areaOf(shape: Shape): number {
  return Math.abs(signedArea(shape));
}

/** The shape with its path running counterclockwise. */
export function counterclockwise(shape: Shape): Shape {
  return signedArea(shape) < 0 ? { sides: shape.sides.map(reversed).reverse() } : shape;
}

/** The length of a shape's path. */
export function perimeterOf({ sides }: Shape): number {
  return sides.reduce((sum, side) => sum + lengthOf(side), 0);
}

/**
 * The centroid of the area inside a shape: that of its chords' polygon and of the segments between chords and arcs.
 *
 * @throws Refusal when the shape encloses no area
 */
export function centroidOf(shape: Shape): Point2 {
  const area = signedArea(shape);
  const [first] = shape.sides;
  if (area === 0 || !first) throw new Refusal("centroid of a shape: it must enclose an area, got 0");
  const origin = first.from;
  let [x, y] = [0, 0];
  for (const side of shape.sides) {
    const { from, to } = side;
    const triangle = turnOf(origin, from, to) / 6;
    x += triangle * (from.x + to.x - 2 * origin.x);
    y += triangle * (from.y + to.y - 2 * origin.y);
    if (side.kind === "line") continue;
    const { centre, radius, start, sweep } = side;
    const segment = (radius ** 2 * (sweep - Math.sin(sweep))) / 2;
    const out = (2 / 3) * radius ** 3 * Math.sin(sweep / 2) ** 3;
    x += segment * (centre.x - origin.x) + out * Math.cos(start + sweep / 2);
    y += segment * (centre.y - origin.y) + out * Math.sin(start + sweep / 2);
  }
  return { x: origin.x + x / area, y: origin.y + y / area };
}

/** How far a shape reaches to each side. */
export interface Reach {
  /** Least x. */
  readonly left: number;
  /** Greatest x. */
  readonly right: number;
  /** Least y. */
  readonly bottom: number;
  /** Greatest y. */
  readonly top: number;
}

/** How far a shape reaches to each side: arcs end where they run level or upright, so ends of sides tell. */
export function reachOf({ sides }: Shape): Reach {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { from } of sides) {
    left = Math.min(left, from.x);
    right = Math.max(right, from.x);
    bottom = Math.min(bottom, from.y);
    top = Math.max(top, from.y);
  }
  return { left, right, bottom, top };
}

/** The smallest rectangle along the axes around a shape. */
export function boundsOf(shape: Shape): Box2 {
  const { left, right, bottom, top } = reachOf(shape);
  return { left, bottom, width: right - left, height: top - bottom };
}

/** The middle of a rectangle. */
export function middleOf({ left, bottom, width, height }: Box2): Point2 {
  return { x: left + width / 2, y: bottom + height / 2 };
}

/** Whether a point lies inside: counts the sides that a ray to the right crosses. */
export function contains({ sides }: Shape, point: Point2): boolean {
  let inside = false;
  for (const side of sides) {
    const { from, to } = side;
    if (from.y > point.y !== to.y > point.y && point.x < crossedAt(side, point.y)) inside = !inside;
  }
  return inside;
}

/** Where a side crosses a level. */
function crossedAt(side: Side, y: number): number {
  const { from, to } = side;
  if (side.kind === "line") return from.x + ((to.x - from.x) * (y - from.y)) / (to.y - from.y);
  const { centre, radius, start, sweep } = side;
  const reach = Math.sqrt(Math.max(0, radius ** 2 - (y - centre.y) ** 2));
  return centre.x + Math.sign(Math.cos(start + sweep / 2)) * reach;
}

/** The distance of a point from a shape's path, negative inside the shape. */
export function distanceTo(shape: Shape, point: Point2): number {
  const away = shape.sides.reduce((least, side) => Math.min(least, distanceToSide(side, point)), Infinity);
  return contains(shape, point) ? -away : away;
}

/** The least distance of two shapes, zero when they overlap or touch. */
export function gapOf(one: Shape, other: Shape): number {
  const [[first], [second]] = [one.sides, other.sides];
  if (first && second && (contains(one, second.from) || contains(other, first.from))) return 0;
  let least = Infinity;
  for (const a of one.sides) for (const b of other.sides) least = Math.min(least, sideGap(a, b));
  return least;
}

/** The least distance of two rectangles along the axes, zero when they overlap or touch. */
export function boxGap(one: Box2, other: Box2): number {
  const beside = (low: number, size: number, otherLow: number, otherSize: number): number =>
    Math.max(0, otherLow - low - size, low - otherLow - otherSize);
  return Math.hypot(
    beside(one.left, one.width, other.left, other.width),
    beside(one.bottom, one.height, other.bottom, other.height),
  );
}

/** Parts of the whole path below which two points of it count as one. */
const sameness = 1e-9;

/** The first two sides that meet anywhere but in the point they share, counted from 1; none for a sound path. */
export function selfCrossing(shape: Shape): readonly [number, number] | undefined {
  const { sides } = shape;
  const near = sameness * perimeterOf(shape);
  for (const [i, one] of sides.entries()) {
    for (const [j, other] of sides.entries()) {
      if (j <= i) continue;
      const shared = [
        ...(j === i + 1 ? [one.to] : []),
        ...(i === 0 && j === sides.length - 1 ? [one.from] : []),
      ];
      const meets = crossings(one, other).some((point) => shared.every((at) => apart(at, point) > near));
      if (meets) return [i + 1, j + 1];
    }
  }
  return undefined;
}

/** Parts of a shape's length along the sides of a rectangle: the mouth of a notch, which needs no cut. */
export function lengthOnRim({ sides }: Shape, { left, bottom, width, height }: Box2, near: number): number {
  const lies = (at: Point2): boolean =>
    [at.x - left, left + width - at.x, at.y - bottom, bottom + height - at.y].some((d) => Math.abs(d) < near);
  return sides
    .filter(
      (side) => side.kind === "line" && [side.from, between(side.from, side.to, 0.5), side.to].every(lies),
    )
    .reduce((sum, side) => sum + lengthOf(side), 0);
}
