/** Turns a filled sheet into placed pieces, offcuts and straight cuts, one cut at a time as a saw would. */
import { Area, Length } from "../quantity/index.js";
import { groupedCuts } from "./cut-order.js";
import type { Part } from "./rectangles/cut-tree.js";
import { freeAreas } from "./rectangles/free-areas.js";
import type { Laid } from "./rectangles/item.js";
import type { UsedBoard } from "./rectangles/least-boards.js";
import { hair } from "./rounding.js";
import { usableSize } from "./sheet-bound.js";
import type { SheetLosses } from "./sheet-items.js";
import type { CutSheet, PlacedPiece, SheetArea, StockSheet, ThroughCut } from "./sheet-plan.js";

type Direction = ThroughCut["direction"];

/** The two sides of a cut; the rest is missing where the cut reaches the edge. */
interface Sawn {
  readonly kept: SheetArea;
  readonly rest?: SheetArea;
}

/** A saw that remembers its cuts and its dust. */
class Saw {
  readonly cuts: ThroughCut[] = [];
  readonly offcuts: SheetArea[] = [];
  readonly pieces: PlacedPiece[] = [];
  dust = 0;

  constructor(private readonly kerf: number) {}

  /** Cuts a part in two, keeping the given size on the near side; no cut where that is the whole part. */
  cut(part: SheetArea, direction: Direction, size: number): Sawn {
    const along = direction === "along";
    const extent = along ? part.width : part.length;
    if (extent - size <= hair) return { kept: part };
    const lost = Math.min(this.kerf, extent - size);
    this.cuts.push({ part, direction, at: Length.si((along ? part.y : part.x) + size) });
    this.dust += lost * (along ? part.length : part.width);
    const kept = slice(part, along, 0, size);
    const left = extent - size - lost;
    return left > hair ? { kept, rest: slice(part, along, size + lost, left) } : { kept };
  }

  /** Puts a part aside. */
  putAside(part: SheetArea | undefined): void {
    if (part) this.offcuts.push(part);
  }
}

function slice(part: SheetArea, along: boolean, from: number, extent: number): SheetArea {
  return along
    ? { ...part, y: Length.si(part.y + from), width: Length.si(extent) }
    : { ...part, x: Length.si(part.x + from), length: Length.si(extent) };
}

/** Saws one filled sheet, or routs it where it has no straight cuts. */
export function cutSheet(
  { root, laid }: UsedBoard,
  source: StockSheet,
  { kerf, edgeTrim }: SheetLosses,
): CutSheet {
  const usable = trimmed(source, edgeTrim);
  const { name, length, width, price } = source;
  return {
    stock: name,
    length,
    width,
    price,
    ...(root ? sawn(root, usable, kerf) : routed(laid, usable, kerf)),
    trimArea: Area.si(length * width - usable.length * usable.width),
  };
}

type Worked = Pick<CutSheet, "pieces" | "offcuts" | "cuts" | "kerfArea">;

function sawn(root: Part, usable: SheetArea, kerf: number): Worked {
  const saw = new Saw(kerf);
  follow(saw, root, usable, kerf);
  const { pieces, offcuts, cuts, dust } = saw;
  return { pieces, offcuts, cuts: groupedCuts(cuts), kerfArea: Area.si(dust) };
}

/** Cuts an area as a part of the plan says, whose sizes have a kerf in them. */
function follow(saw: Saw, { cut, held }: Part, area: SheetArea, kerf: number): void {
  if (held) saw.pieces.push({ name: held.item.name, turned: held.way.turned, ...area });
  else if (!cut) saw.putAside(area);
  else {
    const { direction, near, far } = cut;
    const { kept, rest } = saw.cut(
      area,
      direction,
      (direction === "along" ? near.width : near.length) - kerf,
    );
    follow(saw, near, kept, kerf);
    if (rest) follow(saw, far, rest, kerf);
  }
}

function routed(laid: readonly Laid[], usable: SheetArea, kerf: number): Worked {
  const pieces = laid.map(
    ({ item, turned, x, y, length, width }): PlacedPiece => ({
      name: item.name,
      turned,
      x: Length.si(usable.x + x),
      y: Length.si(usable.y + y),
      length: Length.si(length - kerf),
      width: Length.si(width - kerf),
    }),
  );
  const offcuts = freeAreas(laid, usable).map(
    (area): SheetArea => ({
      x: Length.si(usable.x + area.x),
      y: Length.si(usable.y + area.y),
      length: Length.si(area.length),
      width: Length.si(area.width),
    }),
  );
  const kept = [...pieces, ...offcuts].reduce((sum, { length, width }) => sum + length * width, 0);
  return { pieces, offcuts, cuts: [], kerfArea: Area.si(usable.length * usable.width - kept) };
}

function trimmed(sheet: StockSheet, edgeTrim: number): SheetArea {
  const { length, width } = usableSize(sheet, edgeTrim);
  const corner = Length.si(edgeTrim);
  return { x: corner, y: corner, length: Length.si(length), width: Length.si(width) };
}
