/** Builds the book: a folder of pages that needs nothing from a network, read from disk or from a server. */
import { copyFile, mkdir, mkdtemp, readdir, readFile, rename, rm, stat, writeFile } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { host } from "#host";
import {
  type FindingView,
  type FirstPage,
  glossaryHtml,
  type Html,
  html,
  linkTerms,
  pageStyles,
  type Term,
  trusted,
  type UnitSystem,
  type View,
  viewsHtml,
} from "../page/index.js";
import type { CheckOutcome } from "../published-check.js";
import { type BookFrame, type FramedPage, framedPage } from "./book-frame.js";
import { bookScript, bookStyles } from "./book-styles.js";
import { type BookNotebook, chapterOf } from "./chapter.js";
import { checkPage, type FormulaDeclaration, formulaPage } from "./check-page.js";
import { contentsPage, liveFileName } from "./contents-page.js";
import { renderChapter } from "./render-chapter.js";
import { runs } from "./running-process.js";

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

/** A folder of files that are handed out as they are, with a page of its own that lists them. */
export interface ExtraFolder {
  /** Its name; the first page leads to its `index.html`. */
  readonly folder: string;
  /** What the first page calls it. */
  readonly title: string;
  /** Its files, `index.html` among them. */
  readonly files: readonly { readonly file: string; readonly content: string | Uint8Array }[];
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
  /** The case at one look, from the findings that the chapters show. */
  readonly firstPage?: (findings: readonly FindingView[]) => FirstPage;
  /** The units of the case, in which all pages are written and from which they can be switched. */
  readonly units?: UnitSystem;
  /** Names as things are sold, which no change of units touches. */
  readonly soldNames?: readonly string[];
  /** Executed, in the order of the chapters. */
  readonly notebooks: readonly BookNotebook[];
  /** For the page of words, to which each chapter links a word's first use; no page where there are none. */
  readonly glossary?: readonly Term[];
  /** For the page of formulas; no page where there are none. */
  readonly formulas?: readonly FormulaDeclaration[];
  /** For the page of published checks; no page where there are none. */
  readonly checks?: readonly CheckOutcome[];
  /** Pages beside the chapters, in order. */
  readonly extraPages?: readonly ExtraPage[];
  /** Files beside the pages, in order. */
  readonly extraFiles?: readonly ExtraFile[];
  /** Folders beside the pages, in order. */
  readonly extraFolders?: readonly ExtraFolder[];
  /** Folder of the book; replaced when the new book is complete. */
  readonly outDir: string;
  /** The page on which the case can be changed, as a whole file; a book without it has none. */
  readonly livePage?: string;
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
    for (const extra of request.extraFolders ?? []) await writeExtraFolder(folder, extra);
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
      content: trusted(linkTerms(String(renderChapter(chapter)), request.glossary ?? [], glossaryFile)),
    }),
  );
  const others = otherPages(request);
  const { title, job, units, soldNames } = request;
  const frame: BookFrame = { title, job, units, soldNames, chapters: chapterPages, others };
  const contents: FramedPage = {
    file: "index.html",
    title: request.title,
    content: contentsPage(frame, chapters, { ...request, extraFiles: linksOf(request) }),
  };
  const pages = [contents, ...chapterPages, ...others];
  const { extraFiles = [], extraFolders = [], livePage } = request;
  const live = livePage === undefined ? [] : [{ file: liveFileName, text: livePage }];
  refuseBadNames([
    ...[...pages, ...extraFiles, ...live].map(({ file }) => file),
    ...extraFolders.map(({ folder }) => folder),
  ]);
  for (const { files } of extraFolders) refuseBadNames(files.map(({ file }) => file));
  return new Map([
    ...pages.map((page) => [page.file, framedPage(frame, page)] as const),
    ...[...extraFiles, ...live].map(({ file, text }) => [file, text] as const),
  ]);
}

/** The page of words. */
const glossaryFile = "glossary.html";
const glossaryTitle = "Words on these pages";

