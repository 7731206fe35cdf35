/** A chart as HTML: its title and description as text, a still picture, and the data that a script draws it from. */
import { type Html, html, scriptJson } from "./html.js";
import type { ChartView } from "./view.js";

/** The figure. */
export function renderChart({ title, description, spec, still }: ChartView): Html {
  return html`<figure class="cw-figure"><figcaption><span class="cw-figure-title">${title}</span><span>${description}</span></figcaption>
<div class="cw-chart">${still !== undefined && html`<img alt="${title}. ${description}" src="${svgAddress(still)}">`}</div>
<script type="application/json" class="cw-spec">${scriptJson({ ...spec, description })}</script></figure>`;
}

/** A picture as an address that carries it whole, as text: shorter than in base 64. */
function svgAddress(svg: string): string {
  const quoted = svg.replace(/'/g, "&#39;").replace(/"/g, "'");
  return `data:image/svg+xml,${quoted.replace(/[%#<>]/g, (sign) => encodeURIComponent(sign))}`;
}

/**
 * Draws every figure not yet drawn, once the chart library is there, and keeps the still picture where
 * that fails. The library may come later than the figure, so it looks again for a while. `ast` has
 * expressions interpreted, so that a page may forbid evaluation.
 */
export const drawChartsScript: string = `(() => {
  const options = { actions: false, renderer: "svg", ast: true, tooltip: { disableDefaultStyle: false } };
  const nameControls = (place) => {
    for (const control of place.querySelectorAll(".vega-bind input, .vega-bind select")) {
      const name = control.closest(".vega-bind").querySelector(".vega-bind-name");
      if (name && control.type !== "radio") control.setAttribute("aria-label", name.textContent);
    }
  };
  const draw = async (figure) => {
    figure.dataset.drawn = "started";
    const place = figure.querySelector(".cw-chart");
    const still = place.querySelector("img");
    const live = document.createElement("div");
    place.prepend(live);
    try {
      const spec = JSON.parse(figure.querySelector(".cw-spec").textContent);
      await globalThis.vegaEmbed(live, globalThis.casewrightChart?.(spec) ?? spec, options);
      nameControls(place);
      if (still) still.remove();
      figure.dataset.drawn = "live";
    } catch (error) {
      live.remove();
      figure.dataset.drawn = "failed";
      console.error(error);
    }
  };
  globalThis.casewrightRedraw = () => {
    for (const figure of document.querySelectorAll('figure[data-drawn="live"]')) {
      figure.querySelector(".cw-chart").replaceChildren();
      draw(figure);
    }
  };
  const look = (tries) => {
    if (globalThis.vegaEmbed) {
      for (const figure of document.querySelectorAll("figure:not([data-drawn]):has(.cw-spec)")) draw(figure);
    }
    if (tries > 0) setTimeout(look, 150, tries - 1);
  };
  look(60);
})();`;
