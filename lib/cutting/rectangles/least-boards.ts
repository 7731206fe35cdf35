/** The cheapest sheets found for a list of pieces: many orders, many rules, the best kept. */
import { at } from "../../algebra/lists.js";
import { pick, seededRandom } from "../../algebra/random.js";
import { hair } from "../numbers.js";
import type { Patience } from "../patience.js";
import { laidOn, leftOver, type Part } from "./cut-tree.js";
import { type FillRules, fillBoards, fillRules, once, sensibleOrders, shuffled } from "./guillotine.js";
import type { Board, Item, Laid } from "./item.js";
import { fillSkyline } from "./skyline.js";

/** A stock of sheets. */
export interface BoardStock {
  /** Along the sheet, usable, widened by a kerf. */ readonly length: number;
  /** Across the sheet, usable, widened by a kerf. */ readonly width: number;
  /** Of one. */ readonly price: number;
  /** How many there are; infinite where as many can be had as are needed. */
  readonly supply: number;
}

/** A sheet with pieces on it. */
export interface UsedBoard {
  /** The sheet. */ readonly board: Board;
  /** The pieces where they lie. */ readonly laid: readonly Laid[];
  /** Its straight cuts; missing where cuts may have any shape. */ readonly root?: Part;
}

/** What a search may use. */
export interface BoardRules {
  /** Changes of direction of straight cuts, or cuts of any shape. */
  readonly cuts: number | "any shape";
  /** Pieces stand this far apart. */ readonly kerf: number;
}

/** When a search stops. */
export interface BoardEffort {
  /** Fillings to try, so that a slow machine finds the same plan. */ readonly rounds: number;
  /** After which no filling is begun. */ readonly patience: Patience;
  /** A cost no plan can beat. */ readonly goal: number;
  /** Fillings to try for a larger offcut once the goal is reached. */ readonly extra: number;
}

/** How good a list of sheets is: cost, then count, then the largest offcut. */
export interface Worth {
  /** Of all sheets. */ readonly cost: number;
  /** Number of sheets. */ readonly count: number;
  /** Area of the largest offcut, in square metres. */ readonly offcut: number;
}

/** What a search found. */
export interface LeastBoards {
  /** The best sheets found. */ readonly used: readonly UsedBoard[];
  /** How good they are. */ readonly worth: Worth;
  /** Fillings tried. */ readonly rounds: number;
}

interface Attempt {
  /** Pieces in the order they are laid. */ readonly order: readonly Item[];
  /** How each looks for its place. */ readonly rules: FillRules;
  /** Index of the stock that is opened first. */ readonly preferred: number;
  /** Chance, after the sensible attempts. */ readonly next?: () => number;
}

/**
 * Searches for the cheapest sheets. Undefined where there are too few.
 *
 * @param onBetter told of every better plan
 * @param onFilled told of every plan
 */
export function leastBoards(
  items: readonly Item[],
  stocks: readonly BoardStock[],
  rules: BoardRules,
  effort: BoardEffort,
  onBetter?: (worth: Worth) => void,
  onFilled?: (used: readonly UsedBoard[]) => void,
): LeastBoards | undefined {
  return new BoardSearch(items, stocks, rules, effort, onBetter, onFilled).run();
}

/** To lay one piece, in microseconds. */
const workOfPiece = 2;

class BoardSearch {
  private readonly next = seededRandom(1).uniform;
  private best: LeastBoards | undefined;
  private readonly cheapest: readonly number[];

  constructor(
    private readonly items: readonly Item[],
    private readonly stocks: readonly BoardStock[],
    private readonly rules: BoardRules,
    private readonly effort: BoardEffort,
    private readonly onBetter?: (worth: Worth) => void,
    private readonly onFilled?: (used: readonly UsedBoard[]) => void,
  ) {
    this.cheapest = [...stocks.keys()].sort((a, b) => at(stocks, a).price - at(stocks, b).price || a - b);
  }

  run(): LeastBoards | undefined {
    const starts = this.starts();
    let current = at(starts, 0);
    let energy = Number.POSITIVE_INFINITY;
    let spare = this.effort.extra;
    for (let round = 0; round < Math.max(starts.length, this.effort.rounds); round++) {
      const reached = this.best !== undefined && this.best.worth.cost <= this.effort.goal + hair;
      if (reached && spare-- <= 0) break;
      if (this.best && this.effort.patience.isOver) break;
      this.effort.patience.spend(this.items.length * workOfPiece);
      const tried = starts[round] ?? this.varied(current);
      const used = this.fill(tried);
      if (!used) continue;
      this.onFilled?.(used);
      const worth = worthOf(used, this.stocks, this.rules.kerf);
      const level = this.energyOf(worth);
      if (level <= energy || this.next() < 0.02) [current, energy] = [tried, level];
      this.keep(used, worth, round + 1);
    }
    return this.best;
  }

  private keep(used: readonly UsedBoard[], worth: Worth, rounds: number): void {
    if (this.best && !isBetter(worth, this.best.worth)) return;
    this.best = { used, worth, rounds };
    this.onBetter?.(worth);
  }

