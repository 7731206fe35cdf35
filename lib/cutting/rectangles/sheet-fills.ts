/** Ways to fill sheets: sets of pieces that straight cuts can free. */
import { at } from "../../algebra/lists.js";
import type {
  BestFill,
  Completion,
  Completions,
  CoverStock,
  Fill,
  FillQuestion,
  Fills,
  Remaining,
  Thresholds,
} from "../exact/cover.js";
import type { Patience } from "../patience.js";
import type { Box, Boxes, BoxGrower } from "./boxes.js";
import type { Scale } from "./dual-feasible.js";
import type { Fronts } from "./fronts.js";
import type { Way } from "./item.js";
import {
  type FoundSet,
  largestSet,
  type SetEffort,
  type SetQuestion,
  SetSearch,
  type SetShapes,
  type VisitSet,
  type WeighedSheet,
  withPiece,
} from "./set-search.js";

/** A stock of sheets. */
export interface SheetSupply extends CoverStock, WeighedSheet {}

/** What may be spent on all questions together. */
export interface SetBudget {
  /** Sets to look at. */ readonly sets: number;
  /** Of the whole job. */ readonly patience: Patience;
}

/** Fills to offer in answer to one question. */
const columnsAtOnce = 4;
/** Sets to look at in one search. */
const patience = 60_000;
/** Scales to keep of those found on the way. */
const keptScales = 4;
/** Sets to look at quickly first. */
const quickSets = 20_000;
/** Sets to look at for a better fill once one is found. */
const enoughSets = 500;

/** Fills of sheets of any sizes. Sizes are whole numbers; the largest type of piece comes first. */
export class SheetFills implements Fills {
  readonly alwaysThorough = false;
  private readonly boxes = new Map<string, Box>();
  /** Scales found on the way, for each stock the latest first. */
  private readonly learnt: readonly Scale[][];
  private readonly shapes: SetShapes;
  private spent = 0;

  /**
   * @param demand how many pieces of each type there are at the most
   * @param budget for all questions together
   */
  constructor(
    readonly stocks: readonly SheetSupply[],
    private readonly types: readonly (readonly Way[])[],
    private readonly fronts: Fronts,
    private readonly grower: BoxGrower,
    private readonly demand: readonly number[],
    private readonly budget: SetBudget,
  ) {
    this.learnt = stocks.map(() => []);
    const covered = types.map((ways) => types.map((smaller) => goesWhere(smaller, ways)));
    this.shapes = { fronts, grower, covers: (larger, smaller) => covered[larger]?.[smaller] === true };
  }

  mostValuable(
    { demand, supply }: Remaining,
    values: readonly number[],
    thresholds: Thresholds,
    which: FillQuestion,
  ): BestFill[] {
    return this.stocks.map((_, stock) =>
      at(supply, stock) > 0
        ? this.best(stock, { values, demand, best: which }, at(thresholds, stock))
        : { fills: [], most: 0 },
    );
  }

  private best(stock: number, question: SetQuestion, above: number): BestFill {
    const sets = question.best === "quick" ? quickSets : patience;
    const found: FoundSet[] = [];
    const missed = this.look(stock, question, { sets, more: enoughSets }, above, (better) => {
      found.unshift(better);
      return better.value;
    });
    const most = Math.max(found[0]?.value ?? 0, missed);
    if (question.best === "all") this.keepScale(stock, question, Math.max(above, most));
    const fills = found
      .slice(0, columnsAtOnce)
      .map(({ set, box }) => this.learn(this.fillOf(stock, set), box));
    return { fills, most };
  }

  /** Goes through sets; returns what those left out for want of effort could be worth at the most. */
  private look(
    stock: number,
    question: SetQuestion,
    { sets, more }: Pick<SetEffort, "sets" | "more">,
    above: number,
    visit: VisitSet,
  ): number {
    const left = Math.min(sets, this.budget.sets - this.spent);
    const effort = { sets: left, more, patience: this.budget.patience };
    const search = new SetSearch(this.weighed(stock), this.shapes, question, effort);
    search.run(above, visit);
    this.spent += search.looked;
    return search.missed;
  }

  /** Values no fill exceeds weigh pieces as well as any scale, for as long as no piece is added. */
  private keepScale(stock: number, { values, demand }: SetQuestion, most: number): void {
    if (!(most > 0) || demand.some((count, type) => count < at(this.demand, type))) return;
    const kept = at(this.learnt, stock);
    kept.unshift(values.map((value) => value / most));
    kept.splice(keptScales);
  }

  private weighed(stock: number): SheetSupply {
    const sheet = at(this.stocks, stock);
    return { ...sheet, scales: [...sheet.scales, ...at(this.learnt, stock)] };
  }

  /** Remembers how the pieces of a fill are cut free. */
  learn(fill: Fill, box: Box): Fill {
    this.boxes.set(fill.counts.join(), box);
    return fill;
  }

