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

/** The repository's data/, found upwards from this file, compiled or not. */
export const dataFolder: string = join(repository(dirname(fileURLToPath(import.meta.url))), "data");

function repository(from: string): string {
  if (existsSync(join(from, "data")) && existsSync(join(from, "package-lock.json"))) return from;
  const parent = dirname(from);
  if (parent === from) throw new Error("no data folder above the library: run it inside its repository");
  return repository(parent);
}
