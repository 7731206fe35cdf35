/** npm run new -- JOB: a job of one's own, from one of a few small starts. */
import { existsSync } from "node:fs";
import { cp, mkdir, mkdtemp, readdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { basename, dirname, join, relative, resolve } from "node:path";
import { parseArgs } from "node:util";
import { asTyped, projectFolder } from "../book/index.js";
import { readDesign, tableFiles, usedTables } from "../design/index.js";
import { dataFolder, demoJob, isJobName, jobFolder, jobNameExpected } from "../job/index.js";

/** What one may begin with; the demo is the whole of soil-lab. */
const starts: readonly string[] = ["box", "two-section", "tall", "trunk", "demo"];

const usage = `usage: ${asTyped("new")} my-case [--start ${starts.join("|")}] [--metric|--inch] [--currency EUR]`;

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
  const { folder, start } = wanted;
  await mkdir(dirname(folder), { recursive: true });
  await madeWhole(folder, (half) => (start === "demo" ? copyDemo(wanted, half) : copyStart(wanted, half)));
  console.log(told(wanted, args[0] ?? ""));
  return 0;
}

/** What is asked for, or why it cannot be had. */
function wantedBy(args: readonly string[], jobs: string): Wanted | string {
  const read = optionsOf(args);
  if (typeof read === "string") return `${read}\n${usage}`;
  const { given, start, metric, inch, currency = metric ? "EUR" : "USD" } = read;
  if (given === undefined) return usage;
  const isPath = /[\\/]/.test(given);
  const folder = isPath ? resolve(given) : join(jobs, given);
  if (!isPath && !isJobName(given)) return `"${given}": expected ${jobNameExpected}`;
  if (existsSync(folder)) return `"${given}" is there already: choose another name or remove it first`;
  if (!starts.includes(start)) return `--start ${start}: expected one of ${starts.join(", ")}`;
  if (metric && inch) return "--metric and --inch: expected one of them";
  if (!/^[A-Z]{3}$/.test(currency)) {
    return `--currency ${currency}: expected a currency of three capitals such as EUR`;
  }
  if (start === "demo" && (metric || currency !== "USD"))
    return "--start demo: the demo is in inches and USD";
  return { folder, name: basename(folder), start, units: metric ? "metric" : "inch", currency };
}

interface Options {
  /** The folder named, where one was. */
  readonly given: string | undefined;
  /** The named start. */
  readonly start: string;
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
        start: { type: "string", default: "box" },
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

function told({ folder, start, units, currency }: Wanted, given: string): string {
  const place = relative(process.cwd(), folder) || folder;
  const what =
    start === "demo" ? `a copy of the invented demo "${demoJob}"` : `${start}, ${units}, ${currency}`;
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
  await cp(jobFolder(demoJob), half, { recursive: true });
  const file = join(half, "case.yaml");
  await writeFile(file, startedAsCopy(await readFile(file, "utf8"), name));
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
