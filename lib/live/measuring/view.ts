/** What was measured as plain data: tables row by row, what comes of them, and how far each reading is off. */

/** The tables that are filled in by hand, one after another. */
export interface MeasuringView {
  /** In the order in which a shop meets them. */
  readonly tables: readonly MeasuringTable[];
}

/** A table that is filled in row by row. */
export type MeasuringName = "bends" | "weights" | "spreads" | "pulls" | "kerfs";

/** One table as it is written. */
export interface MeasuringTable {
  /** The file. */
  readonly file: string;
  /** What is measured: "Bend tests". */
  readonly title: string;
  /** What a new row takes. */
  readonly columns: readonly MeasuringColumn[];
  /** Every row that stands in it. */
  readonly rows: readonly MeasuringRow[];
  /** What comes of them, in sentences. */
  readonly told: readonly string[];
  /** Text that a file begins with which is not there yet; absent for one that is. */
  readonly begun?: string;
}

/** A column. */
export interface MeasuringColumn {
  /** Its header without the unit. */
  readonly name: string;
  /** Its header as it is written. */
  readonly header: string;
  /** What a cell is, in a sentence. */
  readonly doc: string;
  /** Words to choose from; absent for a figure or a free name. */
  readonly choices?: readonly string[];
  /** Whether a row may leave it out. */
  readonly optional: boolean;
  /** Whether the next row is likely to have the same. */
  readonly again: boolean;
}

/** A row. */
export interface MeasuringRow {
  /** Line of the file, counted from 1. */
  readonly line: number;
  /** What stands under each column. */
  readonly cells: readonly string[];
  /** How far the reading is from what the others say; empty where nothing can be said. */
  readonly off: string;
  /** Whether it does not belong to the others. */
  readonly odd: boolean;
}
