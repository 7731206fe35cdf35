/** The look of the live page: the case on the left, what it comes to on the right, one column on a phone. */
import { colours, themed, themedVerdicts } from "../page/index.js";

const { ink, soft, line, paper, ground, accent } = themed;

/** CSS of the page, beside that of views. */
export const liveStyles: string = `
body { margin: 0; background: ${ground}; color: ${ink}; font: 1.0625rem/1.5 system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", "DejaVu Sans", sans-serif; }
.lv-head { display: flex; flex-wrap: wrap; align-items: end; gap: .4rem 1.5rem; padding: .8rem 1.2rem; border-bottom: 3px solid ${ink}; background: ${paper}; }
.lv-head h1 { font-size: 1.5rem; line-height: 1.2; margin: 0; }
.lv-head p { margin: 0; }
.lv-over { color: ${soft}; font-size: .9375rem; }
.lv-state { color: ${soft}; flex: 1 1 14rem; min-height: 1.5em; }
.lv-main { max-width: 96rem; display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); gap: 1.2rem; padding: 1.2rem; align-items: start; }
.lv-left { position: sticky; top: 0; max-height: 100vh; overflow-y: auto; }
.lv-wide { padding: 0 1.2rem 2rem; }
.lv-wide > details { background: ${paper}; border: 1px solid ${line}; border-radius: .25rem; margin: 0 0 .8rem; padding: .2rem 1rem; }
.lv-wide summary, .lv-right summary { cursor: pointer; font-weight: 650; min-height: 2.75rem; display: flex; align-items: center; }
.lv-right, .lv-left, .lv-wide, .lv-field > * { min-width: 0; }
.lv-picture { background: ${colours.paper}; color: ${colours.ink}; border: 1px solid ${line}; border-radius: .25rem; touch-action: pan-y; cursor: grab; min-height: 12rem; }
.lv-picture svg { display: block; width: 100%; height: auto; max-height: 42vh; }
.lv-row > label { min-width: 0; max-width: 100%; }
.lv-row { display: flex; flex-wrap: wrap; gap: .4rem .6rem; align-items: center; margin: .5rem 0; }
button, select, input, textarea { font: inherit; color: inherit; }
button, select, input[type="text"] { min-height: 2.75rem; padding: .3rem .8rem; border: 1.5px solid ${soft}; border-radius: .25rem; background: ${paper}; }
.lv-button { display: inline-flex; align-items: center; min-height: 2.75rem; box-sizing: border-box; padding: .3rem .8rem; border: 1.5px solid ${soft}; border-radius: .25rem; background: ${paper}; color: ${ink}; text-decoration: none; }
button:disabled { color: ${soft}; border-color: ${line}; }
button[aria-pressed="true"] { background: ${ink}; color: ${paper}; }
input[type="file"] { max-width: 100%; }
input[type="checkbox"] { width: 1.4rem; height: 1.4rem; vertical-align: -.3rem; }
:focus-visible { outline: 3px solid ${accent}; outline-offset: 2px; }
textarea { width: 100%; box-sizing: border-box; font: .9375rem/1.45 ui-monospace, "DejaVu Sans Mono", monospace; padding: .6rem; border: 1.5px solid ${soft}; border-radius: .25rem; background: ${paper}; }
.lv-face { background: ${paper}; border: 1px solid ${line}; border-radius: .25rem; }
.lv-face svg { display: block; width: 100%; height: auto; max-height: 36vh; touch-action: none; }
.lv-thing { cursor: move; fill: ${paper}; stroke: ${ink}; }
.lv-thing.lv-hardware { fill: ${ground}; }
.lv-thing.lv-held { stroke: ${accent}; fill: ${ground}; }
.lv-thing:focus { outline: none; stroke: ${accent}; }
.lv-totals { display: grid; grid-template-columns: auto 1fr; gap: .2rem 1rem; margin: 0; }
.lv-totals dt { color: ${soft}; }
.lv-totals dd { margin: 0; font-weight: 650; }
.lv-box { background: ${paper}; border: 1px solid ${line}; border-radius: .25rem; padding: .8rem 1rem; margin: 0 0 1rem; }
.lv-box h2 { font-size: 1.125rem; margin: 0 0 .4rem; padding: 0; border: 0; }
.lv-box ul, .lv-box ol { margin: .2rem 0; padding-left: 1.3rem; }
.lv-released { border-left: .5rem solid ${themedVerdicts.holds.ink}; }
.lv-kept { border-left: .5rem solid ${themedVerdicts.fails.ink}; }
.lv-open { border-left: .5rem solid ${themedVerdicts.unknown.ink}; }
.lv-answer { border-top: 1px solid ${line}; padding: .6rem 0; }
.lv-answer p { margin: .2rem 0; }
.lv-answer .cw-verdict { flex: none; white-space: nowrap; }
.lv-answer > details > summary { flex-wrap: wrap; }
.lv-answer > details > summary > b:last-of-type { flex: 1 1 11rem; min-width: 0; overflow-wrap: anywhere; }
.lv-mendings { margin: .4rem 0; }
.lv-mendings li { margin: .4rem 0; }
.lv-mendings button { margin: .2rem .4rem .2rem 0; }
.lv-stale { color: ${soft}; }
.lv-stale .cw-verdict { border-style: dashed; }
.lv-right .lv-tier { font-size: 1rem; margin: .9rem 0 .2rem; }
.lv-problem { background: ${themedVerdicts.fails.ground}; border: 1.5px solid ${themedVerdicts.fails.ink}; border-radius: .25rem; padding: .6rem 1rem; margin: .8rem 1.2rem; }
.lv-problem p { margin: .2rem 0; }
.lv-two { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 18rem), 1fr)); gap: .6rem; }
.lv-two pre { overflow: auto; max-height: 16rem; margin: 0; padding: .4rem .6rem; background: ${paper}; border: 1px solid ${line}; }
.lv-rack { border-collapse: collapse; margin: 0 0 1rem; }
#rack .cw-scroll { overflow-x: auto; }
#rack svg { width: 100%; max-width: 52rem; height: auto; }
.lv-rack caption { text-align: left; color: ${soft}; }
.lv-rack th, .lv-rack td { padding: .2rem .6rem .2rem 0; text-align: left; font-weight: 400; }
.lv-odd td, .lv-odd th { background: ${themedVerdicts.fails.ground}; }
.lv-told { padding-left: 1.3rem; }
.lv-hidden { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
#measuring .cw-scroll { overflow-x: auto; position: relative; }
.lv-block { border-left: 3px solid ${line}; padding-left: .8rem; margin: .3rem 0; }
.lv-field { display: grid; grid-template-columns: minmax(8rem, 14rem) minmax(9rem, 18rem) 1fr; gap: .2rem 1rem; align-items: center; padding: .25rem 0; border-top: 1px solid ${ground}; }
.lv-field small { color: ${soft}; font-size: .9375rem; }
.lv-field input, .lv-field select { width: 100%; box-sizing: border-box; }
.lv-papers { position: fixed; inset: 0; background: ${ground}; display: flex; flex-direction: column; padding: .6rem; z-index: 5; }
.lv-papers iframe { flex: 1; border: 1px solid ${line}; background: ${paper}; }
@media (max-width: 52rem) {
  .lv-main { grid-template-columns: minmax(0, 1fr); padding: .6rem; }
  .lv-left { position: static; max-height: none; overflow-y: visible; }
  .lv-wide { padding: 0 .6rem 2rem; }
  .lv-head { padding: .6rem; }
  .lv-field { grid-template-columns: minmax(0, 1fr); }
}
`;
