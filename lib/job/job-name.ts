/** Which names a job may have, and where jobs live. */
import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** What a job may be called, in words. */
export const jobNameExpected = "a job name of small letters, digits and hyphens, at most 40, such as my-case";

/** Can it be the name of a job? Such a name is a plain folder name on every system. */
export function isJobName(name: string): boolean {
  return /^[a-z0-9](?:[a-z0-9-]{0,38}[a-z0-9])?$/.test(name) && !/^(con|prn|aux|nul|com\d|lpt\d)$/.test(name);
}

/**
 * The project's data/, found upwards from this file, compiled or not.
 *
 * @throws Error when the library stands outside its project
 */
export function dataFolder(): string {
  return join(projectAbove(dirname(fileURLToPath(import.meta.url))), "data");
}

function projectAbove(folder: string): string {
  if (existsSync(join(folder, "data")) && existsSync(join(folder, "package-lock.json"))) return folder;
  const parent = dirname(folder);
  if (parent === folder) throw new Error("jobs: no data folder above the library, run it inside its project");
  return projectAbove(parent);
}
