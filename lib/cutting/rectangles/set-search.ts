/** Goes through sets of pieces that can be cut from one sheet, the promising ones only. */
import { at } from "../../algebra/lists.js";
import type { Patience } from "../patience.js";
import type { Box, Boxes, BoxGrower } from "./boxes.js";
import type { Scale } from "./dual-feasible.js";
import type { Fronts } from "./fronts.js";

/** A sheet with the scales its pieces are weighed on. */
export interface WeighedSheet {
  /** Along the sheet. */ readonly length: number;
  /** Across the sheet. */ readonly width: number;
  /** A piece that does not lie on the sheet weighs more than 1. */
  readonly scales: readonly Scale[];
}

/** What a search goes by. */
export interface SetQuestion {
  /** Worth of one piece of each type. */ readonly values: readonly number[];
  /** How many there are of each type. */ readonly demand: readonly number[];
  /** A piece of this type is in every set. */ readonly with?: number;
  /**
   * Missing where every set is wanted. Only the best ones otherwise: those that are quickly found, boxes that grow
   * piece by piece, or all.
   */
  readonly best?: "quick" | "all";
}

/** A set of pieces that can be cut from the sheet. */
export interface FoundSet {
  /** Types in ascending order, one entry a piece. */ readonly set: readonly number[];
  /** Worth of all its pieces. */ readonly value: number;
  /** How they are cut free. */ readonly box: Box;
}

/** How pieces go together. */
export interface SetShapes {
  /** The smallest boxes of any set. */ readonly fronts: Fronts;
  /** Boxes that grow piece by piece. */ readonly grower: BoxGrower;
  /** Whether a type goes wherever another goes. */
  readonly covers: (larger: number, smaller: number) => boolean;
}

/** When to leave a search. */
export interface SetEffort {
  /** Sets to look at. */ readonly sets: number;
  /** Sets to look at once one is found that is visited. */ readonly more: number;
  /** Of the whole job. */ readonly patience: Patience;
}

/** Told of a set; returns what later ones must be worth more than. */
export type VisitSet = (found: FoundSet) => number;

/** Sets larger than this are not tried: the ways to cut them apart are too many. */
export const largestSet = 11;
const largestQuickSet = 40;
/** To look at one set, in microseconds. */
const workOfSet = 4;
const slack = 1e-7;

/** Searches depth first, the densest type first, each step bounded by the scale that leaves least. */
export class SetSearch {
  /** What a set left out for want of effort could be worth at the most. */
  missed: number = Number.NEGATIVE_INFINITY;
  /** Sets looked at. */
  looked = 0;
  private last: number;
  private above = 0;
  private readonly largest: number;
  /** Types worth a look, the densest first. */
  private readonly order: readonly number[];
  /** Pieces left, by place in the order. */
  private readonly left: Int32Array;
  private readonly values: Float64Array;
  private readonly bounds: KnapsackBound[];
  /** Boxes of the set at hand as it grew. */
  private readonly grown: Boxes[] = [];
  /** By place, places of smaller pieces worth as much, of which all must be used before. */
  private readonly better: readonly (readonly number[])[];

  constructor(
    private readonly sheet: WeighedSheet,
    private readonly shapes: SetShapes,
    private readonly question: SetQuestion,
    private readonly effort: SetEffort,
  ) {
    const { values, demand, best } = question;
    const { scales } = sheet;
    this.last = effort.sets;
    this.largest = best === "quick" ? largestQuickSet : largestSet;
    const density = (type: number): number => at(values, type) / (scales[0]?.[type] as number);
    this.order = [...values.keys()]
      .filter((type) => at(demand, type) > 0 && scales.every((one) => at(one, type) <= 1 + slack))
      .sort((a, b) => density(b) - density(a) || a - b);
    this.left = Int32Array.from(this.order, (type) => at(demand, type));
    this.values = Float64Array.from(this.order, (type) => at(values, type));
    this.better = this.order.map((type, place) =>
      best === undefined
        ? []
        : [...this.order.keys()]
            .slice(0, place)
            .filter((other) => at(this.values, other) >= at(this.values, place))
            .filter((other) => shapes.covers(type, at(this.order, other))),
    );
    this.bounds = scales.map((scale) => {
      const weights = Float64Array.from(this.order, (type) => at(scale, type));
      return new KnapsackBound(weights, this.values, this.left, 1 + slack);
    });
  }

  /** @param above sets worth no more are left out */
  run(above: number, visit: VisitSet): void {
    this.above = above;
    const { with: first } = this.question;
    const place = first === undefined ? -1 : this.order.indexOf(first);
    if (first === undefined) this.extend([], 0, 0, visit);
    else if (place >= 0) this.add([], place, 0, 0, visit);
  }

