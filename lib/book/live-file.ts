/** The live page of a job as a file: what was bundled by the build, with the job's files inside. */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { caseFile, tableFiles } from "../design/index.js";
import { host } from "../host/node.js";
import { type LiveParts, liveDocument } from "../live/index.js";
import { libraryFolder } from "./project-folders.js";

/** A job as its live page needs it. */
export interface LiveJob {
  /** Its name, as its folder is called. */
  readonly name: string;
  /** Its folder. */
  readonly folder: string;
  /** The case's name. */
  readonly title: string;
}

/**
 * The live page of a job, as one file.
 *
 * @param more where the page may save, when it is served; where its book stands, when it is part of one; what it answered, when it is passed on
 * @throws Error where the library was not built whole
 */
export function liveFile(
  { name, folder, title }: LiveJob,
  more: Pick<LiveParts, "saves" | "book" | "passedOn"> = {},
): string {
  const wanted = [caseFile, ...Object.values(tableFiles)];
  const texts = host.files.read(folder, wanted)?.texts ?? {};
  return liveDocument({
    job: name,
    title,
    texts,
    workerScript: bundled("worker"),
    pageScript: bundled("page"),
    digest: (text) => createHash("sha256").update(text).digest("base64"),
    ...more,
  });
}

/** @throws Error where it was not built */
function bundled(what: "worker" | "page"): string {
  try {
    return readFileSync(join(libraryFolder(), "live", `${what}.bundle.js`), "utf8");
  } catch (error) {
    throw new Error('the live page is not built; run "npm run build"', { cause: error });
  }
}
