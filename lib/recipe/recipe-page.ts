/** The recipe as a page for paper: A4 or US letter, black on white, with room for a pencil. */
import { type Html, html, trusted, viewHtml, viewStyles } from "../page/index.js";
import type { BlanksBlock, Recipe, RecipeBlock } from "./recipe.js";

/** The recipe as one printable HTML page that loads nothing and runs nothing. */
export function recipePage({ title, invented, sections }: Recipe): string {
  const page = html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${title}: recipe</title>
<style>${trusted(viewStyles)}${trusted(recipeStyles)}</style>
</head>
<body class="cw rc">
<header><h1>${title}</h1><p class="rc-kind">Recipe${invented && ". An invented example."}</p>
<nav aria-label="Sections"><ol>${sections.map(({ title: name }, i) => html`<li><a href="#s${i + 1}">${name}</a></li>`)}</ol></nav></header>
<main>${sections.map(
    ({ title: name, newPage, blocks }, i) =>
      html`<section id="s${i + 1}"${newPage && html` class="rc-new-page"`}><h2>${i + 1}. ${name}</h2>${blocks.map(blockHtml)}</section>`,
  )}</main>
</body>
</html>
`;
  return String(page);
}

function blockHtml(block: RecipeBlock): Html {
  switch (block.kind) {
    case "group":
      return html`<div class="rc-group"><h3>${block.title}</h3>${block.blocks.map(blockHtml)}</div>`;
    case "blanks":
      return blanksHtml(block);
    default:
      return viewHtml(block);
  }
}

function blanksHtml({ columns, rows, blanks, room }: BlanksBlock): Html {
  const head = columns.map(({ heading, align }) => html`<th scope="col" class="cw-${align}">${heading}</th>`);
  const empty = blanks.map(() => html`<td class="rc-blank"></td>`);
  const body = rows.map(
    (row) =>
      html`<tr>${columns.map(({ align }, i) => html`<td class="cw-${align}">${row[i] ?? ""}</td>`)}${empty}</tr>`,
  );
  return html`<div class="cw-scroll" tabindex="0" role="group" aria-label="to fill in"><table class="cw-table rc-blanks rc-${room}">
<thead><tr>${head}${blanks.map((name) => html`<th scope="col" class="rc-blank">${name}</th>`)}</tr></thead><tbody>${body}</tbody></table></div>`;
}

/** How the recipe lies on paper: A4 or US letter, black on white, room for a pencil. */
const recipeStyles: string = `
@page { margin: 12mm 12mm 14mm; @bottom-right { content: "page " counter(page); font: 9pt system-ui, sans-serif; } }
.rc { margin: 0 auto; padding: 1.2rem 1rem 3rem; max-width: 56rem; background: #fff; color: #000; }
.rc h1 { font-size: 2rem; line-height: 1.2; margin: 0; }
.rc .rc-kind { font-size: 1.1rem; margin: .2rem 0 1rem; }
.rc h2 { font-size: 1.5rem; line-height: 1.25; margin: 2.6rem 0 .8rem; padding-top: .5rem; border-top: 3px solid #000; }
.rc h3 { font-size: 1.2rem; margin: 1.8rem 0 .5rem; }
.rc nav ol { columns: 2; margin: 0; padding-left: 1.5rem; }
.rc nav li { break-inside: avoid; }
.rc nav a { color: inherit; display: block; padding: .3rem 0; }
.rc .cw-sentence, .rc .cw-list ol, .rc .cw-list ul { max-width: none; }
.rc .cw-list ol { padding-left: 2.1em; }
.rc .cw-list li { margin: .45rem 0; }
.rc .cw-list-title { font-size: 1.1rem; margin-top: 1.2rem; }
.rc .cw-scroll table { width: 100%; }
.rc th, .rc td { padding: .4rem .5rem; }
.rc .rc-blanks td { vertical-align: bottom; }
.rc .rc-blanks .rc-blank { min-width: 4rem; height: 2.2rem; border-left: 8px solid #fff; }
.rc .rc-words .rc-blank { min-width: 7rem; }
.rc .rc-blanks td.rc-blank { border-bottom: 1px solid #000; }
.rc .cw-drawing, .rc figcaption { max-width: none; color: #000; }
.rc .cw-drawing svg { max-height: 36rem; }
.rc .rc-group .cw-figure-title { display: none; }
.rc .rc-group .cw-figure { margin-top: .4rem; }
@media print {
  html { font-size: 9pt; }
  .rc { padding: 0; max-width: none; font-size: 9pt; line-height: 1.35; }
  .rc table { font-size: 8pt; line-height: 1.25; }
  .rc th, .rc td { padding: 1.5pt 3pt; }
  .rc h1 { font-size: 20pt; }
  .rc h2 { font-size: 15pt; margin-top: 0; }
  .rc h3 { font-size: 12pt; margin-top: 1.2rem; }
  .rc nav { margin-bottom: 1.5rem; }
  .rc .cw-scroll { margin: .5rem 0; }
  .rc .cw-list li { margin: .25rem 0; }
  .rc .cw-finding { padding: .5rem .8rem; margin: .6rem 0; }
  .rc .cw-finding h3 { font-size: 11pt; margin: 0 0 .3rem; }
  .rc .cw-finding .cw-answer-text { font-size: 10.5pt; margin: .3rem 0; }
  .rc .cw-finding .cw-amounts, .rc .cw-finding .cw-ratio { margin: .2rem 0; }
  .rc .cw-finding .cw-amounts dd { font-size: 10pt; }
  .rc .cw-finding .cw-bar { max-width: 70mm; }
  .rc .cw-cautions { padding: .4rem .8rem; margin: .5rem 0; }
  .rc .cw-figure { margin: .6rem 0; }
  .rc figcaption { font-size: 9.5pt; }
  .rc .rc-blanks .rc-blank { min-width: 17mm; height: 6.6mm; }
  .rc .rc-words .rc-blank { min-width: 28mm; }
  .rc main > section + .rc-new-page { break-before: page; }
  .rc main > section { margin-bottom: 2rem; }
  .rc .rc-group:has(svg) { break-inside: avoid; }
  .rc h2, .rc h3, .rc caption, .rc thead, .rc figcaption, .rc .rc-group > .cw-sentence { break-after: avoid; }
  .rc li, .rc tr { break-inside: avoid; }
  .rc .cw-drawing svg { max-height: 78mm; }
}
`;
