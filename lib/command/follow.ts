/** Notices that a builder has saved something. */
import { watch } from "node:fs";
import { readdir, stat } from "node:fs/promises";
import { join } from "node:path";

/** What a book is made from; editors put other files beside it. */
const sources = /\.(ya?ml|csv|ipynb)$/i;

// Long enough for an editor that writes several files, or removes one before it puts the new one in place.
const calmMilliseconds = 80;

// Some folders, as on a network, tell of nothing by themselves.
const lookMilliseconds = 1_500;

/** Folders that are followed. */
export interface Following {
  /** Ends it. */
  stop(): void;
}

/**
 * Follows folders and calls once for all that was saved together, however it was written, and again only when
 * something differs from then.
 */
export async function follow(
  folders: readonly string[],
  changed: () => void | Promise<void>,
): Promise<Following> {
  let known = await look(folders);
  let calm: NodeJS.Timeout | undefined;
  const check = async (): Promise<void> => {
    const now = await look(folders);
    if (now === known) return;
    known = now;
    await changed();
  };
  const soon = (): void => {
    clearTimeout(calm);
    calm = setTimeout(check, calmMilliseconds);
  };
  const watchers = folders.flatMap((folder) => watcherOf(folder, soon) ?? []);
  const regular = setInterval(check, lookMilliseconds);
  return {
    stop: () => {
      for (const watcher of watchers) watcher.close();
      clearTimeout(calm);
      clearInterval(regular);
    },
  };
}

/** Undefined where the system cannot watch; the regular look is enough then. */
function watcherOf(folder: string, soon: () => void): ReturnType<typeof watch> | undefined {
  try {
    return watch(folder, soon).on("error", () => undefined);
  } catch {
    return undefined;
  }
}

/** Names, sizes, times and identities of all sources: one text that differs when a file does. */
async function look(folders: readonly string[]): Promise<string> {
  const seen = await Promise.all(folders.map(lookInto));
  return seen.join("\n");
}

async function lookInto(folder: string): Promise<string> {
  const names = await readdir(folder).catch(() => []);
  const files = names.filter((name) => sources.test(name)).sort();
  const seen = files.map(async (name) => {
    const entry = await stat(join(folder, name)).catch(() => undefined);
    return `${name} ${entry?.size} ${entry?.mtimeMs} ${entry?.ino}`;
  });
  return (await Promise.all(seen)).join("\n");
}
