/**
 * The place of a cone nearest to another: least squares with shares that may not be negative (C. L. Lawson, R. J.
 * Hanson, Solving Least Squares Problems, 1974, ch. 23), and bases of what vectors reach and do not reach.
 */
import { at } from "./lists.js";

/** The nearest place of a cone. */
export interface ConeFit {
  /** How much of each column, none negative. */
  readonly shares: Float64Array;
  /**
   * What is left: the place looked for less the nearest of the cone. Where it is not nothing, it leans away from every
   * column and towards the place: no place of the cone is there.
   */
  readonly rest: Float64Array;
}

/** A column counts as leaning towards a rest from this share of both lengths on. */
const roundOff = 1e-13;

/**
 * The place nearest to `right` among all sums of columns with shares that are not negative. Columns are taken one by
 * one, that which leans most towards what is left first, and given back where their share would be negative. What is
 * left gets shorter with each, so that no choice comes twice and the search ends.
 *
 * @param columns of the cone
 * @param right the place looked for
 */
export function nearestInCone(columns: readonly Float64Array[], right: Float64Array): ConeFit {
  const lengths = columns.map(lengthOf);
  let found: ConeFit = { shares: new Float64Array(columns.length), rest: right.slice() };
  for (;;) {
    const { shares, rest } = found;
    const left = lengthOf(rest);
    const lean = (j: number): number => (shares[j] ? 0 : product(at(columns, j), rest) / at(lengths, j));
    const best = columns.reduce((most, _, j) => (lean(j) > lean(most) ? j : most), 0);
    if (columns.length === 0 || !(lean(best) > roundOff * lengthOf(right))) return found;
    const next = withColumn(columns, right, shares, best);
    if (!(lengthOf(next.rest) < left)) return found;
    found = next;
  }
}

/** The fit with one more column, less those whose shares it takes away. */
function withColumn(
  columns: readonly Float64Array[],
  right: Float64Array,
  before: Float64Array,
  more: number,
): ConeFit {
  let shares = before.slice();
  let taken = [...columns.keys()].filter((j) => before[j] !== 0 || j === more);
  for (;;) {
    const own = taken.map((j) => at(columns, j));
    const fit = fitOf(own, right);
    const wrong = taken.flatMap((j, k) => (at(fit.shares, k) > 0 ? [] : [{ j, share: at(fit.shares, k) }]));
    const step = wrong.reduce(
      (least, { j, share }) => Math.min(least, at(shares, j) / (at(shares, j) - share || 1)),
      1,
    );
    const next = new Float64Array(columns.length);
    taken.forEach((j, k) => {
      next[j] = at(shares, j) + step * (at(fit.shares, k) - at(shares, j));
    });
    if (wrong.length === 0) return { shares: next, rest: fit.rest };
    const gone = wrong.reduce((least, one) => (at(next, one.j) < at(next, least.j) ? one : least));
    next[gone.j] = 0;
    shares = next;
    taken = taken.filter((j) => at(next, j) > 0);
  }
}

/** Least squares over a few independent columns. */
function fitOf(columns: readonly Float64Array[], right: Float64Array): ConeFit {
  const basis: Float64Array[] = [];
  const triangle = columns.map((column) => {
    const { along, rest } = without(column, basis);
    const length = lengthOf(rest);
    basis.push(rest.map((value) => value / length));
    return [...along, length];
  });
  const { along, rest } = without(right, basis);
  const shares = new Float64Array(columns.length);
  for (let j = columns.length - 1; j >= 0; j--) {
    let value = at(along, j);
    for (let k = j + 1; k < columns.length; k++) value -= at(at(triangle, k), j) * at(shares, k);
    shares[j] = value / at(at(triangle, j), j);
  }
  return { shares, rest };
}

/** A vector less what lies along orthonormal ones, taken twice for the sake of round-off. */
function without(
  vector: Float64Array,
  basis: readonly Float64Array[],
): { readonly along: readonly number[]; readonly rest: Float64Array } {
  const along = new Array<number>(basis.length).fill(0);
  const rest = vector.slice();
  for (let pass = 0; pass < 2; pass++)
    for (const [k, unit] of basis.entries()) {
      const share = product(unit, rest);
      if (share === 0) continue;
      along[k] = at(along, k) + share;
      for (let i = 0; i < rest.length; i++) rest[i]! -= share * unit[i]!;
    }
  return { along, rest };
}

/** A vector this short beside its own length depends on those before it: a lever of 10 micrometres in a metre. */
const dependent = 1e-5;

/**
 * Orthonormal vectors that, with the given ones, reach every place: what the given ones do not reach.
 *
 * @param vectors given
 * @param size entries of each
 */
export function outOfReach(vectors: readonly Float64Array[], size: number): readonly Float64Array[] {
  const basis: Float64Array[] = [];
  for (const vector of vectors) {
    if (basis.length === size) return [];
    const { rest } = without(vector, basis);
    const length = lengthOf(rest);
    if (length > dependent * lengthOf(vector)) basis.push(rest.map((value) => value / length));
  }
  const reached = basis.length;
  const axes = Array.from({ length: size }, (_, k) =>
    Float64Array.from({ length: size }, (_axis, i) => +(i === k)),
  );
  while (basis.length < size) {
    const rests = axes.map((axis) => without(axis, basis).rest);
    const longest = rests.reduce((best, rest) => (lengthOf(rest) > lengthOf(best) ? rest : best));
    const length = lengthOf(longest);
    basis.push(longest.map((value) => value / length));
  }
  return basis.slice(reached);
}

/** Scalar product of two vectors of one length. */
export function product(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

/** Length of a vector. */
export function lengthOf(vector: Float64Array): number {
  return Math.sqrt(product(vector, vector));
}
