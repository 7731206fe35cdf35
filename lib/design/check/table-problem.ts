import type { Problem } from "../../problem.js";
import type { Measurements, Offers, Stock } from "../stock.js";
import { tableFiles } from "../table-files.js";

/** Every table of a job. */
export type TableName = keyof Stock | keyof Offers | keyof Measurements;

/** A cell of a table, for a problem in it. */
export interface Cell {
  readonly table: TableName;
  readonly line: number;
  /** Header without its unit. */
  readonly column: string;
  readonly value: string;
}

/** A problem of one cell. */
export function cellProblem({ table, line, column, value }: Cell, expected: string): Problem {
  return { file: tableFiles[table], row: line, column, value, expected };
}
