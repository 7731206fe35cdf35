/** Places and weights of numerical integration on a square from -1 to 1 (Gauss and Legendre). */

/** A place in a square element, and its share of the area of 4. */
export interface SquarePoint {
  readonly xi: number;
  readonly eta: number;
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
