/** Turns shelves into straight cuts, placed pieces and offcuts, one cut at a time as a saw would. */
import { Area, Length } from "../quantity/index.js";
import { hair } from "./rounding.js";
import { usableSize } from "./sheet-bound.js";
import type { FilledSheet, SheetLosses } from "./sheet-packing.js";
import type { CutSheet, PlacedPiece, SheetArea, ThroughCut } from "./sheet-plan.js";
import type { OrientedPiece, SheetStrategy } from "./sheet-strategy.js";
import type { Shelf } from "./shelves.js";

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

/** Saws one filled sheet: shelf by shelf, piece by piece, then each piece down to its height. */
export function cutSheet(
  { source, shelves }: FilledSheet,
  strategy: SheetStrategy,
  { kerf, edgeTrim }: SheetLosses,
): CutSheet {
  const saw = new Saw(kerf);
  const usable = trimmed(source, edgeTrim);
  let rest: SheetArea | undefined = usable;
  for (const shelf of shelves) {
    if (!rest) break;
    const strip: Sawn = saw.cut(rest, strategy.shelves, shelf.height);
    sawShelf(saw, strip.kept, shelf, strategy.shelves);
    rest = strip.rest;
  }
  saw.putAside(rest);
  const { name, length, width, price } = source;
  return {
    stock: name,
    length,
    width,
    price,
    pieces: saw.pieces,
    offcuts: saw.offcuts,
    cuts: saw.cuts,
    kerfArea: Area.si(saw.dust),
    trimArea: Area.si(length * width - usable.length * usable.width),
  };
}

function trimmed(sheet: FilledSheet["source"], edgeTrim: number): SheetArea {
  const { length, width } = usableSize(sheet, edgeTrim);
  const corner = Length.si(edgeTrim);
  return { x: corner, y: corner, length: Length.si(length), width: Length.si(width) };
}

function sawShelf(saw: Saw, strip: SheetArea, shelf: Shelf<OrientedPiece>, shelves: Direction): void {
  const acrossShelf: Direction = shelves === "along" ? "across" : "along";
  let rest: SheetArea | undefined = strip;
  for (const { name, turned, width, height } of shelf.pieces) {
    if (!rest) break;
    const column: Sawn = saw.cut(rest, acrossShelf, width);
    const piece = saw.cut(column.kept, shelves, height);
    saw.pieces.push({ name, turned, ...piece.kept });
    saw.putAside(piece.rest);
    rest = column.rest;
  }
  saw.putAside(rest);
}
