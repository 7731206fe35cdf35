/** Runs the chart library's browser files in this process, so that charts can be made without waiting. */
import { readFileSync } from "node:fs";
import { runInThisContext } from "node:vm";
import { chartRuntimeFiles } from "../page/index.js";

/** The parts of the chart library that a still picture needs. */
export interface ChartLibrary {
  readonly vega: VegaModule;
  readonly vegaLite: { compile(spec: object, options?: object): { readonly spec: object } };
}

/** The part of the drawing library used here. */
export interface VegaModule {
  parse(spec: object, config?: object, options?: object): object;
  View: new (runtime: object, options: object) => VegaView;
  SVGStringRenderer: new (loader: object) => SvgRenderer;
  loader(): object;
}

/** A chart laid out. */
export interface VegaView {
  run(): VegaView;
  background(): string | null;
  scenegraph(): { readonly root: { readonly bounds: Bounds } };
  finalize(): void;
}

/** The room that drawn marks take, px. */
export interface Bounds {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** Writes a chart as SVG. */
export interface SvgRenderer {
  initialize(element: null, width: number, height: number, origin: readonly [number, number]): SvgRenderer;
  background(colour: string | null): SvgRenderer;
  render(scene: object): SvgRenderer;
  svg(): string;
}

let loaded: ChartLibrary | undefined;

/** The chart library, loaded once. */
export function chartLibrary(): ChartLibrary {
  loaded ??= load();
  return loaded;
}

/** The texts of the browser files, in the order in which they load. */
export function chartRuntimeTexts(): string[] {
  return chartRuntimeFiles().map(({ path }) => readFileSync(path, "utf8"));
}

function load(): ChartLibrary {
  const [vegaText = "", vegaLiteText = ""] = chartRuntimeTexts();
  const vega = evaluate<VegaModule>(vegaText, {});
  return { vega, vegaLite: evaluate<ChartLibrary["vegaLite"]>(vegaLiteText, { vega }) };
}

/** Evaluates one file that offers itself in the way of CommonJS. */
function evaluate<Exports>(text: string, needed: Readonly<Record<string, unknown>>): Exports {
  const module = { exports: {} };
  const wrapped = runInThisContext(`(function (exports, module, require, define) {${text}\n})`) as (
    ...parts: unknown[]
  ) => void;
  wrapped(module.exports, module, (name: string) => needed[name], undefined);
  return module.exports as Exports;
}
