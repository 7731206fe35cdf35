/**
 * A flat region with straight sides, and what two of them share, as trapezoids: exact but for rounding. Arcs count as
 * chords that leave their arc by no more than `arcTolerance`.
 */
import { type Box2, type Point2, type Shape, sampled } from "../../shape/index.js";

/** How far a chord leaves its arc at most, m. */
export const arcTolerance = 2e-5;

/** Shared space that is thinner than this is contact, m. */
export const contact = 1e-6;

/** Closed rings of corners: what is inside the first and in none of the others. */
export interface Region {
  /** Its rings. */
  readonly rings: readonly (readonly Point2[])[];
  /** The rectangle round it. */
  readonly bounds: Box2;
  /** Whether it is that rectangle. */
  readonly isBox: boolean;
}

/** What two regions share between two levels: its left and right ends at each of them. */
export interface Trapezoid {
  /** Its lower level. */
  readonly low: number;
  /** Its upper level. */
  readonly high: number;
  /** Left end at the lower level. */
  readonly lowLeft: number;
  /** Right end at the lower level. */
  readonly lowRight: number;
  /** Left end at the upper level. */
  readonly highLeft: number;
  /** Right end at the upper level. */
  readonly highRight: number;
}

/** The corners of a shape, its arcs as chords. */
export function ringOf(shape: Shape): readonly Point2[] {
  const radius = Math.max(0, ...shape.sides.map((side) => (side.kind === "arc" ? side.radius : 0)));
  const turn = radius > 0 ? 2 * Math.acos(1 - Math.min(0.3, arcTolerance / radius)) : Math.PI;
  return sampled(shape, turn);
}

/** The region inside the first ring and outside the others. */
export function regionOf(rings: readonly (readonly Point2[])[]): Region {
  const bounds = boundsOfPoints(rings[0] ?? []);
  const { left, bottom, width, height } = bounds;
  const onRim = ({ x, y }: Point2): boolean =>
    (x === left || x === left + width) && (y === bottom || y === bottom + height);
  const [outer = [], ...holes] = rings;
  return { rings, bounds, isBox: holes.length === 0 && outer.length === 4 && outer.every(onRim) };
}

/** The rectangle as a region. */
export function boxRegion(bounds: Box2): Region {
  const { left, bottom, width, height } = bounds;
  const [right, top] = [left + width, bottom + height];
  const corner = (x: number, y: number): Point2 => ({ x, y });
  const ring = [corner(left, bottom), corner(right, bottom), corner(right, top), corner(left, top)];
  return { rings: [ring], bounds, isBox: true };
}

/** The rectangle round points. */
export function boundsOfPoints(points: readonly Point2[]): Box2 {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, y);
    top = Math.max(top, y);
  }
  return { left, bottom, width: right - left, height: top - bottom };
}

