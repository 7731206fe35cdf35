/** The recipe as a page for paper: A4 or US letter, black on white, with room for a pencil. */
import { alignedTo, darkStyles, type Html, html, plainViewHtml, trusted, viewStyles } from "../page/index.js";
import { paperPage } from "./paper-page.js";
import type { BlanksBlock, Recipe, RecipeBlock } from "./recipe.js";

/** The recipe as one printable HTML page that loads nothing and runs nothing. */
export function recipePage({ title, invented, stamp, sections }: Recipe): string {
  return paperPage({
    title: `${title}: recipe`,
    styles: html`${trusted(viewStyles)}${trusted(darkStyles)}${trusted(recipeStyles)}${trusted(footStyle(stamp))}`,
    body: html`<body class="cw rc">
<header><h1>${title}</h1><p class="rc-kind">Recipe${invented && ". An invented example."}</p>
<nav aria-label="Sections"><ol>${sections.map(({ title: name }, i) => html`<li><a href="#s${i + 1}">${name}</a></li>`)}</ol></nav></header>
<main>${sections.map(
      ({ title: name, newPage, blocks }, i) =>
        html`<section id="s${i + 1}"${newPage && html` class="rc-new-page"`}><h2>${i + 1}. ${name}</h2>${blocks.map(blockHtml)}</section>`,
    )}</main>
</body>`,
  });
}

/** The stamp at the foot of every printed page. */
function footStyle(stamp: string): string {
  const words = stamp.replace(/[^\w .,:;-]/g, "");
  return `@page { @bottom-left { content: "${words}"; font: 700 9pt Arial, sans-serif; } }`;
}

function blockHtml(block: RecipeBlock): Html {
  switch (block.kind) {
    case "group":
      return html`<div class="rc-group${block.newPage && " rc-new-page"}${block.pictureBeside && " rc-stage"}"><h3>${block.title}</h3>${block.blocks.map(blockHtml)}</div>`;
    case "blanks":
      return blanksHtml(block);
    case "checklist":
      return html`<div class="rc-checklist"><p class="cw-list-title">${block.title}</p><ul>${block.items.map((item) => html`<li>${item}</li>`)}</ul></div>`;
    default:
      return plainViewHtml(block);
  }
}

function blanksHtml({ columns, rows, blanks, room }: BlanksBlock): Html {
  const head = columns.map(({ heading, align }) => html`<th scope="col"${alignedTo(align)}>${heading}</th>`);
  const empty = blanks.map(() => html`<td class="rc-blank"></td>`);
  const body = rows.map(
    (row) =>
      html`<tr>${columns.map(({ align }, i) => html`<td${alignedTo(align)}>${row[i] ?? ""}</td>`)}${empty}</tr>`,
  );
  return html`<div class="cw-scroll" tabindex="0" role="group" aria-label="to fill in"><table class="cw-table rc-blanks rc-${room}">
<thead><tr>${head}${blanks.map((name) => html`<th scope="col" class="rc-blank">${name}</th>`)}</tr></thead><tbody>${body}</tbody></table></div>`;
}

/** Black on white, but for a screen in the dark. */
const [ink, paper] = ["var(--cw-ink, #000)", "var(--cw-paper, #fff)"];

