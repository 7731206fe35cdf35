/** npm run new -- JOB: a job of one's own, started as a copy of the demo job. */
import { existsSync } from "node:fs";
import { cp, mkdtemp, readFile, rename, rm, writeFile } from "node:fs/promises";
import { join, relative } from "node:path";
import { dataFolder, demoJob, isJobName, jobNameExpected } from "../job/index.js";

/**
 * Copies the demo job to a new name: first into a folder of its own, then moved into place whole, so that a
 * copy that was interrupted is never taken for a job.
 *
 * @param args name of the new job
 * @param jobs folder to look in and write to, for tests
 * @returns exit code: 1 when there is no name, it is unsafe or it is taken
 */
export async function newJob([name]: readonly string[], jobs: string = dataFolder()): Promise<number> {
  const refusal = refuse(name, jobs);
  if (refusal !== undefined || name === undefined) {
    console.error(refusal);
    return 1;
  }
  const folder = join(jobs, name);
  await copyWhole(join(jobs, demoJob), folder, name);
  console.log(
    [
      `made ${relative(process.cwd(), folder) || folder}, a copy of the invented demo "${demoJob}"`,
      "change case.yaml and the tables to your own, then:",
      `  npm run check -- ${name}`,
      `  npm start -- ${name}`,
    ].join("\n"),
  );
  return 0;
}

function refuse(name: string | undefined, jobs: string): string | undefined {
  if (name === undefined) return "usage: npm run new -- my-case";
  if (!isJobName(name)) return `"${name}": expected ${jobNameExpected}`;
  if (existsSync(join(jobs, name)))
    return `"${name}" is there already: choose another name or remove it first`;
  return undefined;
}

/** @throws whatever the system says when it cannot be copied */
async function copyWhole(from: string, to: string, name: string): Promise<void> {
  const half = await mkdtemp(`${to}.half-`);
  try {
    await cp(from, half, { recursive: true });
    const file = join(half, "case.yaml");
    await writeFile(file, startedAsCopy(await readFile(file, "utf8"), name));
    await rename(half, to);
  } catch (error) {
    await rm(half, { recursive: true, force: true });
    throw error;
  }
}

/** Says at the top where the copy comes from, and names it after the job. */
function startedAsCopy(text: string, name: string): string {
  const note = [
    `# ${name}: started as a copy of the invented demo "${demoJob}". Until you put your own sizes, prices and`,
    '# measurements here, every figure is made up. When all are yours, set "invented: false".',
    "",
  ];
  return note.join("\n") + text.replace(/^case: .*$/m, `case: ${name} (started as a copy of the demo)`);
}
