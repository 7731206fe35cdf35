/** Tables of a builder's CSV files: text in, typed rows and every problem out. Touches no file. */

import { didYouMean, type Problem } from "../problem.js";
import { type CellReader, type Column, OutOfReach } from "./column.js";
import { type CsvLine, readCsv } from "./csv.js";
import { withPoints } from "./decimal-comma.js";

/** What every row carries beside its own fields. */
export interface TableRow {
  /** Line of the file, counted from 1, for problems found later. */ readonly line: number;
}

/** One column for each field of a row. */
export type ColumnsOf<Row extends TableRow> = {
  readonly [Field in Exclude<keyof Row, "line">]-?: Column<Row[Field]>;
};

/** The columns of one kind of table. */
export interface TableSchema<Row extends TableRow> {
  /** One a field. */ readonly columns: ColumnsOf<Row>;
  /** A header without rows is no problem. */ readonly mayBeEmpty: boolean;
}

/** What a file gave: the rows without a fault, and every problem. */
export interface ReadTable<Row extends TableRow> {
  /** Those without a fault. */ readonly rows: readonly Row[];
  /** What every row is called, those with a fault too; undefined where no heading or a row does not say. */
  readonly names: readonly string[] | undefined;
  /** Everything that is wrong with the file. */ readonly problems: readonly Problem[];
}

/**
 * Declares a table.
 *
 * @example
 * interface Plank { readonly line: number; readonly name: string; readonly thickness: Length }
 * const planks = tableSchema<Plank>({
 *   name: column("name", Name, { unique: true }),
 *   thickness: column("thickness", Length, { above: 0 }),
 * });
 */
export function tableSchema<Row extends TableRow>(
  columns: ColumnsOf<Row>,
  { mayBeEmpty = false }: { readonly mayBeEmpty?: boolean } = {},
): TableSchema<Row> {
  return { columns, mayBeEmpty };
}

/**
 * Reads CSV text. Never throws on what a builder wrote: unknown, missing or doubled columns, missing or
 * unknown units, bad cells, values out of bounds, doubled names and an empty file all come back as
 * problems, all at once. A row with a problem is left out of `rows`.
 *
 * @param file name to show in problems
 */
export function readTable<Row extends TableRow>(
  text: string,
  file: string,
  schema: TableSchema<Row>,
): ReadTable<Row> {
  const columns: Columns = Object.entries(schema.columns);
  const { lines, delimiter, problems: unreadable } = readCsv(text, file, (cells) => knownIn(cells, columns));
  const [first, ...written] = lines;
  if (!first) {
    const empty: Problem = { file, expected: "a header line and rows" };
    return { rows: [], names: undefined, problems: unreadable.length > 0 ? unreadable : [empty] };
  }
  if (knownIn(first.cells, columns) === 0) {
    const expected = `a line of headings such as ${examples(columns)}`;
    return {
      rows: [],
      names: undefined,
      problems: [{ file, row: first.line, value: first.cells.join(", "), expected }],
    };
  }
  const header = readHeader(first, file, columns);
  const { lines: rest, problems: mixed } = withPoints(written, first.cells, delimiter, file);
  const none =
    rest.length === 0 && !schema.mayBeEmpty
      ? [{ file, row: first.line, expected: "rows below the header" }]
      : [];
  const read = rest.map((line) => readRow(line, file, first.cells.length, header.placed));
  const doubled = header.placed.flatMap((column) => doubledValues(column, rest, file));
  const sound = header.problems.length === 0;
  const wrongRows = new Set(doubled.map(({ row }) => row));
  return {
    rows: read
      .filter(({ problems, row }) => sound && problems.length === 0 && !wrongRows.has(row.line))
      .map(({ row }) => row as Row),
    names: none.length > 0 ? undefined : namesIn(rest, first.cells.length, header.placed),
    problems: [
      ...header.problems,
      ...mixed,
      ...[...unreadable, ...none, ...read.flatMap(({ problems }) => problems), ...doubled].sort(byRow),
    ],
  };
}

/** The cells under "name", where each row has one and none has more cells than the header. */
function namesIn(
  lines: readonly CsvLine[],
  width: number,
  placed: readonly PlacedColumn[],
): readonly string[] | undefined {
  const position = placed.find(({ field }) => field === "name")?.position;
  if (position === undefined || lines.some(({ cells }) => cells.slice(width).some(Boolean))) return undefined;
  const names = lines.map(({ cells }) => cells[position] ?? "");
  return names.includes("") ? undefined : names;
}

interface ReadRow {
  /** Fields that could be read. */ readonly row: TableRow & Readonly<Record<string, unknown>>;
  /** Why the others could not. */ readonly problems: readonly Problem[];
}

