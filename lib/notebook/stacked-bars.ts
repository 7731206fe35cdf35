import { type ChartSpec, type ChartView, colours } from "../page/index.js";
import { barHeight, captioned, laneChart } from "./chart-lanes.js";
import {
  type ChartRow,
  type ChartText,
  chartRows,
  type LabelField,
  type NumberField,
  numberChannel,
  tooltip,
} from "./chart-parts.js";

/** What stacked bars are drawn from. */
export interface StackedBars<Row> extends ChartText {
  readonly rows: readonly Row[];
  readonly label: LabelField<Row>;
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
