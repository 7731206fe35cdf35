/** Where the parts of this project stand, in a checkout and where it is installed, found through the library's own name. */
import { existsSync } from "node:fs";
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

/** The folder of the package: lib in a checkout. */
function packageFolder(): string {
  return dirname(libraryFolder());
}

/** Whether this is a package among others, and no checkout of the project. */
export function isInstalled(): boolean {
  return !existsSync(join(packageFolder(), "..", "package-lock.json"));
}

/** The folder that holds notebooks, starts and data: of the project, or of the package that carries them. */
export function projectFolder(): string {
  return isInstalled() ? packageFolder() : dirname(packageFolder());
}

/** The folder of packages that the library stands in, for NODE_PATH: cells import it wherever their notebook is. */
export function modulesFolder(): string {
  return isInstalled() ? dirname(packageFolder()) : join(projectFolder(), "node_modules");
}

/** What a builder types to run a command: "npm run check --", or "npx casewright check" where it is installed. */
export function asTyped(command: string): string {
  if (isInstalled()) return `npx casewright ${command}`;
  return command === "start" ? "npm start --" : `npm run ${command} --`;
}

/** The compiled kernel. */
export function kernelEntry(): string {
  return join(libraryFolder(), "book", "kernel", "entry.js");
}

/** The folder in which Jupyter finds the kernel when it stands in JUPYTER_PATH. */
export function kernelSpecFolder(): string {
  return join(packageFolder(), "book", "kernel", "spec");
}
