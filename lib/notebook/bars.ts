/** Bars that lie flat with their words above them, so that long names stay readable on a phone. */
import { type ChartSpec, type ChartView, colours } from "../page/index.js";
import {
  type ChartRow,
  type ChartText,
  chartRows,
  type LabelField,
  type Limit,
  layeredChart,
  limitRule,
  limitWord,
  type NumberField,
  numberChannel,
  onlyOnce,
  onPaper,
  paperEdge,
  shownValue,
  tooltip,
} from "./chart-parts.js";

const lane = 54;
const nameLine = 17;

/** Letters of a name that a phone has room for in one line. */
const nameLetters = 36;
const axisRoom = 80;
const legendLine = 20;

/** Free rim, px: at the right the words of the longest bar may need it. */
const rim: ChartSpec = { left: 4, top: 4, right: 16, bottom: 4 };

/** Thickness of a bar in its lane, px. */
const barHeight = 20;

/** A row with what stands at the end of its bar: where that is, and the value in words. */
export function captioned(row: ChartRow, end: number, unit: string | undefined): ChartRow {
  return { ...row, end: Number(end.toPrecision(6)), shown: shownValue(end, unit) };
}

/** What lanes are drawn from. */
export interface Lanes<Row> {
  /** Title and description. */
  readonly text: ChartText;
  /** Captioned; lanes follow the order in which labels first come. */
  readonly rows: readonly ChartRow[];
  /** The field that names each lane. */
  readonly label: LabelField<Row>;
  /** Drawn in each lane. */
  readonly layers: readonly ChartSpec[];
  /** Drawn across all lanes. */
  readonly limit?: Limit | undefined;
  /** Lines of the legend, its title among them. Default none. */
  readonly legendLines?: number;
}

/** One lane a label: its name above, marks below, the value at their end. */
export function laneChart<Row>({ text, rows, label, layers, limit, legendLines = 0 }: Lanes<Row>): ChartView {
  const labels = [...new Set(rows.map((row) => String(row[label.field])))];
  const scale: ChartSpec = { paddingInner: 0, paddingOuter: 0.15 };
  const isLong = labels.some((one) => one.length > nameLetters);
  const high = labels.length * (lane + (isLong ? nameLine : 0)) + axisRoom + legendLines * legendLine;
  const named = isLong ? rows.map((row) => ({ ...row, ...nameLines(String(row[label.field])) })) : rows;
  return layeredChart(text, named, high, {
    padding: rim,
    encoding: { y: { field: label.field, type: "nominal", sort: labels, axis: null, scale } },
    layer: [...layers, ...(limit ? limitDown(limit, rows) : []), ...captions(label, isLong)],
  });
}

/** A name in two lines, where one is too short for it; a short one stands in the lower. */
function nameLines(name: string): { readonly upper: string; readonly lower: string } {
  const end = name.length > nameLetters ? name.lastIndexOf(" ", nameLetters) : -1;
  return { upper: name.slice(0, Math.max(0, end)), lower: name.slice(end + 1) };
}

/** Long names end in dots rather than beyond the edge; the pointer reads them whole. */
function captions<Row>({ field }: LabelField<Row>, isLong: boolean): ChartSpec[] {
  const fields = isLong ? [field, "upper", "lower"] : [field];
  const transform = [{ aggregate: [], groupby: [...fields, "end", "shown"] }];
  const name: ChartSpec = {
    type: "text",
    align: "left",
    baseline: "bottom",
    dy: -13,
    fontWeight: 600,
    limit: { expr: "width + 60" },
  };
  const value: ChartSpec = { type: "text", align: "left", baseline: "middle", dx: 8 };
  const words = (mark: ChartSpec, x: ChartSpec, text: string): ChartSpec[] =>
    [paperEdge(mark), mark].map((one) => ({ transform, mark: one, encoding: { x, text: { field: text } } }));
  return [
    ...(isLong ? words({ ...name, dy: -13 - nameLine }, { value: 0 }, "upper") : []),
    ...words(name, { value: 0 }, isLong ? "lower" : field),
    ...words(value, { field: "end", type: "quantitative" }, "shown"),
  ];
}

