import { type ChartSpec, type ChartView, colours } from "../page/index.js";
import { captioned, laneChart } from "./bars.js";
import {
  type ChartRow,
  type ChartText,
  chartRows,
  type LabelField,
  type Limit,
  type NumberField,
  numberChannel,
  shownValue,
  tooltip,
} from "./chart-parts.js";

/** What a chart of intervals is drawn from. */
export interface IntervalChart<Row> extends ChartText {
  /** One an interval. */
  readonly rows: readonly Row[];
  /** The field that names each interval. */
  readonly label: LabelField<Row>;
  /** The value itself; its title and unit name the axis. */
  readonly middle: NumberField<Row>;
  /** The field of its lower end. */
  readonly low: keyof Row & string;
  /** The field of its upper end. */
  readonly high: keyof Row & string;
  /** Drawn across all intervals. */
  readonly limit?: Limit;
}

/** Figures of a value that its range allows: one more than where the range begins, and at least two. */
function allowedDigits(row: ChartRow, middle: string, low: string, high: string): number {
  const spread = (Number(row[high]) - Number(row[low])) / 2;
  if (!(spread > 0)) return 4;
  const digits = Math.floor(Math.log10(Math.abs(Number(row[middle])) / spread)) + 2;
  return Math.min(4, Math.max(2, digits));
}

/**
 * Values with the range that the measured scatter leaves them.
 *
 * @throws Refusal without rows, or on a value that is missing or not finite
 */
export function intervalChart<Row extends object>(request: IntervalChart<Row>): ChartView {
  const { label, middle, low, high, limit } = request;
  const rows = chartRows(request.title, request.rows, [label.field, middle.field, low, high]).map((row) => ({
    ...captioned(row, Number(row[high]), undefined),
    shown: shownValue(Number(row[middle.field]), middle.unit, allowedDigits(row, middle.field, low, high)),
  }));
  const along = (field: string): ChartSpec => ({ ...numberChannel(middle, true), field });
  const ends = [
    { ...middle, field: low, title: "at least" },
    { ...middle, field: high, title: "at most" },
  ];
  const hint = tooltip([label, middle, ...ends], rows);
  const layers: ChartSpec[] = [
    {
      mark: { type: "rule", strokeWidth: 2.5, color: colours.accent },
      encoding: { x: along(low), x2: { field: high }, tooltip: hint },
    },
    ...[low, high].map((field) => ({
      mark: { type: "tick", thickness: 2.5, size: 16, color: colours.accent, opacity: 1 },
      encoding: { x: along(field) },
    })),
    {
      mark: { type: "point", filled: true, size: 110, color: colours.accent, opacity: 1 },
      encoding: { x: along(middle.field), tooltip: hint },
    },
  ];
  return laneChart({ text: request, rows, label, layers, limit });
}
