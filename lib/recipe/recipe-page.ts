import { type Html, html, trusted, viewHtml, viewStyles } from "../page/index.js";
import type { BlanksBlock, Recipe, RecipeBlock } from "./recipe.js";
import { recipeStyles } from "./recipe-styles.js";

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
