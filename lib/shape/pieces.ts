/** Paths cut to pieces and put together again: a shape clipped to a rectangle, and one drawn at a distance. */

import { Refusal } from "../refusal.js";
import { apart, type Point2 } from "./point.js";
import {
  areaOf,
  type Box2,
  boundsOf,
  counterclockwise,
  distanceTo,
  perimeterOf,
  type Shape,
} from "./shape.js";
import { arcs, crossings, lengthOf, line, partOf, pointAt, type Side, shareAt } from "./side.js";

/** Parts of a shape's path below which two points count as one. */
const sameness = 1e-9;

/** A half of the plane: the points on the left of a line through a point. */
interface HalfPlane {
  /** A point of its border. */
  readonly at: Point2;
  /** Which way the border runs, a unit vector. */
  readonly way: Point2;
}

/** What of a shape lies in a rectangle: no piece, one, or several. The shape itself when all of it does. */
export function clipped(shape: Shape, box: Box2): readonly Shape[] {
  const { left, bottom, width, height } = box;
  const borders: readonly HalfPlane[] = [
    { at: { x: left, y: bottom }, way: { x: 1, y: 0 } },
    { at: { x: left + width, y: bottom }, way: { x: 0, y: 1 } },
    { at: { x: left + width, y: bottom + height }, way: { x: -1, y: 0 } },
    { at: { x: left, y: bottom + height }, way: { x: 0, y: -1 } },
  ];
  const near = sameness * perimeterOf(shape);
  return borders.reduce<readonly Shape[]>(
    (pieces, border) => pieces.flatMap((piece) => inHalf(piece, border, near)),
    [counterclockwise(shape)],
  );
}

/** How far a point lies inside a half plane. */
function depth({ at, way }: HalfPlane, point: Point2): number {
  return way.x * (point.y - at.y) - way.y * (point.x - at.x);
}

function inHalf(shape: Shape, half: HalfPlane, near: number): readonly Shape[] {
  if (shape.sides.every(({ from }) => depth(half, from) > -near)) return [shape];
  const { left, bottom, width, height } = boundsOf(shape);
  const reach = 2 * (width + height + apart(half.at, { x: left, y: bottom }));
  const border = line(
    { x: half.at.x - reach * half.way.x, y: half.at.y - reach * half.way.y },
    { x: half.at.x + reach * half.way.x, y: half.at.y + reach * half.way.y },
  );
  const kept = shape.sides
    .flatMap((side) => cutAt(side, crossings(side, border), near))
    .map((side) => ({ side, inside: depth(half, pointAt(side, 0.5)) > near / 4 }));
  return loops(chains(kept), half, near);
}

/** A side cut at points on it. */
function cutAt(side: Side, points: readonly Point2[], near: number): readonly Side[] {
  const length = lengthOf(side);
  const stops = points
    .map((point) => shareAt(side, point))
    .filter((share) => share * length > near && (1 - share) * length > near)
    .sort((a, b) => a - b)
    .filter((share, i, all) => i === 0 || (share - (all[i - 1] ?? 0)) * length > near);
  const all = [0, ...stops, 1];
  return all.slice(1).map((stop, i) => partOf(side, all[i] ?? 0, stop));
}

/** Runs of kept sides round the path; the first does not begin in the middle of one. */
function chains(
  sides: readonly { readonly side: Side; readonly inside: boolean }[],
): readonly (readonly Side[])[] {
  const start = sides.findIndex(({ inside }, i) => inside && !sides[(i || sides.length) - 1]?.inside);
  if (start < 0) return sides.some(({ inside }) => inside) ? [sides.map(({ side }) => side)] : [];
  const runs: Side[][] = [];
  let open = false;
  for (const { side, inside } of [...sides.slice(start), ...sides.slice(0, start)]) {
    if (inside && !open) runs.push([]);
    if (inside) runs.at(-1)?.push(side);
    open = inside;
  }
  return runs;
}

/** Chains that end on the border of a half plane, closed along it: each end with the next beginning ahead. */
function loops(runs: readonly (readonly Side[])[], { at, way }: HalfPlane, near: number): readonly Shape[] {
  const along = (point: Point2): number => way.x * (point.x - at.x) + way.y * (point.y - at.y);
  const begins = (run: readonly Side[]): number => along(run[0]?.from ?? at);
  const nearest = (ahead: readonly (readonly Side[])[]): readonly Side[] =>
    ahead.reduce((best, run) => (begins(run) < begins(best) ? run : best), ahead[0] ?? []);
  const waiting = [...runs];
  const shapes: Shape[] = [];
  for (let first = waiting.shift(); first; first = waiting.shift()) {
    const sides = [...first];
    for (;;) {
      const end = sides.at(-1)?.to ?? at;
      const here = along(end);
      const ahead: readonly Side[] = nearest([first, ...waiting].filter((run) => begins(run) > here - near));
      const start = ahead[0]?.from ?? end;
      if (apart(end, start) > near) sides.push(line(end, start));
      if (ahead === first || ahead.length === 0) break;
      sides.push(...ahead);
      waiting.splice(waiting.indexOf(ahead), 1);
    }
    if (areaOf({ sides }) > near ** 2) shapes.push(snapped(sides));
  }
  return shapes;
}

