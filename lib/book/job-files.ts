/** The files of a job's folder as the live page reads and saves them: its own files alone, and none that changed meanwhile. */
import { randomUUID } from "node:crypto";
import { mkdir, readdir, realpath, rename, rm, stat, writeFile } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { caseFile, type Texts, tableFiles } from "../design/index.js";
import { host } from "../host/node.js";

/** The files that a job may have. */
const ownFiles: readonly string[] = [caseFile, ...Object.values(tableFiles)];

/** What came of saving. */
export type Saved =
  | {
      /** Every file is written, or stood there already. */
      readonly kind: "saved";
      /** Files that lie in the folder and are not among those saved; nobody takes a file away. */
      readonly left: readonly string[];
    }
  | {
      /** Files changed in the folder since they were last read: nothing is written. */
      readonly kind: "changed";
      /** What the folder says now, by name. */
      readonly texts: Texts;
    }
  | {
      /** Nothing is written. */
      readonly kind: "refused";
      /** Why, in a sentence. */
      readonly words: string;
    };

/** One folder's files. */
export class JobFiles {
  readonly #folder: string;
  #last: Promise<unknown> = Promise.resolve();

  constructor(folder: string) {
    this.#folder = folder;
  }

  /** What the folder says now, by name. */
  read(): Texts {
    return host.files.read(this.#folder, ownFiles)?.texts ?? {};
  }

  /**
   * Writes what differs, unless a file changed in the folder since it was last read. One save follows another.
   *
   * @param known what the folder said when it was last read
   * @param wanted what it is to say
   */
  save(known: Texts, wanted: Texts): Promise<Saved> {
    const saved = this.#last.then(() => this.#save(known, wanted));
    this.#last = saved.catch(() => undefined);
    return saved;
  }

  async #save(known: Texts, wanted: Texts): Promise<Saved> {
    const stranger = Object.keys(wanted).find((name) => !ownFiles.includes(name));
    if (stranger !== undefined) {
      return { kind: "refused", words: `A job has no file "${stranger}", so nothing was saved.` };
    }
    const there = host.files.read(this.#folder, ownFiles);
    const unreadable = Object.entries(there?.faults ?? {})[0];
    if (!there || unreadable) {
      const words = unreadable
        ? `${unreadable[0]}: expected ${unreadable[1]}. Nothing was saved.`
        : "The folder of the job is gone.";
      return { kind: "refused", words };
    }
    const { texts } = there;
    const changed = Object.keys({ ...known, ...texts }).some(
      (name) => texts[name] !== known[name] && texts[name] !== wanted[name],
    );
    if (changed) return { kind: "changed", texts };
    const written = Object.entries(wanted).filter(([name, text]) => texts[name] !== text);
    await keepEarlier(
      this.#folder,
      written.flatMap(([name]) => (texts[name] === undefined ? [] : [[name, texts[name]] as const])),
    );
    for (const [name, text] of written) await replaceFile(join(this.#folder, name), text);
    return { kind: "saved", left: Object.keys(texts).filter((name) => !(name in wanted)) };
  }
}

/** Folder of a job with what its files said before they were last saved, a folder a save. */
const earlierFolder = ".earlier";

/** Saves that can be gone back by hand. */
const mostEarlier = 10;

/**
 * Keeps what files say before they are saved, and lets go what is older than the last ten saves.
 *
 * @throws whatever the system says when it cannot be written
 */
async function keepEarlier(job: string, files: readonly (readonly [string, string])[]): Promise<void> {
  if (files.length === 0) return;
  const folder = join(job, earlierFolder);
  const stamp = new Date().toISOString().replace(/[:.]/g, "-");
  const version = join(folder, `${stamp}-${randomUUID().slice(0, 4)}`);
  await mkdir(version, { recursive: true });
  for (const [name, text] of files) await writeFile(join(version, name), text, { flush: true });
  const old = (await readdir(folder)).sort().slice(0, -mostEarlier);
  for (const name of old) await rm(join(folder, name), { recursive: true, force: true });
}

/**
 * Puts a text in the place of a file in one step, so that nobody reads half of it; a link still leads where it led.
 *
 * @throws whatever the system says when the file cannot be written
 */
async function replaceFile(path: string, text: string): Promise<void> {
  const target = await realpath(path).catch(() => path);
  const mode = (await stat(target).catch(() => undefined))?.mode;
  const beside = join(dirname(target), `.${basename(target)}-${randomUUID()}`);
  try {
    await writeFile(beside, text, { ...(mode === undefined ? {} : { mode }), flush: true });
    await rename(beside, target);
  } finally {
    await rm(beside, { force: true });
  }
}
