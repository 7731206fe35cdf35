/** What all charts share: rows, axes, tooltips, the frame. */
import { type ChartSpec, type ChartView, chart, type Json } from "../page/index.js";
import { Refusal } from "../refusal.js";
import { chartLook } from "./chart-look.js";

/** What every chart says of itself. */
export interface ChartText {
  readonly title: string;
  /** What it shows, for a reader who cannot see it. */
  readonly description: string;
}

/** A field of the rows that holds words. */
export interface LabelField<Row> {
  readonly field: keyof Row & string;
  readonly title: string;
}

/** A field of the rows that holds numbers, already in the unit named. */
export interface NumberField<Row> extends LabelField<Row> {
  /** Written behind the title: "mm". */
  readonly unit?: string;
  /** Whether the axis starts at zero. Default: y does, x does not. */
  readonly zero?: boolean;
  /** Even steps for even factors. */
  readonly logarithmic?: boolean;
  /** Things counted: no marks between whole numbers. */
  readonly whole?: boolean;
}

/** A value that must not be passed, drawn as a line with a word. */
export interface Limit {
  readonly value: number;
  readonly label: string;
}

/** For a layer that is drawn once rather than for every row. */
export const onlyOnce: ChartSpec = { data: { values: [{}] } };

/** One row as the chart library reads it. */
export type ChartRow = Readonly<Record<string, string | number>>;

/**
 * The named fields of every row, numbers to six figures.
 *
 * @throws Refusal when there are no rows, or a value is missing or not finite
 */
export function chartRows<Row extends object>(
  title: string,
  rows: readonly Row[],
  fields: readonly (keyof Row & string)[],
): ChartRow[] {
  if (rows.length === 0) throw new Refusal(`chart "${title}": no rows to draw`);
  return rows.map((row, i) =>
    Object.fromEntries(fields.map((field) => [field, cell(title, row[field], field, i)])),
  );
}

function cell(title: string, value: unknown, field: string, i: number): string | number {
  if (typeof value === "string") return value;
  if (typeof value === "number" && Number.isFinite(value)) return Number(value.toPrecision(6));
  throw new Refusal(
    `chart "${title}": row ${i + 1}, ${field}: expected text or a finite number, got ${String(value)}`,
  );
}

/** Title and unit as an axis shows them. */
export function axisTitle({ title, unit }: { readonly title: string; readonly unit?: string }): string {
  return unit ? `${title} (${unit})` : title;
}

/** How a numeric field is laid along an axis. */
export function numberChannel<Row>(column: NumberField<Row>, zero: boolean): ChartSpec {
  return {
    field: column.field,
    type: "quantitative",
    title: axisTitle(column),
    scale: column.logarithmic ? { type: "log" } : { zero: column.zero ?? zero, nice: true },
    ...(column.whole ? { axis: { tickMinStep: 1 } } : {}),
  };
}

/** What a pointer resting on a mark reads. */
export function tooltip(
  columns: readonly { readonly field: string; readonly title: string; readonly unit?: string }[],
  rows: readonly ChartRow[],
): Json {
  return columns.map((column) => {
    const numeric = typeof rows[0]?.[column.field] === "number";
    return numeric
      ? { field: column.field, type: "quantitative", title: axisTitle(column), format: ".4~r" }
      : { field: column.field, type: "nominal", title: column.title };
  });
}

/** Number and unit as a label shows them; the sign of a degree stands close. */
export function shownValue(value: number, unit: string | undefined): string {
  const number = Number(value.toPrecision(4)).toLocaleString("en", { maximumFractionDigits: 6 });
  return [number.replaceAll(",", "\u202f"), unit].filter(Boolean).join(unit === "°" ? "" : " ");
}

/** The whole chart: data, layers and the common look. */
export function layeredChart(
  { title, description }: ChartText,
  rows: readonly ChartRow[],
  height: number,
  parts: ChartSpec,
): ChartView {
  return chart(title, description, {
    $schema: "https://vega.github.io/schema/vega-lite/v6.json",
    data: { values: rows },
    width: "container",
    height,
    autosize: { type: "fit", contains: "padding" },
    ...parts,
    config: chartLook,
  });
}
