/** Where the parts of this project stand, found through the library's own name. */
import { createRequire } from "node:module";
import { dirname, join } from "node:path";

/**
 * The folder of the built library.
 *
 * @throws Error when it was not built
 */
export function libraryFolder(): string {
  try {
    return dirname(createRequire(import.meta.url).resolve("casewright"));
  } catch (error) {
    throw new Error('the library is not built; run "npm run build"', { cause: error });
  }
}

/** The folder that holds notebooks, lib and data. */
export function projectFolder(): string {
  return join(libraryFolder(), "..", "..");
}

/** The compiled kernel. */
export function kernelEntry(): string {
  return join(libraryFolder(), "book", "kernel", "entry.js");
}

/** The folder in which Jupyter finds the kernel when it stands in JUPYTER_PATH. */
export function kernelSpecFolder(): string {
  return join(projectFolder(), "lib", "book", "kernel", "spec");
}
