/** Fills sheets by straight cuts from edge to edge, one piece after the other, in orders and by rules a search may vary. */

import { at } from "../../algebra/lists.js";
import { pick } from "../../algebra/random.js";
import { hair } from "../numbers.js";
import { compareNames } from "../purchase.js";
import { type CutDirection, type Part, place, wholePart } from "./cut-tree.js";
import { areaOf, type Board, type Item, type Way } from "./item.js";

/** How a filling goes about it. */
export interface FillRules {
  /** What a piece looks for in a free part: little left beside it, little area left, or the first that will do. */
  readonly fit: "snug" | "small" | "first";
  /** Which two cuts free the piece. */
  readonly split: "largest left" | "smallest left" | CutDirection;
}

/** Every combination of rules. */
export const fillRules: readonly FillRules[] = (["snug", "small", "first"] as const).flatMap((fit) =>
  (["largest left", "smallest left", "along", "across"] as const).map((split) => ({ fit, split })),
);

/** A sheet with its cuts. */
export interface FilledBoard {
  /** The sheet. */ readonly board: Board;
  /** All of it, cut and filled. */ readonly root: Part;
}

interface Choice {
  /** Of the free part. */ readonly index: number;
  /** How the piece lies in it. */ readonly way: Way;
  /** How badly it fits; the smallest is taken. */ readonly score: number;
}

/** What became of a list of pieces. */
export interface Filling {
  /** In the order the sheets were opened. */ readonly filled: readonly FilledBoard[];
  /** Pieces for which no sheet was left. */ readonly unplaced: readonly Item[];
}

/**
 * Lays pieces in the order given, each into the first sheet with room for it.
 *
 * @param stages changes of direction allowed
 * @param openBoard a sheet on which the piece lies, or undefined where there is none left
 */
export function fillBoards(
  items: readonly Item[],
  rules: FillRules,
  stages: number,
  openBoard: (item: Item) => Board | undefined,
): Filling {
  const filled: (FilledBoard & { readonly free: Part[] })[] = [];
  const unplaced: Item[] = [];
  for (const item of items) {
    if (filled.some(({ free }) => lay(item, free, rules, stages))) continue;
    const board = openBoard(item);
    const root = board && wholePart(board.length, board.width);
    const free = root ? [root] : [];
    if (board && root && lay(item, free, rules, stages)) filled.push({ board, root, free });
    else unplaced.push(item);
  }
  return { filled, unplaced };
}

function lay(item: Item, free: Part[], rules: FillRules, stages: number): boolean {
  for (const { index, way } of choices(item, free, rules)) {
    const part = at(free, index);
    const first = firstCut(part, way, rules);
    const other = first === "along" ? "across" : "along";
    const rest = place(part, item, way, first, stages) ?? place(part, item, way, other, stages);
    if (!rest) continue;
    free.splice(index, 1, ...rest);
    return true;
  }
  return false;
}

function choices({ ways }: Item, free: readonly Part[], rules: FillRules): Choice[] {
  const found: Choice[] = [];
  for (const [index, part] of free.entries()) {
    for (const way of ways) {
      const [length, width] = [part.length - way.length, part.width - way.width];
      if (length < -hair || width < -hair) continue;
      found.push({ index, way, score: scoreOf(part, length, width, rules) });
    }
  }
  return rules.fit === "first" ? found : found.sort((a, b) => a.score - b.score);
}

function scoreOf(part: Part, length: number, width: number, { fit }: FillRules): number {
  if (fit === "first") return 0;
  return fit === "snug" ? Math.min(length, width) : part.length * part.width;
}

function firstCut(part: Part, way: Way, { split }: FillRules): CutDirection {
  if (split === "along" || split === "across") return split;
  const [length, width] = [part.length - way.length, part.width - way.width];
  const alongFirst = Math.max(part.length * width, length * way.width);
  const acrossFirst = Math.max(length * part.width, way.length * width);
  return alongFirst > acrossFirst === (split === "largest left") ? "along" : "across";
}

/** How far along a sheet its pieces reach. */
export function reachOf(part: Part): number {
  if (part.cut) return Math.max(reachOf(part.cut.near), reachOf(part.cut.far));
  return part.held ? part.x + part.held.way.length : 0;
}

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
  if (next() < 0.5) [changed[from], changed[to]] = [at(changed, to), at(changed, from)];
  else changed.splice(to, 0, ...changed.splice(from, 1));
  return changed;
}

/** Opens a single sheet. */
export function once(board: Board): () => Board | undefined {
  let opened = false;
  return () => {
    if (opened) return undefined;
    opened = true;
    return board;
  };
}
