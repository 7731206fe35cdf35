/** Bars lie flat with their words above them, so that long names stay readable on a phone. */
import type { ChartSpec, ChartView } from "../page/index.js";
import { limitRule, limitWord, onPaper, paperEdge } from "./chart-look.js";
import {
  type ChartRow,
  type ChartText,
  type LabelField,
  type Limit,
  layeredChart,
  onlyOnce,
  shownValue,
} from "./chart-parts.js";

const lane = 54;
const axisRoom = 80;
const legendLine = 20;

/** Thickness of a bar in its lane, px. */
export const barHeight = 20;

/** A row with what stands at the end of its bar: where that is, and the value in words. */
export function captioned(row: ChartRow, end: number, unit: string | undefined): ChartRow {
  return { ...row, end: Number(end.toPrecision(6)), shown: shownValue(end, unit) };
}

/** What lanes are drawn from. */
export interface Lanes<Row> {
  readonly text: ChartText;
  /** Captioned; lanes follow the order in which labels first come. */
  readonly rows: readonly ChartRow[];
  readonly label: LabelField<Row>;
  readonly layers: readonly ChartSpec[];
  readonly limit?: Limit | undefined;
  /** Lines of the legend, its title among them. Default none. */
  readonly legendLines?: number;
}

/** One lane a label: its name above, marks below, the value at their end. */
export function laneChart<Row>({ text, rows, label, layers, limit, legendLines = 0 }: Lanes<Row>): ChartView {
  const labels = [...new Set(rows.map((row) => String(row[label.field])))];
  const scale: ChartSpec = { paddingInner: 0, paddingOuter: 0.15 };
  return layeredChart(text, rows, labels.length * lane + axisRoom + legendLines * legendLine, {
    encoding: { y: { field: label.field, type: "nominal", sort: labels, axis: null, scale } },
    layer: [...layers, ...(limit ? limitDown(limit, rows) : []), ...captions(label)],
  });
}

/** Long names end in dots rather than beyond the edge; the pointer reads them whole. */
function captions<Row>({ field }: LabelField<Row>): ChartSpec[] {
  const transform = [{ aggregate: [], groupby: [field, "end", "shown"] }];
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
    ...words(name, { value: 0 }, field),
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