  /** Cost, less the part of a sheet that is left in one piece: emptying a sheet is on the way to saving it. */
  private energyOf({ cost, offcut }: Worth): number {
    const largest = Math.max(...this.stocks.map(({ length, width }) => length * width));
    const price = Math.max(
      1e-6,
      Math.min(...this.stocks.map((stock) => stock.price).filter((one) => one > 0)),
    );
    return cost - (Number.isFinite(price) ? price : 1) * (offcut / largest);
  }

  private starts(): Attempt[] {
    const rules = this.rules.cuts === "any shape" ? fillRules.slice(0, 1) : fillRules;
    return sensibleOrders(this.items).flatMap((order) =>
      rules.flatMap((one) => this.cheapest.map((preferred) => ({ order, rules: one, preferred }))),
    );
  }

  private varied({ order, rules, preferred }: Attempt): Attempt {
    return {
      order: shuffled(this.next() < 0.3 ? shuffled(order, this.next) : order, this.next),
      rules: this.next() < 0.1 ? at(fillRules, pick(this.next, fillRules.length)) : rules,
      next: this.next,
      preferred: this.next() < 0.1 ? pick(this.next, this.stocks.length) : preferred,
    };
  }

  private fill(attempt: Attempt): UsedBoard[] | undefined {
    const supply = this.stocks.map((stock) => stock.supply);
    const open = (item: Item): Board | undefined => this.open(item, attempt.preferred, supply);
    const used =
      this.rules.cuts === "any shape"
        ? fillFree(attempt.order, open, attempt.next)
        : fillCut(attempt.order, attempt.rules, this.rules.cuts, open);
    return used?.map((one) => this.exchanged(one, attempt, supply));
  }

  private open(item: Item, preferred: number, supply: number[]): Board | undefined {
    const stock = [preferred, ...this.cheapest].find(
      (one) => at(supply, one) > 0 && liesOn(item, at(this.stocks, one)),
    );
    if (stock === undefined) return undefined;
    supply[stock] = at(supply, stock) - 1;
    return this.board(stock);
  }

  private board(stock: number): Board {
    const { length, width } = at(this.stocks, stock);
    return { stock, length, width };
  }

  /** The same pieces on the cheapest sheet that holds them. */
  private exchanged(used: UsedBoard, { rules }: Attempt, supply: number[]): UsedBoard {
    const price = this.stocks[used.board.stock]?.price ?? 0;
    const order = used.laid.map(({ item }) => item);
    for (const stock of this.cheapest) {
      if (at(this.stocks, stock).price >= price) break;
      if (at(supply, stock) <= 0) continue;
      const open = once(this.board(stock));
      const again =
        this.rules.cuts === "any shape"
          ? fillFree(order, open, undefined)
          : fillCut(order, rules, this.rules.cuts, open);
      if (!again?.[0]) continue;
      supply[stock] = at(supply, stock) - 1;
      supply[used.board.stock] = at(supply, used.board.stock) + 1;
      return again[0];
    }
    return used;
  }
}

function fillCut(
  order: readonly Item[],
  rules: FillRules,
  stages: number,
  open: (item: Item) => Board | undefined,
): UsedBoard[] | undefined {
  const { filled, unplaced } = fillBoards(order, rules, stages, open);
  if (unplaced.length > 0) return undefined;
  return filled.map(({ board, root }) => ({ board, root, laid: laidOn(root) }));
}

function fillFree(
  order: readonly Item[],
  open: (item: Item) => Board | undefined,
  next: (() => number) | undefined,
): UsedBoard[] | undefined {
  const used: UsedBoard[] = [];
  let rest = order;
  while (rest.length > 0) {
    const board = open(at(rest, 0));
    const fill = board && fillSkyline(rest, board.length, board.width, next);
    if (!fill || fill.laid.length === 0) return undefined;
    used.push({ board, laid: fill.laid });
    rest = fill.left;
  }
  return used;
}

function liesOn({ ways }: Item, { length, width }: BoardStock): boolean {
  return ways.some((way) => way.length <= length + hair && way.width <= width + hair);
}

/** What a list of sheets costs. */
export function costOfBoards(used: readonly UsedBoard[], stocks: readonly BoardStock[]): number {
  return used.reduce((sum, { board }) => sum + (stocks[board.stock]?.price ?? 0), 0);
}

function worthOf(used: readonly UsedBoard[], stocks: readonly BoardStock[], kerf: number): Worth {
  return {
    cost: costOfBoards(used, stocks),
    count: used.length,
    offcut: Math.max(0, ...used.map((one) => largestLeft(one, kerf))),
  };
}

/** The largest rectangle left over, its kerfs taken off. */
function largestLeft({ root, board, laid }: UsedBoard, kerf: number): number {
  if (!root) {
    const reach = Math.max(0, ...laid.map(({ y, width }) => y + width));
    return board.length * Math.max(0, board.width - reach);
  }
  return Math.max(
    0,
    ...leftOver(root).map(({ length, width }) => Math.max(0, length - kerf) * Math.max(0, width - kerf)),
  );
}

function isBetter(one: Worth, other: Worth): boolean {
  if (Math.abs(one.cost - other.cost) > hair) return one.cost < other.cost;
  if (one.count !== other.count) return one.count < other.count;
  return one.offcut > other.offcut + hair;
}
