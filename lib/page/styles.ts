/** The style of views, all under one class so that a notebook's own look is left alone, and of a whole page. */
import { colours } from "./colours.js";
import { drawingStyles } from "./render-drawing.js";
import { darkStyles, themed, themedVerdicts } from "./theme.js";

const { ink, soft, line, paper, ground, accent } = themed;

/** Charts and drawings stay ink on white paper in the dark too. */
const sheet = `background: ${colours.paper}; color: ${colours.ink};`;

/** A shade at an edge beyond which there is more to scroll to; paper that moves along covers it where there is not. */
const scrollCue: string = [
  `background-image: linear-gradient(to right, ${colours.paper} 40%, transparent)`,
  `linear-gradient(to left, ${colours.paper} 40%, transparent)`,
  "linear-gradient(to right, rgb(0 0 0 / .35), transparent)",
  "linear-gradient(to left, rgb(0 0 0 / .35), transparent);",
]
  .join(", ")
  .concat(
    " background-position: left, right, left, right; background-repeat: no-repeat;",
    " background-size: 3rem 100%, 3rem 100%, .8rem 100%, .8rem 100%; background-attachment: local, local, scroll, scroll;",
  );

const verdicts: string = Object.entries(themedVerdicts)
  .map(
    ([verdict, { ink: letters, ground: under }]) => `
.cw .cw-verdict.cw-${verdict} { color: ${letters}; background: ${under}; border-color: ${letters}; }
.cw .cw-shape.cw-${verdict} { fill: ${letters}; }
.cw .cw-bar.cw-${verdict} .cw-fill { fill: ${letters}; }
.cw .cw-kind.cw-${verdict}, .cw .cw-finding.cw-${verdict}, .cw .cw-answer.cw-${verdict} { border-left-color: ${letters}; }`,
  )
  .join("");

