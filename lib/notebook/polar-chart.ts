import { type ChartSpec, type ChartView, colours, verdictColours } from "../page/index.js";
import {
  axisTitle,
  type ChartText,
  chartRows,
  type LabelField,
  type Limit,
  layeredChart,
  limitWord,
  type NumberField,
  onlyOnce,
  shownValue,
  tooltip,
} from "./chart-parts.js";

/** What a polar chart is drawn from. */
export interface PolarChart<Row> extends ChartText {
  /** One a direction, evenly round, clockwise from the top. */
  readonly rows: readonly Row[];
  /** A word at each direction; blank for those between. */
  readonly direction: LabelField<Row>;
  /** Distance from the middle. */
  readonly value: NumberField<Row>;
  /** A ring that every direction should reach. */
  readonly limit: Limit;
}

/**
 * A quantity in every direction, seen from above: slices that reach the ring are good.
 *
 * @throws Refusal without rows, or on a value that is missing or not finite
 */
export function polarChart<Row extends object>(request: PolarChart<Row>): ChartView {
  const { title, direction, value, limit } = request;
  const plain = chartRows(title, request.rows, [direction.field, value.field]);
  const rows = plain.map((row, i) => ({
    ...row,
    ...sliceOf(i, plain.length),
    words: wordsOf(row[direction.field], Number(row[value.field]), value.unit),
  }));
  const values = plain.map((row) => Number(row[value.field]));
  const outer = 1.35 * Math.max(limit.value, ...values);
  const slice: ChartSpec = { theta: raw("from"), theta2: { field: "to" } };
  const scale: ChartSpec = { type: "linear", zero: true, domain: [0, outer] };
  const reaches = `datum["${value.field}"] >= ${limit.value}`;
  return layeredChart(request, rows, 380, {
    layer: [
      {
        mark: { type: "arc", stroke: colours.paper, strokeWidth: 1, opacity: 0.5 },
        encoding: {
          ...slice,
          radius: { field: value.field, type: "quantitative", scale, title: axisTitle(value) },
          color: { condition: { test: reaches, value: colours.accent }, value: verdictColours.fails.ink },
          tooltip: tooltip([direction, value], rows),
        },
      },
      {
        data: { values: [{ ring: limit.value, from: 0, to: 2 * Math.PI }] },
        mark: {
          type: "arc",
          filled: false,
          stroke: verdictColours.fails.ink,
          strokeWidth: 2,
          strokeDash: [7, 4],
          aria: false,
        },
        encoding: { ...slice, radius: { field: "ring", type: "quantitative", scale } },
      },
      {
        mark: { type: "text", fontSize: 14, fontWeight: 600, radiusOffset: 14 },
        encoding: {
          theta: raw("middle"),
          radius: { datum: outer / 1.3, type: "quantitative", scale },
          text: { field: "words" },
        },
      },
      {
        ...onlyOnce,
        mark: { ...limitWord, align: "left" },
        encoding: {
          x: { value: 8 },
          y: { value: "height" },
          text: { value: `- - ${shownValue(limit.value, value.unit)} ${limit.label}` },
        },
      },
    ],
  });
}

/** A named direction with its value. */
function wordsOf(way: unknown, value: number, unit: string | undefined): string {
  return way === "" ? "" : `${String(way)} ${shownValue(Number(value.toPrecision(2)), unit)}`;
}

/** Radians clockwise from the top, the first slice standing across it. */
function sliceOf(
  i: number,
  count: number,
): { readonly from: number; readonly middle: number; readonly to: number } {
  const [turn, half] = [(2 * Math.PI) / count, Math.PI / count];
  return { from: i * turn - half, middle: i * turn, to: i * turn + half };
}

/** Radians as they stand, neither scaled nor stacked. */
function raw(field: string): ChartSpec {
  return { field, type: "quantitative", scale: null, stack: null };
}
