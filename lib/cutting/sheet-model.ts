/** Between sheets with pieces on them and the exact search: pieces to types, sheets to fills, and back. */
import { at } from "../algebra/lists.js";
import type { Fill, Remaining } from "./exact/cover.js";
import { hair } from "./numbers.js";
import { wholePrices } from "./purchase.js";
import { type Box, BoxGrower, type BoxOfOne, cutLevels, joined } from "./rectangles/boxes.js";
import { type CutDirection, cutAt, laidOn, type Part, wholePart } from "./rectangles/cut-tree.js";
import { heaviestScales, type Scale } from "./rectangles/dual-feasible.js";
import { Fronts } from "./rectangles/fronts.js";
import { areaOf, type Board, type Item, type Way } from "./rectangles/item.js";
import type { BoardStock, UsedBoard } from "./rectangles/least-boards.js";
import { type SetBudget, SheetFills, type SheetSupply } from "./rectangles/sheet-fills.js";

/** Picometres in a metre: sizes are whole numbers then, and their sums exact. */
const fine = 1e12;
/** Scales beside the area to weigh pieces on. */
const scales = 8;

/** Sheets and pieces in whole numbers, with the way back. */
export class SheetModel {
  /** Ways to fill the sheets. */
  readonly fills: SheetFills;
  /** All pieces, and all stock there is. */
  readonly all: Remaining;
  /** Money of one unit of cost; 0 where nothing costs anything. */
  readonly unit: number;
  /** Pieces that are alike, the largest first. */
  private readonly types: readonly (readonly Item[])[];
  private readonly typeOf: ReadonlyMap<Item, number>;

  /**
   * @param stages changes of direction of the cuts
   * @param effort for all questions about fills together
   */
  constructor(
    items: readonly Item[],
    private readonly boards: readonly BoardStock[],
    private readonly stages: number,
    effort: SetBudget,
  ) {
    const types = new Map<string, Item[]>();
    for (const item of [...items].sort((a, b) => areaOf(b) - areaOf(a))) {
      types.set(keyOf(item), [...(types.get(keyOf(item)) ?? []), item]);
    }
    const lists = [...types.values()];
    this.types = lists;
    this.typeOf = new Map(lists.flatMap((list, type) => list.map((item) => [item, type] as const)));
    const demand = lists.map(({ length }) => length);
    const ways = lists.map(([item]) => (item as Item).ways.map(wholeWay));
    const { costs, unit } = wholePrices(boards.map(({ price }) => price));
    this.unit = unit;
    const supply = boards.map((board) =>
      board.price > 0 ? board.supply : Math.min(board.supply, items.length),
    );
    const stocks = boards.map((board, i): SheetSupply => {
      const size = { length: wholeRoom(board.length), width: wholeRoom(board.width) };
      return {
        ...size,
        cost: at(costs, i),
        supply: at(supply, i),
        scales: scalesOn(size, ways, demand),
      };
    });
    const levels = cutLevels(stages);
    const largest = (side: "length" | "width"): number => Math.max(...stocks.map((stock) => stock[side]));
    const fronts = new Fronts(ways, levels, largest("length"), largest("width"), effort.patience);
    this.fills = new SheetFills(stocks, ways, fronts, new BoxGrower(ways, levels), demand, effort);
    this.all = { demand, supply };
  }

  /** Sheets as fills. */
  fillsOf(used: readonly UsedBoard[]): Fill[] {
    return used.map(({ board, laid, root }) => {
      const counts = this.types.map(() => 0);
      for (const { item } of laid) counts[this.type(item)] = at(counts, this.type(item)) + 1;
      const box = root && boxOf(root, ({ item, way }) => ({ type: this.type(item), way: wholeWay(way) }));
      const fill = { stock: board.stock, counts };
      return box ? this.fills.learn(fill, box) : fill;
    });
  }

  private type(item: Item): number {
    return this.typeOf.get(item) as number;
  }

  /** Fills as sheets with their cuts. */
  boardsOf(fills: readonly Fill[]): UsedBoard[] {
    const waiting = this.types.map((items) => [...items]);
    return fills.map((fill) => {
      const { length, width } = at(this.boards, fill.stock);
      const board = { stock: fill.stock, length, width };
      const root = cutOut({
        box: this.fills.boxOf(fill) as Box,
        board,
        fine,
        free: !Number.isFinite(this.stages),
        take: (type) => waiting[type]?.shift() as Item,
      });
      return { board, root, laid: laidOn(root) };
    });
  }
}

