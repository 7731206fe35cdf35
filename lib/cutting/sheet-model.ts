/** Between sheets with pieces on them and the exact search: pieces to types, sheets to fills, and back. */
import type { Fill, Remaining } from "./exact/cover.js";
import { wholePrices } from "./price-unit.js";
import type { Box } from "./rectangles/box.js";
import { cutLevels } from "./rectangles/cut-levels.js";
import { boxOf, cutOut } from "./rectangles/cut-out.js";
import { laidOn } from "./rectangles/cut-tree.js";
import { heaviestScales, type Scale } from "./rectangles/dual-feasible.js";
import { Fronts } from "./rectangles/fronts.js";
import { BoxGrower } from "./rectangles/grown-boxes.js";
import { areaOf, type Item, type Way } from "./rectangles/item.js";
import type { BoardStock, UsedBoard } from "./rectangles/least-boards.js";
import { type SetBudget, SheetFills, type SheetSupply } from "./rectangles/sheet-fills.js";
import { hair } from "./rounding.js";

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
        cost: costs[i] as number,
        supply: supply[i] as number,
        scales: scalesOn(size, ways, demand),
      };
    });
    const levels = cutLevels(stages);
    const largest = (side: "length" | "width"): number => Math.max(...stocks.map((stock) => stock[side]));
    const fronts = new Fronts(ways, levels, largest("length"), largest("width"));
    this.fills = new SheetFills(stocks, ways, fronts, new BoxGrower(ways, levels), demand, effort);
    this.all = { demand, supply };
  }

  /** Sheets as fills. */
  fillsOf(used: readonly UsedBoard[]): Fill[] {
    return used.map(({ board, laid, root }) => {
      const counts = this.types.map(() => 0);
      for (const { item } of laid) counts[this.type(item)] = (counts[this.type(item)] as number) + 1;
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
      const { length, width } = this.boards[fill.stock] as BoardStock;
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
    first
      ? [{ ...share(first), ...(second ? { turned: share(second) } : {}), count: demand[type] as number }]
      : [],
  );
  return heaviestScales(pieces, scales).map((scale) => {
    let next = 0;
    return lying.map((ways) => (ways.length > 0 ? (scale[next++] as number) : 2));
  });
}