/** CSS for views on any page. */
export const viewStyles: string = `
.cw { color: ${ink}; font: 1.0625rem/1.55 system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", "DejaVu Sans", sans-serif; font-variant-numeric: tabular-nums; overflow-wrap: break-word; }
.cw *, .cw *::before { box-sizing: border-box; }
.cw p { margin: 0 0 .7em; }
.cw h3 { font-size: 1.25rem; line-height: 1.3; margin: .1rem 0 .6rem; }
.cw h4, .cw .cw-worked-title { font-size: 1.0625rem; line-height: 1.35; font-weight: 700; margin: 0 0 .4rem; }
.cw .cw-small { font-size: .9375rem; color: ${soft}; margin: .35rem 0; }
.cw .cw-small b { color: ${ink}; }
.cw .cw-label { font-size: .875rem; font-weight: 600; letter-spacing: .02em; color: ${soft}; margin: 0 0 .25rem; }
.cw .cw-hidden { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.cw .cw-sentence { max-width: 42rem; }
.cw .cw-answer, .cw .cw-finding { background: ${paper}; border: 1px solid ${line}; border-left: .5rem solid ${accent}; border-radius: .25rem; padding: 1rem 1.1rem; margin: 1.2rem 0; }
.cw .cw-answer-text { font-size: 1.1875rem; line-height: 1.45; font-weight: 600; margin: .5rem 0 .6rem; max-width: 42rem; }
.cw .cw-answer .cw-answer-text:last-child { margin-bottom: 0; }
.cw .cw-verdict { display: inline-flex; align-items: center; gap: .5rem; font-weight: 700; padding: .2rem .75rem .2rem .4rem; border: 1.5px solid; border-radius: .25rem; }
.cw .cw-shape { width: 1.4rem; height: 1.4rem; flex: none; }
.cw .cw-amounts { display: flex; flex-wrap: wrap; gap: .4rem 2.5rem; margin: .6rem 0; }
.cw .cw-amounts dt { font-size: .9375rem; color: ${soft}; font-weight: 400; }
.cw .cw-amounts dd { margin: 0; font-size: 1.125rem; font-weight: 650; }
.cw .cw-ratio { margin: .6rem 0; }
.cw .cw-bar { display: block; width: 100%; max-width: 26rem; height: auto; }
.cw .cw-bar .cw-track { fill: ${ground}; stroke: ${line}; }
.cw .cw-bar .cw-limit { stroke: ${ink}; stroke-width: 2.5; }
.cw .cw-bar .cw-whisker { fill: none; stroke: ${ink}; stroke-width: 1.5; }
.cw .cw-bar .cw-edge { fill: none; stroke: ${paper}; stroke-width: 4.5; }
.cw .cw-missing { background: ${themedVerdicts.unknown.ground}; padding: .7rem .9rem; border-radius: .25rem; margin: .7rem 0; }
.cw .cw-missing p:last-child { margin: 0; }
.cw .cw-cautions { background: ${themedVerdicts.close.ground}; border: 1px solid ${themedVerdicts.close.ink}; border-radius: .25rem; padding: .7rem .9rem; margin: .8rem 0; }
.cw .cw-cautions .cw-label { color: ${themedVerdicts.close.ink}; font-weight: 700; }
.cw .cw-cautions ul { margin: 0; padding-left: 1.2rem; }
.cw .cw-list-title { font-weight: 650; margin-bottom: .2rem; }
.cw .cw-list ul, .cw .cw-list ol { margin: .2rem 0 1rem; padding-left: 1.5rem; max-width: 42rem; }
.cw .cw-list ul.cw-ticks { list-style: none; padding-left: 1.4rem; text-indent: -1.4rem; }
.cw li { margin: .2rem 0; }
.cw .cw-scroll { overflow-x: auto; max-width: 100%; margin: .8rem 0; }
.cw table { border-collapse: collapse; font-size: 1rem; line-height: 1.4; margin: 0; border: 0; background: ${paper}; }
.cw .cw-scroll table { min-width: min(100%, 22rem); }
.cw caption { text-align: left; font-weight: 650; padding: 0 0 .4rem; }
.cw caption span { position: sticky; left: 0; display: inline-block; max-width: min(100%, calc(100vw - 4.75rem)); }
.cw th, .cw td { text-align: left; vertical-align: top; padding: .45rem .7rem; border: 0; border-bottom: 1px solid ${line}; }
.cw thead th { border-bottom: 2px solid ${ink}; vertical-align: bottom; font-weight: 650; background: ${paper}; }
.cw tbody tr { background: ${paper}; }
.cw th.cw-right, .cw td.cw-right { text-align: right; }
.cw th.cw-center, .cw td.cw-center { text-align: center; }
@media (max-width: 40rem) {
  .cw table { font-size: .9375rem; }
  .cw th, .cw td { padding: .4rem .5rem; }
  .cw .cw-table:not(.cw-symbols) th:first-child, .cw .cw-table:not(.cw-symbols) td:first-child { position: sticky; left: 0; max-width: 8.5rem; background: inherit; box-shadow: inset 0 -1px ${line}; }
  .cw .cw-table:not(.cw-symbols) td:first-child { min-width: 6.5rem; }
  .cw .cw-table:not(.cw-symbols) thead th:first-child { box-shadow: inset 0 -2px ${ink}; }
  .cw .cw-table thead tr { background: ${paper}; }
}
@property --cw-fade { syntax: "<length>"; inherits: false; initial-value: 0px; }
@keyframes cw-more-right { from, 90% { --cw-fade: 2.2rem; } to { --cw-fade: 0px; } }
@supports (animation-timeline: scroll()) {
  @media screen {
    .cw .cw-scroll, .cw .cw-drawing, .cw .cw-chart, .cw .cw-equation { animation: cw-more-right linear both; animation-timeline: scroll(self inline); mask-image: linear-gradient(to left, transparent, #000 var(--cw-fade)); }
  }
}
.cw .cw-worked { border-top: 1px solid ${line}; padding: .9rem 0 .4rem; margin: .8rem 0 0; }
.cw .cw-equation { overflow-x: auto; overflow-y: hidden; padding: .35rem 0; max-width: 100%; }
.cw math { font-family: "STIX Two Math", "Cambria Math", "Latin Modern Math", "Libertinus Math", "DejaVu Math TeX Gyre", math; }
.cw .cw-equation math { display: block math; font-size: 1.2rem; text-align: left; width: max-content; }
.cw .cw-symbols math { font-size: 1.1rem; }
.cw .cw-symbols { width: 100%; max-width: 42rem; }
.cw .cw-line { display: block; }
.cw .cw-symbols .cw-result td { font-weight: 700; border-top: 1.5px solid ${ink}; }
.cw .cw-symbols .cw-result + .cw-result td { border-top: 0; }
.cw summary { cursor: pointer; font-weight: 650; color: ${accent}; padding: .35rem 0; min-height: 2.75rem; display: flex; align-items: center; gap: .5rem; }
.cw summary::before { content: ""; flex: none; width: .55rem; height: .55rem; border-right: 2.5px solid; border-bottom: 2.5px solid; transform: rotate(-45deg); margin-left: .15rem; }
.cw details[open] > summary::before { transform: rotate(45deg); }
.cw summary::-webkit-details-marker { display: none; }
.cw :focus-visible { outline: 3px solid ${accent}; outline-offset: 2px; }
.cw .cw-kinds { border-bottom: 1px solid ${line}; margin: 1rem 0; }
.cw .cw-kind { border-top: 1px solid ${line}; padding: 0 0 0 .8rem; border-left: .35rem solid transparent; }
.cw .cw-kind[open] { background: ${paper}; padding: 0 1rem 1rem .8rem; }
.cw .cw-kind > summary { color: ${ink}; flex-wrap: wrap; gap: .2rem .8rem; }
.cw .cw-kind .cw-kind-question { flex: 1 1 15rem; }
.cw .cw-kind .cw-kind-question small { font-weight: 400; color: ${soft}; }
.cw .cw-kind .cw-kind-used { font-weight: 400; min-width: 4rem; text-align: right; }
.cw .cw-kind > summary .cw-verdict { font-size: .9375rem; min-width: 9.5rem; }
.cw .cw-like .cw-said { min-width: 12rem; }
.cw .cw-like .cw-verdict { font-size: .875rem; white-space: nowrap; }
.cw .cw-paper { border-bottom: 1px solid ${line}; }
.cw .cw-paper > summary { flex-wrap: wrap; }
.cw .cw-paper > summary h3 { margin: 0; font-size: 1.1875rem; }
.cw .cw-paper > summary small { font-weight: 400; color: ${soft}; }
.cw .cw-print-only { display: none; }
.cw .cw-remedy { max-width: 42rem; }
.cw .cw-figure { margin: 1.4rem 0; padding: 0; }
.cw figcaption { margin: 0 0 .6rem; font-style: normal; text-align: left; color: ${soft}; font-size: .9688rem; max-width: 42rem; }
.cw .cw-figure-title { display: block; color: ${ink}; font-size: 1.125rem; font-weight: 650; }
.cw .cw-chart { width: 100%; max-width: 46rem; ${sheet} ${scrollCue} overflow-x: auto; overflow-y: hidden; }
.cw .cw-chart img { display: block; max-width: 100%; height: auto; }
.cw .cw-drawing { max-width: 46rem; ${sheet} ${scrollCue} overflow-x: auto; overflow-y: hidden; }
.cw .cw-drawing svg { display: block; width: 100%; height: auto; }
${drawingStyles}
.cw .cw-solids { display: block; width: 100%; max-width: 30rem; height: auto; ${sheet} }
.cw .vega-embed, .cw .vega-embed .chart-wrapper { display: block; width: 100%; padding: 0; }
.cw .vega-bindings { margin: .6rem 0 1rem; display: grid; gap: .5rem; }
.cw .vega-bindings:empty { display: none; }
.cw .vega-bind { display: block; }
.cw .vega-bind label { display: flex; flex-wrap: wrap; align-items: center; gap: .3rem .8rem; }
.cw .vega-bind-name { font-weight: 650; flex: 0 0 auto; min-width: 9rem; }
.cw .vega-bind input[type="range"] { flex: 1 1 9rem; max-width: 24rem; height: 2.75rem; margin: 0; accent-color: ${accent}; }
.cw .vega-bind select { font: inherit; min-height: 2.75rem; padding: .2rem .6rem; border: 1.5px solid ${soft}; border-radius: .25rem; background: ${paper}; color: ${ink}; }
.cw .vega-bind .vega-bind-radio { display: flex; flex-wrap: wrap; gap: .3rem 1.2rem; }
.cw .vega-bind .vega-bind-radio label { min-height: 2.75rem; gap: .4rem; }
.cw .vega-bind span:not(.vega-bind-name) { font-weight: 650; min-width: 3rem; }
.cw code { font-family: ui-monospace, "DejaVu Sans Mono", monospace; font-size: .9em; }
${verdicts}
@media print {
  .cw { font-size: 10.5pt; }
  .cw .vega-bindings { display: none; }
  .cw .cw-chart { overflow: visible; }
  .cw .cw-chart svg { max-width: 100%; height: auto; }
  .cw .cw-answer, .cw .cw-worked, .cw .cw-top, .cw .cw-figure, .cw .cw-cautions, .cw tr { break-inside: avoid; }
  .cw h3, .cw h4, .cw .cw-worked-title, .cw caption, .cw .cw-list-title { break-after: avoid; }
  .cw .cw-scroll, .cw .cw-equation, .cw .cw-drawing { overflow: visible; }
  .cw .cw-drawing > div { min-width: 0 !important; }
  .cw .cw-drawing svg { max-height: 230mm; }
  .cw thead { display: table-header-group; }
  .cw summary { display: none; }
  .cw .cw-paper > summary { display: block; min-height: 0; color: ${ink}; }
  .cw .cw-paper > summary::before, .cw .cw-paper > summary small { display: none; }
  .cw .cw-print-only { display: block; }
  .cw details::details-content { content-visibility: visible; block-size: auto; }
  .cw .cw-verdict, .cw .cw-shape, .cw .cw-bar, .cw .cw-drawing, .cw .cw-cautions { print-color-adjust: exact; }
}
@media (forced-colors: active) {
  .cw .cw-shape { forced-color-adjust: none; }
}
`;

