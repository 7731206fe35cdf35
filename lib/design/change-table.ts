/** A change of a table as one piece of its text in place of another. */
import { type CsvLine, type Delimiter, readCsv } from "../measure/index.js";
import * as quantities from "../quantity/index.js";
import type { TextEdit } from "./change-case.js";
import { type HeaderKind, underHeader } from "./change-value.js";

/** A row of a table. */
export interface RowPlace {
  /** The file, such as "sheet-stock.csv". */
  readonly file: string;
  /** What stands in the first column of the row, or its line, counted from 1. */
  readonly row: string | number;
}

/** A cell of a table. */
export interface CellPlace extends RowPlace {
  /** The header of its column, with or without the unit. */
  readonly column: string;
}

/** Cells of a new row by the header of their column, with or without the unit; a column left out stays blank. */
export type NewRow = Readonly<Record<string, string>>;

/** A change of a table. A value with a unit is written as the number of the unit of its header, any other as it is. */
export type TableChange =
  | { readonly kind: "set"; readonly at: CellPlace; readonly to: string }
  | { readonly kind: "add"; readonly at: { readonly file: string }; readonly what: NewRow }
  | { readonly kind: "remove"; readonly at: RowPlace }
  | { readonly kind: "rename"; readonly at: RowPlace; readonly to: string };

/** A line of the text. */
interface TextLine {
  /** Counted from 1. */
  readonly line: number;
  /** Where it begins, in characters from the start of the file. */
  readonly start: number;
  /** Without its end. */
  readonly text: string;
  /** What ends it; empty for the last line of a file that ends without. */
  readonly end: string;
}

/** A line that holds data: its text and its cells. */
interface DataLine extends TextLine {
  /** The cells as they are read. */
  readonly cells: readonly string[];
}

/** A table as it is written. */
interface Written {
  /** Name of the file. */
  readonly file: string;
  /** What stands between its cells. */
  readonly delimiter: Delimiter;
  /** The line of the headers. */
  readonly header: DataLine;
  /** The lines of the rows. */
  readonly rows: readonly DataLine[];
}

/**
 * The edit that makes a change.
 *
 * @throws RangeError for a row or a column that is not there or not only one
 */
export function tableEdit(text: string, change: TableChange): TextEdit {
  const table = writtenTable(text, change.at.file);
  switch (change.kind) {
    case "set":
      return setting(table, change.at, change.to);
    case "rename": {
      const [first = ""] = table.header.cells;
      return setting(table, { ...change.at, column: first }, change.to);
    }
    case "add":
      return adding(table, change.what);
    case "remove":
      return removing(text, rowOf(table, change.at));
  }
}

/** @throws RangeError for a file without a header */
function writtenTable(text: string, file: string): Written {
  const { lines: split, delimiter } = readCsv(text, file);
  const read = new Map(split.map(({ line, cells }: CsvLine) => [line, cells]));
  const lines = textLines(text).flatMap((one): DataLine[] => {
    const cells = read.get(one.line);
    return cells ? [{ ...one, cells }] : [];
  });
  const [header, ...rows] = lines;
  if (!header) throw new RangeError(`${file}: expected a header line`);
  return { file, delimiter, header, rows };
}

function textLines(text: string): TextLine[] {
  const skipped = text.startsWith("\ufeff") ? 1 : 0;
  const found = text.slice(skipped).matchAll(/([^\r\n]*)(\r\n|\n|\r|$)/g);
  return [...found].map(({ index, 1: content = "", 2: end = "" }, i) => ({
    line: i + 1,
    start: index + skipped,
    text: content,
    end,
  }));
}

/** @throws RangeError for a row that is not there or not only one */
function rowOf({ file, rows }: Written, { row }: RowPlace): DataLine {
  const found = rows.filter(({ line, cells }) => (typeof row === "number" ? line === row : cells[0] === row));
  const [only, second] = found;
  if (!only) throw new RangeError(`${file}: no row "${row}"`);
  if (second) {
    const lines = found.map(({ line }) => line).join(", ");
    throw new RangeError(`${file}: expected one row "${row}", lines ${lines} are such: name the line`);
  }
  return only;
}

