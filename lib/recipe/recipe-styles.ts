/** How the recipe lies on paper: A4 or US letter, black on white, room for a pencil. */
export const recipeStyles: string = `
@page { margin: 15mm 14mm 17mm; @bottom-right { content: "page " counter(page); font: 9pt system-ui, sans-serif; } }
.rc { margin: 0 auto; padding: 1.2rem 1rem 3rem; max-width: 52rem; background: #fff; color: #000; }
.rc h1 { font-size: 2rem; line-height: 1.2; margin: 0; }
.rc .rc-kind { font-size: 1.1rem; margin: .2rem 0 1rem; }
.rc h2 { font-size: 1.5rem; line-height: 1.25; margin: 2.6rem 0 .8rem; padding-top: .5rem; border-top: 3px solid #000; }
.rc h3 { font-size: 1.15rem; margin: 1.6rem 0 .5rem; }
.rc nav ol { columns: 2; margin: 0; padding-left: 1.5rem; }
.rc nav a { color: inherit; display: inline-block; padding: .3rem 0; }
.rc .cw-sentence, .rc .cw-list ol, .rc .cw-list ul { max-width: none; }
.rc .cw-list li { margin: .45rem 0; }
.rc .cw-scroll table { width: 100%; }
.rc th, .rc td { padding: .4rem .5rem; }
.rc .rc-blanks td.rc-blank { border-bottom: 1px solid #000; min-width: 3.6rem; height: 2.2rem; }
.rc .rc-blanks td.rc-blank + td.rc-blank, .rc .rc-blanks td + td.rc-blank { border-left: 6px solid #fff; }
.rc .cw-drawing { max-width: none; }
.rc .cw-drawing svg { max-height: 36rem; }
@media print {
  .rc { padding: 0; max-width: none; font-size: 10pt; }
  .rc table { font-size: 9pt; }
  .rc h1 { font-size: 20pt; } .rc h2 { font-size: 15pt; } .rc h3 { font-size: 11.5pt; }
  .rc main > section { break-before: page; }
  .rc main > section:first-child { break-before: auto; }
  .rc h2 { margin-top: 0; }
  .rc h2, .rc h3, .rc figcaption { break-after: avoid; }
  .rc .cw-drawing svg { max-height: 120mm; }
  .rc li, .rc tr { break-inside: avoid; }
}
`;
