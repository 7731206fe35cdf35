import { type ChartSpec, type ChartView, colours } from "../page/index.js";
import {
  axisTitle,
  type ChartText,
  chartRows,
  layeredChart,
  type NumberField,
  shownValue,
  tooltip,
} from "./chart-parts.js";

/** What a heat map is drawn from. */
export interface HeatMap<Row> extends ChartText {
  /** One a field of the map. */
  readonly rows: readonly Row[];
  /** Along the lower side. */
  readonly x: NumberField<Row>;
  /** Along the left side. */
  readonly y: NumberField<Row>;
  /** Written in each cell and shown as its shade. */
  readonly value: NumberField<Row>;
  /** A cell beyond it is marked with a cross and another colour. */
  readonly limit?: number;
}

/**
 * A value over a grid of two choices, such as sag over span and thickness.
 *
 * @throws Refusal without rows, or on a value that is missing or not finite
 */
export function heatMap<Row extends object>(request: HeatMap<Row>): ChartView {
  const { title, x, y, value, limit } = request;
  const rows = chartRows(title, request.rows, [x.field, y.field, value.field]).map((row) => ({
    ...row,
    caption: cellCaption(Number(row[value.field]), limit),
  }));
  const beyond = limit === undefined ? "false" : `datum["${value.field}"] > ${limit}`;
  const lanes = new Set(rows.map((row) => (row as Readonly<Record<string, unknown>>)[y.field])).size;
  const axis = (column: NumberField<Row>, sort: string): ChartSpec => ({
    field: column.field,
    type: "ordinal",
    title: axisTitle(column),
    sort,
    axis: { labelAngle: 0, grid: false },
  });
  return layeredChart(request, rows, 90 + 44 * lanes, {
    encoding: { x: axis(x, "ascending"), y: axis(y, "descending") },
    layer: [
      {
        mark: { type: "rect", stroke: colours.paper, strokeWidth: 2 },
        encoding: {
          color: {
            condition: { test: beyond, value: "#8f3d07" },
            field: value.field,
            type: "quantitative",
            scale: { range: ["#eef4f8", "#a9c6da"] },
            legend: null,
          },
          tooltip: tooltip([x, y, value], rows),
        },
      },
      {
        mark: { type: "text" },
        encoding: {
          text: { field: "caption" },
          color: { condition: { test: beyond, value: colours.paper }, value: colours.ink },
        },
      },
    ],
  });
}

/** Two or three figures are enough to read in a cell. */
function cellCaption(value: number, limit: number | undefined): string {
  const shown = shownValue(Number(value.toPrecision(value < 10 ? 2 : 3)), undefined);
  return limit !== undefined && value > limit ? `${shown} ×` : shown;
}
