/** Rows of plain records as a table, each value as it prints. */
import { type TableView, tableOf } from "../../page/index.js";
import { Refusal } from "../../refusal.js";
import { answerText, outcome } from "./sweep.js";

/** The columns of a table: what each asks of the thing of a row. */
export type Columns<Thing> = Readonly<Record<string, (thing: Thing) => unknown>>;

/**
 * A table of things, a row for each, and for each column what it asks of them. An answer that cannot be given says
 * why in its place.
 *
 * @param caption the words above it
 * @throws Refusal without rows
 * @example table(openJob("soil-lab").panels, { panel: (one) => one.name, sag: (one) => one.sag() })
 */
export function table<Thing>(things: readonly Thing[], columns: Columns<Thing>, caption?: string): TableView;
/**
 * A table of records, a column a field, in the order of the first.
 *
 * @param caption the words above it
 * @throws Refusal without rows
 * @example table(openJob("soil-lab").panels.map((one) => ({ panel: one.name, sag: one.sag() })))
 */
export function table(rows: readonly object[], caption?: string): TableView;
export function table(
  rows: readonly unknown[],
  columns?: Columns<never> | string,
  caption?: string,
): TableView {
  const [first] = rows;
  if (first === undefined)
    throw new Refusal("table: give at least one row, such as { panel: p.name, sag: p.sag() }");
  if (typeof columns === "object") return tableOf(rows, askedColumns(columns), caption);
  const fields = Object.keys(first as object).map((heading) => ({
    heading,
    cell: (row: unknown) => answerText((row as Readonly<Record<string, unknown>>)[heading] ?? ""),
  }));
  return tableOf(rows, fields, columns);
}

function askedColumns(columns: Columns<never>): { heading: string; cell: (thing: unknown) => string }[] {
  return Object.entries(columns).map(([heading, ask]) => ({
    heading,
    cell: (thing) => {
      const one = outcome(() => ask(thing as never));
      return "answer" in one ? answerText(one.answer ?? "") : one.why;
    },
  }));
}
