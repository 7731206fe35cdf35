/** Markdown as HTML. Raw HTML shows as text; a picture shows as its description, since a book loads nothing. */
import MarkdownIt from "markdown-it";
import { escapeHtml, type Html, html, trusted } from "./html.js";

const reader = new MarkdownIt({ html: false, linkify: false, typographer: false });
reader.renderer.rules.image = (tokens, i) => escapeHtml(tokens[i]?.content ?? "");
reader.renderer.rules.table_open = () =>
  '<div class="cw-scroll" tabindex="0" role="group" aria-label="table"><table>';
reader.renderer.rules.table_close = () => "</table></div>";

/** Renders Markdown; a link of a scheme that could run a script stays text. */
export function renderMarkdown(text: string): Html {
  return html`<div class="cw-prose">${trusted(reader.render(text))}</div>`;
}
