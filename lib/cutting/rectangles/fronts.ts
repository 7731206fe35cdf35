/** The smallest boxes that a set of pieces can be cut from, remembered from one question to the next. */
import { at } from "../../algebra/lists.js";
import type { Patience } from "../patience.js";
import { type Box, type CutLevel, joined, single, topLevels } from "./boxes.js";
import type { Way } from "./item.js";

/** Lengths and widths by turns, of boxes none of which is smaller than another both ways. */
export type Front = readonly number[];

/** To look at one part of a set, and to join two numbers of fronts, in microseconds. */
const workOfPart = 0.15;
const workOfPair = 0.005;
/** To number one subset, in microseconds. */
const workOfSubset = 0.05;

/** The fronts of all sets of pieces met so far. */
export class Fronts {
  private readonly top: readonly number[];
  /** A set's number, by the number of the set without its last piece and that piece's type. */
  private readonly numbers = new Map<number, number>();
  /** By the number of a set, one front a level. */
  private readonly known: (readonly Front[] | undefined)[] = [undefined];

  /**
   * @param types how a piece of each type may lie
   * @param levels of cuts
   * @param length of the largest sheet
   * @param width of the largest sheet
   * @param patience told of the work
   */
  constructor(
    private readonly types: readonly (readonly Way[])[],
    private readonly levels: readonly CutLevel[],
    private readonly length: number,
    private readonly width: number,
    private readonly patience: Patience,
  ) {
    this.top = topLevels(levels);
  }

  /**
   * Whether the pieces of a set can be cut from a sheet.
   *
   * @param set types in ascending order, one entry a piece
   */
  goOn(set: readonly number[], length: number, width: number): boolean {
    const fronts = this.frontsOf(set, this.numbersOfSubsets(set));
    return this.top.some((level) => placeWithin(at(fronts, level), length, width) >= 0);
  }

  /** All boxes of a set, one list a level. */
  boxesOf(set: readonly number[]): readonly (readonly Box[])[] {
    const subsets = this.numbersOfSubsets(set);
    return this.frontsOf(set, subsets).map((front, level) =>
      pairs(front).map(([length, width]) =>
        this.boxOf(set, subsets, subsets.length - 1, level, length, width),
      ),
    );
  }

  private frontsOf(set: readonly number[], subsets: Int32Array): readonly Front[] {
    const whole = subsets.length - 1;
    const number = at(subsets, whole);
    if (this.known[number] === undefined) {
      for (let mask = 1; mask <= whole; mask++) {
        this.known[at(subsets, mask)] ??= this.join(set, mask, subsets);
      }
    }
    return this.frontsNumbered(number);
  }

  /** @throws RangeError when nothing is known yet of the set with this number */
  private frontsNumbered(number: number): readonly Front[] {
    const fronts = this.known[number];
    if (!fronts) throw new RangeError(`sheets: nothing is known of set ${number}`);
    return fronts;
  }

  /** The number of every subset, by its mask. */
  private numbersOfSubsets(set: readonly number[]): Int32Array {
    const subsets = new Int32Array(1 << set.length);
    this.patience.spend(subsets.length * workOfSubset);
    for (let place = 0; place < set.length; place++) {
      const bit = 1 << place;
      const type = at(set, place);
      for (let mask = 0; mask < bit; mask++) subsets[bit | mask] = this.numberOf(at(subsets, mask), type);
    }
    return subsets;
  }

  private numberOf(set: number, type: number): number {
    const key = set * this.types.length + type;
    const before = this.numbers.get(key);
    if (before !== undefined) return before;
    const number = this.known.push(undefined) - 1;
    this.numbers.set(key, number);
    return number;
  }

  private join(set: readonly number[], mask: number, subsets: Int32Array): readonly Front[] {
    const lowest = mask & -mask;
    if (mask === lowest) return this.singles(at(set, 31 - Math.clz32(mask)));
    if (this.hopeless(mask, subsets)) return this.levels.map(() => []);
    const fronts: number[][] = [];
    for (let level = 0; level < this.levels.length; level++) {
      const { directions, below } = at(this.levels, level);
      const front = below === undefined ? [] : [...at(fronts, below)];
      for (let part = (mask - 1) & mask; part > 0; part = (part - 1) & mask) {
        if ((part & lowest) === 0) continue;
        const near = at(this.frontsNumbered(at(subsets, part)), level);
        const far = at(this.frontsNumbered(at(subsets, mask ^ part)), level);
        this.patience.spend(workOfPart + workOfPair * near.length * far.length * directions.length);
        for (const direction of directions) this.joinAll(front, near, far, direction === "along");
      }
      fronts.push(front);
    }
    return fronts;
  }

