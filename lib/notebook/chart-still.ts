import { host } from "#host";
import type { Bounds, ChartLibrary } from "../host/contract.js";
import type { ChartSpec } from "../page/index.js";

/** Width of a still picture, px; a page scales it. */
const stillWidth = 640;
const margin = 4;

/** Stands for a library logger where its warnings are collected instead of printed. */
interface WarningCollector {
  level(): number;
  error(...parts: unknown[]): WarningCollector;
  warn(...parts: unknown[]): WarningCollector;
  info(): WarningCollector;
  debug(): WarningCollector;
}

/** A chart compiled, drawn as a still picture, and what the library had to say about it. */
export interface DrawnChart {
  /** The still picture. */
  readonly svg: string;
  /** What the library said about the chart. */
  readonly warnings: readonly string[];
}

/** A chart's still picture; none where nothing draws one, as in a page that draws every chart live. */
export function stillOf(spec: ChartSpec): string | undefined {
  const library = host.charts.library();
  return library && drawChart(spec, library).svg;
}

/**
 * Draws a chart without a browser.
 *
 * @throws Error when the specification cannot be compiled
 */
export function drawChart(spec: ChartSpec, { vega, vegaLite }: ChartLibrary): DrawnChart {
  const warnings: string[] = [];
  const logger = collector(warnings);
  const fixed = spec.width === "container" ? { ...spec, width: stillWidth } : spec;
  const compiled = vegaLite.compile(structuredClone(fixed), { logger }).spec;
  const view = new vega.View(vega.parse(compiled), { renderer: "none", logger }).run();
  const { root } = view.scenegraph();
  const [width, height, origin] = room(root.bounds);
  const renderer = new vega.SVGStringRenderer(vega.loader()).initialize(null, width, height, origin);
  const svg = renderer.background(view.background()).render(root).svg();
  view.finalize();
  return { svg: asSmall(svg), warnings };
}

/** Places in hundredths of a pixel, finer than any screen needs, and nothing for who reads marks: its page has words for it. */
function asSmall(svg: string): string {
  const bare = svg.replace(/ (?:class|role|aria-[a-z]+|pointer-events)="[^"]*"/g, "");
  return bare.replace(/ (?:d|transform|[xy][12]?)="[^"]*"/g, (places) =>
    places.replace(/\d+\.\d{3,}/g, (number) => String(Number(Number(number).toFixed(2)))),
  );
}

function room({ x1, y1, x2, y2 }: Bounds): [number, number, [number, number]] {
  const width = Math.ceil(x2 - x1 + 2 * margin);
  const height = Math.ceil(y2 - y1 + 2 * margin);
  return [width, height, [margin - x1, margin - y1]];
}

function collector(warnings: string[]): WarningCollector {
  const keep = (...parts: unknown[]): WarningCollector => {
    warnings.push(parts.map(String).join(" "));
    return self;
  };
  const quiet = (): WarningCollector => self;
  const self: WarningCollector = { level: () => 2, error: keep, warn: keep, info: quiet, debug: quiet };
  return self;
}
