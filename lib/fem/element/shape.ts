/**
 * The nine-node square: four corners counterclockwise, four middles of sides from the side after the first
 * corner, and the centre. Any text on finite elements (Lagrange's square).
 */

/** Nodes of an element. */
export const nodesPerElement = 9;

/** Where the nodes lie in the square. */
export const nodePlaces: readonly (readonly [number, number])[] = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
  [0, -1],
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, 0],
];

/** Shape functions and their slopes at a place of the square, one value a node. */
export interface Shapes {
  /** The shape functions. */
  readonly value: Float64Array;
  /** Their slopes along the square's first axis. */
  readonly alongXi: Float64Array;
  /** Their slopes along its second axis. */
  readonly alongEta: Float64Array;
}

/** Shape functions at a place of the square. */
export function shapesAt(xi: number, eta: number): Shapes {
  const shapes = {
    value: new Float64Array(nodesPerElement),
    alongXi: new Float64Array(nodesPerElement),
    alongEta: new Float64Array(nodesPerElement),
  };
  for (let node = 0; node < nodesPerElement; node++) {
    const [x, y] = nodePlaces[node]!;
    shapes.value[node] = lagrange(x, xi) * lagrange(y, eta);
    shapes.alongXi[node] = slope(x, xi) * lagrange(y, eta);
    shapes.alongEta[node] = lagrange(x, xi) * slope(y, eta);
  }
  return shapes;
}

/** The parabola that is 1 at its node and 0 at the two others of -1, 0, 1. */
function lagrange(node: number, at: number): number {
  return node === 0 ? 1 - at * at : (at * (at + node)) / 2;
}

function slope(node: number, at: number): number {
  return node === 0 ? -2 * at : at + node / 2;
}

/** The parabolas of a side's three nodes, from -1 to 1. */
export function sideShapes(at: number): readonly [number, number, number] {
  return [(at * (at - 1)) / 2, 1 - at * at, (at * (at + 1)) / 2];
}

/** How the square lies on the panel at one place: the slopes of x and y, and the area it stretches to. */
export interface Stretch {
  /** Slope of x along the square's first axis, m. */
  readonly xXi: number;
  /** Slope of y along the square's first axis, m. */
  readonly yXi: number;
  /** Slope of x along the square's second axis, m. */
  readonly xEta: number;
  /** Slope of y along the square's second axis, m. */
  readonly yEta: number;
  /** Area of the panel on each unit of the square's area, m2; negative when folded. */
  readonly area: number;
}

/** The stretch of an element, from the places of its nodes. */
export function stretchAt({ alongXi, alongEta }: Shapes, x: Float64Array, y: Float64Array): Stretch {
  let [xXi, yXi, xEta, yEta] = [0, 0, 0, 0];
  for (let node = 0; node < nodesPerElement; node++) {
    xXi += alongXi[node]! * x[node]!;
    yXi += alongXi[node]! * y[node]!;
    xEta += alongEta[node]! * x[node]!;
    yEta += alongEta[node]! * y[node]!;
  }
  return { xXi, yXi, xEta, yEta, area: xXi * yEta - xEta * yXi };
}

/** Slopes of the shape functions along x and y of the panel. */
export interface Slopes {
  /** Slopes along x, one a node, 1/m. */
  readonly alongX: Float64Array;
  /** Slopes along y, one a node, 1/m. */
  readonly alongY: Float64Array;
}

/** Slopes on the panel from those in the square. */
export function slopesOf({ alongXi, alongEta }: Shapes, stretch: Stretch): Slopes {
  const { xXi, yXi, xEta, yEta, area } = stretch;
  const [alongX, alongY] = [new Float64Array(nodesPerElement), new Float64Array(nodesPerElement)];
  for (let node = 0; node < nodesPerElement; node++) {
    alongX[node] = (yEta * alongXi[node]! - yXi * alongEta[node]!) / area;
    alongY[node] = (xXi * alongEta[node]! - xEta * alongXi[node]!) / area;
  }
  return { alongX, alongY };
}

/** A place in a square element, and its share of the area of 4. */
export interface SquarePoint {
  /** Along the square's first axis, -1 to 1. */
  readonly xi: number;
  /** Along its second axis, -1 to 1. */
  readonly eta: number;
  /** Share of the square's area of 4. */
  readonly weight: number;
}

const far = Math.sqrt(0.6);
/** Three places on a line, exact to the fifth power. */
export const lineThree: readonly { readonly at: number; readonly weight: number }[] = [
  { at: -far, weight: 5 / 9 },
  { at: 0, weight: 8 / 9 },
  { at: far, weight: 5 / 9 },
];

/** Nine places: exact for the nine-node square. */
export const squareNine: readonly SquarePoint[] = lineThree.flatMap(({ at: eta, weight: across }) =>
  lineThree.map(({ at: xi, weight }) => ({ xi, eta, weight: weight * across })),
);

/** Distance of the four places of reduced integration, where strains are most exact (J. Barlow, 1976). */
export const nearHalf: number = 1 / Math.sqrt(3);

/** Those four places, in the order of an element's corners. */
export const squareFour: readonly SquarePoint[] = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
].map(([xi = 0, eta = 0]) => ({ xi: xi * nearHalf, eta: eta * nearHalf, weight: 1 }));
