/** npm run drawings -- [JOB] [--out FOLDER] [--paper a4|letter]: everything of a job drawn at true scale, as files. */
import { mkdir, writeFile } from "node:fs/promises";
import { dirname, join, relative, resolve } from "node:path";
import { parseArgs } from "node:util";
import { demoJob } from "../job/index.js";
import { type Paper, papers } from "../true-scale/index.js";
import { problemReport, readNamed } from "./check.js";
import { drawingsOf } from "./drawings-of.js";
import { usageOf } from "./help.js";
import { bookFolder } from "./places.js";

/**
 * Writes the drawings of a job.
 *
 * @param args name of the job, the demo job when there is none; where to write; for which paper
 * @returns exit code: 1 when there are no drawings
 */
export async function drawings(args: readonly string[]): Promise<number> {
  const wanted = wantedBy(args);
  if (typeof wanted === "string") {
    console.error(wanted);
    return 1;
  }
  const { name, out, paper } = wanted;
  const read = readNamed(name);
  if ("problems" in read) {
    console.error(problemReport(name, read.problems));
    return 1;
  }
  const folder = out ?? join(dirname(bookFolder(read.job)), `${read.job.name}-drawings`);
  const files = await drawingsOf(read.job, paper);
  await mkdir(folder, { recursive: true });
  for (const { file, content } of files) await writeFile(join(folder, file), content);
  console.log(
    `wrote ${files.length} files to ${relative(process.cwd(), folder) || folder}; index.html lists them`,
  );
  return 0;
}

interface Wanted {
  /** The job's name. */
  readonly name: string;
  /** Where to write, where it was said. */
  readonly out?: string;
  /** For which paper, where it was said. */
  readonly paper?: Paper;
}

/** What is asked for, or what is wrong with it. */
function wantedBy(args: readonly string[]): Wanted | string {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { out: { type: "string" }, paper: { type: "string" } },
    });
    const [name = demoJob, ...more] = positionals;
    if (more.length > 0) return `expected one name, got ${positionals.join(", ")}\n${usageOf("drawings")}`;
    const { out, paper } = values;
    if (paper !== undefined && !isPaper(paper))
      return `--paper ${paper}: expected one of a4, letter\n${usageOf("drawings")}`;
    return {
      name,
      ...(out === undefined ? {} : { out: resolve(out) }),
      ...(paper === undefined ? {} : { paper }),
    };
  } catch (error) {
    if (error instanceof TypeError) return `${error.message.split(". ")[0]}\n${usageOf("drawings")}`;
    throw error;
  }
}

function isPaper(word: string): word is Paper {
  return Object.hasOwn(papers, word);
}
