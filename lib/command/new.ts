/** npm run new -- JOB: a job of one's own, from one of a few small starts. */
import { existsSync } from "node:fs";
import { cp, mkdir, mkdtemp, readdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { basename, dirname, join, relative, resolve } from "node:path";
import { parseArgs } from "node:util";
import { asTyped, projectFolder } from "../book/index.js";
import { readDesign, tableFiles, usedTables } from "../design/index.js";
import {
  carriedOver,
  dataFolder,
  demoJob,
  isJobName,
  type Job,
  jobFolder,
  jobNameExpected,
  readJob,
} from "../job/index.js";
import { usageOf } from "./help.js";

/** What one may begin with; the demo is the whole of soil-lab. */
const starts: readonly string[] = ["box", "two-section", "tall", "trunk", "demo"];

/** What is asked for. */
interface Wanted {
  /** Where the job will stand. */
  readonly folder: string;
  /** What it is called. */
  readonly name: string;
  /** One of the starts. */
  readonly start: string;
  /** Its units. */
  readonly units: "metric" | "inch";
  /** ISO 4217 code of its prices. */
  readonly currency: string;
  /** The job that it carries on from; absent where it begins as a start. */
  readonly last?: Job;
}

/**
 * Makes a job: first in a folder of its own, then moved into place whole, so that one that was interrupted is never
 * taken for a job. It asks nothing; what is not said is a box in inches and dollars.
 *
 * @param args name of the new job or a path to its folder, and options
 * @param jobs folder to look in and write to, for tests
 * @returns exit code: 1 when there is no name, it is unsafe or it is taken
 */
export async function newJob(args: readonly string[], jobs: string = dataFolder()): Promise<number> {
  const wanted = wantedBy(args, jobs);
  if (typeof wanted === "string") {
    console.error(wanted);
    return 1;
  }
  const { folder, start, last } = wanted;
  await mkdir(dirname(folder), { recursive: true });
  await madeWhole(folder, (half) => {
    if (last) return carryOn(wanted, last, half);
    return start === "demo" ? copyDemo(wanted, half) : copyStart(wanted, half);
  });
  console.log(told(wanted, args[0] ?? ""));
  return 0;
}

/** What is asked for, or why it cannot be had. */
function wantedBy(args: readonly string[], jobs: string): Wanted | string {
  const read = optionsOf(args);
  if (typeof read === "string") return `${read}\n${usageOf("new")}`;
  const { given, start = "box", metric, inch, currency = metric ? "EUR" : "USD" } = read;
  if (given === undefined) return usageOf("new");
  const isPath = /[\\/]/.test(given);
  const folder = isPath ? resolve(given) : join(jobs, given);
  if (!isPath && !isJobName(given)) return `"${given}": expected ${jobNameExpected}`;
  if (existsSync(folder)) return `"${given}" is there already: choose another name or remove it first`;
  if (read.from !== undefined) return wantedAfter(read.from, folder, read, jobs);
  if (!starts.includes(start)) return `--start ${start}: expected one of ${starts.join(", ")}`;
  if (metric && inch) return "--metric and --inch: expected one of them";
  if (!/^[A-Z]{3}$/.test(currency)) {
    return `--currency ${currency}: expected a currency of three capitals such as EUR`;
  }
  if (start === "demo" && (metric || currency !== "USD"))
    return "--start demo: the demo is in inches and USD";
  return { folder, name: basename(folder), start, units: metric ? "metric" : "inch", currency };
}

/** A job that carries on from another, or why it cannot. */
function wantedAfter(from: string, folder: string, options: Options, jobs: string): Wanted | string {
  const { start, metric, inch, currency } = options;
  if (start !== undefined || metric || inch || currency !== undefined)
    return "--from: a case that carries on has the files, units and currency of the last one; leave the other options out";
  const place = /[\\/]/.test(from) ? resolve(from) : join(jobs, from);
  const read = readJob(place);
  if ("problems" in read) {
    return existsSync(place)
      ? `--from ${from}: its files have mistakes, which "${asTyped("check")} ${from}" tells`
      : `--from ${from}: there is no such job`;
  }
  const { units, currency: paid } = read.job.case;
  return { folder, name: basename(folder), start: from, units, currency: paid, last: read.job };
}

interface Options {
  /** The folder named, where one was. */
  readonly given: string | undefined;
  /** The named start, where one was. */
  readonly start?: string | undefined;
  /** The last job, where one was named. */
  readonly from?: string | undefined;
  /** Whether metric units were asked for. */
  readonly metric: boolean;
  /** Whether inches were asked for. */
  readonly inch: boolean;
  /** The currency, three capitals. */
  readonly currency?: string | undefined;
}

/** The options, or what is wrong with them. */
function optionsOf(args: readonly string[]): Options | string {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        start: { type: "string" },
        from: { type: "string" },
        metric: { type: "boolean", default: false },
        inch: { type: "boolean", default: false },
        currency: { type: "string" },
      },
    });
    const [given, ...more] = positionals;
    return more.length > 0 ? `expected one name, got ${positionals.join(", ")}` : { given, ...values };
  } catch (error) {
    if (error instanceof TypeError) return error.message.split(". ")[0] ?? "";
    throw error;
  }
}

