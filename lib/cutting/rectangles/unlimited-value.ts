/** The most valuable pieces from one sheet by straight cuts, as many of each as one likes: an exact dynamic programme. */
import { at } from "../../algebra/lists.js";
import type { Laid } from "./item.js";

/** A size of piece with its worth. */
export interface ValuedSize {
  /** Along the sheet; a whole number. */ readonly length: number;
  /** Across the sheet; a whole number. */ readonly width: number;
  /** Of one. */ readonly value: number;
  /** The piece in the list it came from. */ readonly piece: number;
}

/** Where a cut runs in the best use of a part. */
export type Use = { readonly along: boolean; readonly at: number } | ValuedSize | undefined;

/**
 * Best values of every part of a sheet that pieces laid side by side can make.
 *
 * @source Gilmore and Gomory 1966; Beasley 1985 for the places of cuts
 */
export class UnlimitedValues {
  /** Extents at which values may rise, ascending from 0. */
  readonly lengths: readonly number[];
  /** The same across. */
  readonly widths: readonly number[];
  private readonly best: Float64Array[];
  private readonly floorLength: Int32Array;
  private readonly floorWidth: Int32Array;

  constructor(
    private readonly sizes: readonly ValuedSize[],
    length: number,
    width: number,
  ) {
    this.lengths = sums(
      sizes.map((size) => size.length),
      length,
    );
    this.widths = sums(
      sizes.map((size) => size.width),
      width,
    );
    this.floorLength = floors(this.lengths, length);
    this.floorWidth = floors(this.widths, width);
    this.best = this.lengths.map(() => new Float64Array(this.widths.length));
    for (const i of this.lengths.keys()) for (const j of this.widths.keys()) this.fill(i, j);
  }

  /** The best value of a part. */
  valueOf(length: number, width: number): number {
    if (length < 0 || width < 0) return 0;
    return this.at(at(this.floorLength, length), at(this.floorWidth, width));
  }

  /** The pieces of the best use of a part, and where they lie. */
  piecesOf(length: number, width: number, x = 0, y = 0): (ValuedSize & Pick<Laid, "x" | "y">)[] {
    const i = at(this.floorLength, length);
    const j = at(this.floorWidth, width);
    const use = this.useOf(i, j);
    if (!use) return [];
    if ("value" in use) return [{ ...use, x, y }];
    const [l, w] = [at(this.lengths, i), at(this.widths, j)];
    return use.along
      ? [...this.piecesOf(l, use.at, x, y), ...this.piecesOf(l, w - use.at, x, y + use.at)]
      : [...this.piecesOf(use.at, w, x, y), ...this.piecesOf(l - use.at, w, x + use.at, y)];
  }

  private at(i: number, j: number): number {
    return at(at(this.best, i), j);
  }

  private fill(i: number, j: number): void {
    const [length, width] = [at(this.lengths, i), at(this.widths, j)];
    let most = 0;
    for (const size of this.sizes) {
      if (size.length <= length && size.width <= width && size.value > most) most = size.value;
    }
    for (let k = 1; k < i && 2 * at(this.lengths, k) <= length; k++) {
      const rest = at(this.floorLength, length - at(this.lengths, k));
      most = Math.max(most, this.at(k, j) + this.at(rest, j));
    }
    for (let k = 1; k < j && 2 * at(this.widths, k) <= width; k++) {
      const rest = at(this.floorWidth, width - at(this.widths, k));
      most = Math.max(most, this.at(i, k) + this.at(i, rest));
    }
    at(this.best, i)[j] = most;
  }

  /** What gave a part its value, found again. */
  private useOf(i: number, j: number): Use {
    const value = this.at(i, j);
    if (value === 0) return undefined;
    const [length, width] = [at(this.lengths, i), at(this.widths, j)];
    const size = this.sizes.find((one) => one.length <= length && one.width <= width && one.value === value);
    if (size) return size;
    for (const at of this.lengths.slice(1, i)) {
      if (this.valueOf(at, width) + this.valueOf(length - at, width) === value) return { along: false, at };
    }
    for (const at of this.widths.slice(1, j)) {
      if (this.valueOf(length, at) + this.valueOf(length, width - at) === value) return { along: true, at };
    }
    return undefined;
  }
}

/** Every sum of sizes from 0 up to a limit, ascending. */
function sums(sizes: readonly number[], limit: number): number[] {
  const reached = new Uint8Array(limit + 1);
  reached[0] = 1;
  for (const size of new Set(sizes)) {
    for (let sum = size; sum <= limit; sum++) if (reached[sum - size] === 1) reached[sum] = 1;
  }
  return [...reached.keys()].filter((sum) => reached[sum] === 1);
}

/** For every whole number up to a limit the index of the largest sum that is no larger. */
function floors(ascending: readonly number[], limit: number): Int32Array {
  const index = new Int32Array(limit + 1);
  let at = 0;
  for (let one = 0; one <= limit; one++) {
    if ((ascending[at + 1] ?? Number.POSITIVE_INFINITY) <= one) at++;
    index[one] = at;
  }
  return index;
}