/** How the recipe lies on paper: A4 or US letter, black on white, room for a pencil. */
const recipeStyles: string = `
@page { margin: 10mm 11mm 13mm; @bottom-right { content: "page " counter(page); font: 9pt Arial, sans-serif; } }
.rc { margin: 0 auto; padding: 1.2rem 1rem 3rem; max-width: 56rem; background: ${paper}; color: ${ink}; }
.rc h1 { font-size: 2rem; line-height: 1.2; margin: 0; }
.rc .rc-kind { font-size: 1.1rem; margin: .2rem 0 1rem; }
.rc h2 { font-size: 1.5rem; line-height: 1.25; margin: 2.6rem 0 .8rem; padding-top: .5rem; border-top: 3px solid ${ink}; }
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
.rc .rc-blanks .rc-blank { min-width: 4rem; height: 2.2rem; border-left: 8px solid ${paper}; }
.rc .rc-words .rc-blank { min-width: 7rem; }
.rc .rc-blanks td.rc-blank { border-bottom: 1px solid ${ink}; }
.rc .cw-drawing, .rc figcaption { max-width: none; }
.rc .cw-drawing { color: #000; }
.rc figcaption { color: ${ink}; }
.rc .cw-drawing svg { max-height: 36rem; }
.rc .cw-drawing .cw-drawing-printed svg { max-height: none; }
.rc .rc-checklist ul { columns: 2 18rem; column-gap: 1.5rem; margin: .3rem 0 1rem; padding: 0; list-style: none; }
.rc .rc-checklist li { break-inside: avoid; margin: .15rem 0; padding-left: 1.4em; text-indent: -1.4em; }
.rc .rc-checklist li::before { content: "☐"; display: inline-block; width: 1.4em; text-indent: 0; }
.rc .rc-stage > .cw-figure { float: left; width: 47%; margin: 0 1rem .5rem 0; }
.rc .rc-stage > .cw-list { overflow: hidden; }
.rc .rc-stage > .rc-group, .rc .rc-stage, .rc .rc-group, .rc section, .rc h2 { clear: both; }
.rc .rc-stage::after { content: ""; display: block; clear: both; }
.rc .rc-group .cw-figure-title, .rc .rc-group figcaption:has(span:last-child:empty) { display: none; }
.rc .rc-group .cw-figure { margin-top: .4rem; }
@media print {
  html { font-size: 9pt; }
  .rc { font-family: Arial, "Liberation Sans", Helvetica, sans-serif; padding: 0; max-width: none; font-size: 9pt; line-height: 1.25; }
  .rc table { font-size: 9pt; line-height: 1.15; }
  .rc th, .rc td { padding: 1pt 3pt; }
  .rc h1 { font-size: 20pt; }
  .rc h2 { font-size: 15pt; margin: 0 0 .4rem; padding-top: .3rem; }
  .rc h3 { font-size: 12pt; margin: .5rem 0 .2rem; }
  .rc nav { margin-bottom: 1.5rem; }
  .rc .cw-scroll { margin: .2rem 0; }
  .rc .rc-stage > .cw-scroll { overflow: hidden; }
  .rc .cw-list li { margin: .15rem 0; }
  .rc .cw-list ul, .rc .cw-list ol { margin: .2rem 0 .4rem; }
  .rc .cw-list-title { margin: .4rem 0 .1rem; }
  .rc .cw-sentence { margin: .3rem 0; }
  .rc .rc-checklist ul { margin: .1rem 0 .4rem; }
  .rc .cw-finding { padding: .5rem .8rem; margin: .6rem 0; }
  .rc .cw-finding h3 { font-size: 11pt; margin: 0 0 .3rem; }
  .rc .cw-finding .cw-answer-text { font-size: 10.5pt; margin: .3rem 0; }
  .rc .cw-finding .cw-amounts, .rc .cw-finding .cw-ratio { margin: .2rem 0; }
  .rc .cw-finding .cw-amounts dd { font-size: 10pt; }
  .rc .cw-finding .cw-bar { max-width: 70mm; }
  .rc .cw-cautions { break-inside: auto; padding: .3rem .8rem; margin: .4rem 0; }
  .rc .cw-label { font-size: 9pt; }
  .rc .cw-cautions li { margin: .1rem 0; }
  .rc .cw-figure, .rc .rc-group .cw-figure { margin: .2rem 0; }
  .rc figcaption { font-size: 9pt; }
  .rc .rc-blanks .rc-blank { min-width: 14mm; height: 5mm; }
  .rc .rc-figure td:not(.rc-blank) { white-space: nowrap; }
  .rc .rc-figure td:first-child { white-space: normal; }
  .rc .rc-words .rc-blank { min-width: 28mm; }
  .rc main > section + .rc-new-page, .rc .rc-group.rc-new-page { break-before: page; }
  .rc main > section { margin-bottom: .6rem; }
  .rc .rc-group:has(svg) { break-inside: avoid; }
  .rc h2, .rc h3, .rc caption, .rc thead, .rc figcaption, .rc .rc-group > .cw-sentence { break-after: avoid; }
  .rc li, .rc tr { break-inside: avoid; }
  .rc .cw-drawing svg { max-height: 58mm; }
  .rc .cw-drawing .cw-drawing-printed svg { max-height: none; }
  .rc .cw-picture-figure svg { display: block; max-height: 44mm; }
  .rc section:first-of-type .cw-picture-figure svg { max-width: none; max-height: 107mm; }
}
`;
