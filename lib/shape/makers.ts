/** The makers of shapes. A further shape is a further maker here; all else follows from its path. */

import { Refusal } from "../refusal.js";
import { apart, type Point2, turnOf } from "./point.js";
import type { Box2, Shape } from "./shape.js";
import { type ArcSide, arcs, line, type Side } from "./side.js";

/** A rectangle along the axes with rounded corners. */
export interface RoundedBox extends Box2 {
  /** The radius of its corners; zero for sharp ones. */
  readonly radius: number;
}

/**
 * A circle.
 *
 * @throws Refusal when the radius is not positive
 */
export function circle(centre: Point2, radius: number): Shape {
  positive("circle", { radius });
  return joined(arcs(centre, radius, 0, 2 * Math.PI));
}

/**
 * A rectangle, counterclockwise from its lower left corner, its corners round where a radius is given.
 *
 * @throws Refusal when a side is not positive or the radius is not between 0 and half the shorter side
 */
export function rectangle({ left, bottom, width, height }: Box2, radius = 0): Shape {
  positive("rectangle", { width, height });
  const most = Math.min(width, height) / 2;
  if (!(radius >= 0 && radius <= most * (1 + 1e-9)))
    throw new Refusal(`rectangle: radius must be from 0 to ${most}, half its shorter side, got ${radius}`);
  const [right, top] = [left + width, bottom + height];
  if (radius === 0) {
    const corner = (x: number, y: number): Point2 => ({ x, y });
    return closed([corner(left, bottom), corner(right, bottom), corner(right, top), corner(left, top)]);
  }
  const corner = (i: number, centre: Point2, from: Point2, to: Point2): ArcSide => ({
    kind: "arc",
    from,
    to,
    centre,
    radius,
    start: (Math.PI / 2) * (i + 2),
    sweep: Math.PI / 2,
  });
  const [x1, x2, y1, y2] = [left + radius, right - radius, bottom + radius, top - radius];
  return joined([
    corner(0, { x: x1, y: y1 }, { x: left, y: y1 }, { x: x1, y: bottom }),
    corner(1, { x: x2, y: y1 }, { x: x2, y: bottom }, { x: right, y: y1 }),
    corner(2, { x: x2, y: y2 }, { x: right, y: y2 }, { x: x2, y: top }),
    corner(3, { x: x1, y: y2 }, { x: x1, y: top }, { x: left, y: y2 }),
  ]);
}

/** A slot: a rectangle whose shorter sides are half circles. */
export function slot(box: Box2): Shape {
  return rectangle(box, Math.min(box.width, box.height) / 2);
}

/** A notch: a rectangle with sharp corners that lies on the edge of what it is cut from. */
export function notch(box: Box2): Shape {
  return rectangle(box);
}

/**
 * A shape with straight sides between the given corners.
 *
 * @throws Refusal when there are fewer than three corners
 */
export function polygon(corners: readonly Point2[]): Shape {
  if (corners.length < 3) throw new Refusal(`polygon: at least three corners, got ${corners.length}`);
  return closed(corners);
}

/** Pairs of arcs in each quarter of an ellipse. */
const pairs = 8;

/**
 * An ellipse along the axes, as 64 arcs that pass into each other without a corner. Where one axis is up to four times
 * the other, no point is off the true ellipse by more than 0.0001 of the longer half axis.
 *
 * @throws Refusal when a size is not positive
 */
export function ellipse({ left, bottom, width, height }: Box2): Shape {
  positive("ellipse", { width, height });
  const centre = { x: left + width / 2, y: bottom + height / 2 };
  if (width === height) return circle(centre, width / 2);
  const [a, b] = [width / 2, height / 2];
  // Steps between equal parts of the turning tangent and equal parts of the circle it was: the least deviation.
  const angles = Array.from({ length: 4 * pairs }, (_, i) => {
    const turn = (Math.PI / 2) * (i / pairs);
    return Math.atan2(Math.cbrt(b) * Math.sin(turn), Math.cbrt(a) * Math.cos(turn));
  });
  const knots = angles.map((angle) => ({
    at: { x: centre.x + a * Math.cos(angle), y: centre.y + b * Math.sin(angle) },
    way: { x: -a * Math.sin(angle), y: b * Math.cos(angle) },
  }));
  return joined(
    knots.flatMap((knot, i) => {
      const next = knots[(i + 1) % knots.length] ?? knot;
      return biarc(knot.at, knot.way, next.at, next.way);
    }),
  );
}

/** Two arcs from one point and direction to another that pass into each other without a corner. */
function biarc(from: Point2, fromWay: Point2, to: Point2, toWay: Point2): readonly ArcSide[] {
  const unit = ({ x, y }: Point2): Point2 => ({ x: x / Math.hypot(x, y), y: y / Math.hypot(x, y) });
  const [u, w] = [unit(fromWay), unit(toWay)];
  const [vx, vy] = [to.x - from.x, to.y - from.y];
  const sum = { x: u.x + w.x, y: u.y + w.y };
  const [dot, spare] = [vx * sum.x + vy * sum.y, 2 * (1 - u.x * w.x - u.y * w.y)];
  const reach = (-dot + Math.sqrt(dot ** 2 + spare * (vx ** 2 + vy ** 2))) / spare;
  const middle = {
    x: (from.x + to.x + reach * (u.x - w.x)) / 2,
    y: (from.y + to.y + reach * (u.y - w.y)) / 2,
  };
  return [arcThrough(from, u, middle), arcThrough(to, { x: -w.x, y: -w.y }, middle, true)].flat();
}

/** The arc that leaves a point in a direction and ends in another point; turned round for one drawn backwards. */
function arcThrough(from: Point2, way: Point2, to: Point2, backwards = false): readonly ArcSide[] {
  const chord = apart(from, to);
  const aside = turnOf({ x: 0, y: 0 }, way, { x: to.x - from.x, y: to.y - from.y });
  const radius = chord ** 2 / (2 * aside);
  const centre = { x: from.x - radius * way.y, y: from.y + radius * way.x };
  const angle = (at: Point2): number => Math.atan2(at.y - centre.y, at.x - centre.x);
  const [first, last] = backwards ? [to, from] : [from, to];
  const turn = angle(last) - angle(first);
  const sweep = turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI));
  return [
    { kind: "arc", from: first, to: last, centre, radius: Math.abs(radius), start: angle(first), sweep },
  ];
}

/** The path through the given corners and back to the first. */
export function closed(corners: readonly Point2[]): Shape {
  return { sides: corners.map((corner, i) => line(corner, corners[(i + 1) % corners.length] ?? corner)) };
}

/** A path of the given sides, with straight lines where one does not begin at the end of the one before. */
export function joined(sides: readonly Side[]): Shape {
  const near = 1e-9 * Math.max(...sides.map(({ from, to }) => apart(from, to)));
  return {
    sides: sides.flatMap((side, i) => {
      const { from } = sides[(i + 1) % sides.length] ?? side;
      return apart(side.to, from) > near ? [side, line(side.to, from)] : [{ ...side, to: from }];
    }),
  };
}

function positive(what: string, sizes: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(sizes))
    if (!(value > 0)) throw new Refusal(`${what}: ${name} must be positive, got ${value}`);
}
