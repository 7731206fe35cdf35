import { type ChartSpec, type ChartView, colours, type Json } from "../page/index.js";
import {
  type ChartRow,
  type ChartText,
  chartRows,
  type LabelField,
  type Limit,
  layeredChart,
  limitAcross,
  type NumberField,
  numberChannel,
  tooltip,
} from "./chart-parts.js";

import { type Slider, sliderParts } from "./chart-slider.js";

/** What a line chart is drawn from. */
export interface LineChart<Row> extends ChartText {
  /** One a point. */
  readonly rows: readonly Row[];
  /** Along the lower side. */
  readonly x: NumberField<Row>;
  /** Along the left side. */
  readonly y: NumberField<Row>;
  /** One line for each word of this field. */
  readonly series?: LabelField<Row>;
  /** The reader picks a value; its line stands out and the others stay behind it in grey. */
  readonly slider?: Slider<Row>;
  /** Values of y that must not be passed. */
  readonly limits?: readonly Limit[];
  /** Fills below the line. Default false. */
  readonly area?: boolean;
}

/**
 * How one quantity follows another: lines, or areas, with limits and a slider.
 *
 * @throws Refusal without rows, or on a value that is missing or not finite
 */
export function lineChart<Row extends object>(request: LineChart<Row>): ChartView {
  const { title, x, y, series, slider, limits = [] } = request;
  const columns = [x, y, ...(series ? [series] : []), ...(slider ? [slider] : [])];
  const rows = chartRows(
    title,
    request.rows,
    columns.map(({ field }) => field),
  );
  const picked = slider && sliderParts(rows, slider);
  return layeredChart(request, rows, 340, {
    ...(picked ? { params: picked.params } : {}),
    layer: [
      ...(slider ? [othersBehind(request, slider)] : []),
      lines(request, rows, picked ? [picked.filter] : []),
      ...limits.flatMap(limitAcross),
    ],
  });
}

/** The lines of every value, so that the chosen one is seen among them and the axes stay. */
function othersBehind<Row>({ x, y, series }: LineChart<Row>, slider: Slider<Row>): ChartSpec {
  const detail: Json = [slider, ...(series ? [series] : [])].map(({ field }) => ({ field }));
  return {
    mark: { type: "line", aria: false, color: colours.line, strokeWidth: 1, opacity: 0.7 },
    encoding: { x: numberChannel(x, false), y: numberChannel(y, true), detail },
  };
}

function lines<Row>(
  { x, y, series, slider, area }: LineChart<Row>,
  rows: readonly ChartRow[],
  transform: readonly ChartSpec[],
): ChartSpec {
  const word: ChartSpec | undefined = series && {
    field: series.field,
    type: "nominal",
    title: series.title,
    sort: null,
    legend: { symbolType: "stroke", symbolSize: 500 },
  };
  const point: ChartSpec = { size: 40, ...(series ? {} : { color: colours.accent }) };
  const mark: ChartSpec = area
    ? { type: "area", opacity: 0.3, line: { strokeWidth: 3 }, point }
    : { type: "line", strokeWidth: 3, point };
  return {
    ...(transform.length > 0 ? { transform } : {}),
    mark: { ...mark, ...(series ? {} : { color: colours.accent }) },
    encoding: {
      x: numberChannel(x, false),
      y: numberChannel(y, true),
      ...(word ? { color: word, strokeDash: word } : {}),
      tooltip: tooltip([x, y, ...(series ? [series] : []), ...(slider ? [slider] : [])], rows),
    },
  };
}
