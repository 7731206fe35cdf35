/** Walls of a drawn profile joined where they touch: the pieces between joints, as a plane graph. All in m. */
import { apart, distanceToSide, type LineSide, lengthOf, type Point2, pointAt } from "../shape/index.js";

/** A wall along its middle line. */
export interface GraphWall extends LineSide {
  /** Across its middle line, m. */
  readonly thickness: number;
}

/** A piece of a wall between two joints, or between a joint and a free end. */
export interface WallPiece {
  /** Numbers of the joints it runs between. */
  readonly ends: readonly [number, number];
  /** Along its middle line, m. */
  readonly length: number;
  /** Across its middle line, m. */
  readonly thickness: number;
  /** Number of the wall it is a piece of. */
  readonly wall: number;
}

/** Walls as joints and pieces. */
export interface WallGraph {
  /** Where walls meet or end. */
  readonly joints: readonly Point2[];
  /** Walls from joint to joint. */
  readonly pieces: readonly WallPiece[];
}

/** A gap this small beside the wall's thickness is a slip of the pencil. */
const slip = 0.1;

/** Joins every two walls of which one reaches the other's face. */
export function wallGraph(walls: readonly GraphWall[]): WallGraph {
  const joints: Point2[] = [];
  const numberOf = (point: Point2, reach: number): number => {
    const known = joints.findIndex((joint) => apart(joint, point) <= reach);
    return known >= 0 ? known : joints.push(point) - 1;
  };
  const pieces = walls.flatMap((wall, i) => {
    const touched = walls.flatMap((other, j) => (i === j ? [] : (touchAlong(wall, other) ?? [])));
    const stops = [...freeEnds(wall, touched), ...touched].sort((a, b) => a - b);
    const numbers = stops.map((at) => numberOf(pointAt(wall, at / lengthOf(wall)), wall.thickness / 4));
    return stops.slice(1).flatMap((at, k): WallPiece[] => {
      const ends = [numbers[k] ?? 0, numbers[k + 1] ?? 0] as const;
      const { thickness } = wall;
      return ends[0] === ends[1] ? [] : [{ ends, length: at - (stops[k] ?? 0), thickness, wall: i }];
    });
  });
  return { joints, pieces };
}

/** Ends of a wall that touch nothing. */
function freeEnds(wall: GraphWall, touched: readonly number[]): readonly number[] {
  const length = lengthOf(wall);
  return [0, length].filter((end) => touched.every((at) => Math.abs(at - end) > wall.thickness));
}

/** How far along a wall another's middle line meets it; undefined when they do not touch. */
function touchAlong(wall: GraphWall, other: GraphWall): number | undefined {
  const [u, v] = [directionOf(wall), directionOf(other)];
  const sine = u.x * v.y - u.y * v.x;
  const least = slip * Math.min(wall.thickness, other.thickness);
  if (Math.abs(sine) < 1e-9) return endOn(wall, other, least);
  const away = { x: other.from.x - wall.from.x, y: other.from.y - wall.from.y };
  const along = (away.x * v.y - away.y * v.x) / sine;
  const alongOther = (away.x * u.y - away.y * u.x) / sine;
  const crosses = isOn(along, lengthOf(wall)) && isOn(alongOther, lengthOf(other));
  return crosses || endReaches(wall, other, least) || endReaches(other, wall, least) ? along : undefined;
}

function isOn(at: number, length: number): boolean {
  return at >= 0 && at <= length;
}

/** Whether an end of a wall reaches the face of another. */
function endReaches({ from, to }: GraphWall, other: GraphWall, least: number): boolean {
  return [from, to].some((end) => distanceToSide(other, end) <= other.thickness / 2 + least);
}

/** Walls in one line touch end to end. */
function endOn(wall: GraphWall, other: GraphWall, least: number): number | undefined {
  const length = lengthOf(wall);
  return [0, length].find((at) => {
    const end = pointAt(wall, at / length);
    return [other.from, other.to].some((point) => apart(point, end) <= least);
  });
}

function directionOf(wall: GraphWall): Point2 {
  const length = lengthOf(wall);
  return { x: (wall.to.x - wall.from.x) / length, y: (wall.to.y - wall.from.y) / length };
}
