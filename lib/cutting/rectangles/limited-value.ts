/** The most valuable pieces from one sheet by straight cuts, no more of each than asked for: exact best-first search. */
import { at } from "../../algebra/lists.js";
import type { Patience } from "../patience.js";
import { UnlimitedValues, type ValuedSize } from "./unlimited-value.js";

/** A size of piece with its worth and how many may be cut. */
export interface LimitedSize extends ValuedSize {
  /** Of the piece, in this size and any other it may lie in. */ readonly max: number;
}

/** How many of each piece may be cut. */
export function limitsOf(sizes: readonly LimitedSize[]): number[] {
  const limits: number[] = [];
  for (const { piece, max } of sizes) limits[piece] = max;
  return Array.from(limits, (max) => max ?? 0);
}

/** One size a piece, the most valuable for its area first. */
export function densestFirst(sizes: readonly LimitedSize[]): LimitedSize[] {
  const one = new Map(sizes.map((size) => [size.piece, size]));
  return [...one.values()].sort((a, b) => density(b) - density(a));
}

/** What a search came to. */
export interface BestValue {
  /** Of the pieces found. */ readonly value: number;
  /** No choice of pieces is worth more. */ readonly bound: number;
  /** The pieces and where they lie. */
  readonly pieces: readonly (ValuedSize & { readonly x: number; readonly y: number })[];
}

/** A rectangle put together from pieces by straight seams. */
interface Built {
  /** Along the sheet, in steps. */ readonly length: number;
  /** Across the sheet, in steps. */ readonly width: number;
  /** Worth of all its pieces. */ readonly value: number;
  /** One number a piece. */ readonly counts: readonly number[];
  /** The most a whole sheet with it can be worth. */ readonly hope: number;
  /** The piece it is, or the two it was put together from. */
  readonly made: LimitedSize | { readonly along: boolean; readonly near: Built; readonly far: Built };
}

/**
 * Builds rectangles from pieces, the most promising first: each taken up is joined with all taken up before,
 * side by side both ways. What a rectangle can still become is bounded by the unlimited values of the rest
 * of the sheet and by the area left for the pieces left.
 *
 * @source Viswanathan and Bagchi 1993
 */
export function limitedValue(
  sizes: readonly LimitedSize[],
  length: number,
  width: number,
  patience: Patience,
): BestValue {
  return new Builder(sizes, length, width).run(patience);
}

/** To join two rectangles, in microseconds. */
const workOfJoin = 2;

class Builder {
  private readonly around: (length: number, width: number) => number;
  private readonly waiting = new Heap<Built>(({ hope }) => hope);
  private readonly taken: Built[] = [];
  private readonly met = new Map<string, [number, number][]>();
  private readonly dense: readonly LimitedSize[];
  private readonly limits: readonly number[];
  private best: Built | undefined;

  constructor(
    sizes: readonly LimitedSize[],
    private readonly length: number,
    private readonly width: number,
  ) {
    const values = new UnlimitedValues(sizes, length, width);
    this.around = surroundings(values, length, width);
    this.dense = densestFirst(sizes);
    this.limits = limitsOf(sizes);
    for (const size of sizes) {
      const counts = this.limits.map((_, piece) => Number(piece === size.piece));
      if (size.max > 0) this.offer(size.length, size.width, counts, size.value, size);
    }
  }

  run(patience: Patience): BestValue {
    for (let next = this.waiting.pop(); next; next = this.waiting.pop()) {
      if (next.hope <= this.value + 1e-9) break;
      patience.spend(this.taken.length * workOfJoin);
      if (patience.isOver) return this.answer(next.hope);
      this.taken.push(next);
      for (const other of this.taken) this.join(next, other);
    }
    return this.answer(this.value);
  }

  private get value(): number {
    return this.best?.value ?? 0;
  }

  private join(a: Built, b: Built): void {
    const side = a.length + b.length <= this.length;
    const stacked = a.width + b.width <= this.width;
    if (!side && !stacked) return;
    const counts = a.counts.map((count, i) => count + at(b.counts, i));
    if (counts.some((count, i) => count > at(this.limits, i))) return;
    const value = a.value + b.value;
    if (side)
      this.offer(a.length + b.length, Math.max(a.width, b.width), counts, value, {
        along: false,
        near: a,
        far: b,
      });
    if (stacked)
      this.offer(Math.max(a.length, b.length), a.width + b.width, counts, value, {
        along: true,
        near: a,
        far: b,
      });
  }