function keyOf({ ways }: Item): string {
  return ways
    .map((way) => `${Math.round(way.length * fine)}x${Math.round(way.width * fine)}${way.turned}`)
    .join();
}

function wholeWay({ length, width, turned }: Way): Way {
  return { length: Math.round(length * fine), width: Math.round(width * fine), turned };
}

function wholeRoom(extent: number): number {
  return Math.floor((extent + hair) * fine);
}

/** Scales for pieces on one size of sheet; what does not lie on it weighs twice as much as it holds. */
function scalesOn(
  sheet: { readonly length: number; readonly width: number },
  types: readonly (readonly Way[])[],
  demand: readonly number[],
): Scale[] {
  const lying = types.map((ways) =>
    ways.filter((way) => way.length <= sheet.length && way.width <= sheet.width),
  );
  const share = (way: Way): Pick<Way, "length" | "width"> => ({
    length: way.length / sheet.length,
    width: way.width / sheet.width,
  });
  const pieces = lying.flatMap(([first, second], type) =>
    first ? [{ ...share(first), ...(second ? { turned: share(second) } : {}), count: at(demand, type) }] : [],
  );
  return heaviestScales(pieces, scales).map((scale) => {
    let next = 0;
    return lying.map((ways) => (ways.length > 0 ? at(scale, next++) : 2));
  });
}

/** A box, and how to read it. */
export interface BoxOnBoard {
  /** The box. */ readonly box: Box;
  /** The sheet it is cut from. */ readonly board: Board;
  /** Units of the box in a unit of the board. */ readonly fine: number;
  /** Whether cuts may change direction as often as they like. */ readonly free: boolean;
  /** A piece of a type; each call hands out another. */ readonly take: (type: number) => Item;
}

/** A whole sheet with its cuts. What is left beyond the box stays in one part where the stages allow it. */
export function cutOut(one: BoxOnBoard): Part {
  const root = wholePart(one.board.length, one.board.width);
  const { length, width } = sizeOf(one, one.box);
  const stripLeft = (root.width - width) * root.length;
  const endLeft = (root.length - length) * root.width;
  lay(one, root, one.box, one.free ? (stripLeft > endLeft ? "along" : "across") : undefined);
  return root;
}

function lay(one: BoxOnBoard, part: Part, box: Box, from: CutDirection | undefined): void {
  const size = sizeOf(one, box);
  const trimmed = trims(one, box, from).reduce((left, direction) => cutAt(left, direction, size)[0], part);
  if ("type" in box.made) trimmed.held = heldBy(one, box.made.type, box.made.way);
  else {
    const { direction, near, far } = box.made;
    const [first, rest] = cutAt(trimmed, direction, sizeOf(one, near));
    lay(one, first, near, direction);
    if (rest) lay(one, rest, far, direction);
  }
}

/**
 * Directions in which a part is cut down to a box before the box is cut apart. With stages to be kept, the other
 * side is left to the parts of the box, which a later cut trims in any case.
 */
function trims({ free }: BoxOnBoard, { made }: Box, from: CutDirection | undefined): CutDirection[] {
  const own = "type" in made ? undefined : made.direction;
  if (own && !free) return from === undefined || from === own ? [own] : [from, own];
  return (from ?? own) === "along" ? ["along", "across"] : ["across", "along"];
}

function heldBy({ take }: BoxOnBoard, type: number, { turned }: Way): NonNullable<Part["held"]> {
  const item = take(type);
  const way = item.ways.find((one) => one.turned === turned) as Way;
  return { item, way };
}

function sizeOf({ fine }: BoxOnBoard, { length, width }: Box): { length: number; width: number } {
  return { length: length / fine, width: width / fine };
}

/** A sheet's cuts as a box: its pieces as close together as the same cuts allow; nothing where it has none. */
export function boxOf(
  { cut, held }: Part,
  pieceOf: (held: NonNullable<Part["held"]>) => BoxOfOne,
): Box | undefined {
  if (held) {
    const made = pieceOf(held);
    return { length: made.way.length, width: made.way.width, made };
  }
  if (!cut) return undefined;
  const [near, far] = [boxOf(cut.near, pieceOf), boxOf(cut.far, pieceOf)];
  return near && far ? joined(near, far, cut.direction) : (near ?? far);
}
