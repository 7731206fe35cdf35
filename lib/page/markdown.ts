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

/**
 * Renders Markdown; a link of a scheme that could run a script stays text.
 *
 * @param under how many levels its headings go down, below a title that the page has
 */
export function renderMarkdown(text: string, under: 0 | 1 = 0): Html {
  return html`<div class="cw-prose">${bareMarkdown(text, under)}</div>`;
}

/** The same without a box of its own, for where none may stand, such as the line of a disclosure. */
export function bareMarkdown(text: string, under: 0 | 1): Html {
  kept ??= newReader();
  const markup = kept.render(text);
  const lower = (tag: string, level: string): string => `${tag}${Math.min(6, Number(level) + under)}`;
  return trusted(
    under > 0 ? markup.replace(/(<\/?h)([1-6])(?=>)/g, (_, tag, level) => lower(tag, level)) : markup,
  );
}
