/** Reads the header line of a table against its columns. */
import type { Problem } from "../problem.js";
import type { CellReader, Column } from "./column.js";
import type { CsvLine } from "./csv.js";

/** A field of the row, where its cells stand and how to read them. */
export interface PlacedColumn {
  readonly field: string;
  /** Counted from 0. */
  readonly position: number;
  /** The header as the builder wrote it. */
  readonly written: string;
  readonly column: Column<unknown>;
  readonly cells: CellReader<unknown>;
}

/** Columns by field of the row. */
export type Columns = Readonly<Record<string, Column<unknown>>>;

/** What a header line gave. */
export interface Header {
  readonly placed: readonly PlacedColumn[];
  readonly problems: readonly Problem[];
}

/** Places every column, and reports headers that are unknown, missing, doubled or without their unit. */
export function readHeader({ cells, line }: CsvLine, file: string, columns: Columns): Header {
  const written = cells.map(parseHeader);
  const problemAt = (column: string, expected: string): Problem => ({ file, row: line, column, expected });
  const placed: PlacedColumn[] = [];
  const problems: Problem[] = [];
  written.forEach((header, position) => {
    const [field, column] =
      Object.entries(columns).find(([, one]) => plain(one.header) === header.name) ?? [];
    if (field === undefined || column === undefined) {
      problems.push(problemAt(header.text, `one of the columns ${examples(columns)}`));
    } else if (written.findIndex(({ name }) => name === header.name) < position) {
      problems.push(problemAt(header.text, `the column "${column.header}" only once`));
    } else {
      try {
        placed.push({ field, position, written: header.text, column, cells: column.readUnit(header.unit) });
      } catch (error) {
        problems.push(problemAt(header.text, (error as Error).message));
      }
    }
  });
  const missing = Object.values(columns)
    .filter(({ required, header }) => required && !written.some(({ name }) => name === plain(header)))
    .map(({ example, header }) => problemAt(header, `a column "${example}"`));
  return { placed, problems: [...problems, ...missing] };
}

interface WrittenHeader {
  readonly text: string;
  /** Lower case, single spaces. */
  readonly name: string;
  readonly unit: string | undefined;
}

function parseHeader(text: string): WrittenHeader {
  const [, name = "", unit] = /^(.*?)\s*(?:\(([^()]*)\))?$/.exec(text) ?? [];
  return { text, name: plain(name), unit: unit?.trim() };
}

function plain(header: string): string {
  return header.trim().toLowerCase().replace(/\s+/g, " ");
}

function examples(columns: Columns): string {
  return Object.values(columns)
    .map(({ example }) => example)
    .join(", ");
}
