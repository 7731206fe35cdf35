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
  /** Its place among all of them. */
  readonly index: number;
  /** Which region it is of, 0 or 1. */
  readonly of: number;
  /** Which of its rings. */
  readonly ring: number;
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  /** Where it crosses the strip that is looked at. */
  x: number;
}

/** Adds the sides of a region that cross a stretch of levels. */
function addEdges(edges: Edge[], of: number, { rings }: Region, low: number, high: number): void {
  for (let ring = 0; ring < rings.length; ring++) {
    const points = rings[ring] ?? [];
    for (let i = 0; i < points.length; i++) {
      const from = points[i] as Point2;
      const to = points[i + 1 < points.length ? i + 1 : 0] as Point2;
      const [a, b] = from.y <= to.y ? [from, to] : [to, from];
      if (a.y === b.y || b.y <= low || a.y >= high) continue;
      edges.push({ index: edges.length, of, ring, x0: a.x, y0: a.y, x1: b.x, y1: b.y, x: 0 });
    }
  }
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
  const edges: Edge[] = [];
  addEdges(edges, 0, one, low, high);
  const own = edges.length;
  addEdges(edges, 1, other, low, high);
  return piecesBetween(edges, levelsOf(edges, own, low, high), [one.rings.length, other.rings.length]);
}

/**
 * Levels at which an edge ends or two cross, each once and ascending.
 *
 * @param own how many edges the first region has; the others' follow
 */
function levelsOf(edges: readonly Edge[], own: number, low: number, high: number): readonly number[] {
  const levels = [low, high];
  const put = (level: number): void => {
    if (level >= low && level <= high) levels.push(level);
  };
  for (const { y0, y1 } of edges) {
    put(y0);
    put(y1);
  }
  for (let i = 0; i < own; i++)
    for (let j = own; j < edges.length; j++) {
      const [edge, other] = [edges[i] as Edge, edges[j] as Edge];
      const from = Math.max(edge.y0, other.y0);
      const to = Math.min(edge.y1, other.y1);
      if (to <= from) continue;
      const gap = xAt(edge, from) - xAt(other, from);
      const farGap = xAt(edge, to) - xAt(other, to);
      if (gap * farGap < 0) put(from + ((to - from) * gap) / (gap - farGap));
    }
  return [...Float64Array.from(levels).sort()].filter((level, i, all) => level !== all[i - 1]);
}

/** What lies in both regions, level by level: a sweep upwards, in which edges keep their order but where two cross. */
function piecesBetween(
  edges: readonly Edge[],
  levels: readonly number[],
  rings: readonly [number, number],
): readonly Trapezoid[] {
  const rising = [...edges].sort((p, q) => p.y0 - q.y0);
  let next = 0;
  let open: Edge[] = [];
  const inside = [new Uint8Array(rings[0]), new Uint8Array(rings[1])] as const;
  const pieces: Trapezoid[] = [];
  for (let i = 1; i < levels.length; i++) {
    const [low, high] = [levels[i - 1] as number, levels[i] as number];
    if (high - low < 1e-12) continue;
    const middle = (low + high) / 2;
    open = open.filter(({ y1 }) => y1 > middle);
    for (; next < rising.length && (rising[next] as Edge).y0 < middle; next++) {
      const edge = rising[next] as Edge;
      if (edge.y1 > middle) open.push(edge);
    }
    fromLeft(open, middle);
    addPieces(pieces, open, inside, low, high);
  }
  return pieces;
}

/** Sorts edges by where they cross a level, and those that cross it in one place as they stand among all. */
function fromLeft(edges: Edge[], level: number): void {
  for (let i = 0; i < edges.length; i++) {
    const edge = edges[i] as Edge;
    edge.x = xAt(edge, level);
    let place = i;
    for (; place > 0; place--) {
      const before = edges[place - 1] as Edge;
      if (before.x < edge.x || (before.x === edge.x && before.index < edge.index)) break;
      edges[place] = before;
    }
    edges[place] = edge;
  }
}

/** Adds what lies in both regions between two levels that no edge ends between. */
function addPieces(
  pieces: Trapezoid[],
  crossed: readonly Edge[],
  inside: readonly [Uint8Array, Uint8Array],
  low: number,
  high: number,
): void {
  for (const rings of inside) rings.fill(0);
  // Holes that a place lies in, of either region.
  let holes = 0;
  let begin: Edge | undefined;
  for (const edge of crossed) {
    if (begin) {
      const [lowLeft, lowRight] = [xAt(begin, low), xAt(edge, low)];
      const [highLeft, highRight] = [xAt(begin, high), xAt(edge, high)];
      if (lowRight + highRight > lowLeft + highLeft)
        pieces.push({ low, high, lowLeft, lowRight, highLeft, highRight });
    }
    const rings = edge.of === 0 ? inside[0] : inside[1];
    const within = rings[edge.ring] === 0 ? 1 : 0;
    rings[edge.ring] = within;
    if (edge.ring > 0) holes += within === 1 ? 1 : -1;
    begin = holes === 0 && inside[0][0] === 1 && inside[1][0] === 1 ? edge : undefined;
  }
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
