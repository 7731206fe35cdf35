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
  for (let element = 0; element < elementCount(mesh); element++) {
    const { x, y } = elementPlaces(mesh, element);
    if (!isNear(x, place.x) || !isNear(y, place.y)) continue;
    const { x: xi, y: eta } = inSquare(x, y, place);
    if (Math.max(Math.abs(xi), Math.abs(eta)) < 1 + slack)
      return { element, nodes: elementNodes(mesh, element), weights: shapesAt(xi, eta).value };
  }
  throw new Refusal(`panel: the place ${place.x}, ${place.y} m lies on no material`);
}

function isNear(values: Float64Array, at: number): boolean {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const margin = 0.05 * (high - low);
  return at >= low - margin && at <= high + margin;
}

/** The place in the element's square, by Newton's steps. */
function inSquare(x: Float64Array, y: Float64Array, place: Point2): Point2 {
  let [xi, eta] = [0, 0];
  for (let step = 0; step < 12; step++) {
    const shapes = shapesAt(xi, eta);
    const { xXi, xEta, yXi, yEta, area } = stretchAt(shapes, x, y);
    const offX = place.x - weighted(shapes.value, x);
    const offY = place.y - weighted(shapes.value, y);
    xi += (offX * yEta - offY * xEta) / area;
    eta += (offY * xXi - offX * yXi) / area;
  }
  return { x: xi, y: eta };
}

function weighted(weights: Float64Array, values: Float64Array): number {
  let sum = 0;
  for (let node = 0; node < nodesPerElement; node++) sum += entry(weights, node) * entry(values, node);
  return sum;
}
