import { mkdir, mkdtemp, rename, rm } from "node:fs/promises";
import { basename, dirname, join } from "node:path";

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

/** Whether there was something to move. */
async function moved(from: string, to: string): Promise<boolean> {
  try {
    await rename(from, to);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return false;
    throw error;
  }
}
