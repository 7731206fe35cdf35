/** A tiny HTML builder that cannot forget to escape: what is put into a template is text unless it is itself Html. */

/** Markup that is already safe. Only the template below and `trusted` make it. */
export class Html {
  readonly #markup: string;

  constructor(markup: string) {
    this.#markup = markup;
  }

  toString(): string {
    return this.#markup;
  }
}

/** What may stand in a template: text and numbers are escaped, lists are joined, absent things leave nothing. */
export type HtmlPart = string | number | Html | false | undefined | readonly HtmlPart[];

const replacements: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Text as HTML shows it, safe between tags and inside a quoted attribute. */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (character) => replacements[character] ?? character);
}

/**
 * Builds markup; every value put in is escaped unless it is Html.
 *
 * @example String(html`<b>${"1 < 2"}</b>`) // <b>1 &lt; 2</b>
 */
export function html(template: TemplateStringsArray, ...parts: readonly HtmlPart[]): Html {
  const markup = template.map((piece, i) => piece + (i < parts.length ? partMarkup(parts[i]) : ""));
  return new Html(markup.join(""));
}

/** Vouches for markup made elsewhere, such as an equation's; never for text from a file or a cell. */
export function trusted(markup: string): Html {
  return new Html(markup);
}

/** JSON that may stand inside a script element: no character of it can end the element. */
export function scriptJson(value: unknown): Html {
  const escapes: Readonly<Record<string, string>> = {
    "<": "\\u003c",
    ">": "\\u003e",
    "&": "\\u0026",
    "\u2028": "\\u2028",
    "\u2029": "\\u2029",
  };
  return new Html(
    JSON.stringify(value).replace(/[<>&\u2028\u2029]/g, (character) => escapes[character] ?? character),
  );
}

function partMarkup(part: HtmlPart): string {
  if (part === undefined || part === false) return "";
  if (part instanceof Html) return part.toString();
  if (typeof part === "string") return escapeHtml(part);
  if (typeof part === "number") return String(part);
  return part.map(partMarkup).join("");
}

/** What a page is made of. */
export interface PageParts {
  /** The words of the browser's tab. */
  readonly title: string;
  /** Content security policy: what the page may load and run. */
  readonly policy: string;
  /** Further elements of the head: styles, scripts. */
  readonly head: Html;
  /** Everything that the reader sees. */
  readonly body: Html;
}

/** A square of ply with a corner bracket, so that no browser asks a server for one. */
const icon: Html = html`data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 16 16'%3E%3Crect width='16' height='16' rx='2' fill='%231d2429'/%3E%3Cpath d='M4 12V4h8' fill='none' stroke='%23f1e6d2' stroke-width='2.5'/%3E%3C/svg%3E`;

/** The page as text. */
export function pageDocument({ title, policy, head, body }: PageParts): string {
  return `<!doctype html>\n${html`<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${title}</title>
<link rel="icon" href="${icon}">
${head}
</head>
<body>
${body}
</body>
</html>
`}`;
}
