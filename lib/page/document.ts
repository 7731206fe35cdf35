/** A whole HTML page. */
import { type Html, html } from "./html.js";

/** What a page is made of. */
export interface PageParts {
  readonly title: string;
  /** Content security policy: what the page may load and run. */
  readonly policy: string;
  /** Further elements of the head: styles, scripts. */
  readonly head: Html;
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
