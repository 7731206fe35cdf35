/** What all charts share: their look, their rows, their channels and how limits are marked. */
import {
  type ChartSpec,
  type ChartView,
  chart,
  colours,
  type Json,
  seriesColours,
  verdictColours,
} from "../page/index.js";
import { Refusal } from "../refusal.js";

/** The line of a limit; its word beside it is what a screen reader reads. */
export const limitRule: ChartSpec = {
  type: "rule",
  aria: false,
  color: verdictColours.fails.ink,
  strokeWidth: 2,
  strokeDash: [7, 4],
};

/** The word of a limit, above its line or its foot. */
export const limitWord: ChartSpec = {
  type: "text",
  baseline: "bottom",
  dy: -4,
  limit: { expr: "width" },
  color: verdictColours.fails.ink,
  fontWeight: 600,
};

/** The edge in paper that goes below words which stand over lines. */
export function paperEdge(mark: ChartSpec): ChartSpec {
  return { ...mark, aria: false, color: colours.paper, stroke: colours.paper, strokeWidth: 5 };
}

/** Words over lines: first their edge in paper, then the words. */
export function onPaper(mark: ChartSpec, encoding: ChartSpec): ChartSpec[] {
  return [paperEdge(mark), mark].map((one) => ({ data: { values: [{}] }, mark: one, encoding }));
}

/** A line across a chart at a height, with its word above it at the right. */
export function limitAcross({
  value,
  label,
}: {
  readonly value: number;
  readonly label: string;
}): ChartSpec[] {
  const across: ChartSpec = { y: { datum: value, type: "quantitative" } };
  const place: ChartSpec = { ...across, x: { value: "width" }, text: { value: label } };
  return [
    { data: { values: [{}] }, mark: limitRule, encoding: across },
    ...onPaper({ ...limitWord, align: "right" }, place),
  ];
}

const letters = "system-ui, -apple-system, 'Segoe UI', Roboto, 'DejaVu Sans', sans-serif";

/** Configuration of every chart. */
const chartLook: ChartSpec = {
  font: letters,
  background: colours.paper,
  padding: 4,
  locale: { number: { decimal: ".", thousands: "\u202f", grouping: [3], currency: ["", ""] } },
  view: { stroke: null },
  axis: {
    labelFontSize: 14,
    titleFontSize: 14,
    titleFontWeight: 600,
    labelColor: colours.ink,
    titleColor: colours.ink,
    gridColor: "#e3e6e8",
    domainColor: colours.soft,
    tickColor: colours.soft,
    titlePadding: 8,
    labelOverlap: true,
  },
  axisX: { tickCount: { expr: "max(3, ceil(width / 90))" }, grid: false },
  axisY: { tickCount: 6, domain: false, ticks: false, labelPadding: 8 },
  legend: {
    orient: "top",
    direction: "vertical",
    labelFontSize: 14,
    titleFontSize: 14,
    labelColor: colours.ink,
    titleColor: colours.ink,
    labelLimit: 280,
    symbolStrokeWidth: 2.5,
  },
  range: { category: seriesColours },
  text: { fontSize: 14, color: colours.ink },
};

/** What every chart says of itself. */
export interface ChartText {
  /** Stands over the chart. */
  readonly title: string;
  /** What it shows, for a reader who cannot see it. */
  readonly description: string;
}

/** A field of the rows that holds words. */
export interface LabelField<Row> {
  /** Its name in the rows. */
  readonly field: keyof Row & string;
  /** What a reader calls it. */
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
  /** In the unit of the axis. */
  readonly value: number;
  /** Written beside the line. */
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

/** Letters of a line of an axis's title that a phone and a chart with a long legend have room for. */
const titleLine = 32;

/** Title and unit beside an axis, in as many lines as they take. */
function axisLines(column: { readonly title: string; readonly unit?: string }): string | readonly string[] {
  const whole = axisTitle(column);
  if (whole.length <= titleLine) return whole;
  const lines: string[] = [];
  for (const word of whole.split(" ")) {
    const longer = `${lines.at(-1) ?? ""} ${word}`.trim();
    if (lines.length > 0 && longer.length <= titleLine) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** Title and unit as a label shows them. */
export function axisTitle({ title, unit }: { readonly title: string; readonly unit?: string }): string {
  return unit ? `${title} (${unit})` : title;
}

/** How a numeric field is laid along an axis. */
export function numberChannel<Row>(column: NumberField<Row>, zero: boolean): ChartSpec {
  return {
    field: column.field,
    type: "quantitative",
    title: axisLines(column),
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

/**
 * Number and unit as a label shows them; the sign of a degree stands close. Money has cents below a hundred, and none above.
 *
 * @param digits significant ones
 */
export function shownValue(value: number, unit: string | undefined, digits = 4): string {
  const cents = /^[A-Z]{3}\b/.test(unit ?? "") ? (Math.abs(value) < 100 ? 2 : 0) : undefined;
  const number =
    cents === undefined
      ? Number(value.toPrecision(digits)).toLocaleString("en", { maximumFractionDigits: 6 })
      : value.toLocaleString("en", { minimumFractionDigits: cents, maximumFractionDigits: cents });
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