  fairValues({ demand }: Remaining): number[] {
    const unlimited = this.stocks.filter(({ supply }) => !Number.isFinite(supply));
    const fair = (unlimited.length > 0 ? unlimited : this.stocks).map(({ scales, cost }) => {
      const weigh = (scale: Scale): number =>
        demand.reduce((sum, count, type) => sum + count * at(scale, type), 0);
      const heaviest = scales.reduce((best, scale) => (weigh(scale) > weigh(best) ? scale : best));
      return heaviest.map((weight) => weight * cost);
    });
    return demand.map((_, type) => Math.min(...fair.map((values) => at(values, type))));
  }

  completions(remaining: Remaining, values: readonly number[], allowed: number, most: number): Completions {
    const first = remaining.demand.findIndex((count) => count > 0);
    const found: Completion[] = [];
    let complete = true;
    for (const [stock, sheet] of this.stocks.entries()) {
      if (at(remaining.supply, stock) <= 0) continue;
      const least = sheet.cost - allowed - 1e-9;
      const question = { values, demand: remaining.demand, with: first };
      const missed = this.look(
        stock,
        question,
        { sets: patience, more: patience },
        least,
        ({ set, value }) => {
          if (found.length >= most) return Number.POSITIVE_INFINITY;
          if (!this.isDominated(set, sheet, remaining)) {
            found.push({ fill: this.fillOf(stock, set), loss: sheet.cost - value });
          }
          return least;
        },
      );
      complete &&= missed <= least && found.length < most;
    }
    return { found, complete };
  }

  fullest({ demand, supply }: Remaining): Fill | undefined {
    const stock = this.stockFor(
      demand.findIndex((count) => count > 0),
      supply,
    );
    const sheet = this.stocks[stock];
    if (!sheet) return undefined;
    const counts = demand.map(() => 0);
    let grown: Boxes | undefined;
    let box: Box | undefined;
    for (const [type, count] of demand.entries()) {
      while (at(counts, type) < count) {
        const larger = this.grower.grown(grown, type, sheet.length, sheet.width);
        const fitting = this.grower.fitting(larger, sheet.length, sheet.width);
        if (!fitting) break;
        [grown, box] = [larger, fitting];
        counts[type] = at(counts, type) + 1;
      }
    }
    return box && this.learn({ stock, counts }, box);
  }

  /** How the pieces of a fill are cut free. */
  boxOf({ stock, counts }: Fill): Box | undefined {
    const { length, width } = at(this.stocks, stock);
    const known = this.boxes.get(counts.join());
    if (known && known.length <= length && known.width <= width) return known;
    return this.grower.fitting(this.fronts.boxesOf(setOf(counts)), length, width);
  }

  /**
   * Whether a further piece goes on as well, or one in place of a smaller one: then another fill is as good, since
   * the smaller piece goes wherever the larger one would have been.
   */
  private isDominated(set: readonly number[], sheet: SheetSupply, { demand }: Remaining): boolean {
    const counts = this.countsOf(set);
    const left = demand.flatMap((count, type) => (count > at(counts, type) ? [type] : []));
    return left.some(
      (type) =>
        (set.length < largestSet && this.goesOn(withPiece(set, type), sheet)) ||
        set.some(
          (smaller, at) =>
            smaller !== type &&
            this.shapes.covers(type, smaller) &&
            this.goesOn(withPiece(set.toSpliced(at, 1), type), sheet),
        ),
    );
  }

  private goesOn(set: readonly number[], { scales, length, width }: SheetSupply): boolean {
    return (
      scales.every((scale) => set.reduce((sum, type) => sum + at(scale, type), 0) <= 1 + 1e-7) &&
      this.fronts.goOn(set, length, width)
    );
  }

  /** The stock with the lowest cost for its area among those a piece goes on; -1 where there is none. */
  private stockFor(type: number, supply: readonly number[]): number {
    const rate = (stock: number): number => {
      const { cost, length, width } = at(this.stocks, stock);
      return cost / (length * width);
    };
    return this.stocks.reduce((best, sheet, stock) => {
      if (at(supply, stock) <= 0 || !this.goesOn([type], sheet)) return best;
      return best < 0 || rate(stock) < rate(best) ? stock : best;
    }, -1);
  }

  private fillOf(stock: number, set: readonly number[]): Fill {
    return { stock, counts: this.countsOf(set) };
  }

  private countsOf(set: readonly number[]): number[] {
    const counts = this.types.map(() => 0);
    for (const type of set) counts[type] = at(counts, type) + 1;
    return counts;
  }
}

function setOf(counts: readonly number[]): number[] {
  return counts.flatMap((count, type) => Array.from({ length: count }, () => type));
}

/** Whether a piece goes wherever another goes, lying one way or the other. */
function goesWhere(smaller: readonly Way[], larger: readonly Way[]): boolean {
  return larger.every(({ length, width }) =>
    smaller.some((way) => way.length <= length && way.width <= width),
  );
}