/** CSS of a page: readable at arm's length and at 360 px, sober in print. */
export const pageStyles: string = `
:root { color-scheme: light; }
${darkStyles}
html { background: ${ground}; -webkit-text-size-adjust: 100%; text-size-adjust: 100%; scroll-padding-top: 1rem; }
body { margin: 0; color: ${ink}; font: 1.0625rem/1.55 system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", "DejaVu Sans", sans-serif; overflow-wrap: break-word; }
*, *::before { box-sizing: border-box; }
a { color: ${accent}; text-underline-offset: .15em; }
a:hover { text-decoration-thickness: .12em; }
:focus-visible { outline: 3px solid ${accent}; outline-offset: 2px; }
main { max-width: 54rem; margin: 0 auto; padding: 1rem 1rem 3rem; }
h1, .cw-prose h1 { font-size: clamp(1.65rem, 1.2rem + 2vw, 2.25rem); line-height: 1.2; letter-spacing: -.01em; margin: .6rem 0 1rem; text-wrap: balance; }
h2, .cw-prose h2 { font-size: 1.4375rem; line-height: 1.3; margin: 2.4rem 0 .7rem; padding-top: 1rem; border-top: 3px solid ${ink}; text-wrap: balance; }
.cw-prose h3 { font-size: 1.1875rem; line-height: 1.35; margin: 1.6rem 0 .5rem; }
.cw-prose p, .cw-prose ul, .cw-prose ol { max-width: 42rem; }
.cw-prose p { margin: 0 0 .8em; }
.cw-prose ul, .cw-prose ol { padding-left: 1.5rem; margin: 0 0 1em; }
.cw-prose blockquote { margin: 1rem 0; padding: .1rem 1rem; border-left: .25rem solid ${line}; color: ${soft}; }
.cw-prose pre { overflow-x: auto; background: ${paper}; border: 1px solid ${line}; padding: .8rem 1rem; }
.cw-skip { position: absolute; left: -100vw; }
.cw-skip:focus { left: .5rem; top: .5rem; background: ${paper}; padding: .6rem 1rem; z-index: 2; }
@media print {
  @page { margin: 16mm 14mm; }
  html, body { background: ${paper}; font-size: 10.5pt; }
  main { max-width: none; padding: 0; }
  h1, h2, h3 { break-after: avoid; }
  a { color: inherit; text-decoration: none; }
  .cw-skip, .cw-no-print { display: none !important; }
}
${viewStyles}`;
