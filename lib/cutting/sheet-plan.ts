/** What a sheet job asks for, and what a plan for it says. */
import type { Area, Length, Money } from "../quantity/index.js";
import type { SearchTime } from "./patience.js";
import type { Buyable, PlanProof, Purchase, PurchaseBound } from "./purchase.js";

/**
 * Which way a piece's length lies on the sheet: along the grain of the face, which runs with the sheet's
 * length, across it, or either way.
 */
export type Grain = "along" | "across" | "free";

/** Rectangles of one size, with whatever oversize the edges need already in them. */
export interface SheetPiece {
  /** Unique in the job. */ readonly name: string;
  /** The side the grain is named for. */ readonly length: Length;
  /** The other side. */ readonly width: Length;
  /** How many of them. */ readonly count: number;
  /** How it must lie. */ readonly grain: Grain;
}

/** A sheet as it is sold; its grain runs with its length. An offcut is a sheet of price 0, available once. */
export interface StockSheet extends Buyable {
  /** Along the grain, before its edges are trimmed. */ readonly length: Length;
  /** Across the grain, before its edges are trimmed. */ readonly width: Length;
}

/** All there is to know before cutting sheets. */
export interface SheetJob extends SearchTime {
  /** What is to be cut. */ readonly pieces: readonly SheetPiece[];
  /** Each with its own size and price. */ readonly stock: readonly StockSheet[];
  /** Width of the saw's cut. */ readonly kerf: Length;
  /** Taken off each of the four edges, those cuts' own kerfs included. Default 0. */
  readonly edgeTrim?: Length;
  /** What the saw can do. Default "straight". */ readonly cuts?: SheetCutting;
}

/**
 * What the saw can do: straight cuts from edge to edge in any order; the same with the direction changed no
 * more than once or twice before pieces are trimmed to size; or cuts of any shape, by router or jigsaw.
 */
export type SheetCutting = "straight" | "two stages" | "three stages" | "any shape";

/** How far a search has come. */
export interface SheetProgress {
  /** Sheets of the best plan so far. */ readonly sheets: number;
  /** Its cost. */ readonly cost: Money;
  /** What no plan can beat. */ readonly bound: Money;
}

/** A place on a sheet: x runs with the sheet's length and y with its width, from one raw corner. */
export interface SheetArea {
  /** Nearest edge, along the sheet. */ readonly x: Length;
  /** Nearest edge, across the sheet. */ readonly y: Length;
  /** Extent in x. */ readonly length: Length;
  /** Extent in y. */ readonly width: Length;
}

/** One piece where it lies. */
export interface PlacedPiece extends SheetArea {
  /** As in the piece that asked for it. */ readonly name: string;
  /** Whether the piece's own length lies across the sheet. */ readonly turned: boolean;
}

/** One straight cut right through a part of the sheet, edge to edge. */
export interface ThroughCut {
  /** The part that is cut in two. */ readonly part: SheetArea;
  /** "along" runs with the sheet's length (a rip), "across" with its width (a crosscut). */
  readonly direction: "along" | "across";
  /** Where the kept side ends and the kerf begins: a y for a cut along, an x for one across. */
  readonly at: Length;
}

/** One sheet of a plan. Pieces, offcuts, kerf and trim add up to its area. */
export interface CutSheet {
  /** Name of the stock. */ readonly stock: string;
  /** Of the whole sheet. */ readonly length: Length;
  /** Of the whole sheet. */ readonly width: Length;
  /** Of the sheet. */ readonly price: Money;
  /** In the order they are sawn. */ readonly pieces: readonly PlacedPiece[];
  /** Every rectangle left over. */ readonly offcuts: readonly SheetArea[];
  /** In an order a saw can follow, after the edges are trimmed; none for cuts of any shape. */
  readonly cuts: readonly ThroughCut[];
  /** Turned to dust. */ readonly kerfArea: Area;
  /** Taken off the edges. */ readonly trimArea: Area;
}

/** A plan with what it costs and what no plan can beat. */
export interface SheetPlan {
  /** In the order they were opened. */ readonly sheets: readonly CutSheet[];
  /** What to buy, one line a stock. */ readonly purchases: readonly Purchase[];
  /** Of all purchases. */ readonly cost: Money;
  /** What no plan can beat. */ readonly bound: PurchaseBound;
  /** Whether the plan is as cheap as any, and how far from it at worst. */
  readonly proof: PlanProof;
  /** How the plan was found, in words. */ readonly method: string;
}
