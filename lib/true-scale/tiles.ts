/** A plot on sheets of A4 or Letter: tiles that share a strip, with the line to lay on each other and a ruler. */
import type { Case } from "../design/index.js";
import { type Box2, rectangle } from "../shape/index.js";
import type { PaperPage } from "./pdf-file.js";
import { closedPath, openPath, type Plot, type PlotMark, words } from "./plot.js";
import { rulerHeight, rulerMarks } from "./ruler.js";

/** Sizes of paper, mm; what `papers` has is what may be asked for. */
export const papers = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
} as const;
/** Paper that a shop's printer takes. */
export type Paper = keyof typeof papers;

/** Left white: no common printer needs more (6.35 mm is the widest margin of those looked up). */
const border = 8;

/** How much neighbours share, mm. */
const shared = 16;

/** Room below a tile for its name and the ruler, mm. */
const foot = rulerHeight + 6;

/** How a window of a plot falls into tiles. */
export interface TileGrid {
  /** Width of the paper as it lies, mm. */
  readonly width: number;
  /** Height of the paper as it lies, mm. */
  readonly height: number;
  /** Tiles beside each other. */
  readonly columns: number;
  /** Tiles over each other. */
  readonly rows: number;
}

/** The grid of fewest sheets, upright where both ways take as many. */
export function tileGrid({ width, height }: Pick<Box2, "width" | "height">, paper: Paper): TileGrid {
  const { width: short, height: long } = papers[paper];
  const laid = (across: number, up: number): TileGrid => {
    const room = roomFor(across, up);
    const count = (size: number, one: number): number =>
      Math.max(1, Math.ceil((size - shared) / (one - shared) - 1e-9));
    return {
      width: across,
      height: up,
      columns: count(width, room.width),
      rows: count(height, room.height),
    };
  };
  const [upright, level] = [laid(short, long), laid(long, short)];
  return level.columns * level.rows < upright.columns * upright.rows ? level : upright;
}

function roomFor(width: number, height: number): Pick<Box2, "width" | "height"> {
  return { width: width - 2 * border, height: height - 2 * border - foot };
}

/** A tile: which part of the plot it shows. */
interface Tile {
  /** From 0 at the left. */
  readonly column: number;
  /** From 0 at the bottom. */
  readonly row: number;
  /** Of the plot, mm. */
  readonly part: Box2;
}

/** The window of a plot on sheets of paper, row by row from the bottom. */
export function tilePages(
  plot: Plot,
  window: Box2,
  paper: Paper,
  units: Case["units"],
): readonly PaperPage[] {
  const grid = tileGrid(window, paper);
  const room = roomFor(grid.width, grid.height);
  const tiles = Array.from({ length: grid.columns * grid.rows }, (_, i): Tile => {
    const [column, row] = [i % grid.columns, Math.floor(i / grid.columns)];
    return {
      column,
      row,
      part: {
        left: window.left + column * (room.width - shared),
        bottom: window.bottom + row * (room.height - shared),
        ...room,
      },
    };
  });
  return tiles.map((tile) => tilePage(tile, grid, plot, units));
}

function tilePage(tile: Tile, grid: TileGrid, plot: Plot, units: Case["units"]): PaperPage {
  const { part } = tile;
  const clip = { left: border, bottom: border + foot, width: part.width, height: part.height };
  const origin = { x: clip.left - part.left, y: clip.bottom - part.bottom };
  return {
    width: grid.width,
    height: grid.height,
    laid: [
      { marks: plot.marks, origin, clip },
      { marks: overlapMarks(tile, grid, clip), origin: { x: 0, y: 0 } },
      { marks: footMarks(tile, grid, plot.title, units), origin: { x: 0, y: 0 } },
    ],
  };
}

/** "B2": the second from the left, the second from below. */
export function tileName(column: number, row: number): string {
  return `${String.fromCharCode(65 + column)}${row + 1}`;
}

/** On each side with a neighbour, the line that lies on the neighbour's own, and the neighbour's name. */
function overlapMarks({ column, row }: Tile, { columns, rows }: TileGrid, room: Box2): readonly PlotMark[] {
  const { left, bottom, width, height } = room;
  const half = shared / 2;
  const upright = (x: number, name: string, turn: 90 | 0): PlotMark[] => [
    joinLine([
      { x, y: bottom },
      { x, y: bottom + height },
    ]),
    words(`lay on ${name}`, { x: x + 3.5, y: bottom + height / 2 }, 3, { anchor: "middle", turn }),
  ];
  const level = (y: number, name: string): PlotMark[] => [
    joinLine([
      { x: left, y },
      { x: left + width, y },
    ]),
    words(`lay on ${name}`, { x: left + width / 2, y: y + 1.5 }, 3, { anchor: "middle" }),
  ];
  return [
    ...(column > 0 ? upright(left + half, tileName(column - 1, row), 90) : []),
    ...(column < columns - 1 ? upright(left + width - half, tileName(column + 1, row), 90) : []),
    ...(row > 0 ? level(bottom + half, tileName(column, row - 1)) : []),
    ...(row < rows - 1 ? level(bottom + height - half, tileName(column, row + 1)) : []),
  ];
}

function joinLine(points: Parameters<typeof openPath>[0]): PlotMark {
  return openPath(points, "LATER");
}

/** The tile's name, which of all it is, and the ruler. */
function footMarks(
  { column, row }: Tile,
  { columns, rows, width }: TileGrid,
  title: string,
  units: Case["units"],
): readonly PlotMark[] {
  const last = tileName(columns - 1, rows - 1);
  const name = columns * rows === 1 ? title : `${title}: sheet ${tileName(column, row)} of A1 to ${last}`;
  return [
    words(name, { x: border, y: border + rulerHeight + 1 }, 3.6),
    ...rulerMarks(units, { x: border, y: border }),
    ...mapMarks(column, row, { columns, rows }, width - border),
  ];
}

/** A small map of all tiles with this one filled. */
function mapMarks(
  column: number,
  row: number,
  { columns, rows }: Pick<TileGrid, "columns" | "rows">,
  right: number,
): readonly PlotMark[] {
  if (columns * rows === 1) return [];
  const side = Math.min(4, (foot - 2) / rows, 30 / columns);
  return Array.from({ length: columns * rows }, (_, i): PlotMark => {
    const [across, up] = [i % columns, Math.floor(i / columns)];
    const box = {
      left: right - (columns - across) * side,
      bottom: border + up * side,
      width: side,
      height: side,
    };
    return closedPath(rectangle(box), "NOTES", across === column && up === row);
  });
}
