/** Small words round numbers and lists. */
import { listed } from "../findings/index.js";

/** "1 rivet", "12 rivets", "2 leaves". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** Codes with those that follow each other told together: "S1 and S3 to S9". */
export function codeRanges(codes: readonly string[]): string {
  const runs: string[][] = [];
  for (const code of codes) {
    const run = runs.at(-1);
    const last = run?.at(-1) ?? "";
    const next = last.replace(/\d+$/, (digits) => `${Number(digits) + 1}`);
    if (run && code === next) run.push(code);
    else runs.push([code]);
  }
  return listed(runs.flatMap((run) => (run.length > 2 ? [`${run[0]} to ${run.at(-1)}`] : run)));
}

/** Every text once, in the order of first mention. */
export function distinct<Item>(items: readonly Item[]): Item[] {
  return [...new Set(items)];
}

/** Things that share a name; there is always at least one. */
export type Group<Item> = readonly [Item, ...Item[]];

/** Things by the name of what they share, in the order of first mention. */
export function grouped<Item>(
  items: readonly Item[],
  nameOf: (item: Item) => string,
): readonly (readonly [string, Group<Item>])[] {
  const groups = new Map<string, [Item, ...Item[]]>();
  for (const item of items) {
    const group = groups.get(nameOf(item));
    if (group) group.push(item);
    else groups.set(nameOf(item), [item]);
  }
  return [...groups];
}

/** Sum of a number of each. */
export function total<Item>(items: readonly Item[], numberOf: (item: Item) => number): number {
  return items.reduce((sum, item) => sum + numberOf(item), 0);
}
