/** Markdown as HTML. Apart from all else that is drawn, so that a bundle without prose of notebooks has no reader of it. */
import MarkdownIt from "markdown-it";
import { escapeHtml, type Html, html, trusted } from "./html.js";

function newReader(): ReturnType<typeof MarkdownIt> {
  const reader = MarkdownIt({ html: false, linkify: false, typographer: false });
  const { rules } = reader.renderer;
  rules.image = (tokens, i) => escapeHtml(tokens[i]?.content ?? "");
  rules.table_open = () => '<div class="cw-scroll" tabindex="0" role="group" aria-label="table"><table>';
  rules.table_close = () => "</table></div>";
  return reader;
}

let kept: ReturnType<typeof newReader> | undefined;

/** Renders Markdown; a link of a scheme that could run a script stays text. */
export function renderMarkdown(text: string): Html {
  kept ??= newReader();
  return html`<div class="cw-prose">${trusted(kept.render(text))}</div>`;
}
