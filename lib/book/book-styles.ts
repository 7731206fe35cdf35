/** Look and behaviour of the book's pages: one style sheet, one script. */
import { colours, drawChartsScript, firstPageStyles, themed, unitsScript } from "../page/index.js";

const { ink, soft, line, paper, accent } = themed;

/** CSS of the book's own parts. */
export const bookStyles: string = `${firstPageStyles}
.cw-head { background: ${colours.ink}; color: ${colours.paper}; }
.cw-head div { max-width: 74rem; margin: 0 auto; padding: .8rem 1rem; display: flex; flex-wrap: wrap; align-items: baseline; gap: .2rem 1.5rem; }
.cw-head a { color: ${colours.paper}; font-weight: 700; font-size: 1.125rem; text-decoration: none; min-height: 2rem; display: inline-flex; align-items: center; }
.cw-head a:hover { text-decoration: underline; }
.cw-head a:focus-visible { outline-color: ${colours.paper}; }
.cw-head span { color: #d5dadd; }
.cw-head .cw-units { display: inline-flex; gap: 0; padding: 0; margin: 0 0 0 auto; }
.cw-units button { font: inherit; font-size: .9375rem; min-height: 2.25rem; padding: .1rem .8rem; color: ${colours.paper}; background: none; border: 1px solid #d5dadd; cursor: pointer; }
.cw-units button[aria-pressed="true"] { background: ${colours.paper}; color: ${colours.ink}; font-weight: 650; }
.cw-units button:focus-visible { outline-color: ${colours.paper}; }
.cw-frame { max-width: 74rem; margin: 0 auto; }
.cw-side { display: none; }
.cw-side ol, .cw-side ul { list-style: none; margin: 0 0 1.2rem; padding: 0; }
.cw-side a { display: block; padding: .45rem .75rem; color: ${ink}; text-decoration: none; line-height: 1.35; border-left: 4px solid transparent; }
.cw-side a:hover { background: ${paper}; text-decoration: underline; }
.cw-side a[aria-current] { border-left-color: ${accent}; font-weight: 700; background: ${paper}; }
@media (min-width: 64rem) {
  .cw-frame { display: grid; grid-template-columns: 16rem minmax(0, 1fr); }
  .cw-side { display: block; padding: 1.6rem 0 1rem 1rem; position: sticky; top: 0; align-self: start; max-height: 100vh; overflow-y: auto; }
  .cw-frame main { padding: 1.2rem 1.5rem 3rem 2.5rem; margin: 0; width: 100%; }
}
.cw-turn { display: flex; flex-wrap: wrap; justify-content: space-between; gap: .8rem; margin: 3rem 0 0; padding-top: 1.2rem; border-top: 1px solid ${line}; }
.cw-turn a { display: block; padding: .7rem 1rem; background: ${paper}; border: 1px solid ${soft}; border-radius: .25rem; text-decoration: none; font-weight: 650; flex: 0 1 auto; }
.cw-turn a:last-child:not(:first-child) { text-align: right; }
.cw-turn small { display: block; font-size: .875rem; font-weight: 400; color: ${soft}; }
.cw-short { background: ${paper}; border: 1px solid ${line}; border-radius: .25rem; padding: .8rem 1rem .9rem; margin: 0 0 1.4rem; max-width: 46rem; }
.cw-short p { margin: 0; }
.cw-short .cw-verdict { margin-top: .6rem; }
.cw-failed { border-left: 4px solid ${accent}; background: ${paper}; padding: .6rem .9rem; margin: 0 0 1.2rem; max-width: 46rem; }
.cw-failed p { margin: 0; }
.cw-not-answered { border-left: 4px solid ${line}; padding: .1rem .9rem; color: ${soft}; max-width: 46rem; }
.cw-cell { margin: 1rem 0; }
.cw-workings { margin: .4rem 0 1.2rem; color: ${soft}; }
.cw-workings summary { cursor: pointer; font-size: .9375rem; color: ${soft}; min-height: 2.75rem; display: inline-flex; align-items: center; gap: .5rem; }
.cw-workings summary::before { content: ""; flex: none; width: .45rem; height: .45rem; border-right: 2px solid; border-bottom: 2px solid; transform: rotate(-45deg); margin-left: .15rem; }
.cw-workings[open] summary::before { transform: rotate(45deg); }
.cw-workings summary::-webkit-details-marker { display: none; }
.cw-workings pre, .cw-printed pre { overflow-x: auto; background: ${paper}; color: ${ink}; border: 1px solid ${line}; padding: .7rem .9rem; margin: 0 0 .6rem; font: .875rem/1.5 ui-monospace, "DejaVu Sans Mono", monospace; border-radius: .25rem; }
.cw-printed-label { font-size: .875rem; font-weight: 600; color: ${soft}; margin: .6rem 0 .2rem; }
.cw-picture { display: block; max-width: 100%; height: auto; margin: 1rem 0; }
.cw-boxed { display: block; width: 100%; height: 20rem; border: 1px solid ${line}; background: ${paper}; margin: 1rem 0; resize: vertical; }
.cw-term { color: inherit; text-decoration: underline dotted ${soft}; }
.cw-words > div { max-width: 42rem; margin: 0 0 .8rem; }
.cw-words > div:target { border-left: .25rem solid ${accent}; padding-left: .8rem; }
.cw-words dt { font-weight: 650; }
.cw-words dd { margin: 0; }
.cw-pages { padding-left: 1.2rem; }
.cw-pages li { margin: .4rem 0; }
.cw-formula { background: ${paper}; border: 1px solid ${line}; border-radius: .25rem; padding: .9rem 1.1rem; margin: 0 0 1rem; }
.cw-formula h2 { font-size: 1.1875rem; margin: 0; padding: 0; border: 0; }
.cw-formula td small { display: block; color: ${soft}; font-size: .9375rem; max-width: 26rem; }
.cw-formula .cw-id { font: .875rem ui-monospace, "DejaVu Sans Mono", monospace; color: ${soft}; margin: 0 0 .3rem; }
.cw-trouble { position: sticky; top: 0; z-index: 2; max-height: 45vh; overflow: auto; background: #fdf1ee; color: ${colours.ink}; border-bottom: 4px solid ${accent}; padding: .8rem 1rem; }
.cw-trouble p { margin: 0 auto .4rem; max-width: 72rem; font-weight: 700; }
.cw-trouble pre { margin: 0 auto; max-width: 72rem; overflow-x: auto; font: .875rem/1.5 ui-monospace, "DejaVu Sans Mono", monospace; }
.cw-stale main { filter: grayscale(1); opacity: .6; }
@media print {
  .cw-head { background: none; color: ${ink}; border-bottom: 2px solid ${ink}; }
  .cw-head a, .cw-head span { color: ${ink}; }
  .cw-head div { padding: 0 0 2mm; }
  .cw-frame { display: block; max-width: none; }
  .cw-frame main { padding: 0; }
  .cw-side, .cw-turn, .cw-units { display: none; }
  .cw-workings:not([open]) { display: none; }
  }
`;

/** Opens every "how we know" for printing, and closes it again after. */
const printScript = `addEventListener("beforeprint", () => {
  for (const part of document.querySelectorAll("details.cw-how:not([open])")) {
    part.open = true;
    part.dataset.opened = "for print";
  }
});
addEventListener("afterprint", () => {
  for (const part of document.querySelectorAll("details[data-opened]")) {
    part.open = false;
    delete part.dataset.opened;
  }
});`;

/** Opens what an address leads into. */
const openScript = `const openTarget = () => {
  const target = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  for (let part = target; part; part = part.parentElement) if (part.tagName === "DETAILS") part.open = true;
  target?.scrollIntoView();
};
addEventListener("hashchange", openTarget);
if (location.hash) openTarget();`;

/** Draws charts, opens what an address leads into, and readies a page for print. */
export const bookScript: string = `"use strict";\n${drawChartsScript}\n${printScript}\n${unitsScript}\n${openScript}\n`;
