import { Time } from "../quantity/index.js";
import { BarModel } from "./bar-model.js";
import type { FilledBar, Losses } from "./bar-packing.js";
import type { BarJob, StockBar } from "./bar-plan.js";
import { BarFills } from "./exact/bar-fills.js";
import { costOfFills } from "./exact/cover.js";
import { fewestLayouts, layoutCount } from "./exact/fewer-layouts.js";
import { proveCover } from "./exact/prove.js";
import { type PurchaseBound, raisedBound } from "./purchase.js";

/** The cheapest bars found, and what no other bars can beat. */
export interface ProvenBars {
  /** Filled. */
  readonly bars: readonly FilledBar[];
  /** What no plan can beat. */
  readonly bound: PurchaseBound;
  /** Whether the bound needed no search. */
  readonly byHand: boolean;
  /** How many bars are filled differently. */
  readonly layouts: number;
  /** No bars as cheap are filled in fewer ways. */
  readonly layoutsAtLeast: number;
}

/** Relaxations to solve before a search gives up; it keeps plans the same on a slow machine. */
const steps = 4000;
const usualLimit = Time.of(9, "s");
/** For the bound on ways to fill a bar, ms. */
const tidying = 500;
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
  const until = performance.now() + (job.timeLimit ?? usualLimit) * 1000;
  const proof = done ? { fills } : proveCover(new BarFills(model.cover), model.all, fills, { steps, until });
  const { fills: tidy, atLeast } = fewestLayouts(
    model.cover,
    model.all,
    proof.fills,
    performance.now() + tidying,
  );
  return {
    bars: tidy === fills ? hand : model.barsOf(tidy),
    bound: "bound" in proof ? raisedBound(byHand, proof.bound * model.unit, stock, because) : byHand,
    byHand: done,
    layouts: layoutCount(tidy),
    layoutsAtLeast: atLeast,
  };
}
