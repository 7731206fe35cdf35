/** The cheapest bars by the exact search: pieces to types, bars to fills, and back. */
import { at } from "../algebra/lists.js";
import { Time } from "../quantity/index.js";
import { usableLength } from "./bar-bound.js";
import { type Cut, cutsOf, type FilledBar, isRack, type Losses, type Rack } from "./bar-packing.js";
import type { BarJob, StockBar } from "./bar-plan.js";
import { BarFills } from "./exact/bar-fills.js";
import { type Cover, costOfFills, type Fill, type Remaining } from "./exact/cover.js";
import { fewestLayouts, layoutCount } from "./exact/layouts.js";
import { proveCover } from "./exact/prove.js";
import { hair } from "./numbers.js";
import { counted, patienceFor } from "./patience.js";
import { compareNames, type PurchaseBound, raisedBound, wholePrices } from "./purchase.js";

/** The cheapest bars found, and what no other bars can beat. */
export interface ProvenBars {
  /** Filled. */ readonly bars: readonly FilledBar[];
  /** What no plan can beat. */ readonly bound: PurchaseBound;
  /** Whether the bound needed no search. */ readonly byHand: boolean;
  /** How many bars are filled differently. */ readonly layouts: number;
  /** No bars as cheap are filled in fewer ways. */ readonly layoutsAtLeast: number;
}

/** Relaxations to solve before a search gives up; it keeps plans the same on a slow machine. */
const steps = 4000;
const usualEffort = Time.of(9, "s");
/** For the bound on ways to fill a bar. */
const tidying = Time.of(0.5, "s");
const because = "every way to fill a bar, weighed against all others";

/**
 * The cheapest way to fill bars, starting from bars in hand.
 *
 * @param stock in a fixed order
 * @param hand bars of a plan that is possible
 * @param byHand a bound that is already known
 */
export function proveBars(
  job: BarJob,
  stock: readonly StockBar[],
  hand: readonly FilledBar[],
  losses: Losses,
  byHand: PurchaseBound,
): ProvenBars {
  const model = new BarModel(job, stock, losses);
  const fills = model.fillsOf(hand);
  const known = costOfFills(model.cover, fills) * model.unit;
  const done = byHand.cost.amount >= known - 1e-9 * Math.max(1, known);
  const patience = patienceFor(job, usualEffort);
  const source = new BarFills(model.cover, patience);
  const proof = done ? { fills } : proveCover(source, model.all, fills, { steps, patience });
  const { fills: tidy, atLeast } = fewestLayouts(model.cover, model.all, proof.fills, counted(tidying));
  return {
    bars: tidy === fills ? hand : model.barsOf(tidy),
    bound: "bound" in proof ? raisedBound(byHand, proof.bound * model.unit, stock, because) : byHand,
    byHand: done,
    layouts: layoutCount(tidy),
    layoutsAtLeast: atLeast,
  };
}

/** Picometres in a metre: lengths are whole numbers then, and their sums exact. */
const fine = 1e12;

/** What bars can be cut from: a stock of the job, or leftovers of one name. */
interface Source {
  /** What it is. */ readonly bar: StockBar | Rack;
  /** What it holds, in metres. */ readonly usable: number;
  /** Of one; nothing for a bar from the rack. */ readonly price: number;
  /** How many there are. */ readonly supply: number;
}

/** A bar job in plain numbers, with the way back. */
class BarModel {
  /** Types of pieces and lengths of stock. */
  readonly cover: Cover;
  /** All pieces, and all stock there is. */
  readonly all: Remaining;
  /** Money of one unit of cost; 0 where nothing costs anything. */
  readonly unit: number;
  private readonly types = new Map<number, Cut[]>();
  private readonly sources: readonly Source[];

  constructor(
    job: BarJob,
    stock: readonly StockBar[],
    private readonly losses: Losses,
  ) {
    const cuts = cutsOf(job);
    for (const cut of cuts) this.types.set(typeOf(cut), [...(this.types.get(typeOf(cut)) ?? []), cut]);
    this.sources = [...rackSources(job), ...stockSources(stock, losses.endTrim, cuts.length)];
    const { costs, unit } = wholePrices(this.sources.map(({ price }) => price));
    this.unit = unit;
    this.cover = {
      sizes: [...this.types.values()].map(([cut]) => Math.round(((cut as Cut).length + losses.kerf) * fine)),
      stocks: this.sources.map(({ usable, supply }, i) => ({
        room: Math.floor((usable + losses.kerf + hair) * fine),
        cost: at(costs, i),
        supply,
      })),
    };
    this.all = {
      demand: [...this.types.values()].map(({ length }) => length),
      supply: this.sources.map(({ supply }) => supply),
    };
  }

  /** Bars as fills. */
  fillsOf(bars: readonly FilledBar[]): Fill[] {
    const types = [...this.types.keys()];
    return bars.map(({ source, pieces }) => ({
      stock: this.sources.findIndex(
        ({ bar }) => nameOf(bar) === nameOf(source) && isRack(bar) === isRack(source),
      ),
      counts: types.map((type) => pieces.filter((piece) => typeOf(piece) === type).length),
    }));
  }

  /** Fills as bars: leftovers first, then bars filled alike side by side, the longest pieces first. */
  barsOf(fills: readonly Fill[]): FilledBar[] {
    const waiting = [...this.types.values()].map((cuts) => [...cuts]);
    return [...fills].sort(compareFills).map(({ stock, counts }): FilledBar => {
      const { bar, usable } = at(this.sources, stock);
      const pieces = counts.flatMap((count, type) => waiting[type]?.splice(0, count) ?? []);
      const taken = pieces.reduce((sum, { length }) => sum + length + this.losses.kerf, 0);
      return { source: bar, room: usable - taken, pieces };
    });
  }
}

function typeOf({ length }: Cut): number {
  return Math.round(length * fine);
}

function nameOf(source: StockBar | Rack): string {
  return isRack(source) ? source.rack : source.name;
}

function rackSources({ offcuts = [] }: BarJob): Source[] {
  return [...offcuts]
    .sort((a, b) => a.length - b.length || compareNames(a.name, b.name))
    .map(({ name, length, count = 1 }) => ({
      bar: { rack: name, length },
      usable: length,
      price: 0,
      supply: count,
    }));
}

/** As many as are needed means no more than one a piece; a stock given away must be limited for the search. */
function stockSources(stock: readonly StockBar[], endTrim: number, pieces: number): Source[] {
  return stock.map((bar) => ({
    bar,
    usable: usableLength(bar.length, endTrim),
    price: bar.price.amount,
    supply: bar.available ?? (bar.price.amount > 0 ? Number.POSITIVE_INFINITY : pieces),
  }));
}

function compareFills(a: Fill, b: Fill): number {
  if (a.stock !== b.stock) return a.stock - b.stock;
  const differs = a.counts.findIndex((count, type) => count !== b.counts[type]);
  return differs < 0 ? 0 : at(b.counts, differs) - at(a.counts, differs);
}
