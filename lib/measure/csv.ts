/** Splits CSV text into cells, as workshops and spreadsheets write it. */
import { parse } from "csv-parse/browser/esm/sync";
import type { Problem } from "../problem.js";
import { isProblem } from "./readings.js";

/** What stands between the cells of a line. */
export type Delimiter = "," | ";" | "\t";

const delimiters: readonly Delimiter[] = [",", ";", "\t"];

/** One line of a CSV that holds data. */
export interface CsvLine {
  /** Counted from 1, comments and blank lines too. */ readonly line: number;
  /** Trimmed. */ readonly cells: readonly string[];
}

/** The lines that could be read, and those that could not. */
export interface CsvLines {
  /** What stands between their cells. */ readonly delimiter: Delimiter;
  /** Lines of cells, that of the headings first. */ readonly lines: readonly CsvLine[];
  /** Lines that could not be split. */ readonly problems: readonly Problem[];
}

interface TextLine {
  /** The line as it stands in the file. */ readonly content: string;
  /** Counted from 1. */ readonly line: number;
}

/** How many headings of its table a line of cells has. */
export type HeadingsIn = (cells: readonly string[]) => number;

/** Most lines of a table: thousands of times what a shop measures. */
const mostLines = 200_000;

/** Lines among which the headings are looked for: titles may stand above them. */
const titleLines = 12;

/**
 * Splits CSV text into cells. One row stands on one line, so each line is parsed by itself: a quote left
 * open spoils its own row only. Lines that start with # and blank lines are skipped; a byte-order mark,
 * CRLF, quoted cells, semicolons or tabs between cells and titles above the headings are read as spreadsheets write them.
 *
 * @param headings how many headings of the table a line of cells has; without any, the first line has the headings
 */
export function readCsv(text: string, file: string, headings?: HeadingsIn): CsvLines {
  const written = text
    .replace(/^\ufeff/, "")
    .replace(/[\u00a0\u202f]/g, " ")
    .split(/\r\n|\n|\r/)
    .map((content, i): TextLine => ({ content, line: i + 1 }))
    .filter(({ content }) => content.replace(/[,;\s]/g, "") !== "" && !content.trimStart().startsWith("#"));
  const [beyond] = written.slice(mostLines);
  if (beyond) {
    const expected = `at most ${mostLines} rows, this table has ${written.length}`;
    return { delimiter: ",", lines: [], problems: [{ file, row: beyond.line, expected }] };
  }
  const { first, delimiter } = headings
    ? headingsOf(written.slice(0, titleLines), headings)
    : headingsOf(written.slice(0, 1), ({ length }) => length);
  const read = written.slice(first).map((one) => readLine(one, file, delimiter));
  return {
    delimiter,
    lines: withoutEmptyColumns(read.filter((one): one is CsvLine => !isProblem(one))),
    problems: read.filter(isProblem),
  };
}

/** Without the columns at the right in which nothing stands: spreadsheets write them where a cell once was. */
function withoutEmptyColumns(lines: readonly CsvLine[]): readonly CsvLine[] {
  const used = Math.max(...lines.map(({ cells }) => cells.findLastIndex((cell) => cell !== "")), 0) + 1;
  const [headings] = lines;
  if (!headings || headings.cells.length < used || headings.cells[used - 1] === "") return lines;
  return lines.map(({ line, cells }) => ({ line, cells: cells.slice(0, used) }));
}

/** Where the headings stand, and what is between them: the line with the most of them. */
function headingsOf(
  lines: readonly TextLine[],
  headings: HeadingsIn,
): { readonly first: number; readonly delimiter: Delimiter } {
  const ways = lines.flatMap(({ content }, first) =>
    delimiters.map((delimiter) => {
      const cells = cellsIn(content, delimiter);
      return { first, delimiter, known: cells ? headings(cells) : 0 };
    }),
  );
  return ways.reduce((best, way) => (way.known > best.known ? way : best), {
    first: 0,
    delimiter: ",",
    known: 0,
  });
}

function readLine({ content, line }: TextLine, file: string, delimiter: Delimiter): CsvLine | Problem {
  const cells = cellsIn(content, delimiter);
  if (cells) return { line, cells };
  const between = delimiter === "," ? "commas" : delimiter === ";" ? "semicolons" : "tabs";
  const expected = `cells between ${between}, each opening quote closed on the same line`;
  return { file, row: line, value: content, expected };
}

function cellsIn(content: string, delimiter: Delimiter): readonly string[] | undefined {
  if (!content.includes('"')) return content.split(delimiter).map((cell) => cell.trim());
  try {
    const [cells = []] = parse(content, { trim: true, relax_quotes: true, delimiter });
    return cells;
  } catch {
    return undefined;
  }
}

/** A cell as a table with commas has it, in quotes where it needs them. */
export function csvCell(cell: string): string {
  return /[",;\t]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}
