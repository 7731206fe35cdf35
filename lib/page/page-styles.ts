/** Style of a whole page, and of the views on it. */
import { colours } from "./colours.js";
import { viewStyles } from "./view-styles.js";

const { ink, soft, line, paper, ground, accent } = colours;

/** CSS of a page: readable at arm's length and at 360 px, sober in print. */
export const pageStyles: string = `
:root { color-scheme: light; }
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
