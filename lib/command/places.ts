/** Where the book of a job stands, and where its notebooks are opened: no two jobs share either, and no package is written to. */
import { existsSync } from "node:fs";
import { constants, copyFile, mkdir, readdir } from "node:fs/promises";
import { basename, dirname, join, sep } from "node:path";
import { isInstalled, projectFolder } from "../book/index.js";
import { dataFolder, demoJob, type Job } from "../job/index.js";
import { notebookFiles } from "./notebooks.js";

/** Whose a job is: the checkout's in data/, the installed package's own, or a folder of the builder's. */
function ownerOf(folder: string): "checkout" | "package" | "builder" {
  if (isInstalled()) return folder.startsWith(projectFolder() + sep) ? "package" : "builder";
  return dirname(folder) === dataFolder() ? "checkout" : "builder";
}

/** Beside the folder of the job; in book/ for the project's own, and for the package's where one stands, apart. */
export function bookFolder({ folder, name }: Pick<Job, "folder" | "name">): string {
  const owner = ownerOf(folder);
  if (owner === "builder") return join(dirname(folder), "book", name);
  return owner === "checkout"
    ? join(projectFolder(), "book", name)
    : join(process.cwd(), "book", "of-casewright", name);
}

/** The notebooks of a job's book, in the order of the chapters. One beside the job takes the place of ours of its name. */
export async function notebooksOf({ folder }: Pick<Job, "folder">): Promise<readonly string[]> {
  const own = await notebookFiles(folder);
  const names = new Set(own.map((file) => basename(file)));
  return [...(await notebookFiles()).filter((file) => !names.has(basename(file))), ...own];
}

/** A folder to open in Jupyter. */
export interface OpenedNotebooks {
  /** The folder. */
  readonly folder: string;
  /** Where ours were copied to now; absent where nothing was. */
  readonly copied?: string;
}

/**
 * Makes the notebooks of a job ready to be opened and changed. A checkout's job opens the project's notebooks, or its
 * own where it has some. Any other gets copies of ours, in the folder notebooks/ of the job, or for a job of the package
 * where one stands; a copy that is there already stays as it is.
 */
export async function openedNotebooks(folder: string): Promise<OpenedNotebooks> {
  const owner = ownerOf(folder);
  if (owner === "checkout") {
    // The demo's chapter of its own stands among the others in the book.
    const isOwn = basename(folder) !== demoJob && (await notebookFiles(folder)).length > 0;
    return { folder: isOwn ? folder : join(projectFolder(), "notebooks") };
  }
  const copies =
    owner === "builder" ? join(folder, "notebooks") : join(process.cwd(), "notebooks", basename(folder));
  const ours = [...(await notebookFiles()), ...(owner === "package" ? await notebookFiles(folder) : [])];
  const copied = await copyNew(ours, copies);
  return { folder: owner === "builder" ? folder : copies, ...(copied > 0 && { copied: copies }) };
}

/** How many of the files were not there yet, and now are. */
async function copyNew(files: readonly string[], to: string): Promise<number> {
  await mkdir(to, { recursive: true });
  const there = new Set(await readdir(to));
  const missing = files.filter((file) => !there.has(basename(file)));
  for (const file of missing) await copyFile(file, join(to, basename(file)), constants.COPYFILE_EXCL);
  return missing.length;
}

/** A sentence where the place of a book is taken by a case, which a book would write over. */
export function takenPlace(bookPlace: string): string | undefined {
  return existsSync(join(bookPlace, "case.yaml"))
    ? `${bookPlace} is a case: its folder is where this book would stand; move one of the two`
    : undefined;
}
