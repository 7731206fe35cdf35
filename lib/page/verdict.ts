/** A verdict as words and as a shape, so that colour is never the only sign, and demand against capacity as a bar. */
import type { Verdict } from "../findings/index.js";
import { type Html, html } from "./html.js";
import { verdictShapes } from "./verdict-shapes.js";
import type { FindingView } from "./view.js";

/** What a builder reads. */
export const verdictWords: Readonly<Record<Verdict, string>> = {
  holds: "Holds",
  close: "Close",
  fails: "Does not hold",
  unknown: "Not known yet",
  broken: "Not computed",
};

/** What is said of one question with a verdict, and of several. */
const counted: Readonly<Record<Verdict, readonly [one: string, many: string]>> = {
  holds: ["holds", "hold"],
  close: ["is close", "are close"],
  fails: ["does not hold", "do not hold"],
  unknown: ["is not known yet", "are not known yet"],
  broken: ["could not be computed", "could not be computed"],
};

/** "3 are close", "1 does not hold". */
export function verdictCount(verdict: Verdict, count: number): string {
  return `${count} ${counted[verdict][count === 1 ? 0 : 1]}`;
}

/** The verdict's shape; the words always stand beside it. */
function verdictShape(verdict: Verdict): Html {
  return html`<svg class="cw-shape cw-${verdict}" viewBox="0 0 24 24" aria-hidden="true" focusable="false">${verdictShapes[verdict]}</svg>`;
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
