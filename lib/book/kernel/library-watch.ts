/** Notices that the library was built again: cells then see its new types but still run its old code. */
import { statSync } from "node:fs";
import { join } from "node:path";

/** What the compiler writes last whenever it has written anything, so that one look stands for every file. */
const record = ".tsbuildinfo";

/** A check to make before each cell: true once, when the library has been built since the first look. */
export function watchLibrary(folder: string): () => boolean {
  const before = builtAt(folder);
  let told = false;
  return () => {
    if (told || builtAt(folder) <= before) return false;
    told = true;
    return true;
  };
}

/** When the library was last built, in ms; 0 for one that came ready built. */
function builtAt(folder: string): number {
  return statSync(join(folder, record), { throwIfNoEntry: false })?.mtimeMs ?? 0;
}
