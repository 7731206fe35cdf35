/** Equations on a page. */
import { mathmlOf } from "#mathml";
import { type Html, html, trusted } from "./html.js";

/** An equation on its own line; the TeX itself where it cannot be read. */
export function displayEquation(tex: string): Html {
  return html`<div class="cw-equation" tabindex="0" role="group" aria-label="equation">${trusted(mathmlOf(tex, true))}</div>`;
}

/** A symbol within a line. */
export function inlineSymbol(tex: string): Html {
  return trusted(mathmlOf(tex, false));
}
