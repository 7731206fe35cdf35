/** The shape of each verdict, so that colour is never the only sign. */
import type { Verdict } from "../findings/index.js";
import { colours, verdictColours } from "./colours.js";
import { type Html, html } from "./html.js";

/** Strokes within a shape: in the paper's colour on a full one, in its own on a ring. */
function cut(path: string, colour: string = colours.paper, width = 2.6): Html {
  return html`<path d="${path}" fill="none" stroke="${colour}" stroke-width="${width}" stroke-linecap="round" stroke-linejoin="round"/>`;
}

const grey = verdictColours.unknown.ink;

/** Tick in a circle, bar in a triangle, cross in a square, dots in a ring, question mark in a diamond. */
export const verdictShapes: Readonly<Record<Verdict, Html>> = {
  holds: html`<circle cx="12" cy="12" r="11"/>${cut("M6 12.5l4 4 8-9")}`,
  close: html`<path d="M12 1.5L23.5 22H.5z"/>${cut("M12 9v6M12 18v1.6")}`,
  fails: html`<rect x="1" y="1" width="22" height="22" rx="3"/>${cut("M7 7l10 10M17 7L7 17")}`,
  broken: html`<path d="M12 1L23 12 12 23 1 12z"/>${cut("M9.2 9.5a2.8 2.8 0 1 1 4.2 2.4q-1.4.8-1.4 2M12 16.4v1.4")}`,
  unknown: html`<circle cx="12" cy="12" r="10" fill="${colours.paper}" stroke="${grey}" stroke-width="2"/>${cut("M7 12h.1M12 12h.1M17 12h.1", grey, 3)}`,
};

/** The verdict's shape in a square of 24, for a drawing that has no style sheet. */
export function verdictSign(verdict: Verdict): Html {
  const { ink } = verdictColours[verdict];
  return html`<g fill="${ink}" stroke="none">${verdictShapes[verdict]}</g>`;
}