  /** Whether some of the pieces alone already go into no box. */
  private hopeless(mask: number, subsets: Int32Array): boolean {
    for (let rest = mask; rest > 0; rest &= rest - 1) {
      const without = this.frontsNumbered(at(subsets, mask ^ (rest & -rest)));
      if (this.top.every((level) => at(without, level).length === 0)) return true;
    }
    return false;
  }

  private singles(type: number): readonly Front[] {
    const front: number[] = [];
    for (const { length, width } of at(this.types, type)) this.offer(front, length, width);
    return this.levels.map(() => front);
  }

  private joinAll(front: number[], near: Front, far: Front, along: boolean): void {
    // The innermost loop of the search: its indices are within by their bounds.
    for (let i = 0; i < near.length; i += 2) {
      const length = near[i] as number;
      const width = near[i + 1] as number;
      for (let j = 0; j < far.length; j += 2) {
        const otherLength = far[j] as number;
        const otherWidth = far[j + 1] as number;
        if (along) this.offer(front, Math.max(length, otherLength), width + otherWidth);
        else this.offer(front, length + otherLength, Math.max(width, otherWidth));
      }
    }
  }

  /** Adds a box unless it is too large for every sheet or another is no larger, and drops what it undercuts. */
  private offer(front: number[], length: number, width: number): void {
    if (length > this.length || width > this.width) return;
    for (let i = 0; i < front.length; i += 2) {
      if ((front[i] as number) <= length && (front[i + 1] as number) <= width) return;
    }
    let kept = 0;
    for (let i = 0; i < front.length; i += 2) {
      const [oneLength, oneWidth] = [front[i] as number, front[i + 1] as number];
      if (oneLength >= length && oneWidth >= width) continue;
      front[kept] = oneLength;
      front[kept + 1] = oneWidth;
      kept += 2;
    }
    front.length = kept;
    front.push(length, width);
  }

  /**
   * How a box of a subset was made, found again.
   *
   * @throws RangeError when no cut gives the box, which is a mistake in the program
   */
  private boxOf(
    set: readonly number[],
    subsets: Int32Array,
    mask: number,
    level: number,
    length: number,
    width: number,
  ): Box {
    if ((mask & (mask - 1)) === 0) {
      const type = at(set, 31 - Math.clz32(mask));
      const ways = at(this.types, type);
      return single(type, ways.find((way) => way.length === length && way.width === width) as Way);
    }
    const { directions, below } = at(this.levels, level);
    const known = (part: number, one: number): Front => at(this.frontsNumbered(at(subsets, part)), one);
    if (below !== undefined && pairs(known(mask, below)).some(([l, w]) => l === length && w === width)) {
      return this.boxOf(set, subsets, mask, below, length, width);
    }
    for (let part = (mask - 1) & mask; part > 0; part = (part - 1) & mask) {
      for (const [l, w] of pairs(known(part, level))) {
        for (const [otherL, otherW] of pairs(known(mask ^ part, level))) {
          for (const direction of directions) {
            const along = direction === "along";
            if ((along ? Math.max(l, otherL) : l + otherL) !== length) continue;
            if ((along ? w + otherW : Math.max(w, otherW)) !== width) continue;
            const near = this.boxOf(set, subsets, part, level, l, w);
            return joined(near, this.boxOf(set, subsets, mask ^ part, level, otherL, otherW), direction);
          }
        }
      }
    }
    throw new RangeError("sheets: a box of pieces has no cuts");
  }
}

function placeWithin(front: Front, length: number, width: number): number {
  for (let i = 0; i < front.length; i += 2) {
    if ((front[i] as number) <= length && (front[i + 1] as number) <= width) return i;
  }
  return -1;
}

function pairs(front: Front): readonly (readonly [number, number])[] {
  return Array.from(
    { length: front.length / 2 },
    (_, i) => [at(front, 2 * i), at(front, 2 * i + 1)] as const,
  );
}