function told({ folder, start, units, currency, last }: Wanted, given: string): string {
  const place = relative(process.cwd(), folder) || folder;
  const begun =
    start === "demo" ? `a copy of the invented demo "${demoJob}"` : `${start}, ${units}, ${currency}`;
  const what = last ? `${start} carried on, with what it measured and took` : begun;
  return [
    `made ${place}: ${what}`,
    "The head of its case.yaml says what to change first. Then:",
    `  ${asTyped("check")} ${given}`,
    `  ${asTyped("start")} ${given}`,
  ].join("\n");
}

/** @throws whatever the system says when it cannot be written */
async function madeWhole(folder: string, fill: (half: string) => Promise<void>): Promise<void> {
  const half = await mkdtemp(`${folder}.half-`);
  try {
    await fill(half);
    await rename(half, folder);
  } catch (error) {
    await rm(half, { recursive: true, force: true });
    throw error;
  }
}

/** The case file of a start and the tables that it needs, in its units and currency; measurements begin empty. */
async function copyStart({ name, start, units, currency }: Wanted, half: string): Promise<void> {
  const from = join(projectFolder(), "starts", units);
  const texts: Record<string, string> = {};
  const files = (await readdir(from)).filter((file) => file.endsWith(".csv"));
  for (const [file, as] of [[`${start}.yaml`, "case.yaml"], ...files.map((one) => [one, one])] as const) {
    const text = await readFile(join(from, file ?? ""), "utf8");
    texts[as ?? ""] = text.replaceAll("CUR", currency).replaceAll("NAME", name);
  }
  const read = readDesign(texts);
  if ("problems" in read) throw new Error(`start ${start}: ${read.problems[0]?.expected}`);
  const used = [...usedTables(read.design.case)].map((table) => tableFiles[table]);
  const wanted = Object.entries(texts).filter(
    ([file]) => file === "case.yaml" || file === tableFiles.bends || used.includes(file),
  );
  await Promise.all(wanted.map(([file, text]) => writeFile(join(half, file), text)));
}

async function copyDemo({ name }: Wanted, half: string): Promise<void> {
  // Its own chapter tells of its draft, which a copy has not.
  await cp(jobFolder(demoJob), half, { recursive: true, filter: (file) => !file.endsWith(".ipynb") });
  const file = join(half, "case.yaml");
  await writeFile(file, startedAsCopy(await readFile(file, "utf8"), name));
}

/** The files of the last case, with what it took as it was built in its tables of measurements. */
async function carryOn({ name, start }: Wanted, last: Job, half: string): Promise<void> {
  const note = [
    `# ${name}: carried on from ${start}. What that case took as it was built stands in the tables of measurements.`,
    '# Change these three lines first: "purpose", the "inside" of a section, and "sheet" of the build.',
    "",
  ];
  const { "case.yaml": described = "", ...tables } = carriedOver(last);
  const text = note.join("\n") + described.replace(/^case: .*$/m, `case: ${name}`);
  const files = Object.entries({ ...tables, "case.yaml": text });
  await Promise.all(files.map(([file, told]) => writeFile(join(half, file), told)));
}

/** Says at the top where the copy comes from, and names it after the job. */
function startedAsCopy(text: string, name: string): string {
  const note = [
    `# ${name}: started as a copy of the invented demo "${demoJob}". Until you put your own sizes, prices and`,
    '# measurements here, every figure is made up. When all are yours, set "invented: false".',
    '# Change these three lines first: "inside" of the lower section, "inside" of the upper one, and "sheet" of the build.',
    "",
  ];
  return note.join("\n") + text.replace(/^case: .*$/m, `case: ${name} (started as a copy of the demo)`);
}
