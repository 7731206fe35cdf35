/** The book's first page: the case at one look, the chapters a line each, everything that was asked. */
import { type Verdict, worstVerdict } from "../findings/index.js";
import {
  everythingAskedHtml,
  type FindingView,
  type FirstPage,
  type FirstPageLinks,
  firstLookHtml,
  type Html,
  html,
  sentencesOf,
  tieUnits,
  verdictBadge,
} from "../page/index.js";
import type { BookFrame, PageLink } from "./book-frame.js";
import type { Chapter } from "./chapter.js";
import { counted } from "./check-page.js";

/** What the first page tells of a chapter. */
type ContentsEntry = Omit<Chapter, "notebook">;

/** What stands on the first page beside the chapters. */
interface BookContents {
  /** A sentence under the title. */
  readonly introduction?: string;
  /** What the book lacks, a sentence each. */
  readonly lacking?: readonly string[];
  /** Files to link to, after the pages. */
  readonly extraFiles?: readonly PageLink[];
  /** The case at one look, from its findings; a book without it has its chapters alone. */
  readonly firstPage?: (findings: readonly FindingView[]) => FirstPage;
  /** The page on which the case can be changed, as a whole file; a book without it has none. */
  readonly livePage?: string;
}

/** The live page of a book. */
export const liveFileName = "live.html";

/** The content of the first page. */
export function contentsPage(
  frame: BookFrame,
  chapters: readonly ContentsEntry[],
  { introduction, lacking = [], extraFiles = [], firstPage, livePage }: BookContents,
): Html {
  const placed = allFindings(chapters);
  const links: FirstPageLinks = {
    finding: (id) => placed.get(id)?.address,
    ...(livePage === undefined ? {} : { change: liveFileName }),
  };
  const first = firstPage?.([...placed.values()].map(({ finding }) => finding));
  return html`<h1>${frame.title}</h1>${introduction !== undefined && html`<p>${introduction}</p>`}${lacking.map((words) => html`<p class="cw-failed">${words}</p>`)}
${first && firstLookHtml(first, links)}
<section class="cw cw-chapters" aria-label="Chapters"><h2>Chapters</h2><ol>${chapters.map(chapterEntry)}</ol></section>
${first && everythingAskedHtml(first, links)}${otherPages([...frame.others, ...extraFiles])}`;
}

/** An answer of more words than these does not fit a chapter's line. */
const mostTold = 16;

/** One line: where it leads, and how its questions stand; of one that judges nothing its answer, where it is short. */
function chapterEntry({ name, title, answer, findings, faults }: ContentsEntry): Html {
  const verdict = answer?.verdict ?? worstOf(findings);
  const [first = ""] = sentencesOf(answer?.text ?? "");
  const short = first !== "" && first.split(" ").length <= mostTold;
  const told = verdict
    ? verdictBadge(verdict)
    : short && html`<span class="cw-told">${tieUnits(first)}</span>`;
  const failed =
    faults.length > 0 && html`<span class="cw-failed">${counted(faults.length, "part")} failed</span>`;
  return html`<li><a href="${name}.html">${title}</a>${failed || told}</li>`;
}

function worstOf(findings: readonly FindingView[]): Verdict | undefined {
  return findings.length === 0 ? undefined : worstVerdict(findings.map(({ verdict }) => verdict));
}

/** A finding and where it is explained. */
interface PlacedFinding {
  /** Page and place. */
  readonly address: string;
  /** The finding as it is drawn. */
  readonly finding: FindingView;
}

/** Each finding once, where it is first shown, by its id. */
function allFindings(chapters: readonly ContentsEntry[]): ReadonlyMap<string, PlacedFinding> {
  const found = new Map<string, PlacedFinding>();
  for (const { name, findings } of chapters) {
    for (const finding of findings)
      if (!found.has(finding.id)) found.set(finding.id, { address: `${name}.html#${finding.id}`, finding });
  }
  return found;
}

function otherPages(others: readonly PageLink[]): Html {
  if (others.length === 0) return html``;
  return html`<h2>Also in this book</h2><ul class="cw-pages">${others.map(
    ({ file, title }) => html`<li><a href="${file}">${title}</a></li>`,
  )}</ul>`;
}
