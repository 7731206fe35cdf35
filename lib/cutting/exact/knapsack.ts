/** The most valuable fill of a bar: a bounded knapsack, solved on the list of sums worth keeping. */
import { at } from "../../algebra/lists.js";
import type { Patience } from "../patience.js";
import type { Cover, Fill, Remaining, Thresholds } from "./cover.js";

/** A type of piece as the knapsack sees it. */
interface Ware {
  /** Index of the type of piece. */ readonly type: number;
  /** Of one, in the unit of the cover. */ readonly size: number;
  /** Of one. */ readonly value: number;
  /** How many may be taken. */ readonly count: number;
}

/** One sum of pieces. */
interface Sum {
  /** Of all its pieces. */ readonly size: number;
  /** Of all its pieces. */ readonly value: number;
  /** The piece added last, and what it was added to; missing of no pieces. */
  readonly made?: { readonly type: number; readonly before: Sum };
}

/** To add a piece to one sum, in microseconds. */
const workOfSum = 0.05;

/** The sums worth keeping with one more piece added to each that `worthwhile` lets pass: none is both longer and worth less than another. */
function withOneMore(
  old: readonly Sum[],
  { type, size, value }: Ware,
  worthwhile: (size: number, value: number) => boolean,
): Sum[] {
  const merged: Sum[] = [];
  let dearest = -1;
  const keep = (sum: Sum): void => {
    if (sum.value <= dearest) return;
    dearest = sum.value;
    merged.push(sum);
  };
  let next = 0;
  for (const before of old) {
    const longer = before.size + size;
    const dearer = before.value + value;
    for (let one = old[next]; one && one.size <= longer; one = old[++next]) keep(one);
    if (dearer > dearest && worthwhile(longer, dearer))
      keep({ size: longer, value: dearer, made: { type, before } });
  }
  for (let one = old[next]; one; one = old[++next]) keep(one);
  return merged;
}

/**
 * The most valuable fill of each stock, or undefined where none is worth more than its threshold.
 *
 * @param values of one piece of each type; types without a value are left out
 * @param patience told of the work
 */
export function mostValuable(
  cover: Cover,
  { demand, supply }: Remaining,
  values: readonly number[],
  thresholds: Thresholds,
  patience: Patience,
): readonly (Fill | undefined)[] {
  const wares = waresOf(cover, demand, values);
  const open = cover.stocks.flatMap(({ room }, stock) =>
    at(supply, stock) > 0 ? [{ room, above: at(thresholds, stock) }] : [],
  );
  let sums: readonly Sum[] = [{ size: 0, value: 0 }];
  for (const [i, ware] of wares.entries()) {
    for (let copy = 1; copy <= ware.count; copy++) {
      // The rest of the bar is worth at most its length at the best rate still to come.
      const rate = copy < ware.count ? ware.value / ware.size : rateOf(wares[i + 1]);
      patience.spend(sums.length * workOfSum);
      sums = withOneMore(sums, ware, (size, value) =>
        open.some(({ room, above }) => size <= room && value + (room - size) * rate > above),
      );
    }
  }
  return cover.stocks.map(({ room }, stock) =>
    at(supply, stock) > 0 ? bestWithin(sums, stock, room, at(thresholds, stock), demand.length) : undefined,
  );
}

function waresOf({ sizes, stocks }: Cover, demand: readonly number[], values: readonly number[]): Ware[] {
  const longest = Math.max(...stocks.map(({ room }) => room));
  return sizes
    .map((size, type): Ware => {
      const count = Math.min(at(demand, type), Math.floor(longest / size));
      return { type, size, value: at(values, type), count };
    })
    .filter(({ value, count }) => value > 0 && count > 0)
    .sort((a, b) => rateOf(b) - rateOf(a) || b.size - a.size);
}

function rateOf(ware: Ware | undefined): number {
  return ware ? ware.value / ware.size : 0;
}

function bestWithin(
  sums: readonly Sum[],
  stock: number,
  room: number,
  above: number,
  types: number,
): Fill | undefined {
  const best = sums.findLast(({ size }) => size <= room);
  if (!best || !(best.value > above)) return undefined;
  const counts: number[] = Array.from({ length: types }, () => 0);
  for (let { made } = best; made; { made } = made.before) counts[made.type] = at(counts, made.type) + 1;
  return { stock, counts };
}