  private offer(
    length: number,
    width: number,
    counts: readonly number[],
    value: number,
    made: Built["made"],
  ): void {
    if (length > this.length || width > this.width) return;
    const hope =
      value +
      Math.min(this.around(length, width), this.byArea(this.length * this.width - length * width, counts));
    if (hope <= this.value + 1e-9 && this.best) return;
    if (this.dominated(length, width, counts)) return;
    const built = { length, width, counts, value, hope, made };
    if (value > this.value) this.best = built;
    this.waiting.push(built);
  }

  /** Whether the same pieces were already put together no larger. */
  private dominated(length: number, width: number, counts: readonly number[]): boolean {
    const key = counts.join();
    const before = this.met.get(key) ?? [];
    if (before.some(([l, w]) => l <= length && w <= width)) return true;
    this.met.set(key, [...before, [length, width]]);
    return false;
  }

  /** The most pieces left can add in an area, the most valuable for their size first, the last in part. */
  private byArea(area: number, counts: readonly number[]): number {
    let room = area;
    let value = 0;
    for (const size of this.dense) {
      const left = size.max - at(counts, size.piece);
      const used = Math.min(left * size.length * size.width, room);
      value += used * density(size);
      room -= used;
      if (room <= 0) break;
    }
    return value;
  }

  private answer(bound: number): BestValue {
    return {
      value: this.value,
      bound: Math.max(bound, this.value),
      pieces: this.best ? laidOut(this.best, 0, 0) : [],
    };
  }
}

/** Worth of a unit of area. */
export function density({ value, length, width }: ValuedSize): number {
  return value / (length * width);
}

function laidOut({ made }: Built, x: number, y: number): BestValue["pieces"] {
  if ("value" in made) return [{ ...made, x, y }];
  const { along, near, far } = made;
  return [...laidOut(near, x, y), ...laidOut(far, along ? x : x + near.length, along ? y + near.width : y)];
}

/**
 * The most the rest of a sheet can add around a rectangle in its corner, the pieces there without limit. Strips are
 * added as wide as some pieces side by side, or a unit at a time of waste.
 */
function surroundings(
  values: UnlimitedValues,
  length: number,
  width: number,
): (l: number, w: number) => number {
  const most = Array.from({ length: length + 1 }, () => new Float64Array(width + 1));
  for (let l = length; l >= 0; l--) {
    const line = at(most, l);
    for (let w = width; w >= 0; w--) {
      let best = Math.max(most[l + 1]?.[w] ?? 0, line[w + 1] ?? 0);
      for (const more of values.lengths) {
        if (l + more > length) break;
        if (more > 0) best = Math.max(best, values.valueOf(more, w) + at(at(most, l + more), w));
      }
      for (const more of values.widths) {
        if (w + more > width) break;
        if (more > 0) best = Math.max(best, values.valueOf(l, more) + at(line, w + more));
      }
      line[w] = best;
    }
  }
  return (l, w) => at(at(most, l), w);
}

/** Hands out the thing with the largest rank first. */
class Heap<Thing> {
  private readonly things: Thing[] = [];

  constructor(private readonly rank: (thing: Thing) => number) {}

  /** Puts a thing in. */
  push(thing: Thing): void {
    let place = this.things.push(thing) - 1;
    while (place > 0) {
      const above = (place - 1) >> 1;
      if (this.rank(at(this.things, above)) >= this.rank(thing)) break;
      this.things[place] = at(this.things, above);
      place = above;
    }
    this.things[place] = thing;
  }

  /** Takes out the thing with the largest rank. */
  pop(): Thing | undefined {
    const top = this.things[0];
    const last = this.things.pop();
    if (last !== undefined && this.things.length > 0) this.sink(last);
    return top;
  }

  private sink(thing: Thing): void {
    let place = 0;
    for (;;) {
      const left = 2 * place + 1;
      if (left >= this.things.length) break;
      const right = left + 1;
      const larger =
        right < this.things.length && this.rank(at(this.things, right)) > this.rank(at(this.things, left))
          ? right
          : left;
      if (this.rank(at(this.things, larger)) <= this.rank(thing)) break;
      this.things[place] = at(this.things, larger);
      place = larger;
    }
    this.things[place] = thing;
  }
}