/**
 * Position of a column, by its header with or without the unit.
 *
 * @throws RangeError for a column that is not there
 */
function columnOf({ file, header }: Written, name: string): number {
  const plain = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, " ");
  const bare = (text: string): string => plain(text.replace(/\([^()]*\)\s*$/, ""));
  const whole = header.cells.findIndex((cell) => plain(cell) === plain(name));
  const position = whole >= 0 ? whole : header.cells.findIndex((cell) => bare(cell) === plain(name));
  if (position < 0)
    throw new RangeError(`${file}: no column "${name}", expected one of ${header.cells.join(", ")}`);
  return position;
}

function setting(table: Written, at: CellPlace, to: string): TextEdit {
  const { start, text } = rowOf(table, at);
  const position = columnOf(table, at.column);
  const { delimiter } = table;
  const ranges = cellRanges(text, delimiter);
  const cell = ranges[position];
  const now = cellText(inUnitOf(table, position, to), position, delimiter);
  if (cell) return { at: start + cell[0], old: text.slice(...cell), now };
  const missing = position - ranges.length + 1;
  return { at: start + text.length, old: "", now: `${delimiter.repeat(missing)}${now}` };
}

function inUnitOf({ header }: Written, position: number, text: string): string {
  return underHeader(header.cells[position] ?? "", text, kinds);
}

/** What headers measure. */
const kinds: readonly HeaderKind[] = Object.values(quantities).filter(
  (one): one is HeaderKind & (typeof quantities)["Length"] => typeof one === "object" && "units" in one,
);

function adding(table: Written, what: NewRow): TextEdit {
  const cells: string[] = table.header.cells.map(() => "");
  for (const [column, value] of Object.entries(what)) {
    const position = columnOf(table, column);
    cells[position] = cellText(inUnitOf(table, position, value), position, table.delimiter);
  }
  const last = table.rows.at(-1) ?? table.header;
  const row = cells.join(table.delimiter);
  if (last.end !== "")
    return { at: last.start + last.text.length + last.end.length, old: "", now: row + last.end };
  return { at: last.start + last.text.length, old: "", now: (table.header.end || "\n") + row };
}

function removing(text: string, { start, text: content, end }: DataLine): TextEdit {
  if (end !== "") return { at: start, old: content + end, now: "" };
  const before = /(\r\n|\n|\r)$/.exec(text.slice(0, start))?.[0] ?? "";
  return { at: start - before.length, old: before + content, now: "" };
}

/**
 * A cell as it must be written to be read as the text; a first cell with a # would make its row a remark.
 *
 * @throws RangeError for a text of more than one line
 */
function cellText(value: string, position: number, delimiter: Delimiter): string {
  if (/[\r\n]/.test(value)) throw new RangeError(`a cell: expected one line, got ${JSON.stringify(value)}`);
  const isPlain =
    !value.includes(delimiter) && !/"|^\s|\s$/.test(value) && !(position === 0 && value.startsWith("#"));
  return isPlain ? value : `"${value.replaceAll('"', '""')}"`;
}

/** Where the cells of a line stand in it, quotes counted in, blanks around them not. */
function cellRanges(line: string, delimiter: Delimiter): (readonly [number, number])[] {
  const pattern = new RegExp(` *("(?:[^"]|"")*"|[^${delimiter}]*?) *(${delimiter}|$)`, "gy");
  const ranges: (readonly [number, number])[] = [];
  for (const match of line.matchAll(pattern)) {
    const [whole, cell = "", between] = match;
    const start = match.index + whole.indexOf(cell, whole.length - whole.trimStart().length);
    ranges.push([start, start + cell.length]);
    if (between === "") break;
  }
  return ranges;
}
