import { at as entry } from "../../algebra/lists.js";
import { Refusal } from "../../refusal.js";
import type { Point2 } from "../../shape/index.js";
import { nodesPerElement, shapesAt, stretchAt } from "../element/index.js";
import { elementCount, elementNodes, elementPlaces, type QuadMesh } from "../mesh/index.js";

/** Where a place lies in the mesh: an element, and the weights of its nodes. */
export interface Location {
  /** Number of the element. */
  readonly element: number;
  /** Its nine nodes. */
  readonly nodes: Int32Array;
  /** How much each of those nodes counts; they add up to 1. */
  readonly weights: Float64Array;
}

/** How far outside the square a place may come out, for places on the rim. */
const slack = 1e-3;

/**
 * Finds the element of a place.
 *
 * @throws Refusal when the place lies in no element
 */
export function locate(mesh: QuadMesh, place: Point2): Location {
  const near = reachesOf(mesh);
  for (let element = 0; element < elementCount(mesh); element++) {
    if (!isNear(near, element, place)) continue;
    const { x, y } = elementPlaces(mesh, element);
    const { x: xi, y: eta } = inSquare(x, y, place);
    if (Math.max(Math.abs(xi), Math.abs(eta)) < 1 + slack)
      return { element, nodes: elementNodes(mesh, element), weights: shapesAt(xi, eta).value };
  }
  throw new Refusal(`panel: the place ${place.x}, ${place.y} m lies on no material`);
}

/** How far each element reaches, with a margin: lowest and highest x, lowest and highest y. */
const sides = 4;
const reaches = new WeakMap<QuadMesh, Float64Array>();

function reachesOf(mesh: QuadMesh): Float64Array {
  const known = reaches.get(mesh);
  if (known) return known;
  const found = new Float64Array(sides * elementCount(mesh));
  for (let element = 0; element < elementCount(mesh); element++) {
    const { x, y } = elementPlaces(mesh, element);
    found.set([...reachOf(x), ...reachOf(y)], sides * element);
  }
  reaches.set(mesh, found);
  return found;
}

function reachOf(values: Float64Array): readonly [number, number] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const margin = 0.05 * (high - low);
  return [low - margin, high + margin];
}

function isNear(near: Float64Array, element: number, { x, y }: Point2): boolean {
  const at = sides * element;
  return (
    x >= entry(near, at) && x <= entry(near, at + 1) && y >= entry(near, at + 2) && y <= entry(near, at + 3)
  );
}

const mostSteps = 12;
/** A step of less changes nothing any more. */
const roundOff = 1e-15;

/** The place in the element's square, by Newton's steps. */
function inSquare(x: Float64Array, y: Float64Array, place: Point2): Point2 {
  let [xi, eta] = [0, 0];
  for (let step = 0; step < mostSteps; step++) {
    const shapes = shapesAt(xi, eta);
    const { xXi, xEta, yXi, yEta, area } = stretchAt(shapes, x, y);
    const offX = place.x - weighted(shapes.value, x);
    const offY = place.y - weighted(shapes.value, y);
    const [byXi, byEta] = [(offX * yEta - offY * xEta) / area, (offY * xXi - offX * yXi) / area];
    xi += byXi;
    eta += byEta;
    if (Math.abs(byXi) + Math.abs(byEta) < roundOff) break;
  }
  return { x: xi, y: eta };
}

function weighted(weights: Float64Array, values: Float64Array): number {
  let sum = 0;
  for (let node = 0; node < nodesPerElement; node++) sum += entry(weights, node) * entry(values, node);
  return sum;
}
