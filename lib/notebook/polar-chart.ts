import { type ChartSpec, type ChartView, colours, verdictColours } from "../page/index.js";
import {
  axisTitle,
  type ChartText,
  chartRows,
  type LabelField,
  type Limit,
  layeredChart,
  type NumberField,
  tooltip,
} from "./chart-parts.js";

/** What a polar chart is drawn from. */
export interface PolarChart<Row> extends ChartText {
  /** One a direction, evenly round, clockwise from the top. */
  readonly rows: readonly Row[];
  /** A word at each direction; blank for those between. */
  readonly direction: LabelField<Row>;
  readonly value: NumberField<Row>;
  /** A ring that every direction should reach. */
  readonly limit: Limit;
}

/**
 * A quantity in every direction, seen from above: slices that reach the ring are good.
 *
 * @throws RangeError without rows, or on a value that is missing or not finite
 */
export function polarChart<Row extends object>(request: PolarChart<Row>): ChartView {
  const { title, direction, value, limit } = request;
  const rows = chartRows(title, request.rows, [direction.field, value.field]).map((row) => ({
    ...row,
    slice: 1,
  }));
  const values = rows.map((row) => Number((row as Record<string, unknown>)[value.field]));
  const outer = 1.25 * Math.max(limit.value, ...values);
  const half = Math.PI / rows.length;
  const theta: ChartSpec = {
    field: "slice",
    type: "quantitative",
    stack: true,
    scale: { range: [-half, 2 * Math.PI - half] },
  };
  const scale: ChartSpec = { type: "linear", zero: true, domain: [0, outer] };
  const reaches = `datum["${value.field}"] >= ${limit.value}`;
  return layeredChart(request, rows, 380, {
    layer: [
      {
        mark: { type: "arc", stroke: colours.paper, strokeWidth: 1 },
        encoding: {
          theta,
          radius: { field: value.field, type: "quantitative", scale, title: axisTitle(value) },
          color: { condition: { test: reaches, value: colours.accent }, value: verdictColours.fails.ink },
          tooltip: tooltip([direction, value], rows),
        },
      },
      {
        data: { values: [{ ring: limit.value, slice: 1 }] },
        mark: {
          type: "arc",
          filled: false,
          stroke: verdictColours.fails.ink,
          strokeWidth: 2,
          strokeDash: [7, 4],
          aria: false,
        },
        encoding: { theta: { value: 2 * Math.PI }, radius: { field: "ring", type: "quantitative", scale } },
      },
      {
        mark: { type: "text", fontSize: 14, fontWeight: 600, radiusOffset: 14 },
        encoding: {
          theta,
          radius: { datum: outer / 1.2, type: "quantitative", scale },
          text: { field: direction.field },
        },
      },
    ],
  });
}
