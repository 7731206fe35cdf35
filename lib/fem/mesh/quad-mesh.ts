/** A mesh of nine-node squares, from their corners. */
import { between, halfWay, type Point2 } from "../../shape/index.js";
import { nodePlaces, nodesPerElement, shapesAt, stretchAt } from "../element/index.js";
import type { Arc } from "./outline.js";

/** Nodes and elements of a panel. */
export interface QuadMesh {
  /** Places of the nodes, m. */
  readonly x: Float64Array;
  /** Along y, m. */
  readonly y: Float64Array;
  /** Nine nodes an element, in the element's order. */
  readonly elements: Int32Array;
  /** Sides that belong to one element only. */
  readonly rim: readonly Side[];
}

/** Three nodes of a side: both ends and the middle. */
export type Side = readonly [first: number, middle: number, last: number];

/** Four corners, counterclockwise. */
export type Quad = readonly [number, number, number, number];

/** How many elements a mesh has. */
export function elementCount({ elements }: QuadMesh): number {
  return elements.length / nodesPerElement;
}

/** Places of the nodes of one element; nobody may change them. */
export interface ElementPlaces {
  /** m */
  readonly x: Float64Array;
  /** m */
  readonly y: Float64Array;
}

/** Places of an element's nodes, gathered once a mesh. */
export function elementPlaces(mesh: QuadMesh, element: number): ElementPlaces {
  const known = gathered.get(mesh);
  if (known) return known[element]!;
  const all = gather(mesh);
  gathered.set(mesh, all);
  return all[element]!;
}

const gathered = new WeakMap<QuadMesh, readonly ElementPlaces[]>();

/** All in one room: a small array of its own for each would cost more than what it holds. */
function gather({ x, y, elements }: QuadMesh): readonly ElementPlaces[] {
  const [alongX, alongY] = [new Float64Array(elements.length), new Float64Array(elements.length)];
  for (let i = 0; i < elements.length; i++) {
    alongX[i] = x[elements[i]!]!;
    alongY[i] = y[elements[i]!]!;
  }
  return Array.from({ length: elements.length / nodesPerElement }, (_, element) => {
    const [from, to] = [nodesPerElement * element, nodesPerElement * (element + 1)];
    return { x: alongX.subarray(from, to), y: alongY.subarray(from, to) };
  });
}

/** Nodes of an element. */
export function elementNodes({ elements }: QuadMesh, element: number): Int32Array {
  return elements.subarray(nodesPerElement * element, nodesPerElement * (element + 1));
}

/** Middle of an element. */
export function elementMiddle(mesh: QuadMesh, element: number): Point2 {
  const centre = elementNodes(mesh, element)[nodesPerElement - 1]!;
  return { x: mesh.x[centre]!, y: mesh.y[centre]! };
}

/**
 * Adds the nodes in the middle of sides and elements; sides of the rim whose ends lie on an arc follow it.
 *
 * @param corners places; those of no square are left out
 * @param squares counterclockwise
 * @param arcs circles the outline follows
 */
export function quadMesh(
  corners: readonly Point2[],
  squares: readonly Quad[],
  arcs: readonly Arc[],
): QuadMesh {
  const { places, quads } = withoutStrays(corners, squares);
  const [x, y] = [places.map(({ x: at }) => at), places.map(({ y: at }) => at)];
  const sides = sidesOf(quads);
  const rim: Side[] = [];
  const middles = new Map<number, number>();
  const add = ({ x: atX, y: atY }: Point2): number => {
    y.push(atY);
    return x.push(atX) - 1;
  };
  for (const [key, { ends, uses }] of sides) {
    const [a, b] = ends;
    const middle = add(uses === 1 ? onArc(places[a]!, places[b]!, arcs) : halfWay(places[a]!, places[b]!));
    middles.set(key, middle);
    if (uses === 1) rim.push([a, middle, b]);
  }
  const elements = quads.flatMap((quad) => {
    const mids = quad.map((corner, i) => middles.get(keyOf(corner, quad[(i + 1) % 4]!))!);
    const middle = (at: readonly number[]): number => sum(mids, at) / 2 - sum(quad, at) / 4;
    return [...quad, ...mids, add({ x: middle(x), y: middle(y) })];
  });
  return { x: Float64Array.from(x), y: Float64Array.from(y), elements: Int32Array.from(elements), rim };
}

