/** The book's first page: every question with its answer, then all findings at a glance. */

import { byDanger } from "../findings/index.js";
import { type FindingView, type Html, html, tieUnits, verdictBadge } from "../page/index.js";
import type { BookFrame, PageLink } from "./book-frame.js";
import type { Chapter } from "./chapter.js";
import { counted } from "./check-page.js";

/** What the first page tells of a chapter. */
type ContentsEntry = Omit<Chapter, "notebook">;

/** What stands on the first page beside the chapters. */
interface FirstPage {
  /** A sentence under the title. */
  readonly introduction?: string;
  /** What the book lacks, a sentence each. */
  readonly lacking?: readonly string[];
  /** Files to link to, after the pages. */
  readonly extraFiles?: readonly PageLink[];
}

/** The content of the first page. */
export function contentsPage(
  frame: BookFrame,
  chapters: readonly ContentsEntry[],
  { introduction, lacking = [], extraFiles = [] }: FirstPage,
): Html {
  return html`<h1>${frame.title}</h1>${introduction !== undefined && html`<p>${introduction}</p>`}${lacking.map((words) => html`<p class="cw-failed">${words}</p>`)}
<ol class="cw-contents cw">${chapters.map(chapterEntry)}</ol>${findingsAtAGlance(chapters)}${otherPages([...frame.others, ...extraFiles])}`;
}

function chapterEntry({ name, title, question, answer, faults }: ContentsEntry): Html {
  return html`<li><h2><a href="${name}.html">${title}</a></h2>${
    question !== undefined && html`<p class="cw-question">${question}</p>`
  }${answer?.verdict && verdictBadge(answer.verdict)}${
    answer && html`<p class="cw-told">${tieUnits(answer.text)}</p>`
  }${faults.length > 0 && html`<p class="cw-failed">${counted(faults.length, "part")} of this chapter failed; the chapter shows what.</p>`}</li>`;
}

/** What is worst comes first. */
const order: readonly FindingView["verdict"][] = ["fails", "broken", "close", "unknown", "holds"];

/** For one, for many. */
const verbs: Readonly<Record<FindingView["verdict"], readonly [string, string]>> = {
  fails: ["does not hold", "do not hold"],
  close: ["is close", "are close"],
  broken: ["could not be computed", "could not be computed"],
  unknown: ["is not known yet", "are not known yet"],
  holds: ["holds", "hold"],
};

/** A finding and the page that shows it. */
interface PlacedFinding {
  /** Name of the page. */
  readonly name: string;
  /** The finding as it is drawn. */
  readonly finding: FindingView;
}

/** Each finding once, where it is first shown. */
function allFindings(chapters: readonly ContentsEntry[]): PlacedFinding[] {
  const found = new Map<string, PlacedFinding>();
  for (const { name, findings } of chapters) {
    for (const finding of findings) if (!found.has(finding.id)) found.set(finding.id, { name, finding });
  }
  const placed = new Map([...found.values()].map((one) => [one.finding, one]));
  return byDanger([...placed.keys()]).flatMap((finding) => placed.get(finding) ?? []);
}

function findingsAtAGlance(chapters: readonly ContentsEntry[]): Html {
  const all = allFindings(chapters);
  if (all.length === 0) return html``;
  const counts = order
    .map((verdict) => ({ verdict, count: all.filter(({ finding }) => finding.verdict === verdict).length }))
    .filter(({ count }) => count > 0)
    .map(({ verdict, count }) => `${count} ${verbs[verdict][count === 1 ? 0 : 1]}`);
  return html`<h2>Everything that was asked</h2><p>Of ${counted(all.length, "question")}, ${counts.join(", ")}.</p>
<div class="cw"><table class="cw-table cw-findings">
<thead><tr><th scope="col">Question</th><th scope="col">Verdict</th></tr></thead>
<tbody>${all.map(findingRow)}</tbody></table></div>`;
}

function findingRow({ name, finding }: PlacedFinding): Html {
  const { id, question, subject, verdict } = finding;
  return html`<tr><td><a href="${name}.html#${id}">${question}</a><small>${subject}</small></td><td>${verdictBadge(verdict)}</td></tr>`;
}

function otherPages(others: readonly PageLink[]): Html {
  if (others.length === 0) return html``;
  return html`<h2>Also in this book</h2><ul class="cw-pages">${others.map(
    ({ file, title }) => html`<li><a href="${file}">${title}</a></li>`,
  )}</ul>`;
}
