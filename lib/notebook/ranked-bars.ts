import { type ChartSpec, type ChartView, colours } from "../page/index.js";
import { barHeight, captioned, laneChart } from "./chart-lanes.js";
import {
  type ChartText,
  chartRows,
  type LabelField,
  type Limit,
  type NumberField,
  numberChannel,
  tooltip,
} from "./chart-parts.js";

/** What ranked bars are drawn from. */
export interface RankedBars<Row> extends ChartText {
  readonly rows: readonly Row[];
  readonly label: LabelField<Row>;
  readonly value: NumberField<Row>;
  /** The label to stand out. */
  readonly chosen?: string;
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
