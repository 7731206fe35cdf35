/** Charts of the trade-offs, one builder a kind. Each returns a chart that show() draws. */

export { type RankedBars, rankedBars, type StackedBars, stackedBars } from "./bars.js";
export { type BenchChart, type BenchCut, type BenchRow, benchChart } from "./bench-chart.js";
export type { ChartText, LabelField, Limit, NumberField } from "./chart-parts.js";
export type { Slider } from "./chart-slider.js";
export { type HeatMap, heatMap } from "./heat-map.js";
export { type IntervalChart, intervalChart } from "./interval-chart.js";
export { type LineChart, lineChart } from "./line-chart.js";
export { type PolarChart, polarChart } from "./polar-chart.js";
export { type ResidualPlot, residualPlot, type ScatterChart, scatterChart } from "./scatter-chart.js";
