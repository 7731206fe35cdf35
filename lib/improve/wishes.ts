/** What the builder's wishes cost: the case planned again without each of them, and what that saves. */
import { host } from "#host";
import type { PlanProof } from "../cutting/index.js";
import type { Job } from "../job/index.js";
import { boughtOf } from "../plan/index.js";
import { type Money, money, Time } from "../quantity/index.js";
import { failingOf, graveTiers } from "./standing.js";
import { type SearchBounds, stillTimeFor } from "./still-time.js";
import { changedJob } from "./trial.js";
import { type Bought, boughtFor, leastMoney, type Released, type Wish, wishesOf } from "./wish-list.js";

/** What a wish costs. */
export interface WishCost extends Wish {
  /** The bill is lower by so much without it, price breaks, shipping and tax in it. */
  readonly money: Money;
  /** Sheets of ply and laminate that need not be bought. */
  readonly sheets: number;
  /** Bars and strips that need not be bought. */
  readonly bars: number;
  /** Hours at the bench saved; fewer than none where it takes longer. */
  readonly time: Time;
  /** Whether both plans are proven, so that the saving is exact. */
  readonly proven: boolean;
  /** Ids of findings of safety and strength that fail without the wish and do not with it; absent where nobody looked. */
  readonly fails?: readonly string[];
}

/** What was found. */
export interface WishCosts {
  /** Wishes that cost something, the dearest first. */
  readonly costs: readonly WishCost[];
  /** Wishes without which nothing is saved. */
  readonly free: number;
  /** Wishes that no time was left for. */
  readonly untried: number;
}

/** Plans a case again without each wish of its builder. */
export async function wishCosts(job: Job, bounds: SearchBounds = {}): Promise<WishCosts> {
  const stillTime = stillTimeFor(bounds);
  const now = boughtFor(job);
  const found: Saving[] = [];
  let [untried, free] = [0, 0];
  for (const ways of wishesOf(job)) {
    if (!stillTime()) {
      untried++;
      continue;
    }
    await host.pool.pause();
    const saving = firstSaving(ways, now);
    if (saving) found.push(saving);
    else free++;
  }
  const dearestFirst = found.sort((a, b) => b.cost.money.amount - a.cost.money.amount);
  const costs = dearestFirst.map((saving) => (stillTime() ? withFailing(job, saving) : saving.cost));
  return { costs, free, untried };
}

/** A way to be without a wish, and what it saves. */
interface Saving {
  /** The way. */
  readonly wish: Released;
  /** What it saves. */
  readonly cost: WishCost;
}

/** The first way to be without a wish that saves anything. */
function firstSaving(ways: readonly Released[], now: Bought): Saving | undefined {
  for (const wish of ways) {
    const then = wish.bought();
    const cost = then && costOf(wish, now, then);
    if (cost) return { wish, cost };
  }
  return undefined;
}

/** What a wish costs; nothing where the bill is no lower without it. */
function costOf({ what, without }: Wish, now: Bought, then: Bought): WishCost | undefined {
  const amount = now.bill.total.amount - then.bill.total.amount;
  if (amount < leastMoney) return undefined;
  return {
    what,
    without,
    money: money(amount, now.bill.total.currency),
    sheets: sheetsOf(now) - sheetsOf(then),
    bars: barsOf(now) - barsOf(then),
    time: Time.si(now.time - then.time),
    proven: [now, then].every(isProven),
  };
}

function sheetsOf({ purchases: { sheets, facings, panes } }: Bought): number {
  return [...sheets, ...facings, ...panes].reduce((sum, need) => sum + boughtOf(need), 0);
}

function barsOf({ purchases: { bars, strips } }: Bought): number {
  return [...bars, ...strips].reduce((sum, need) => sum + boughtOf(need), 0);
}

function isProven({ purchases: { sheets, facings, panes, bars, strips } }: Bought): boolean {
  const proofs: readonly { readonly plan: { readonly proof: PlanProof } }[] = [
    ...sheets,
    ...facings,
    ...panes,
    ...bars,
    ...strips,
  ];
  return proofs.every(({ plan: { proof } }) => proof.proven);
}

/** With what then fails, where the files of the case say the wish. */
function withFailing(job: Job, { wish: { changes }, cost }: Saving): WishCost {
  const changed = changes && changedJob(job, changes);
  if (!changed) return cost;
  const before = new Set(failingOf(job.review, graveTiers).map(({ id }) => id));
  const after = failingOf(changed.review, graveTiers).map(({ id }) => id);
  return { ...cost, fails: after.filter((id) => !before.has(id)) };
}
