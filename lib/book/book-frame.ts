/** What surrounds the content of every page: head, navigation, the way to the next page. */
import { type Html, html, markupInUnits, pageDocument, trusted, type UnitSystem } from "../page/index.js";

/**
 * Only files of the book itself, nothing from a network, no script within a page. Styles within elements
 * are allowed since charts set them.
 */
const policy =
  "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; base-uri 'none'; form-action 'none'";

/** One page as the navigation lists it. */
export interface PageLink {
  /** File name with its ending. */
  readonly file: string;
  /** What the navigation calls it. */
  readonly title: string;
}

/** What is the same on all pages. */
export interface BookFrame {
  /** Title of the book. */
  readonly title: string;
  /** The job's name. */
  readonly job: string;
  /** The units of the case, where its pages can be read in others. */
  readonly units?: UnitSystem | undefined;
  /** Names as things are sold, which no change of units touches. */
  readonly soldNames?: readonly string[] | undefined;
  /** One page a notebook, in order. */
  readonly chapters: readonly PageLink[];
  /** Pages that stand beside the chapters: formulas, checks, a recipe. */
  readonly others: readonly PageLink[];
}

/** One page to be framed. */
export interface FramedPage extends PageLink {
  /** What stands between navigation and foot. */
  readonly content: Html;
}

/** The whole page as text. */
export function framedPage(frame: BookFrame, { file, title, content }: FramedPage): string {
  const withCharts = String(content).includes('class="cw-spec"');
  const scripts = [
    ...(withCharts ? ["vega.min.js", "vega-lite.min.js", "vega-embed.min.js"] : []),
    "book.js",
  ];
  return pageDocument({
    title: file === "index.html" ? title : `${title} - ${frame.title}`,
    policy,
    head: html`<link rel="stylesheet" href="assets/book.css">
${scripts.map((name) => html`<script defer src="assets/${name}"></script>\n`)}`,
    body: html`<a class="cw-skip" href="#content">To the content</a>
<header class="cw-head"><div><a href="index.html">${frame.title}</a><span>Job: ${frame.job}</span></div></header>
<div class="cw-frame">${sideNavigation(frame, file)}<main id="content"${readIn(frame)}>
${inUnitsOf(frame, content)}
${turnPage(frame, file)}
</main></div>`,
  });
}

/** What a page's script needs to show it in other units. */
function readIn({ units, soldNames = [] }: BookFrame): Html | undefined {
  return units && html` data-units="${units}" data-names="${JSON.stringify(soldNames)}"`;
}

/** Nothing on a page is in other units than the case's own, whatever a table of a trade's usual units has. */
function inUnitsOf({ units, soldNames = [] }: BookFrame, content: Html): Html {
  return units ? trusted(markupInUnits(String(content), units, soldNames)) : content;
}

function sideNavigation({ chapters, others }: BookFrame, here: string): Html {
  const item = ({ file, title }: PageLink): Html =>
    html`<li><a href="${file}"${file === here && html` aria-current="page"`}>${title}</a></li>`;
  return html`<nav class="cw-side" aria-label="Pages"><ol>${[{ file: "index.html", title: "Contents" }, ...chapters].map(item)}</ol>${
    others.length > 0 && html`<ul>${others.map(item)}</ul>`
  }</nav>`;
}

/** Links to the page before and the page after. */
function turnPage({ chapters, others }: BookFrame, here: string): Html {
  const pages = [{ file: "index.html", title: "Contents" }, ...chapters, ...others];
  const at = pages.findIndex(({ file }) => file === here);
  const link = (page: PageLink | undefined, word: string): Html | undefined =>
    page && html`<a href="${page.file}"><small>${word}</small>${page.title}</a>`;
  return html`<nav class="cw-turn" aria-label="Previous and next page">${link(pages[at - 1], "Before")}${link(pages[at + 1], "Next")}</nav>`;
}
