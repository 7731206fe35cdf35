import { type ChartSpec, type ChartView, colours } from "../page/index.js";
import {
  type ChartText,
  chartRows,
  layeredChart,
  type NumberField,
  numberChannel,
  onlyOnce,
  tooltip,
} from "./chart-parts.js";

/** What a residual plot is drawn from. */
export interface ResidualPlot<Row> extends ChartText {
  readonly rows: readonly Row[];
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
