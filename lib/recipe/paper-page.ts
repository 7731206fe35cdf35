/** The frame of pages for paper: they load nothing and run nothing. */
import { type Html, html } from "../page/index.js";

/** A page for paper. */
export interface PaperPage {
  /** What the tab is called. */
  readonly title: string;
  /** All its styles. */
  readonly styles: Html;
  /** Its body, with the tags of it. */
  readonly body: Html;
}

/** The whole file of a page. */
export function paperPage({ title, styles, body }: PaperPage): string {
  return String(html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${title}</title>
<style>${styles}</style>
</head>
${body}
</html>
`);
}