/** A line down the chart with its word at the foot, on the side that has room. */
function limitDown({ value, label }: Limit, rows: readonly ChartRow[]): ChartSpec[] {
  const figures = rows.flatMap((row) => Object.values(row).filter((one) => typeof one === "number"));
  const left = value > Math.max(...figures) / 2;
  const x: ChartSpec = { datum: value, type: "quantitative" };
  const word: ChartSpec = { ...limitWord, align: left ? "right" : "left", dx: left ? -6 : 6 };
  return [
    { ...onlyOnce, mark: limitRule, encoding: { x, y: { value: 0 }, y2: { value: "height" } } },
    ...onPaper(word, { x, y: { value: "height" }, text: { value: label } }),
  ];
}

/** What ranked bars are drawn from. */
export interface RankedBars<Row> extends ChartText {
  /** One row a bar. */
  readonly rows: readonly Row[];
  /** The field that names a bar. */
  readonly label: LabelField<Row>;
  /** The field that gives a bar its length. */
  readonly value: NumberField<Row>;
  /** The label to stand out. */
  readonly chosen?: string;
  /** A line that bars are held against. */
  readonly limit?: Limit;
  /** Default "smallest first". */
  readonly order?: "smallest first" | "largest first";
}

/**
 * Options side by side, ranked.
 *
 * @throws Refusal without rows, or on a value that is missing or not finite
 */
export function rankedBars<Row extends object>(request: RankedBars<Row>): ChartView {
  const { label, value, limit, order = "smallest first" } = request;
  const sign = order === "smallest first" ? 1 : -1;
  const rows = chartRows(request.title, request.rows, [label.field, value.field])
    .map((row) => captioned(row, Number(row[value.field]), value.unit))
    .sort((a, b) => sign * (Number(a[value.field]) - Number(b[value.field])));
  const bars: ChartSpec = {
    mark: { type: "bar", height: barHeight },
    encoding: {
      x: numberChannel(value, true),
      color: standOut(request),
      tooltip: tooltip([label, value], rows),
    },
  };
  return laneChart({ text: request, rows, label, layers: [bars], limit });
}

function standOut<Row>({ label, chosen }: RankedBars<Row>): ChartSpec {
  if (chosen === undefined) return { value: colours.accent };
  const test = `datum["${label.field}"] === ${JSON.stringify(chosen)}`;
  return { condition: { test, value: colours.accent }, value: "#9fb1be" };
}

/** What stacked bars are drawn from. */
export interface StackedBars<Row> extends ChartText {
  /** One row a part of a bar. */
  readonly rows: readonly Row[];
  /** The field that names a bar. */
  readonly label: LabelField<Row>;
  /** The field that gives a part its length. */
  readonly value: NumberField<Row>;
  /** What a bar is made up of. */
  readonly part: LabelField<Row>;
}

/**
 * What totals are made up of; the total stands above each bar.
 *
 * @throws Refusal without rows, or on a value that is missing or not finite
 */
export function stackedBars<Row extends object>(request: StackedBars<Row>): ChartView {
  const { label, value, part } = request;
  const plain = chartRows(request.title, request.rows, [label.field, value.field, part.field]);
  const parts = [...new Set(plain.map((row) => String(row[part.field])))];
  const totals = totalsOf(plain, label.field, value.field);
  const rows = plain.map((row) => ({
    ...captioned(row, totals.get(String(row[label.field])) ?? 0, value.unit),
    place: parts.indexOf(String(row[part.field])),
  }));
  const bars: ChartSpec = {
    mark: { type: "bar", height: barHeight, stroke: colours.paper, strokeWidth: 1 },
    encoding: {
      x: { ...numberChannel(value, true), stack: "zero" },
      color: { field: part.field, type: "nominal", title: part.title, sort: parts },
      order: { field: "place", type: "quantitative" },
      tooltip: tooltip([label, part, value], rows),
    },
  };
  return laneChart({ text: request, rows, label, layers: [bars], legendLines: parts.length + 1 });
}

function totalsOf(rows: readonly ChartRow[], label: string, value: string): ReadonlyMap<string, number> {
  const totals = new Map<string, number>();
  for (const row of rows) {
    const name = String(row[label]);
    totals.set(name, (totals.get(name) ?? 0) + Number(row[value]));
  }
  return totals;
}
