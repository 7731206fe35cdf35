/** Turns a filled sheet into placed pieces, offcuts and straight cuts, one cut at a time as a saw would. */
import { at } from "../algebra/lists.js";
import { Area, Length } from "../quantity/index.js";
import { hair } from "./numbers.js";
import type { Part } from "./rectangles/cut-tree.js";
import type { Laid } from "./rectangles/item.js";
import type { UsedBoard } from "./rectangles/least-boards.js";
import { groupedCuts } from "./saw-steps.js";
import { usableSize } from "./sheet-bound.js";
import type { SheetLosses } from "./sheet-items.js";
import type { CutSheet, PlacedPiece, SheetArea, StockSheet, ThroughCut } from "./sheet-plan.js";

type Direction = ThroughCut["direction"];

/** The two sides of a cut; the rest is missing where the cut reaches the edge. */
interface Sawn {
  /** What stays at the fence. */ readonly kept: SheetArea;
  /** What is beyond the cut. */ readonly rest?: SheetArea;
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

/** A rectangle on a sheet. */
interface FreeArea {
  /** Nearest edge, along the sheet, in metres. */ readonly x: number;
  /** Nearest edge, across the sheet, in metres. */ readonly y: number;
  /** Along the sheet, in metres. */ readonly length: number;
  /** Across the sheet, in metres. */ readonly width: number;
}

/** What a sheet has besides its pieces and their kerfs, as rectangles that do not overlap, as wide as they go. */
function freeAreas(
  laid: readonly Laid[],
  sheet: { readonly length: number; readonly width: number },
): FreeArea[] {
  const areas: FreeArea[] = [];
  const lines = edges(
    laid.flatMap(({ x, length }) => [x, x + length]),
    sheet.length,
  );
  const ends = edges(
    laid.flatMap(({ y, width }) => [y, y + width]),
    sheet.width,
  );
  for (const [i, x] of lines.slice(0, -1).entries()) {
    const length = at(lines, i + 1) - x;
    for (const { y, width } of gaps(laid, x + length / 2, ends)) grow(areas, { x, y, length, width });
  }
  return areas;
}

/** Distinct edges on a sheet, its own included. */
function edges(all: readonly number[], end: number): number[] {
  const inside = all.filter((one) => one > hair && one < end - hair).sort((a, b) => a - b);
  return [0, ...inside.filter((one, i) => i === 0 || one - at(inside, i - 1) > hair), end];
}

/** Free lengths across the sheet at a place along it. */
function gaps(laid: readonly Laid[], along: number, ends: readonly number[]): { y: number; width: number }[] {
  const here = laid.filter(({ x, length }) => x < along && along < x + length);
  const found: { y: number; width: number }[] = [];
  for (const [i, y] of ends.slice(0, -1).entries()) {
    const width = at(ends, i + 1) - y;
    const middle = y + width / 2;
    if (here.some((piece) => piece.y < middle && middle < piece.y + piece.width)) continue;
    const before = found.at(-1);
    if (before && Math.abs(before.y + before.width - y) <= hair) before.width += width;
    else found.push({ y, width });
  }
  return found;
}

/** Lengthens the rectangle that ends where this one begins, or adds it. */
function grow(areas: FreeArea[], area: FreeArea): void {
  const touching = areas.findIndex(
    ({ x, y, length, width }) =>
      Math.abs(x + length - area.x) <= hair &&
      Math.abs(y - area.y) <= hair &&
      Math.abs(width - area.width) <= hair,
  );
  if (touching < 0) areas.push(area);
  else {
    const before = at(areas, touching);
    areas[touching] = { ...before, length: before.length + area.length };
  }
}
