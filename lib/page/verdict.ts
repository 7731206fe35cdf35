/** A verdict as words and as a shape, so that colour is never the only sign. */
import type { Verdict } from "../findings/index.js";
import { type Html, html } from "./html.js";

/** What a builder reads. */
export const verdictWords: Readonly<Record<Verdict, string>> = {
  holds: "Holds",
  close: "Close",
  fails: "Does not hold",
  unknown: "Not known yet",
  broken: "Could not be computed",
};

/** Tick in a circle, bar in a triangle, cross in a square, dots in a ring, question mark in a diamond. */
const shapes: Readonly<Record<Verdict, Html>> = {
  holds: html`<circle cx="12" cy="12" r="11"/><path class="cw-cut" d="M6 12.5l4 4 8-9"/>`,
  close: html`<path d="M12 1.5L23.5 22H.5z"/><path class="cw-cut" d="M12 9v6M12 18v1.6"/>`,
  fails: html`<rect x="1" y="1" width="22" height="22" rx="3"/><path class="cw-cut" d="M7 7l10 10M17 7L7 17"/>`,
  broken: html`<path d="M12 1L23 12 12 23 1 12z"/><path class="cw-cut" d="M9.2 9.5a2.8 2.8 0 1 1 4.2 2.4q-1.4.8-1.4 2M12 16.4v1.4"/>`,
  unknown: html`<circle class="cw-ring" cx="12" cy="12" r="10"/><path class="cw-dots" d="M7 12h.1M12 12h.1M17 12h.1"/>`,
};

/** The verdict's shape; the words always stand beside it. */
export function verdictShape(verdict: Verdict): Html {
  return html`<svg class="cw-shape cw-${verdict}" viewBox="0 0 24 24" aria-hidden="true" focusable="false">${shapes[verdict]}</svg>`;
}

/** Shape and words. */
export function verdictBadge(verdict: Verdict): Html {
  return html`<span class="cw-verdict cw-${verdict}">${verdictShape(verdict)}${verdictWords[verdict]}</span>`;
}
