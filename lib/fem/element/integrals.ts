/** Integrals over an element of its shape functions and their slopes. */
import {
  nodesPerElement,
  type Shapes,
  type Slopes,
  type Stretch,
  shapesAt,
  slopesOf,
  squareNine,
  stretchAt,
} from "./shape.js";

/** An integration place: its shape functions, the same for every element. */
export interface Place {
  /** Shape functions and their slopes there. */
  readonly shapes: Shapes;
  /** Share of the square's area of 4. */
  readonly weight: number;
  /** Along the square's first axis, -1 to 1. */
  readonly xi: number;
  /** Along its second axis, -1 to 1. */
  readonly eta: number;
}

/** The nine integration places. */
export const places: readonly Place[] = squareNine.map(({ xi, eta, weight }) => ({
  shapes: shapesAt(xi, eta),
  weight,
  xi,
  eta,
}));

/** The stretch of an element at the nine places. */
export function stretches(x: Float64Array, y: Float64Array): readonly Stretch[] {
  return places.map(({ shapes }) => stretchAt(shapes, x, y));
}

/** Room that every element uses anew: slopes of the shape functions at one place. */
const scratch = { alongX: new Float64Array(nodesPerElement), alongY: new Float64Array(nodesPerElement) };

/** Numbers for each pair of nodes in slopeProducts. */
const perPair = 4;

/**
 * Integrals of slope times slope for each pair of nodes a, b: along x and x, x and y, y and x, y and y.
 *
 * @param at stretches at the nine places
 * @returns four values a pair, 9 pairs a row
 */
export function slopeProducts(at: readonly Stretch[]): Float64Array {
  const { alongX, alongY } = scratch;
  const result = new Float64Array(perPair * nodesPerElement ** 2);
  for (let place = 0; place < places.length; place++) {
    const { shapes, weight } = places[place]!;
    const { alongXi, alongEta } = shapes;
    const { xXi, yXi, xEta, yEta, area } = at[place]!;
    for (let node = 0; node < nodesPerElement; node++) {
      alongX[node] = (yEta * alongXi[node]! - yXi * alongEta[node]!) / area;
      alongY[node] = (xXi * alongEta[node]! - xEta * alongXi[node]!) / area;
    }
    for (let a = 0; a < nodesPerElement; a++) {
      const ax = alongX[a]! * area * weight;
      const ay = alongY[a]! * area * weight;
      for (let b = 0; b < nodesPerElement; b++) {
        const pair = perPair * (nodesPerElement * a + b);
        result[pair]! += ax * alongX[b]!;
        result[pair + 1]! += ax * alongY[b]!;
        result[pair + 2]! += ay * alongX[b]!;
        result[pair + 3]! += ay * alongY[b]!;
      }
    }
  }
  return result;
}

/** Integral of a product of shape functions with a weight: 9 rows. */
export function productMatrix(x: Float64Array, y: Float64Array): Float64Array {
  return integrated(x, y, ({ value }, _, a, b) => value[a]! * value[b]!);
}

/** Integral of w' N w': what in-plane forces Nx, Ny, Nxy (N/m, at the nine places) add to the stiffness of w. */
export function slopeMatrix(
  x: Float64Array,
  y: Float64Array,
  forces: readonly (readonly [number, number, number])[],
): Float64Array {
  return integrated(x, y, (_, { alongX, alongY }, a, b, place) => {
    const [nx, ny, nxy] = forces[place]!;
    const [ax, ay, bx, by] = [alongX[a]!, alongY[a]!, alongX[b]!, alongY[b]!];
    return nx * ax * bx + ny * ay * by + nxy * (ax * by + ay * bx);
  });
}

function integrated(
  x: Float64Array,
  y: Float64Array,
  value: (shapes: Shapes, slopes: Slopes, a: number, b: number, place: number) => number,
): Float64Array {
  const result = new Float64Array(nodesPerElement ** 2);
  places.forEach(({ shapes, weight }, place) => {
    const stretch = stretchAt(shapes, x, y);
    const slopes = slopesOf(shapes, stretch);
    for (let a = 0; a < nodesPerElement; a++) {
      for (let b = 0; b < nodesPerElement; b++)
        result[a * nodesPerElement + b]! += value(shapes, slopes, a, b, place) * stretch.area * weight;
    }
  });
  return result;
}

/** Integral of each shape function: how a pressure of 1 is shared among the nodes. */
export function nodeAreas(x: Float64Array, y: Float64Array): Float64Array {
  const result = new Float64Array(nodesPerElement);
  for (const { shapes, weight } of places) {
    const { area } = stretchAt(shapes, x, y);
    for (let node = 0; node < nodesPerElement; node++) result[node]! += shapes.value[node]! * area * weight;
  }
  return result;
}
