/** Builds the book: a folder of pages that needs nothing from a network, read from disk or from a server. */
import { copyFile, mkdir, mkdtemp, rename, rm, writeFile } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { host } from "#host";
import { type Html, html, pageStyles, type View, viewHtml } from "../page/index.js";
import type { CheckOutcome } from "../published-check.js";
import { type BookFrame, type FramedPage, framedPage } from "./book-frame.js";
import { bookScript, bookStyles } from "./book-styles.js";
import { type BookNotebook, chapterOf } from "./chapter.js";
import { checkPage, type FormulaDeclaration, formulaPage } from "./check-page.js";
import { contentsPage } from "./contents-page.js";
import { renderChapter } from "./render-chapter.js";

/** A page that comes from no notebook. */
interface ExtraPage {
  /** File name without its ending. */
  readonly name: string;
  /** Its heading, and its name in the navigation. */
  readonly title: string;
  /** What stands on it, in order. */
  readonly views: readonly View[];
}

/** A file that is handed out as it is, such as a list to print. */
export interface ExtraFile {
  /** With its ending. */
  readonly file: string;
  /** What the first page calls it. */
  readonly title: string;
  /** The whole file. */
  readonly text: string;
}

/** What a book is built from. */
export interface BookRequest {
  /** Title of the book. */
  readonly title: string;
  /** The job's name, as its folder is called. */
  readonly job: string;
  /** A sentence under the title. */
  readonly introduction?: string;
  /** What the book lacks, a sentence each. */
  readonly lacking?: readonly string[];
  /** Executed, in the order of the chapters. */
  readonly notebooks: readonly BookNotebook[];
  /** For the page of formulas; no page where there are none. */
  readonly formulas?: readonly FormulaDeclaration[];
  /** For the page of published checks; no page where there are none. */
  readonly checks?: readonly CheckOutcome[];
  /** Pages beside the chapters, in order. */
  readonly extraPages?: readonly ExtraPage[];
  /** Files beside the pages, in order. */
  readonly extraFiles?: readonly ExtraFile[];
  /** Folder of the book; replaced when the new book is complete. */
  readonly outDir: string;
}

/**
 * Builds the book and puts it in place of the one before.
 *
 * @throws RangeError when two pages share a name or a name cannot be a file's
 */
export async function buildBook(request: BookRequest): Promise<void> {
  const pages = bookPages(request);
  await swapFolder(request.outDir, async (folder) => {
    for (const [file, text] of pages) await writeFile(join(folder, file), text);
    await writeAssets(join(folder, "assets"));
  });
}

/** Every page's text by file name. */
export function bookPages(request: BookRequest): ReadonlyMap<string, string> {
  const chapters = request.notebooks.map(chapterOf);
  const chapterPages = chapters.map(
    (chapter): FramedPage => ({
      file: `${chapter.name}.html`,
      title: chapter.title,
      content: renderChapter(chapter),
    }),
  );
  const others = otherPages(request);
  const frame: BookFrame = { title: request.title, job: request.job, chapters: chapterPages, others };
  const contents: FramedPage = {
    file: "index.html",
    title: request.title,
    content: contentsPage(frame, chapters, request),
  };
  const pages = [contents, ...chapterPages, ...others];
  const { extraFiles = [] } = request;
  refuseBadNames([...pages, ...extraFiles].map(({ file }) => file));
  return new Map([
    ...pages.map((page) => [page.file, framedPage(frame, page)] as const),
    ...extraFiles.map(({ file, text }) => [file, text] as const),
  ]);
}

function otherPages({ extraPages = [], formulas = [], checks = [] }: BookRequest): FramedPage[] {
  const extra = extraPages.map(({ name, title, views }) => ({
    file: `${name}.html`,
    title,
    content: extraContent(title, views),
  }));
  return [
    ...extra,
    ...(formulas.length > 0
      ? [{ file: "formulas.html", title: "Formulas", content: formulaPage(formulas) }]
      : []),
    ...(checks.length > 0
      ? [{ file: "checks.html", title: "How the numbers are checked", content: checkPage(checks) }]
      : []),
  ];
}

function extraContent(title: string, views: readonly View[]): Html {
  return html`<h1>${title}</h1><div class="cw">${views.map(viewHtml)}</div>`;
}

/** @throws RangeError when two pages share a name or a name cannot be a file's */
function refuseBadNames(files: readonly string[]): void {
  const bad = files.find((file) => !/^[\w][\w.-]*$/.test(file));
  if (bad) throw new RangeError(`book: "${bad}" cannot be a page's file name`);
  const twice = files.find((file, i) => files.indexOf(file) !== i);
  if (twice) throw new RangeError(`book: two pages named "${twice}"`);
}

async function writeAssets(folder: string): Promise<void> {
  await mkdir(folder);
  await writeFile(join(folder, "book.css"), pageStyles + bookStyles);
  await writeFile(join(folder, "book.js"), bookScript);
  for (const { name, path } of host.charts.files()) await copyFile(path, join(folder, name));
}

/**
 * Fills a new folder and puts it in the place of an old one, so that a failure on the way leaves the old
 * one as it was.
 *
 * @throws whatever `fill` throws, after taking the unfinished folder away
 */
export async function swapFolder(folder: string, fill: (fresh: string) => Promise<void>): Promise<void> {
  await mkdir(dirname(folder), { recursive: true });
  const beside = await mkdtemp(join(dirname(folder), `.${basename(folder)}-`));
  const [fresh, old] = [join(beside, "new"), join(beside, "old")];
  try {
    await mkdir(fresh);
    await fill(fresh);
    const hadOld = await moved(folder, old);
    try {
      await rename(fresh, folder);
    } catch (error) {
      if (hadOld) await rename(old, folder);
      throw error;
    }
  } finally {
    await rm(beside, { recursive: true, force: true });
  }
}

/**
 * Whether there was something to move.
 *
 * @throws whatever the system says when it cannot be moved
 */
async function moved(from: string, to: string): Promise<boolean> {
  try {
    await rename(from, to);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return false;
    throw error;
  }
}