/** A side that is not level, from its lower to its upper end. */
interface Edge {
  /** Which region it is of, 0 or 1. */
  readonly of: number;
  /** Which of its rings. */
  readonly ring: number;
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

function edgesOf({ rings }: Region, of: number, low: number, high: number): Edge[] {
  return rings.flatMap((ring, index) =>
    ring.flatMap((from, i): Edge[] => {
      const to = ring[(i + 1) % ring.length] ?? from;
      const [a, b] = from.y <= to.y ? [from, to] : [to, from];
      if (a.y === b.y || b.y <= low || a.y >= high) return [];
      return [{ of, ring: index, x0: a.x, y0: a.y, x1: b.x, y1: b.y }];
    }),
  );
}

function xAt({ x0, y0, x1, y1 }: Edge, y: number): number {
  return x0 === x1 ? x0 : x0 + ((x1 - x0) * (y - y0)) / (y1 - y0);
}

/** What two regions share. */
export function shared(one: Region, other: Region): readonly Trapezoid[] {
  const [a, b] = [one.bounds, other.bounds];
  const low = Math.max(a.bottom, b.bottom);
  const high = Math.min(a.bottom + a.height, b.bottom + b.height);
  const left = Math.max(a.left, b.left);
  const right = Math.min(a.left + a.width, b.left + b.width);
  if (high - low <= contact || right - left <= contact) return [];
  if (one.isBox && other.isBox)
    return [{ low, high, lowLeft: left, lowRight: right, highLeft: left, highRight: right }];
  const edges = [...edgesOf(one, 0, low, high), ...edgesOf(other, 1, low, high)];
  const levels = levelsOf(edges, low, high);
  return levels.slice(1).flatMap((top, i) => stripOf(edges, levels[i] ?? low, top));
}

/** Levels at which an edge ends or two cross. */
function levelsOf(edges: readonly Edge[], low: number, high: number): readonly number[] {
  const levels = [low, high];
  for (const { y0, y1 } of edges) levels.push(y0, y1);
  const own = edges.filter(({ of }) => of === 0);
  const others = edges.filter(({ of }) => of === 1);
  for (const edge of own)
    for (const other of others) {
      const [from, to] = [Math.max(edge.y0, other.y0), Math.min(edge.y1, other.y1)];
      if (to <= from) continue;
      const [gap, farGap] = [xAt(edge, from) - xAt(other, from), xAt(edge, to) - xAt(other, to)];
      if (gap * farGap < 0) levels.push(from + ((to - from) * gap) / (gap - farGap));
    }
  return [...new Set(levels)].filter((level) => level >= low && level <= high).sort((p, q) => p - q);
}

function stripOf(edges: readonly Edge[], low: number, high: number): readonly Trapezoid[] {
  if (high - low < 1e-12) return [];
  const middle = (low + high) / 2;
  const crossed = edges
    .filter(({ y0, y1 }) => y0 < middle && y1 > middle)
    .map((edge) => ({ edge, x: xAt(edge, middle) }))
    .sort((p, q) => p.x - q.x);
  const inside = new Map<number, boolean>();
  const key = ({ of, ring }: Edge): number => 1000 * of + ring;
  const pieces: Trapezoid[] = [];
  let begin: Edge | undefined;
  for (const { edge } of crossed) {
    if (begin) {
      const [lowLeft, lowRight] = [xAt(begin, low), xAt(edge, low)];
      const [highLeft, highRight] = [xAt(begin, high), xAt(edge, high)];
      if (lowRight + highRight > lowLeft + highLeft)
        pieces.push({ low, high, lowLeft, lowRight, highLeft, highRight });
    }
    inside.set(key(edge), !inside.get(key(edge)));
    begin = isShared(inside) ? edge : undefined;
  }
  return pieces;
}

/** Whether a place lies in the first ring of both regions and in no other ring. */
function isShared(inside: ReadonlyMap<number, boolean>): boolean {
  for (const [ring, within] of inside) if (within && ring % 1000 !== 0) return false;
  return inside.get(0) === true && inside.get(1000) === true;
}

/** The rectangle round trapezoids; undefined where they are no wider or higher than contact. */
export function boundsOfPieces(pieces: readonly Trapezoid[]): Box2 | undefined {
  if (pieces.length === 0) return undefined;
  const left = Math.min(...pieces.map(({ lowLeft, highLeft }) => Math.min(lowLeft, highLeft)));
  const right = Math.max(...pieces.map(({ lowRight, highRight }) => Math.max(lowRight, highRight)));
  const bottom = Math.min(...pieces.map(({ low }) => low));
  const top = Math.max(...pieces.map(({ high }) => high));
  const [width, height] = [right - left, top - bottom];
  return width > contact && height > contact ? { left, bottom, width, height } : undefined;
}

/** From and to, along one axis. */
export type Span = readonly [number, number];

/** The stretches of levels that trapezoids cover. */
export function levelsCovered(pieces: readonly Trapezoid[]): readonly Span[] {
  const sorted = pieces.map(({ low, high }): Span => [low, high]).sort(([a], [b]) => a - b);
  const joined: [number, number][] = [];
  for (const [from, to] of sorted) {
    const last = joined.at(-1);
    if (last && from <= last[1] + 1e-12) last[1] = Math.max(last[1], to);
    else joined.push([from, to]);
  }
  return joined;
}
