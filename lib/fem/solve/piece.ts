/** What a structure is added up from: elements, springs and masses, each a small symmetric matrix. */

/** One element: the degrees of freedom it ties together, and how stiffly (or with how much mass). */
export interface Piece {
  /** Numbers of its degrees of freedom in the structure. */
  readonly dofs: Int32Array;
  /** Symmetric, one row after another, as many rows as degrees of freedom. */
  readonly matrix: Float64Array;
  /** Its middle, which decides when it is eliminated: x, y, z. */
  readonly middle: readonly [number, number, number];
}

/**
 * Adds matrix times vector over all pieces: forces from displacements.
 *
 * @param pieces of the structure
 * @param x one value a degree of freedom
 * @returns one value a degree of freedom
 */
export function timesPieces(pieces: readonly Piece[], x: Float64Array): Float64Array {
  const result = new Float64Array(x.length);
  for (const { dofs, matrix } of pieces) {
    const size = dofs.length;
    for (let i = 0; i < size; i++) {
      let sum = 0;
      for (let j = 0; j < size; j++) sum += matrix[i * size + j]! * x[dofs[j]!]!;
      result[dofs[i]!]! += sum;
    }
  }
  return result;
}
