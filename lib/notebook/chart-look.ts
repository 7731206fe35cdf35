/** The common look of all charts: letters, lines, colours, and how limits are marked. */
import { type ChartSpec, colours, seriesColours, verdictColours } from "../page/index.js";

/** The line of a limit; its word beside it is what a screen reader reads. */
export const limitRule: ChartSpec = {
  type: "rule",
  aria: false,
  color: verdictColours.fails.ink,
  strokeWidth: 2,
  strokeDash: [7, 4],
};

/** The word of a limit, above its line or its foot. */
export const limitWord: ChartSpec = {
  type: "text",
  baseline: "bottom",
  dy: -4,
  limit: { expr: "width" },
  color: verdictColours.fails.ink,
  fontWeight: 600,
};

/** The edge in paper that goes below words which stand over lines. */
export function paperEdge(mark: ChartSpec): ChartSpec {
  return { ...mark, aria: false, color: colours.paper, stroke: colours.paper, strokeWidth: 5 };
}

/** Words over lines: first their edge in paper, then the words. */
export function onPaper(mark: ChartSpec, encoding: ChartSpec): ChartSpec[] {
  return [paperEdge(mark), mark].map((one) => ({ data: { values: [{}] }, mark: one, encoding }));
}

/** A line across a chart at a height, with its word above it at the right. */
export function limitAcross({
  value,
  label,
}: {
  readonly value: number;
  readonly label: string;
}): ChartSpec[] {
  const across: ChartSpec = { y: { datum: value, type: "quantitative" } };
  const place: ChartSpec = { ...across, x: { value: "width" }, text: { value: label } };
  return [
    { data: { values: [{}] }, mark: limitRule, encoding: across },
    ...onPaper({ ...limitWord, align: "right" }, place),
  ];
}

const letters = "system-ui, -apple-system, 'Segoe UI', Roboto, 'DejaVu Sans', sans-serif";

/** Configuration of every chart. */
export const chartLook: ChartSpec = {
  font: letters,
  background: colours.paper,
  padding: 4,
  locale: { number: { decimal: ".", thousands: "\u202f", grouping: [3], currency: ["", ""] } },
  view: { stroke: null },
  axis: {
    labelFontSize: 14,
    titleFontSize: 14,
    titleFontWeight: 600,
    labelColor: colours.ink,
    titleColor: colours.ink,
    gridColor: "#e3e6e8",
    domainColor: colours.soft,
    tickColor: colours.soft,
    titlePadding: 8,
    labelOverlap: true,
  },
  axisX: { tickCount: { expr: "max(3, ceil(width / 90))" }, grid: false },
  axisY: { tickCount: 6, domain: false, ticks: false, labelPadding: 8 },
  legend: {
    orient: "top",
    direction: "vertical",
    labelFontSize: 14,
    titleFontSize: 14,
    labelColor: colours.ink,
    titleColor: colours.ink,
    labelLimit: 280,
    symbolStrokeWidth: 2.5,
  },
  range: { category: seriesColours },
  text: { fontSize: 14, color: colours.ink },
};
