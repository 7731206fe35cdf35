/** One display message of many types, from which each reader takes the richest it can show. */
import { host } from "#host";
import {
  type ChartView,
  drawChartsScript,
  drawingSvg,
  html,
  type Json,
  plainText,
  renderViews,
  trusted,
  type View,
  viewMime,
  viewStyles,
} from "../page/index.js";
import { stillOf } from "./chart-still.js";

/** A display message's data, by type. */
export type Bundle = Readonly<Record<string, Json>>;

/** The views with every chart's still picture drawn. */
export function withStills(views: readonly View[]): View[] {
  return views.map((view) => {
    const still = view.kind === "chart" ? stillOf(view.spec) : undefined;
    return still === undefined ? view : { ...view, still };
  });
}

/** For the book: the views themselves, which it draws anew. */
export function bookBundle(views: readonly View[]): Bundle {
  return { [viewMime]: asJson(views), "text/plain": views.map(plainText).join("\n") };
}

/**
 * For a notebook on screen: also HTML, the first chart's specification and the first picture.
 *
 * @param withRuntime puts the chart library in, which a page needs once
 */
export function screenBundle(views: readonly View[], withRuntime: boolean): Bundle {
  const firstChart = views.find((view): view is ChartView => view.kind === "chart");
  const picture = firstPicture(views);
  return {
    ...bookBundle(views),
    "text/html": screenHtml(views, withRuntime, firstChart !== undefined),
    ...(firstChart ? { "application/vnd.vegalite.v5+json": titled(firstChart) } : {}),
    ...(picture === undefined ? {} : { "image/svg+xml": picture }),
  };
}

function screenHtml(views: readonly View[], withRuntime: boolean, charts: boolean): string {
  const scripts = [...(withRuntime ? [runtimeScript()] : []), ...(charts ? [drawChartsScript] : [])];
  return String(
    html`<style>${trusted(viewStyles)}</style>${trusted(renderViews(views))}${scripts.map(
      (script) => html`<script>${trusted(script.replace(/<\/(script)/gi, "<\\/$1"))}</script>`,
    )}`,
  );
}

/** Hides the module loaders of a page, which would keep the library from it. */
function runtimeScript(): string {
  const files = host.charts.texts().join("\n;\n");
  return `if (!globalThis.vegaEmbed) (function (define, require, module, exports) {\n${files}\n}).call(globalThis);`;
}

function firstPicture(views: readonly View[]): string | undefined {
  const pictures = views.map((view) => {
    if (view.kind === "drawing") return String(drawingSvg(view));
    return view.kind === "chart" ? view.still : undefined;
  });
  return pictures.find((picture) => picture !== undefined);
}

function titled({ title, description, spec }: ChartView): Json {
  return { ...spec, title: { text: title, anchor: "start" }, description };
}

/** Leaves out what is undefined, as JSON does. */
function asJson(views: readonly View[]): Json {
  return JSON.parse(JSON.stringify(views)) as Json;
}
