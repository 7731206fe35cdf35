/** Points placed by two numbers: measurements, options, and what a fit leaves over. */
import { type ChartSpec, type ChartView, colours } from "../page/index.js";
import {
  type ChartText,
  chartRows,
  type LabelField,
  type Limit,
  layeredChart,
  limitAcross,
  type NumberField,
  numberChannel,
  onlyOnce,
  tooltip,
} from "./chart-parts.js";

/** What a scatter of points is drawn from. */
export interface ScatterChart<Row> extends ChartText {
  /** One row a point. */
  readonly rows: readonly Row[];
  /** The field along the chart. */
  readonly x: NumberField<Row>;
  /** The field up the chart. */
  readonly y: NumberField<Row>;
  /** A word beside each point. */
  readonly label?: LabelField<Row>;
  /** Points of one group share a colour and a shape. */
  readonly group?: LabelField<Row>;
  /** Further fields to read at a point. */
  readonly more?: readonly NumberField<Row>[];
  /** A line through these points, such as a fit. */
  readonly line?: readonly { readonly x: number; readonly y: number }[];
  /** Lines across that points should stay below. */
  readonly limits?: readonly Limit[];
}

/**
 * Things placed by two of their properties, as options by price and mass, or measurements with their fit.
 *
 * @throws Refusal without rows, or on a value that is missing or not finite
 */
export function scatterChart<Row extends object>(request: ScatterChart<Row>): ChartView {
  const { title, x, y, label, group, more = [], line, limits = [] } = request;
  const columns = [...(label ? [label] : []), ...(group ? [group] : []), x, y, ...more];
  const rows = chartRows(
    title,
    request.rows,
    columns.map(({ field }) => field),
  );
  const place: ChartSpec = { x: numberChannel(x, false), y: numberChannel(y, true) };
  const groups: ChartSpec = group
    ? {
        color: { field: group.field, type: "nominal", title: group.title, sort: null },
        shape: { field: group.field, type: "nominal", title: group.title, sort: null },
      }
    : { color: { value: colours.accent } };
  return layeredChart(request, rows, 340, {
    layer: [
      ...(line ? [fitLine(title, line)] : []),
      ...limits.flatMap(limitAcross),
      {
        mark: { type: "point", filled: true, size: 110, opacity: 0.9 },
        encoding: { ...place, ...groups, tooltip: tooltip(columns, rows) },
      },
      ...(label ? [wordsBeside(place, label)] : []),
    ],
  });
}

function wordsBeside<Row>(place: ChartSpec, { field }: LabelField<Row>): ChartSpec {
  return {
    mark: { type: "text", align: "center", baseline: "bottom", dy: -9, fontSize: 13 },
    encoding: { ...place, text: { field } },
  };
}

function fitLine(title: string, line: readonly { readonly x: number; readonly y: number }[]): ChartSpec {
  return {
    data: { values: chartRows(title, line, ["x", "y"]) },
    mark: { type: "line", aria: false, color: colours.soft, strokeWidth: 2 },
    encoding: { x: { field: "x", type: "quantitative" }, y: { field: "y", type: "quantitative" } },
  };
}

/** What a residual plot is drawn from. */
export interface ResidualPlot<Row> extends ChartText {
  /** One row a reading. */
  readonly rows: readonly Row[];
  /** The field along the chart. */
  readonly x: NumberField<Row>;
  /** Measured less fitted. */
  readonly residual: NumberField<Row>;
  /** Half-width of the band in which most residuals should lie, in the residual's unit. */
  readonly band?: number;
}

/**
 * What a fit leaves over, point by point, about a line at zero. A pattern means that the fit is of the
 * wrong kind.
 *
 * @throws Refusal without rows, or on a value that is missing or not finite
 */
export function residualPlot<Row extends object>(request: ResidualPlot<Row>): ChartView {
  const { title, x, residual, band } = request;
  const rows = chartRows(title, request.rows, [x.field, residual.field]);
  const y = numberChannel(residual, true);
  return layeredChart(request, rows, 260, {
    layer: [
      ...(band === undefined ? [] : [bandAbout(band)]),
      {
        ...onlyOnce,
        mark: { type: "rule", aria: false, color: colours.ink, strokeWidth: 1.5 },
        encoding: { y: { datum: 0, type: "quantitative" } },
      },
      {
        mark: { type: "point", filled: true, size: 80, color: colours.accent, opacity: 0.9 },
        encoding: { x: numberChannel(x, false), y, tooltip: tooltip([x, residual], rows) },
      },
    ],
  });
}

function bandAbout(band: number): ChartSpec {
  return {
    ...onlyOnce,
    mark: { type: "rect", aria: false, color: colours.accent, opacity: 0.1 },
    encoding: { y: { datum: -band, type: "quantitative" }, y2: { datum: band } },
  };
}
