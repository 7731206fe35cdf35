/** Plans which bars to buy and how to saw them. */
import { at } from "../algebra/lists.js";
import { Angle, Length } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import { boundOf, lengthWithKerf, usableLength } from "./bar-bound.js";
import { type Cut, type FilledBar, isRack, type Losses, packBars, rackOf } from "./bar-packing.js";
import type { BarJob, BarPlan, CutBar, SawnPiece, StockBar } from "./bar-plan.js";
import { type ProvenBars, proveBars } from "./bar-proof.js";
import { fits, hair } from "./numbers.js";
import {
  byName,
  cheapestFirst,
  costOf,
  leastCost,
  leastOf,
  type PurchaseBound,
  proofOf,
  purchases,
} from "./purchase.js";
import {
  badCounts,
  badSizes,
  badStock,
  belowZero,
  refuse,
  repeatedNames,
  showSizes,
  tooMany,
} from "./request.js";
import { mitreKerf } from "./saw-losses.js";

/**
 * What to buy and how to saw it, at the lowest cost there is. First-fit decreasing, leftovers first, gives a
 * plan to start from (once with each stock length preferred). Where a simple bound does not already show
 * it to be the cheapest, column generation finds what a cover in parts would cost, and a search over ways to
 * fill bars either finds a cheaper plan or shows that there is none. Of plans that cost the same, one with
 * few different bars is taken, beside the fewest that any plan of this cost can do with as far as is shown.
 *
 * A cut loses the kerf along the bar, widened to the steepest mitre of the job (see `mitreKerf`); the last
 * cut of a bar may lose less, where less is left. Beside the plan stands what no plan can beat; `proof` says
 * whether they meet, or how much a better plan could save at the most.
 *
 * @source Gilmore and Gomory 1961 for the column generation
 * @throws Refusal naming pieces and lengths: a piece longer than every bar, a negative kerf, two things
 * of one name, stock in two currencies, or too few bars to be had
 * @example planBars({ pieces: [{ name: "rail", length: mm(900), count: 5 }], stock: [{ name: "angle 2 m", length: mm(2000), price: money(9, "USD") }], kerf: mm(3) }).bars.length // 3
 */
export function planBars(request: BarJob): BarPlan {
  refuseBarJob(request);
  const job = { ...request, pieces: byName(request.pieces) };
  const losses = lossesOf(job);
  const stock = cheapestFirst(job.stock);
  const proof = proveBars(job, stock, firstPlan(job, stock, losses), losses, boundByHand(job, losses));
  return planOf(job, stock, proof, losses);
}

/**
 * The cheapest of the plans that fill one bar after the other, one with each stock preferred.
 *
 * @throws RangeError when there are too few bars
 */
function firstPlan(job: BarJob, stock: readonly StockBar[], losses: Losses): readonly FilledBar[] {
  const attempts = stock.map((preferred) => packBars(job, stock, preferred, losses));
  const plans = attempts.filter(({ unplaced }) => unplaced === undefined).map(({ bars }) => bars);
  const best = leastOf(plans, (bars) => [priceOfAll(bars), bars.length, totalLength(bars)]);
  if (!best) throw new Refusal(`bars: ${soldOut(attempts.flatMap(({ unplaced }) => unplaced ?? []))}`);
  return best;
}

function lossesOf({ pieces, kerf, endTrim = Length.si(0) }: BarJob): Losses {
  const angles = pieces.flatMap(({ mitre }) => (mitre ? [mitre.left, mitre.right] : []));
  const steepest = Angle.si(Math.max(0, ...angles));
  return { kerf: mitreKerf({ kerf, mitre: steepest }), endTrim };
}

function soldOut(unplaced: readonly Cut[]): string {
  const { name, length } = at(unplaced, 0);
  return `not enough stock: no bar is left for ${name} (${showSizes([Length.si(length)])})`;
}

function planOf(
  job: BarJob,
  stock: readonly StockBar[],
  { bars, bound, byHand, layouts, layoutsAtLeast }: ProvenBars,
  losses: Losses,
): BarPlan {
  const currency = stock[0]?.price.currency ?? "";
  const bought = bars.flatMap(({ source }) => (isRack(source) ? [] : [source]));
  const lines = purchases(stock, bought);
  const cost = costOf(lines, currency);
  return {
    bars: bars.map((bar) => cutBar(bar, losses, job.smallestUseful ?? Length.si(0), currency)),
    purchases: lines,
    cost,
    bound,
    proof: proofOf(cost, bound.cost),
    layouts,
    layoutsAtLeast,
    method: byHand
      ? "first-fit decreasing, leftovers first, which the bound shows to be as cheap as any"
      : "column generation and a search over ways to fill a bar",
  };
}

