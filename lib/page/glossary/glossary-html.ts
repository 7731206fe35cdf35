/** The page of words. */
import { type Html, html } from "../html.js";
import { termPlace } from "./link-terms.js";
import type { Term } from "./terms.js";

/** Every word with what it means, each at a place of its own that pages link to. */
export function glossaryHtml(title: string, terms: readonly Term[]): Html {
  return html`<h1>${title}</h1><div class="cw"><dl class="cw-words">${terms.map(
    ({ name, meaning }) => html`<div id="${termPlace(name)}"><dt>${name}</dt><dd>${meaning}</dd></div>`,
  )}</dl></div>`;
}
