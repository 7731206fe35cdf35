/** A chart as HTML: its title and description as text, a still picture, and the data a script draws it from. */
import { type Html, html, scriptJson } from "./html.js";
import type { ChartView } from "./view.js";

/** The figure. */
export function renderChart({ title, description, spec, still }: ChartView): Html {
  return html`<figure class="cw-figure"><figcaption><span class="cw-figure-title">${title}</span><span>${description}</span></figcaption>
<div class="cw-chart">${still !== undefined && html`<img alt="${title}. ${description}" src="${svgAddress(still)}">`}</div>
<script type="application/json" class="cw-spec">${scriptJson({ ...spec, description })}</script></figure>`;
}

/** A picture as an address that carries it whole. */
export function svgAddress(svg: string): string {
  return `data:image/svg+xml;base64,${btoa(Array.from(new TextEncoder().encode(svg), (byte) => String.fromCharCode(byte)).join(""))}`;
}
