/** A verdict as words and as a shape, so that colour is never the only sign, and demand against capacity as a bar. */
import type { Verdict } from "../findings/index.js";
import { type Html, html } from "./html.js";
import type { FindingView } from "./view.js";

/** What a builder reads. */
export const verdictWords: Readonly<Record<Verdict, string>> = {
  holds: "Holds",
  close: "Close",
  fails: "Does not hold",
  unknown: "Not known yet",
  broken: "Not computed",
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
function verdictShape(verdict: Verdict): Html {
  return html`<svg class="cw-shape cw-${verdict}" viewBox="0 0 24 24" aria-hidden="true" focusable="false">${shapes[verdict]}</svg>`;
}

/** Shape and words. */
export function verdictBadge(verdict: Verdict): Html {
  return html`<span class="cw-verdict cw-${verdict}">${verdictShape(verdict)}${verdictWords[verdict]}</span>`;
}

/** The limit stands here along the bar; what goes past one and a half times the limit ends in an arrow. */
const limitAt = 200;
const end = 300;

/** A share in whole percent; small and large ones keep two figures. */
export function percent(share: number): string {
  return `${Number((100 * share).toPrecision(share >= 0.1 && share < 10 ? 3 : 2)).toFixed(share < 0.1 ? 1 : 0)} %`;
}

/** The ratio in words: "62 % of the limit, 47 % to 80 % with your scatter". */
export function ratioWords({ ratio, interval }: FindingView): string {
  if (ratio === undefined) return "";
  const range = interval ? `, ${percent(interval.low)} to ${percent(interval.high)} with your scatter` : "";
  return `${percent(ratio)} of the limit${range}`;
}

/** The bar; nothing where there is no ratio. */
export function renderRatio(finding: FindingView): Html {
  const { ratio, interval, verdict } = finding;
  if (ratio === undefined) return html``;
  const along = (share: number): number => Math.round(10 * Math.min(end, Math.max(0, share * limitAt))) / 10;
  const beyond = ratio * limitAt > end;
  const span =
    interval &&
    `M${along(interval.low)} 9v14M${along(interval.low)} 16H${along(interval.high)}M${along(interval.high)} 9v14`;
  const whisker = span && html`<path class="cw-edge" d="${span}"/><path class="cw-whisker" d="${span}"/>`;
  return html`<div class="cw-ratio"><svg class="cw-bar cw-${verdict}" viewBox="-4 0 312 34" role="img" aria-label="${ratioWords(finding)}">
<rect class="cw-track" x="0" y="8" width="${end}" height="16"/><rect class="cw-fill" x="0" y="8" width="${along(ratio)}" height="16"/>${
    beyond && html`<path class="cw-fill" d="M${end} 5l8 11-8 11z"/>`
  }${whisker}<path class="cw-limit" d="M${limitAt} 1v30"/></svg>
<p class="cw-small">${ratioWords(finding)}. The upright line is the limit.</p></div>`;
}