function otherPages({
  extraPages = [],
  glossary = [],
  formulas = [],
  checks = [],
}: BookRequest): FramedPage[] {
  const extra = extraPages.map(({ name, title, views }) => ({
    file: `${name}.html`,
    title,
    content: extraContent(title, views),
  }));
  return [
    ...extra,
    ...(glossary.length > 0
      ? [{ file: glossaryFile, title: glossaryTitle, content: glossaryHtml(glossaryTitle, glossary) }]
      : []),
    ...(formulas.length > 0
      ? [{ file: "formulas.html", title: "Formulas", content: formulaPage(formulas) }]
      : []),
    ...(checks.length > 0
      ? [{ file: "checks.html", title: "How the numbers are checked", content: checkPage(checks) }]
      : []),
  ];
}

function extraContent(title: string, views: readonly View[]): Html {
  return html`<h1>${title}</h1><div class="cw">${viewsHtml(views)}</div>`;
}

/** @throws RangeError when two pages share a name or a name cannot be a file's */
function refuseBadNames(files: readonly string[]): void {
  const bad = files.find((file) => !/^[\w][\w.-]*$/.test(file));
  if (bad) throw new RangeError(`book: "${bad}" cannot be a page's file name`);
  const twice = files.find((file, i) => files.indexOf(file) !== i);
  if (twice) throw new RangeError(`book: two pages named "${twice}"`);
}

/** What the first page leads to beside the pages. */
function linksOf({ extraFiles = [], extraFolders = [] }: BookRequest) {
  return [
    ...extraFiles,
    ...extraFolders.map(({ folder, title }) => ({ file: `${folder}/index.html`, title })),
  ];
}

async function writeExtraFolder(book: string, { folder, files }: ExtraFolder): Promise<void> {
  await mkdir(join(book, folder));
  for (const { file, content } of files) await writeFile(join(book, folder, file), content);
}

async function writeAssets(folder: string): Promise<void> {
  await mkdir(folder);
  await writeFile(join(folder, "book.css"), pageStyles + bookStyles);
  await writeFile(join(folder, "book.js"), bookScript);
  for (const { name, path } of host.charts.files()) await copyFile(path, join(folder, name));
}

/**
 * Fills a new folder and puts it in the place of an old one, so that a failure on the way leaves the old
 * one as it was. What an earlier swap left when it was killed is put back or cleared first.
 *
 * @throws whatever `fill` throws, after taking the unfinished folder away
 */
export async function swapFolder(folder: string, fill: (fresh: string) => Promise<void>): Promise<void> {
  await mkdir(dirname(folder), { recursive: true });
  await mendSwap(folder);
  const beside = await mkdtemp(besideOf(folder));
  const [fresh, old] = [join(beside, "new"), join(beside, "old")];
  try {
    await writeFile(join(beside, ownerFile), String(process.pid));
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

/** Names the process that fills a folder beside the one in use. */
const ownerFile = "process";

/** How the names of folders begin that are filled beside one in use. */
function besideOf(folder: string): string {
  return join(dirname(folder), `.${basename(folder)}-`);
}

/**
 * Mends what swaps of a folder left when they were killed: a last good folder that was already moved aside
 * comes back when its place is empty, and all else goes. Swaps that still run are left alone.
 *
 * @throws whatever the system says when a folder cannot be moved
 */
export async function mendSwap(folder: string): Promise<void> {
  const start = basename(besideOf(folder));
  const names = await readdir(dirname(folder)).catch((): string[] => []);
  // Six random characters follow in the name of such a folder.
  for (const name of names.filter((one) => one.startsWith(start) && one.length === start.length + 6)) {
    const beside = join(dirname(folder), name);
    const owner = await readFile(join(beside, ownerFile), "utf8").catch(() => undefined);
    if (owner === undefined ? await isYoung(beside) : runs(Number(owner))) continue;
    if (!(await exists(folder))) await moved(join(beside, "old"), folder);
    await rm(beside, { recursive: true, force: true });
  }
}

async function exists(path: string): Promise<boolean> {
  return (await stat(path).catch(() => undefined)) !== undefined;
}

/** Whether a folder without an owner was made within the last minute: its owner may be about to sign it. */
async function isYoung(path: string): Promise<boolean> {
  const made = await stat(path).catch(() => undefined);
  return made !== undefined && Date.now() - made.mtimeMs < 60_000;
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