/**
 * The shape whose path keeps a distance from that of another: grown, corners round, where the distance is positive,
 * and shrunk where it is negative.
 *
 * @throws Refusal when nothing is left, or more than one piece
 */
export function offset(shape: Shape, distance: number): Shape {
  if (distance === 0) return shape;
  const sound = counterclockwise(shape);
  const near = 1e-7 * (perimeterOf(sound) + Math.abs(distance));
  const raw = rawOffset(sound, distance, near);
  const pieces = raw.flatMap((side, i) =>
    cutAt(
      side,
      raw.flatMap((other, j) => (i === j ? [] : crossings(side, other))),
      near,
    ),
  );
  const kept = pieces.filter(
    (piece) => lengthOf(piece) > near && Math.abs(distanceTo(sound, pointAt(piece, 0.5)) - distance) < near,
  );
  const [found, ...others] = linked(kept, near).filter((each) => areaOf(each) > near ** 2 && encloses(each));
  if (!found || others.length > 0) {
    const left = found ? `${others.length + 1} pieces are left` : "nothing is left";
    throw new Refusal(`offset of a shape by ${distance}: one piece expected, ${left}`);
  }
  return found;
}

/** Whether a path runs counterclockwise: an island of a raw path that runs the other way is no part of the shape. */
function encloses(shape: Shape): boolean {
  return counterclockwise(shape) === shape;
}

/** Every side moved outwards, with arcs round its corners. */
function rawOffset({ sides }: Shape, distance: number, near: number): readonly Side[] {
  return sides.flatMap((side, i) => {
    const before = sides[(i || sides.length) - 1] ?? side;
    return [...cornerArc(before, side, distance, near), ...shifted(side, distance, near)];
  });
}

function shifted(side: Side, distance: number, near: number): readonly Side[] {
  if (side.kind === "line") {
    const length = lengthOf(side);
    const [dx, dy] = [(side.to.x - side.from.x) / length, (side.to.y - side.from.y) / length];
    const by = (at: Point2): Point2 => ({ x: at.x + distance * dy, y: at.y - distance * dx });
    return [line(by(side.from), by(side.to))];
  }
  const radius = side.radius + Math.sign(side.sweep) * distance;
  return radius > near ? arcs(side.centre, radius, side.start, side.sweep) : [];
}

/** The arc about a corner, where the path turns away from the side to which it is moved. */
function cornerArc(before: Side, after: Side, distance: number, near: number): readonly Side[] {
  const [from, to] = [outwards(before, 1), outwards(after, 0)];
  const turn = to - from - 2 * Math.PI * Math.round((to - from) / (2 * Math.PI));
  if (turn * distance <= 0 || Math.abs(turn * distance) < near) return [];
  const start = distance > 0 ? from : from + Math.PI;
  return arcs(after.from, Math.abs(distance), start, turn);
}

/** The direction out of a shape at an end of a side, rad. */
function outwards(side: Side, end: 0 | 1): number {
  if (side.kind === "line") return Math.atan2(side.to.x - side.from.x, side.from.y - side.to.y) + Math.PI;
  const angle = side.start + end * side.sweep;
  return side.sweep > 0 ? angle : angle + Math.PI;
}

/** Sides put together end to end. */
function linked(sides: readonly Side[], near: number): readonly Shape[] {
  const waiting = [...sides];
  const shapes: Shape[] = [];
  for (let side = waiting.shift(); side; side = waiting.shift()) {
    const path = [side];
    for (;;) {
      const end = path.at(-1)?.to ?? side.to;
      const next = waiting.findIndex(({ from }) => apart(from, end) < 4 * near);
      if (next < 0 || apart(end, side.from) < 4 * near) break;
      path.push(...waiting.splice(next, 1));
    }
    if (apart(path.at(-1)?.to ?? side.to, side.from) < 4 * near) shapes.push(snapped(path));
  }
  return shapes;
}

/** A path whose sides end exactly where the next ones begin. */
function snapped(sides: readonly Side[]): Shape {
  return { sides: sides.map((side, i) => ({ ...side, to: (sides[(i + 1) % sides.length] ?? side).from })) };
}
