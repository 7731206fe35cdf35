/** A plot as an SVG file whose millimetres are millimetres, a group of it a layer. */
import { type Html, html, trusted } from "../page/index.js";
import type { Point2, Side } from "../shape/index.js";
import { looks, type Room, spread } from "./looks.js";
import {
  type Layer,
  layers,
  type PathMark,
  type Plot,
  type PlotMark,
  roomOf,
  type WordsMark,
} from "./plot.js";

/** The whole file. The layers are groups with their names as ids. */
export function svgFile({ title, marks }: Plot): string {
  const { left, bottom, width, height }: Room = spread(roomOf(marks));
  const groups = layers.flatMap((layer) => layerGroup(layer, marks));
  const svg = html`<svg xmlns="http://www.w3.org/2000/svg" width="${exact(width)}mm" height="${exact(height)}mm" viewBox="${exact(left)} ${exact(-bottom - height)} ${exact(width)} ${exact(height)}" font-family="Helvetica, Arial, sans-serif" fill="none" stroke-linejoin="round"><title>${title}</title>
${groups}</svg>
`;
  return `<?xml version="1.0" encoding="UTF-8"?>\n${svg}`;
}

function layerGroup(layer: Layer, marks: readonly PlotMark[]): Html[] {
  const own = marks.filter((mark) => (mark.kind === "words" ? "NOTES" : mark.layer) === layer);
  if (own.length === 0) return [];
  const { width, dash } = looks[layer];
  const dashes = dash === undefined ? undefined : trusted(` stroke-dasharray="${dash.join(" ")}"`);
  return [
    html`<g id="${layer}" stroke="#000" stroke-width="${String(width)}"${dashes}>${own.map(markSvg)}</g>
`,
  ];
}

function markSvg(mark: PlotMark): Html {
  if (mark.kind === "words") return wordsSvg(mark);
  if (mark.kind === "path")
    return html`<path d="${pathText(mark)}"${mark.filled && trusted(' fill="#000"')}/>`;
  const { centre, radius } = mark;
  return html`<circle cx="${exact(centre.x)}" cy="${exact(-centre.y)}" r="${exact(radius)}"/>`;
}

function pathText({ sides, closed }: PathMark): string {
  const [first] = sides;
  if (!first) return "";
  return `M${place(first.from)}${sides.map(sideText).join("")}${closed ? "Z" : ""}`;
}

function sideText(side: Side): string {
  if (side.kind === "line") return `L${place(side.to)}`;
  const { radius, sweep, to } = side;
  return `A${exact(radius)} ${exact(radius)} 0 0 ${sweep > 0 ? 0 : 1} ${place(to)}`;
}

function wordsSvg({ text, at, size, anchor, turn }: WordsMark): Html {
  return html`<text transform="translate(${place(at)}) rotate(${exact(-turn)})" text-anchor="${anchor}" font-size="${exact(size)}" fill="#000" stroke="#fff" stroke-width="${exact(size / 6)}" paint-order="stroke">${text}</text>`;
}

function place({ x, y }: Point2): string {
  return `${exact(x)} ${exact(-y)}`;
}

/** To a tenth of a micrometre. */
function exact(value: number): string {
  return String(Math.round(value * 1e4) / 1e4);
}
