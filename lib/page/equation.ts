/** Equations as MathML, which a browser sets with its own fonts. */
import katex from "katex";
import { type Html, html, trusted } from "./html.js";

/** An equation on its own line; the TeX itself where it cannot be read. */
export function displayEquation(tex: string): Html {
  return html`<div class="cw-equation" tabindex="0" role="group" aria-label="equation">${mathml(tex, true)}</div>`;
}

/** A symbol within a line. */
export function inlineSymbol(tex: string): Html {
  return mathml(tex, false);
}

function mathml(tex: string, displayMode: boolean): Html {
  try {
    return trusted(
      katex.renderToString(tex, {
        output: "mathml",
        displayMode,
        trust: false,
        strict: "ignore",
        throwOnError: true,
        maxExpand: 200,
      }),
    );
  } catch {
    return html`<code>${tex}</code>`;
  }
}