function withoutStrays(
  corners: readonly Point2[],
  squares: readonly Quad[],
): { readonly places: readonly Point2[]; readonly quads: readonly Quad[] } {
  const used = [...new Set(squares.flat())].sort((a, b) => a - b);
  const numbers = new Map(used.map((corner, number) => [corner, number]));
  return {
    places: used.map((corner) => corners[corner]!),
    quads: squares.map((quad) => quad.map((corner) => numbers.get(corner)!) as unknown as Quad),
  };
}

/** Sides by their two corners, with how many elements use them. */
export function sidesOf(
  faces: readonly (readonly number[])[],
): ReadonlyMap<number, { readonly ends: readonly [number, number]; readonly uses: number }> {
  const sides = new Map<number, { ends: [number, number]; uses: number }>();
  for (const face of faces) {
    for (let i = 0; i < face.length; i++) {
      const [a, b] = [face[i]!, face[(i + 1) % face.length]!];
      const key = keyOf(a, b);
      const known = sides.get(key);
      if (known) known.uses++;
      else sides.set(key, { ends: [a, b], uses: 1 });
    }
  }
  return sides;
}

/** More nodes than any mesh has; two numbers below it fit in one. */
const manyNodes = 2 ** 26;

/** A side's number, the same from both ends. */
export function keyOf(a: number, b: number): number {
  return a < b ? a * manyNodes + b : b * manyNodes + a;
}

/** The ends of a side from its number, the lower first. */
export function endsOf(key: number): readonly [number, number] {
  return [Math.floor(key / manyNodes), key % manyNodes];
}

/** In radii: a little more than a quarter of the circle. */
const longestChord = 1.5;

/**
 * Half way, or another share of the way, along the arc that both places lie on; along the straight line when there
 * is none.
 */
export function onArc(a: Point2, b: Point2, arcs: readonly Arc[], share = 0.5): Point2 {
  const middle = between(a, b, share);
  const away = (place: Point2, arc: Arc): number => Math.hypot(place.x - arc.x, place.y - arc.y);
  const lies = (place: Point2, arc: Arc): boolean =>
    Math.abs(away(place, arc) - arc.radius) < 1e-7 * arc.radius;
  // A longer chord joins two places of the arc without following it.
  const short = (arc: Arc): boolean => Math.hypot(a.x - b.x, a.y - b.y) < longestChord * arc.radius;
  const arc = arcs.find((one) => short(one) && lies(a, one) && lies(b, one));
  if (!arc) return middle;
  const out = arc.radius / away(middle, arc);
  return { x: arc.x + (middle.x - arc.x) * out, y: arc.y + (middle.y - arc.y) * out };
}

/** Smallest over largest stretch of an element that is still good. */
export const worstAllowed = 0.02;

/**
 * How badly an element is bent: smallest over largest stretch at its nodes, 1 for a rectangle, negative when folded.
 */
export function shapeOf(mesh: QuadMesh, element: number): number {
  const { x, y } = elementPlaces(mesh, element);
  let [least, most] = [Infinity, 0];
  for (const shapes of cornerShapes) {
    const { area } = stretchAt(shapes, x, y);
    least = Math.min(least, area);
    most = Math.max(most, Math.abs(area));
  }
  return least / most;
}

/** How badly the worst element is bent. */
export function worstShape(mesh: QuadMesh): number {
  let worst = 1;
  for (let element = 0; element < elementCount(mesh); element++)
    worst = Math.min(worst, shapeOf(mesh, element));
  return worst;
}

const cornerShapes = nodePlaces.map(([xi, eta]) => shapesAt(xi, eta));

function sum(nodes: readonly number[], at: readonly number[]): number {
  return nodes.reduce((total, node) => total + at[node]!, 0);
}
