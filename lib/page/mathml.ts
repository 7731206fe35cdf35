/** Equations as MathML, which a browser sets with its own fonts. */
import katex from "katex";
import { html } from "./html.js";

/** Equations set before, since a page uses the same symbols again and again. */
const setBefore = new Map<string, string>();
/** So many are kept. */
const mostKept = 5000;

/** Markup of an equation, on its own line or within one; the TeX itself where it cannot be read. */
export function mathmlOf(tex: string, isDisplayed: boolean): string {
  const key = `${isDisplayed} ${tex}`;
  const made = setBefore.get(key) ?? newMathml(tex, isDisplayed);
  if (setBefore.size < mostKept) setBefore.set(key, made);
  return made;
}

/** Of what KaTeX gives the MathML alone: the TeX that it rests on, and a name space that HTML has, are not repeated. */
function newMathml(tex: string, displayMode: boolean): string {
  try {
    const made = katex.renderToString(tex, {
      output: "mathml",
      displayMode,
      trust: false,
      strict: "ignore",
      throwOnError: true,
      maxExpand: 200,
    });
    return made
      .replace(/<annotation[^>]*>[\s\S]*?<\/annotation>/g, "")
      .replace(/<\/?semantics>/g, "")
      .replace(' xmlns="http://www.w3.org/1998/Math/MathML"', "")
      .replace(/^<span class="katex">([\s\S]*)<\/span>$/, "$1");
  } catch {
    return String(html`<code>${tex}</code>`);
  }
}