function readRow(
  { line, cells }: CsvLine,
  file: string,
  width: number,
  placed: readonly PlacedColumn[],
): ReadRow {
  if (cells.slice(width).some(Boolean)) {
    const expected = `${width} cells as in the header, got ${cells.length} (a decimal comma is not read)`;
    return { row: { line }, problems: [{ file, row: line, value: cells.join(","), expected }] };
  }
  const row: Record<string, unknown> & { line: number } = { line };
  const problems: Problem[] = [];
  for (const { field, position, written, column, cells: reader } of placed) {
    const value = cells[position] ?? "";
    if (value === "" && !column.required) continue;
    try {
      row[field] = reader.read(value);
    } catch (error) {
      const expected =
        error instanceof OutOfReach
          ? error.message
          : `${reader.expected}${didYouMean(value, reader.words ?? [])}`;
      problems.push({ file, row: line, column: written, value, expected });
    }
  }
  return { row, problems };
}

/** A value of a unique column that already stands in an earlier row. */
function doubledValues(
  { column, position, written }: PlacedColumn,
  lines: readonly CsvLine[],
  file: string,
): Problem[] {
  if (!column.unique) return [];
  const seen = new Map<string, number>();
  return lines.flatMap(({ line, cells }) => {
    const value = cells[position] ?? "";
    const earlier = seen.get(value.toLowerCase());
    if (value === "") return [];
    if (earlier === undefined) {
      seen.set(value.toLowerCase(), line);
      return [];
    }
    const expected = `each ${column.header} only once, row ${earlier} has it too`;
    return [{ file, row: line, column: written, value, expected }];
  });
}

function byRow(a: Problem, b: Problem): number {
  return (a.row ?? 0) - (b.row ?? 0);
}

/** A field of the row, where its cells stand and how to read them. */
export interface PlacedColumn {
  /** Name of the field. */ readonly field: string;
  /** Counted from 0. */ readonly position: number;
  /** The header as the builder wrote it. */ readonly written: string;
  /** The column of the schema. */ readonly column: Column<unknown>;
  /** Reads its cells. */ readonly cells: CellReader<unknown>;
}

/** Columns by field of the row. */
type Columns = readonly (readonly [field: string, Column<unknown>])[];

/** What a header line gave. */
export interface Header {
  /** Columns that were found. */ readonly placed: readonly PlacedColumn[];
  /** What is wrong with the line. */ readonly problems: readonly Problem[];
}

/**
 * Places every column, and reports headers that are unknown, missing, doubled or without their unit.
 *
 * @throws whatever a column throws that is no refusal of its unit
 */
function readHeader({ cells, line }: CsvLine, file: string, columns: Columns): Header {
  const written = cells.map(parseHeader);
  const problemAt = (column: string, expected: string): Problem => ({ file, row: line, column, expected });
  const placed: PlacedColumn[] = [];
  const problems: Problem[] = [];
  const absent = columns
    .map(([, column]) => column)
    .filter(({ required, header }) => required && !written.some(({ name }) => name === plain(header)));
  const meant = new Set<Column<unknown>>();
  written.forEach((header, position) => {
    const [field, column] = columns.find(([, one]) => plain(one.header) === header.name) ?? [];
    if (field === undefined || column === undefined) {
      const like = absent.find((one) => didYouMean(header.name, [one.header]) !== "");
      if (like) meant.add(like);
      const known = columns.map(([, one]) => one.header);
      const hint = didYouMean(header.name, like ? [like.header] : known);
      problems.push(
        problemAt(header.text || `column ${position + 1}`, `one of the columns ${examples(columns)}${hint}`),
      );
    } else if (written.findIndex(({ name }) => name === header.name) < position) {
      problems.push(problemAt(header.text, `the column "${column.header}" only once`));
    } else {
      try {
        placed.push({ field, position, written: header.text, column, cells: column.readUnit(header.unit) });
      } catch (error) {
        if (!(error instanceof RangeError)) throw error;
        problems.push(problemAt(header.text, error.message));
      }
    }
  });
  const missing = absent
    .filter((column) => !meant.has(column))
    .map(({ example, header }) => problemAt(header, `a column "${example}"`));
  return { placed, problems: [...problems, ...missing] };
}

interface WrittenHeader {
  /** As the builder wrote it. */ readonly text: string;
  /** Lower case, single spaces. */ readonly name: string;
  /** What stands in brackets, if anything does. */ readonly unit: string | undefined;
}

function parseHeader(text: string): WrittenHeader {
  const [, name = "", unit] = /^(.*?)\s*(?:[([]([^()[\]]*)[)\]])?$/.exec(text) ?? [];
  return { text, name: plain(name), unit: unit?.trim() };
}

function plain(header: string): string {
  return header.trim().toLowerCase().replace(/\s+/g, " ");
}

/** How many headings of the table a line has. */
function knownIn(cells: readonly string[], columns: Columns): number {
  const names = new Set(cells.map((cell) => parseHeader(cell).name));
  return columns.filter(([, { header }]) => names.has(plain(header))).length;
}

function examples(columns: Columns): string {
  return columns.map(([, { example }]) => example).join(", ");
}