function cutBar(bar: FilledBar, { kerf, endTrim }: Losses, smallestUseful: number, currency: string): CutBar {
  const { source } = bar;
  const rack = isRack(source);
  const trim = rack ? 0 : endTrim;
  const pieces = laidOut(bar, trim, kerf);
  const left = bar.room + kerf;
  const lastCut = left > hair ? Math.min(kerf, left) : 0;
  const remainder = left > hair ? left - lastCut : 0;
  return {
    stock: rack ? source.rack : source.name,
    from: rack ? "rack" : "bought",
    length: Length.si(source.length),
    price: rack ? { amount: 0, currency } : source.price,
    pieces,
    kerfLoss: Length.si((pieces.length - 1) * kerf + lastCut),
    trimLoss: Length.si(2 * trim),
    remainder: Length.si(remainder),
    keep: remainder > hair && fits(smallestUseful, remainder),
  };
}

function laidOut({ pieces }: FilledBar, trim: number, kerf: number): SawnPiece[] {
  let start = trim;
  return pieces.map((piece) => {
    const sawn = { ...piece, length: Length.si(piece.length), start: Length.si(start) };
    start += piece.length + kerf;
    return sawn;
  });
}

function priceOfAll(bars: readonly FilledBar[]): number {
  return bars.reduce((sum, { source }) => sum + (isRack(source) ? 0 : source.price.amount), 0);
}

function totalLength(bars: readonly FilledBar[]): number {
  return bars.reduce((sum, { source }) => sum + source.length, 0);
}

/** What no plan with these losses can beat, without any search. */
function boundByHand(job: BarJob, { kerf, endTrim }: Losses): PurchaseBound {
  const rack = rackOf(job).map(({ length }) => length);
  const offers = job.stock.map(({ length, price }) => ({
    size: usableLength(length, endTrim) + kerf,
    price,
  }));
  const longest = Math.max(...offers.map(({ size }) => size)) - kerf;
  const { byLength, byHalf, bars } = boundOf(job.pieces, longest, kerf, rack);
  const because =
    byHalf > byLength
      ? "pieces longer than half the longest bar, no two of which share one"
      : "all pieces and kerfs against the longest bar";
  return { count: bars, cost: leastCost(lengthWithKerf(job.pieces, kerf, rack), offers, bars), because };
}

/**
 * Refuses a job that no saw could do, with every reason at once.
 *
 * @throws Refusal naming the pieces and their lengths
 */
function refuseBarJob(job: BarJob): void {
  const { pieces, stock, offcuts = [], kerf, endTrim = Length.si(0), smallestUseful = Length.si(0) } = job;
  const sized = [...pieces, ...stock, ...offcuts].map(({ name, length }) => ({ name, sizes: [length] }));
  refuse("bars", [
    ...badStock(stock),
    ...repeatedNames("pieces", pieces),
    ...repeatedNames("leftovers", offcuts),
    ...badCounts([...pieces, ...offcuts]),
    ...tooMany([...pieces, ...offcuts.map(({ count = 1 }) => ({ count }))]),
    ...badSizes(sized),
    ...belowZero({ kerf, "end trim": endTrim, "smallest useful remainder": smallestUseful }),
    ...badMitres(job),
  ]);
  refuse("bars", [...trimmedAway(stock, endTrim), ...longerThanEvery(job, endTrim)]);
}

function badMitres({ pieces }: BarJob): string[] {
  const bad = (angle: number): boolean => !(angle >= 0 && angle < Math.PI / 2);
  return pieces
    .filter(({ mitre }) => mitre && (bad(mitre.left) || bad(mitre.right)))
    .map(({ name }) => `${name}: a mitre must be from 0 to below 90 degrees off square`);
}

function trimmedAway(stock: readonly StockBar[], endTrim: Length): string[] {
  return stock
    .filter(({ length }) => !(usableLength(length, endTrim) > 0))
    .map(({ name, length }) => `${name} (${showSizes([length])}) is used up by trimming its ends`);
}

function longerThanEvery({ pieces, stock, offcuts = [] }: BarJob, endTrim: Length): string[] {
  const lengths = [
    ...stock.map(({ length }) => usableLength(length, endTrim)),
    ...offcuts.map(({ length }) => length),
  ];
  const longest = Math.max(...lengths);
  return pieces
    .filter(({ length, count }) => count > 0 && !fits(length, longest))
    .map(
      ({ name, length }) =>
        `${name} (${showSizes([length])}) is longer than every bar, ${showSizes([Length.si(longest)])} at most after trimming`,
    );
}
