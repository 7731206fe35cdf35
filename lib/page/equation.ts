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

/** Equations set before, since a page uses the same symbols again and again. */
const setBefore = new Map<string, Html>();
/** So many are kept. */
const mostKept = 5000;

function mathml(tex: string, displayMode: boolean): Html {
  const key = `${displayMode} ${tex}`;
  const made = setBefore.get(key) ?? newMathml(tex, displayMode);
  if (setBefore.size < mostKept) setBefore.set(key, made);
  return made;
}

/** Of what KaTeX gives the MathML alone: the TeX that it rests on is not repeated on the page. */
function newMathml(tex: string, displayMode: boolean): Html {
  try {
    const made = katex.renderToString(tex, {
      output: "mathml",
      displayMode,
      trust: false,
      strict: "ignore",
      throwOnError: true,
      maxExpand: 200,
    });
    const bare = made
      .replace(/<annotation[^>]*>[\s\S]*?<\/annotation>/g, "")
      .replace(/<\/?semantics>/g, "")
      .replace(/^<span class="katex">([\s\S]*)<\/span>$/, "$1");
    return trusted(bare);
  } catch {
    return html`<code>${tex}</code>`;
  }
}
