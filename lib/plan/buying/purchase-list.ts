/** What a case needs bought, trade by trade, each with the plan behind the count. */
import type { BarPlan, Purchase, SheetPlan } from "../../cutting/index.js";
import type { Adhesive, BarStock, FacingStock, Fastener, Hardware, SheetStock } from "../../design/index.js";
import type { Area, Money, Volume } from "../../quantity/index.js";
import type { KnownKerf } from "./shop-allowances.js";

/** Everything to buy for one case. */
export interface PurchaseList {
  /** The cuts of the saws that the plans reckon with. */
  readonly kerfs: { readonly sheets: KnownKerf; readonly bars: KnownKerf };
  readonly sheets: readonly CutNeed<SheetStock, SheetPlan>[];
  readonly facings: readonly CutNeed<FacingStock, SheetPlan>[];
  readonly bars: readonly CutNeed<BarStock, BarPlan>[];
  readonly adhesives: readonly AdhesiveNeed[];
  readonly fasteners: readonly FastenerNeed[];
  readonly hardware: readonly HardwareNeed[];
}

/** Stock that is cut, with the plan that says how much of it. */
export interface CutNeed<Stock, Plan> {
  readonly stock: Stock;
  readonly plan: Plan;
}

/** How many of the stock a plan buys; the rest of what it cuts comes from the rack. */
export function boughtOf({
  stock,
  plan,
}: CutNeed<{ readonly name: string }, { readonly purchases: readonly Purchase[] }>): number {
  return plan.purchases.find((purchase) => purchase.stock === stock.name)?.count ?? 0;
}

/** Adhesive by the container. */
export interface AdhesiveNeed {
  readonly stock: Adhesive;
  /** Panel area to be faced, one face. */
  readonly area: Area;
  /** Wet, both faces where the adhesive asks for it, waste included. */
  readonly volume: Volume;
  readonly containers: number;
  readonly cost: Money;
  /** Whether the spread rate is the builder's own trial or the label's. */
  readonly rateFrom: "trial" | "label";
}

/** Fasteners by the pack. */
export interface FastenerNeed {
  readonly stock: Fastener;
  readonly count: number;
  /** Bought beyond the count, for those that go wrong. */
  readonly spares: number;
  readonly packs: number;
  readonly washers: number;
  /** Packs and washers. */
  readonly cost: Money;
}

/** Hardware by the piece. */
export interface HardwareNeed {
  readonly stock: Hardware;
  readonly count: number;
  readonly cost: Money;
}
