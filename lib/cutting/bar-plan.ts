/** What a bar job asks for, and what a plan for it says. */
import type { Angle, Length, Money } from "../quantity/index.js";
import type { SearchTime } from "./patience.js";
import type { Buyable, PlanProof, Purchase, PurchaseBound } from "./purchase.js";

/** Pieces of one length. */
export interface BarPiece {
  /** Unique in the job. */ readonly name: string;
  /** Long point to long point where an end is mitred. */ readonly length: Length;
  /** How many of them. */ readonly count: number;
  /** Cuts of the two ends, as angles off square; both square when absent. */
  readonly mitre?: EndCuts;
}

/** Angles off square: 0 is a square end, 45 degrees a picture-frame corner. */
export interface EndCuts {
  /** Off square, at the left end. */ readonly left: Angle;
  /** Off square, at the right end. */ readonly right: Angle;
}

/** A bar as it is sold. */
export interface StockBar extends Buyable {
  /** As sold, before its ends are trimmed. */ readonly length: Length;
}

/** A bar left over from another job. It was squared when it was cut, so its ends are not trimmed again. */
export interface OffcutBar {
  /** Unique among the leftovers. */ readonly name: string;
  /** All of it usable. */ readonly length: Length;
  /** Default 1. */ readonly count?: number;
}

/** All there is to know before cutting bars. */
export interface BarJob extends SearchTime {
  /** What is to be cut. */ readonly pieces: readonly BarPiece[];
  /** Each with its own length and price. */ readonly stock: readonly StockBar[];
  /** Used before anything is bought; none when absent. */
  readonly offcuts?: readonly OffcutBar[];
  /** Width of the saw's cut, square across. */ readonly kerf: Length;
  /** Taken off each end of a new bar, that cut's own kerf included. Default 0. */
  readonly endTrim?: Length;
  /** A remainder at least this long goes back on the rack. Default 0: every remainder does. */
  readonly smallestUseful?: Length;
}

/** One piece on a bar. */
export interface SawnPiece {
  /** As in the piece that asked for it. */ readonly name: string;
  /** Long point to long point. */ readonly length: Length;
  /** Where it begins, from the raw start of the bar. */ readonly start: Length;
  /** As in the piece that asked for it. */ readonly mitre?: EndCuts;
}

/** One bar of a plan. Pieces, kerf, trim and remainder add up to its length. */
export interface CutBar {
  /** Name of the stock or of the leftover. */ readonly stock: string;
  /** New, or a leftover. */ readonly from: "bought" | "rack";
  /** Of the whole bar. */ readonly length: Length;
  /** Nothing for a bar from the rack. */ readonly price: Money;
  /** In the order they are sawn. */ readonly pieces: readonly SawnPiece[];
  /** Length turned to dust. */ readonly kerfLoss: Length;
  /** Length taken off both ends. */ readonly trimLoss: Length;
  /** Length left in one piece at the end. */ readonly remainder: Length;
  /** Whether the remainder is long enough to go back on the rack. */ readonly keep: boolean;
}

/** A plan with what it costs and what no plan can beat. */
export interface BarPlan {
  /** Bars from the rack first. */ readonly bars: readonly CutBar[];
  /** What to buy, one line a stock. */ readonly purchases: readonly Purchase[];
  /** Of all purchases. */ readonly cost: Money;
  /** What no plan with these losses can beat. */ readonly bound: PurchaseBound;
  /** Whether the plan is as cheap as any, and how far from it at worst. */
  readonly proof: PlanProof;
  /** How many bars are cut differently: set-ups at the saw. */ readonly layouts: number;
  /** No plan of this cost has fewer set-ups: the fewest are proven where both numbers are the same. */
  readonly layoutsAtLeast: number;
  /** How the plan was found, in words. */ readonly method: string;
}
