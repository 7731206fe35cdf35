/** Keeping the files: a draft in this browser, a zip, a folder. */
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { decode } from "../../host/decode.js";
import type { Texts } from "./state.js";

/** A draft in this browser. */
export interface Draft {
  /** When it was kept, ms since 1970. */
  readonly at: number;
  /** The files. */
  readonly texts: Texts;
}

const keyOf = (job: string): string => `casewright draft of ${job}`;

/** Keeps the files as a draft; why it could not be kept, or undefined. */
export function keepDraft(job: string, texts: Texts): string | undefined {
  try {
    localStorage.setItem(keyOf(job), JSON.stringify({ at: Date.now(), texts } satisfies Draft));
    return undefined;
  } catch {
    return "This browser keeps no draft: its storage is full or shut. Save the files before you close this page.";
  }
}

/** The draft, where there is one that can be read. */
export function draftOf(job: string): Draft | undefined {
  try {
    const { at, texts }: Partial<Draft> = JSON.parse(localStorage.getItem(keyOf(job)) ?? "{}");
    const isWhole =
      typeof at === "number" && texts && Object.values(texts).every((one) => typeof one === "string");
    return isWhole ? { at, texts } : undefined;
  } catch {
    return undefined;
  }
}

/** Takes the draft away. */
export function dropDraft(job: string): void {
  try {
    localStorage.removeItem(keyOf(job));
  } catch {
    // a storage that is shut holds no draft
  }
}

/** "3 hours ago". */
export function ageWords(at: number, now: number): string {
  const minutes = Math.max(0, Math.round((now - at) / 60_000));
  const told = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"} ago`;
  if (minutes < 60) return told(minutes, "minute");
  return minutes < 48 * 60 ? told(Math.round(minutes / 60), "hour") : told(Math.round(minutes / 1440), "day");
}

/** The files as a zip, in a folder of the job's name. */
export function zipOf(job: string, texts: Texts): Blob {
  const files = Object.entries(texts).map(([name, text]) => [`${job}/${name}`, strToU8(text)] as const);
  return new Blob([zipSync(Object.fromEntries(files)) as Uint8Array<ArrayBuffer>], {
    type: "application/zip",
  });
}

/** Largest zip, and largest file in it, that is opened, in bytes. */
const largest = 10_000_000;

/**
 * The files of a job out of a zip: those beside the case.yaml that lies least deep.
 *
 * @throws RangeError for a zip without a case.yaml, or one that is too large
 */
export function jobInZip(bytes: Uint8Array): Texts {
  if (bytes.length > largest) throw new RangeError("The zip is larger than 10 MB.");
  const all = Object.entries(
    unzipSync(bytes, {
      filter: ({ name, originalSize }) => /\.(ya?ml|csv|md)$/i.test(name) && originalSize < largest,
    }),
  );
  const homes = all.map(([name]) => name).filter((name) => /(^|\/)case\.yaml$/.test(name));
  const [home] = homes.sort((a, b) => a.split("/").length - b.split("/").length);
  if (home === undefined) throw new RangeError("The zip holds no case.yaml.");
  const folder = home.slice(0, -"case.yaml".length);
  const own = all.filter(([name]) => name.startsWith(folder) && !name.slice(folder.length).includes("/"));
  return Object.fromEntries(
    own.map(([name, content]) => {
      const read = decode(content);
      return [name.slice(folder.length), "text" in read ? read.text : strFromU8(content)];
    }),
  );
}

/** Hands a file to the browser's downloads. */
export function download(name: string, content: Blob): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

/** A folder that the reader picked; the browser's types do not know it everywhere. */
export interface PickedFolder {
  getFileHandle(
    name: string,
    options: { readonly create: boolean },
  ): Promise<{
    createWritable(): Promise<{ write(text: string): Promise<void>; close(): Promise<void> }>;
  }>;
}

/** What asks the reader for a folder. */
export type Picker = (options: { readonly mode: "readwrite" }) => Promise<PickedFolder>;

/** The browser's folder picker; undefined where it has none. */
export function folderPicker(): Picker | undefined {
  const picker = (globalThis as { showDirectoryPicker?: Picker }).showDirectoryPicker;
  return picker?.bind(globalThis);
}

/** Writes the files into a folder. */
export async function saveInto(folder: PickedFolder, texts: Texts): Promise<void> {
  for (const [name, text] of Object.entries(texts)) {
    const file = await folder.getFileHandle(name, { create: true });
    const stream = await file.createWritable();
    await stream.write(text);
    await stream.close();
  }
}
