/** Orders pieces for filling: a few sensible orders, then chance. */
import { pick } from "../../algebra/random.js";
import { compareNames } from "../purchase.js";
import { areaOf, type Item } from "./item.js";

/** Measures by which the largest piece comes first. */
const measures: readonly ((item: Item) => number)[] = [
  areaOf,
  ({ ways }) => Math.max(...ways.flatMap(({ length, width }) => [length, width])),
  ({ ways: [way] }) => way?.width ?? 0,
  ({ ways: [way] }) => way?.length ?? 0,
  ({ ways: [way] }) => (way ? way.length + way.width : 0),
];

/** The pieces in each of the sensible orders; names settle ties. */
export function sensibleOrders(items: readonly Item[]): Item[][] {
  return measures.map((measure) =>
    [...items].sort(
      (a, b) => measure(b) - measure(a) || areaOf(b) - areaOf(a) || compareNames(a.name, b.name),
    ),
  );
}

/** The same pieces with one moved, or two exchanged. */
export function shuffled(items: readonly Item[], next: () => number): Item[] {
  const changed = [...items];
  if (items.length < 2) return changed;
  const from = pick(next, items.length);
  const to = pick(next, items.length);
  if (next() < 0.5) [changed[from], changed[to]] = [changed[to] as Item, changed[from] as Item];
  else changed.splice(to, 0, ...changed.splice(from, 1));
  return changed;
}
