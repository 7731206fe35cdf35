/** Links each word of the glossary at its first use on a page. */
import { escapeHtml } from "../html.js";
import type { Term } from "./terms.js";

/** Text within these is a heading, a control, a figure or a link already. */
const left = /^(a|h[1-6]|code|pre|svg|math|button|summary|script|style|select|option|label|table|figure|dt)$/;

/** A start tag, an end tag or a comment. */
const tags = /(<[^>]*>)/;

/** The place of a word on the page of the glossary. */
export function termPlace(name: string): string {
  return `word-${name.replace(/\W+/g, "-")}`;
}

/**
 * The same markup with a link from the first use of each word, in sight if it is used there, else in what is folded.
 *
 * @param markup of a page's content
 * @param file the page of the glossary
 */
export function linkTerms(markup: string, terms: readonly Term[], file: string): string {
  const waiting = new Map(
    terms.flatMap((term) => [term.name, ...(term.forms ?? [])].map((form) => [form.toLowerCase(), term])),
  );
  const inSight = linked(markup, waiting, file, false);
  return linked(inSight, waiting, file, true);
}

/** One walk over the text, of what is in sight or of what is folded; what is linked waits no longer. */
function linked(markup: string, waiting: Map<string, Term>, file: string, folded: boolean): string {
  let within = 0;
  let folds = 0;
  return markup
    .split(tags)
    .map((piece) => {
      const [, end, name = ""] = /^<(\/?)([a-z][a-z0-9]*)/i.exec(piece) ?? [];
      if (name !== "" && !piece.endsWith("/>")) {
        if (left.test(name)) within += end ? -1 : 1;
        if (name === "details") folds += end ? -1 : 1;
      }
      const isText = !piece.startsWith("<") && within === 0 && folds > 0 === folded;
      return isText ? linkedText(piece, waiting, file) : piece;
    })
    .join("");
}

function linkedText(text: string, waiting: Map<string, Term>, file: string): string {
  if (waiting.size === 0) return text;
  const longestFirst = [...waiting.keys()].sort((a, b) => b.length - a.length);
  const words = new RegExp(`(?<![\\w.-])(?:${longestFirst.join("|")})(?![\\w-]|\\.csv)`, "gi");
  return text.replace(words, (found) => {
    const term = waiting.get(found.toLowerCase());
    if (!term) return found;
    for (const form of [term.name, ...(term.forms ?? [])]) waiting.delete(form.toLowerCase());
    return `<a class="cw-term" href="${file}#${termPlace(term.name)}" title="${escapeHtml(term.meaning)}">${found}</a>`;
  });
}
