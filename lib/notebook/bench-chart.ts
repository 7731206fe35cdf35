import { type ChartSpec, type ChartView, colours } from "../page/index.js";
import { type ChartRow, type ChartText, chartRows, layeredChart, tooltip } from "./chart-parts.js";
import { sliderParts } from "./chart-slider.js";

/** A rectangle on the bench after some step. */
export interface BenchRow {
  /** Step after which it lies there, from 1 on. */
  readonly step: number;
  /** Left edge, in the unit of the drawing. */
  readonly x: number;
  /** Lower edge, in the same unit. */
  readonly y: number;
  /** The opposite corner's x, in the same unit. */
  readonly x2: number;
  /** The opposite corner's y, in the same unit. */
  readonly y2: number;
  /** What it is: "piece", "cut further" or "offcut". */
  readonly state: string;
  /** Written in its middle; short. */
  readonly code: string;
  /** Written below the code; short, or nothing. */
  readonly mark: string;
  /** What a pointer reads: which part it is, and its size. */
  readonly name: string;
  /** Its size, as a pointer reads it. */
  readonly size: string;
}

/** What the steps at a bench are drawn from. */
export interface BenchChart extends ChartText {
  /** What lies on the bench, step by step. */
  readonly rows: readonly BenchRow[];
  /** One a step: the line just cut, and what is to be done, in words. */
  readonly cuts: readonly BenchCut[];
  /** Written beside the slider. */
  readonly slider: string;
  /** The step shown first. */
  readonly start?: number;
}

/** One cut and its words. */
export interface BenchCut {
  /** The step that makes it, from 1 on. */
  readonly step: number;
  /** Where the line begins along x, in the drawing's unit. */
  readonly x: number;
  /** Where the line begins along y, in the drawing's unit. */
  readonly y: number;
  /** Where the line ends along x, in the drawing's unit. */
  readonly x2: number;
  /** Where the line ends along y, in the drawing's unit. */
  readonly y2: number;
  /** "Sheet 1, cut 3: rip at 24 in". */
  readonly words: string;
}

const height = 330;

/** Room above the drawing for the words of the step, px. */
const headRoom = 34;

/**
 * What lies on the bench after each cut, to scale; a slider steps from cut to cut.
 *
 * @throws Refusal without rows, with fewer than two steps, or on a value that is missing or not finite
 */
export function benchChart(request: BenchChart): ChartView {
  const corners = ["step", "x", "y", "x2", "y2"] as const;
  const parts = chartRows(request.title, request.rows, [...corners, "state", "code", "mark", "name", "size"]);
  const cuts = chartRows(request.title, request.cuts, [...corners, "words"]);
  const slider = sliderParts(cuts, {
    field: "step",
    title: request.slider,
    ...(request.start === undefined ? {} : { start: request.start }),
  });
  const place = toScale(parts);
  return layeredChart(request, parts, height, {
    params: slider.params,
    transform: [slider.filter],
    layer: [
      partLayer(place, parts),
      ...[
        { field: "code", dy: -9 },
        { field: "mark", dy: 9 },
      ].map((line) => wordLayer(place, line)),
      { data: { values: cuts }, transform: [slider.filter], ...cutLine(place) },
      { data: { values: cuts }, transform: [slider.filter], ...cutWords },
    ],
  });
}

/** One length in both directions, the largest that shows the whole sheet, with the sheet at the top left. */
function toScale(parts: readonly ChartRow[]): Readonly<Record<"x" | "y", ChartSpec>> {
  const [along, across] = ["x2", "y2"].map((field) => Math.max(...parts.map((row) => Number(row[field]))));
  const tall = `(height - ${headRoom})`;
  const shown = `max(${across}, ${along} * ${tall} / width)`;
  const scale = (from: string, to: string): ChartSpec => ({
    domainMin: { expr: from },
    domainMax: { expr: to },
    nice: false,
    zero: false,
  });
  return {
    x: {
      type: "quantitative",
      axis: null,
      scale: scale("0", `max(${along}, ${across} * width / ${tall})`),
    },
    y: {
      type: "quantitative",
      axis: null,
      scale: scale(`${across} - ${shown}`, `${across} + ${shown} * ${headRoom} / ${tall}`),
    },
  };
}

type Place = ReturnType<typeof toScale>;

function partLayer({ x, y }: Place, rows: readonly ChartRow[]): ChartSpec {
  const columns = [
    { field: "name", title: "Part" },
    { field: "size", title: "Size" },
    { field: "state", title: "It is" },
  ];
  return {
    mark: { type: "rect", stroke: colours.ink, strokeWidth: 1.2 },
    encoding: {
      x: { ...x, field: "x" },
      x2: { field: "x2" },
      y: { ...y, field: "y" },
      y2: { field: "y2" },
      color: {
        field: "state",
        type: "nominal",
        title: null,
        scale: {
          domain: ["piece", "cut further", "offcut"],
          range: ["#f1e6d2", "#cfe0ec", "#eceeef"],
        },
        legend: { direction: "horizontal" },
      },
      tooltip: tooltip(columns, rows),
    },
  };
}

function wordLayer(
  { x, y }: Place,
  { field, dy }: { readonly field: string; readonly dy: number },
): ChartSpec {
  return {
    transform: [
      { calculate: "(datum.x + datum.x2) / 2", as: "middle" },
      { calculate: "(datum.y + datum.y2) / 2", as: "centre" },
    ],
    mark: { type: "text", fontSize: 13, dy },
    encoding: {
      x: { ...x, field: "middle" },
      y: { ...y, field: "centre" },
      text: { field },
    },
  };
}

/** The line just cut. */
function cutLine({ x, y }: Place): ChartSpec {
  return {
    mark: { type: "rule", strokeWidth: 4, color: "#a3211b" },
    encoding: {
      x: { ...x, field: "x" },
      x2: { field: "x2" },
      y: { ...y, field: "y" },
      y2: { field: "y2" },
    },
  };
}

/** What is to be done, above the drawing. */
const cutWords: ChartSpec = {
  mark: { type: "text", align: "left", baseline: "top", fontWeight: 600, limit: { expr: "width" } },
  encoding: { x: { value: 0 }, y: { value: 4 }, text: { field: "words" } },
};
