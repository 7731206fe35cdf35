/** The look of the live page at the bench: nothing smaller than 18 px, nothing to press smaller than 48. */
import { colours, themed, themedVerdicts } from "../page/index.js";

const { ink, soft, line, paper, ground, accent } = themed;

/** CSS of the bench, beside that of the page. */
export const benchStyles: string = `
.lv-at-bench > .lv-head, .lv-at-bench > .lv-main, .lv-at-bench > .lv-wide { display: none; }
.lv-bench { max-width: 46rem; margin: 0 auto; padding: 0 .8rem 6.5rem; font-size: 1.25rem; line-height: 1.45; }
.lv-bench small, .lv-bench .cw-label, .lv-bench figcaption, .lv-bench table, .lv-bench caption, .lv-bench .cw-verdict { font-size: 1.125rem; }
.lv-bench-top { display: flex; flex-wrap: wrap; gap: .3rem .6rem; align-items: center; justify-content: space-between; padding: .4rem 0; border-bottom: 3px solid ${ink}; }
.lv-bench-top p { margin: 0; font-size: 1.125rem; font-weight: 650; }
.lv-bench-top a { display: flex; align-items: center; min-height: 3rem; color: ${accent}; }
.lv-bench-title { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
.lv-bench #bench-said { font-size: 1.125rem; }
.lv-bench:not(.lv-bench-listing) #bench-said, .lv-bench #bench-said:empty { display: none; }
.lv-bench #bench-release { margin: .5rem 0 0; color: ${soft}; font-size: 1.125rem; }
.lv-bench #bench-release.lv-kept { color: ${ink}; padding-left: .6rem; }
.lv-bench-under { color: ${soft}; font-size: 1.125rem; margin: .6rem 0 .2rem; }
.lv-bench h2 { font-size: 1.375rem; line-height: 1.4; font-weight: 500; margin: .2rem 0 .8rem; padding: 0; border: 0; }
.lv-bench h2:focus { outline: none; }
.lv-bench p { margin: .5rem 0; }
.lv-bench-done { color: ${themedVerdicts.holds.ink}; }
.lv-bench button { min-height: 3rem; font-size: 1.125rem; }
.lv-bench-about { display: grid; grid-template-columns: auto 1fr; gap: .2rem 1rem; margin: 0 0 1rem; }
.lv-bench-about dt { color: ${soft}; font-size: 1.125rem; }
.lv-bench-about dd { margin: 0; font-weight: 650; overflow-wrap: anywhere; }
.lv-bench-measure { background: ${paper}; border: 1px solid ${line}; border-radius: .25rem; padding: .6rem .8rem; margin: 0 0 .8rem; }
.lv-bench-measure p { margin: .5rem 0; }
.lv-bench-measure label { display: block; font-weight: 650; }
.lv-bench-entry { display: flex; align-items: center; gap: .6rem; }
.lv-bench-entry input[type="text"] { min-height: 3.4rem; flex: 1; min-width: 0; font-size: 1.5rem; }
.lv-bench-tick { display: flex; gap: .8rem; align-items: center; min-height: 3.2rem; border-top: 1px solid ${line}; padding: .3rem 0; overflow-wrap: anywhere; }
.lv-bench-tick input { flex: none; width: 2rem; height: 2rem; }
.lv-bench-start { display: block; width: 100%; margin: 0 0 .6rem; text-align: left; }
.lv-bench-clock { display: flex; gap: .6rem; align-items: center; justify-content: space-between; margin: .4rem 0; padding: .3rem .6rem; border: 2px solid ${line}; border-radius: .25rem; background: ${paper}; font-variant-numeric: tabular-nums; }
.lv-bench-over { border-color: ${themedVerdicts.fails.ink}; background: ${themedVerdicts.fails.ground}; }
#bench-alarm:not(:empty) { border: 3px solid ${themedVerdicts.fails.ink}; background: ${themedVerdicts.fails.ground}; border-radius: .25rem; padding: .5rem .8rem; margin: .5rem 0; font-weight: 650; }
.lv-sheet { overflow-x: auto; background: ${colours.paper}; color: ${colours.ink}; border: 1px solid ${line}; border-radius: .25rem; margin: .8rem 0; padding: .4rem; }
.lv-sheet figure { margin: 0; }
.lv-sheet svg { display: block; width: 100%; height: auto; max-height: 60vh; }
.lv-bench-larger .lv-sheet svg { width: 60rem; max-height: none; }
.lv-bench-row { display: flex; flex-wrap: wrap; gap: .6rem; }
.lv-bench-list { list-style: none; margin: 1rem 0; padding: 0; }
.lv-bench-list button { display: flex; justify-content: space-between; gap: 1rem; width: 100%; text-align: left; border: 0; border-top: 1px solid ${line}; border-radius: 0; background: none; }
.lv-bench-list button span:last-child { flex: none; color: ${soft}; }
.lv-bench-foot { position: fixed; left: 0; right: 0; bottom: 0; display: grid; grid-template-columns: 1fr 1.4fr 1fr; gap: .5rem; padding: .5rem .8rem; background: ${ground}; border-top: 2px solid ${ink}; z-index: 4; }
.lv-bench-foot button { min-height: 4rem; font-size: 1.25rem; font-weight: 650; }
.lv-bench-foot [data-do="tick"] { background: ${ink}; color: ${paper}; }
.lv-bench-foot [data-do="tick"][aria-pressed="true"], .lv-bench-foot button:disabled { background: ${paper}; color: ${ink}; }
`;