  private extend(set: readonly number[], from: number, value: number, visit: VisitSet): void {
    for (let place = from; place < this.order.length; place++) {
      if (this.left[place] === 0) continue;
      if (this.isHopeless(place, value)) return;
      if (set.length >= this.largest || this.looked >= this.last || this.effort.patience.isOver) {
        this.missed = Math.max(this.missed, value + this.hope(place));
        return;
      }
      this.add(set, place, place, value, visit);
    }
  }

  /** Adds a piece, and goes on with those from a place in the order on. */
  private add(set: readonly number[], place: number, from: number, value: number, visit: VisitSet): void {
    for (const other of at(this.better, place)) if (this.left[other] !== 0) return;
    for (const bound of this.bounds) if (!bound.holds(place)) return;
    this.looked++;
    this.effort.patience.spend(workOfSet);
    const type = at(this.order, place);
    const larger = withPiece(set, type);
    const box = this.boxFor(larger, type);
    if (!box) return;
    const worth = value + at(this.values, place);
    this.take(place, 1);
    if (worth > this.above) {
      this.above = visit({ set: larger, value: worth, box });
      this.last = Math.min(this.last, this.looked + this.effort.more);
    }
    this.extend(larger, from, worth, visit);
    this.take(place, -1);
    this.grown.pop();
  }

  /** A box that grew piece by piece, or, in a thorough search, any box there is. */
  private boxFor(set: readonly number[], added: number): Box | undefined {
    const { length, width } = this.sheet;
    const { grower, fronts } = this.shapes;
    const grown = grower.grown(this.grown.at(-1), added, length, width);
    const box = grower.fitting(grown, length, width);
    if (box) {
      this.grown.push(grown);
      return box;
    }
    if (this.question.best === "quick" || !fronts.goOn(set, length, width)) return undefined;
    const boxes = fronts.boxesOf(set);
    this.grown.push(boxes);
    return grower.fitting(boxes, length, width);
  }

  private take(place: number, times: 1 | -1): void {
    this.left[place] = at(this.left, place) - times;
    for (const bound of this.bounds) bound.take(place, times);
  }

  /** Whether pieces from a place on cannot add enough; the scale that showed it last is asked first. */
  private isHopeless(from: number, value: number): boolean {
    for (let k = 0; k < this.bounds.length; k++) {
      const bound = at(this.bounds, k);
      if (value + bound.most(from) > this.above) continue;
      if (k > 0) [this.bounds[0], this.bounds[k]] = [bound, at(this.bounds, 0)];
      return true;
    }
    return false;
  }

  private hope(from: number): number {
    return Math.min(...this.bounds.map((bound) => bound.most(from)));
  }
}

/** A set with one more piece, its types still ascending. */
export function withPiece(set: readonly number[], type: number): number[] {
  const at = set.findIndex((one) => one > type);
  return at < 0 ? [...set, type] : [...set.slice(0, at), type, ...set.slice(at)];
}

/** What pieces can still add to a sheet by one scale: the most valuable for their weight first, the last in part. */
class KnapsackBound {
  private used = 0;
  /** Places by falling worth for a weight. */
  private readonly dense: Int32Array;

  /**
   * @param weights by place
   * @param values by place
   * @param left pieces left by place; changed by the search
   * @param room what a sheet holds
   */
  constructor(
    private readonly weights: Float64Array,
    private readonly values: Float64Array,
    private readonly left: Int32Array,
    private readonly room: number,
  ) {
    const density = (place: number): number => at(values, place) / Math.max(1e-12, at(weights, place));
    this.dense = Int32Array.from(weights.keys()).sort((a, b) => density(b) - density(a));
  }

  /** Whether one more piece goes on. */
  holds(place: number): boolean {
    return this.used + at(this.weights, place) <= this.room;
  }

  /** Puts pieces on, or takes them off. */
  take(place: number, times: number): void {
    this.used += times * at(this.weights, place);
  }

  /** The most that pieces from a place on can add. */
  most(from: number): number {
    let room = this.room - this.used;
    let worth = 0;
    for (let i = 0; i < this.dense.length; i++) {
      const place = at(this.dense, i);
      if (place < from) continue;
      const count = at(this.left, place);
      const weight = count * at(this.weights, place);
      const value = count * at(this.values, place);
      if (weight >= room) return weight > 0 ? worth + value * (room / weight) : worth;
      worth += value;
      room -= weight;
    }
    return worth;
  }
}
