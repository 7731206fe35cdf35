/** What is written in another notation: equations as MathML, which a browser sets with its own fonts, and Markdown as HTML. */
import katex from "katex";
import MarkdownIt from "markdown-it";
import { escapeHtml, type Html, html, trusted } from "./html.js";

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

const reader = new MarkdownIt({ html: false, linkify: false, typographer: false });
reader.renderer.rules.image = (tokens, i) => escapeHtml(tokens[i]?.content ?? "");
reader.renderer.rules.table_open = () =>
  '<div class="cw-scroll" tabindex="0" role="group" aria-label="table"><table>';
reader.renderer.rules.table_close = () => "</table></div>";

/** Renders Markdown; a link of a scheme that could run a script stays text. */
export function renderMarkdown(text: string): Html {
  return html`<div class="cw-prose">${trusted(reader.render(text))}</div>`;
}
