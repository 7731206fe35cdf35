/** The style of the first page, the same in the book and in a live page. */
import { colours } from "../colours.js";
import { themed, themedVerdicts } from "../theme.js";

const { ink, soft, line, accent } = themed;

const topics = ["stiffness", "strength", "joints", "travel", "fit-out", "money"] as const;

/** Rows that a chosen filter leaves out. */
const filtered: string = [
  ...Object.keys(themedVerdicts).map((verdict) => ["verdict", verdict, "is"] as const),
  ...topics.map((topic) => ["topic", topic, "about"] as const),
]
  .map(
    ([name, value, is]) =>
      `.cw-asked:has(input[name="cw-${name}"][value="${value}"]:checked) tbody tr:not(.cw-${is}-${value}) { display: none; }`,
  )
  .join("\n");

/** CSS of the first page. */
export const firstPageStyles: string = `
.cw-first { display: grid; gap: 1rem 2rem; }
.cw-first h2, .cw-asked h2, .cw-chapters h2 { font-size: 1.1875rem; margin: 1rem 0 .4rem; padding: 0; border: 0; }
.cw-first-case > :first-child { background: ${colours.paper}; border: 1px solid ${line}; border-radius: .25rem; padding: .5rem; margin: 0 0 .8rem; }
.cw-first-case .cw-solids { max-height: 34rem; max-width: 100%; }
@media (min-width: 52rem) { .cw-first { grid-template-columns: minmax(15rem, 5fr) 6fr; } .cw-first-words > :first-child { margin-top: 0; } }
@media (max-width: 51.99rem) { .cw-first-case .cw-solids { max-height: 24rem; } }
.cw .cw-stamp { border: 2px solid; border-radius: .25rem; padding: .5rem .8rem; margin: 0 0 .8rem; }
.cw .cw-stamp b { letter-spacing: .04em; }
.cw .cw-stamp.cw-holds { color: ${themedVerdicts.holds.ink}; background: ${themedVerdicts.holds.ground}; }
.cw .cw-stamp.cw-fails { color: ${themedVerdicts.fails.ink}; background: ${themedVerdicts.fails.ground}; }
.cw .cw-facts { display: flex; flex-wrap: wrap; gap: .5rem 1.6rem; margin: 0 0 .8rem; }
.cw .cw-facts dt { font-size: .9375rem; color: ${soft}; }
.cw .cw-facts dd { margin: 0; font-weight: 650; font-size: 1.0625rem; }
.cw .cw-settle, .cw .cw-measure { margin: 0; padding-left: 1.4rem; }
.cw .cw-settle li, .cw .cw-measure li { margin: .35rem 0; line-height: 1.45; }
.cw .cw-settle a { color: ${ink}; text-decoration-color: ${accent}; font-weight: 650; }
.cw .cw-settle-verdict { font-weight: 700; }
${Object.entries(themedVerdicts)
  .map(([verdict, one]) => `.cw .cw-settle-verdict.cw-${verdict} { color: ${one.ink}; }`)
  .join("\n")}
.cw-chapters ol { list-style: none; margin: 0; padding: 0; }
.cw-chapters li { display: flex; flex-wrap: wrap; align-items: center; gap: .2rem 1rem; justify-content: space-between; border-top: 1px solid ${line}; padding: .3rem 0; margin: 0; }
.cw-chapters a { font-weight: 650; min-height: 2.5rem; display: inline-flex; align-items: center; }
.cw .cw-filter { border: 0; margin: .2rem 0; padding: 0; display: flex; flex-wrap: wrap; gap: .1rem 1.1rem; align-items: center; }
.cw .cw-filter legend { float: left; font-weight: 650; margin-right: 1rem; padding: 0; min-width: 4rem; }
.cw .cw-filter label { display: inline-flex; align-items: center; gap: .4rem; min-height: 2.5rem; }
.cw .cw-filter input { width: 1.15rem; height: 1.15rem; accent-color: ${accent}; }
.cw .cw-tier { border-top: 1px solid ${line}; }
.cw .cw-tier summary small { font-weight: 400; color: ${soft}; font-size: .9375rem; }
.cw .cw-tier .cw-verdict { white-space: nowrap; font-size: .9375rem; }
.cw .cw-tier table { width: 100%; }
${filtered}
`;
