import type { Sheet } from "./sheet.js";

/** A matrix of an element from the places of its nodes and its make-up. */
export type ElementMatrix = (x: Float64Array, y: Float64Array, sheet: Sheet) => Float64Array;

/** Places nearer to each other than this are the same, m. */
const samePlace = 1e-12;

/**
 * Elements of the same shape and make-up share one matrix, which nobody may change: on a grid few differ.
 *
 * @param matrix works one out
 */
export function sharedMatrices(matrix: ElementMatrix): ElementMatrix {
  const known = new Map<string, Map<string, Float64Array>>();
  const makeUps = new Map<Sheet, string>();
  return (x, y, sheet) => {
    const makeUp = makeUps.get(sheet) ?? JSON.stringify(sheet);
    makeUps.set(sheet, makeUp);
    const own = known.get(makeUp) ?? new Map<string, Float64Array>();
    known.set(makeUp, own);
    const shape = shapeOf(x, y);
    const shared = own.get(shape) ?? matrix(x, y, sheet);
    own.set(shape, shared);
    return shared;
  };
}

/** Where the corners and middles lie from the first corner. */
function shapeOf(x: Float64Array, y: Float64Array): string {
  let key = "";
  for (let node = 1; node < x.length; node++)
    key += `${Math.round((x[node]! - x[0]!) / samePlace)} ${Math.round((y[node]! - y[0]!) / samePlace)} `;
  return key;
}
