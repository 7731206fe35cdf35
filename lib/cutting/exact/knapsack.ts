/** The most valuable fill of a bar: a bounded knapsack, solved on the list of sums worth keeping. */
import type { Cover, Fill, Remaining, Thresholds } from "./cover.js";

/** A type of piece as the knapsack sees it. */
interface Ware {
  readonly type: number;
  readonly size: number;
  readonly value: number;
  readonly count: number;
}

/** Sums reached so far: none is both longer and worth less than another. */
class Sums {
  readonly size: number[] = [0];
  readonly value: number[] = [0];
  readonly type: number[] = [-1];
  readonly before: number[] = [-1];
  /** Indices of the sums worth keeping, by size. */
  kept: number[] = [0];

  /** Adds one more piece to every kept sum that `worthwhile` lets pass. */
  add({ type, size, value }: Ware, worthwhile: (size: number, value: number) => boolean): void {
    const merged: number[] = [];
    let dearest = -1;
    const keep = (index: number): void => {
      if ((this.value[index] as number) <= dearest) return;
      dearest = this.value[index] as number;
      merged.push(index);
    };
    const old = this.kept;
    let next = 0;
    for (const index of old) {
      const longer = (this.size[index] as number) + size;
      const dearer = (this.value[index] as number) + value;
      while (next < old.length && (this.size[old[next] as number] as number) <= longer)
        keep(old[next++] as number);
      if (dearer > dearest && worthwhile(longer, dearer)) keep(this.push(longer, dearer, type, index));
    }
    while (next < old.length) keep(old[next++] as number);
    this.kept = merged;
  }

  private push(size: number, value: number, type: number, before: number): number {
    this.type.push(type);
    this.before.push(before);
    this.value.push(value);
    return this.size.push(size) - 1;
  }
}

/**
 * The most valuable fill of each stock, or undefined where none is worth more than its threshold.
 *
 * @param values of one piece of each type; types without a value are left out
 */
export function mostValuable(
  cover: Cover,
  { demand, supply }: Remaining,
  values: readonly number[],
  thresholds: Thresholds,
): readonly (Fill | undefined)[] {
  const wares = waresOf(cover, demand, values);
  const open = cover.stocks.flatMap(({ room }, stock) =>
    (supply[stock] as number) > 0 ? [{ room, above: thresholds[stock] as number }] : [],
  );
  const sums = new Sums();
  for (const [i, ware] of wares.entries()) {
    for (let copy = 1; copy <= ware.count; copy++) {
      // The rest of the bar is worth at most its length at the best rate still to come.
      const rate = copy < ware.count ? ware.value / ware.size : rateOf(wares[i + 1]);
      sums.add(ware, (size, value) =>
        open.some(({ room, above }) => size <= room && value + (room - size) * rate > above),
      );
    }
  }
  return cover.stocks.map(({ room }, stock) =>
    (supply[stock] as number) > 0
      ? bestWithin(sums, stock, room, thresholds[stock] as number, demand.length)
      : undefined,
  );
}

function waresOf({ sizes, stocks }: Cover, demand: readonly number[], values: readonly number[]): Ware[] {
  const longest = Math.max(...stocks.map(({ room }) => room));
  return sizes
    .map((size, type): Ware => {
      const count = Math.min(demand[type] as number, Math.floor(longest / size));
      return { type, size, value: values[type] as number, count };
    })
    .filter(({ value, count }) => value > 0 && count > 0)
    .sort((a, b) => rateOf(b) - rateOf(a) || b.size - a.size);
}

function rateOf(ware: Ware | undefined): number {
  return ware ? ware.value / ware.size : 0;
}

function bestWithin(sums: Sums, stock: number, room: number, above: number, types: number): Fill | undefined {
  const fitting = sums.kept.filter((index) => (sums.size[index] as number) <= room);
  const best = fitting.at(-1) as number;
  if (!((sums.value[best] as number) > above)) return undefined;
  const counts: number[] = Array.from({ length: types }, () => 0);
  for (let index = best; (sums.before[index] as number) >= 0; index = sums.before[index] as number) {
    const type = sums.type[index] as number;
    counts[type] = (counts[type] as number) + 1;
  }
  return { stock, counts };
}
