/** Notices that the library was built again: cells then see its new types but still run its old code. */
import { readdirSync, statSync } from "node:fs";
import { join } from "node:path";

/** A check to make before each cell: true once, when the built library has changed since the first look. */
export function watchLibrary(folder: string): () => boolean {
  const before = newestCode(folder);
  let told = false;
  return () => {
    if (told || newestCode(folder) <= before) return false;
    told = true;
    return true;
  };
}

/** Time of the youngest code file, in ms. */
function newestCode(folder: string): number {
  const times = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".js"))
    .map((name) => statSync(join(folder, name), { throwIfNoEntry: false })?.mtimeMs ?? 0);
  return Math.max(0, ...times);
}
