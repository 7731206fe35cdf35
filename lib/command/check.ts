/** npm run check -- JOB: every problem of a job's files at once, or what the case is made of. */
import { readdirSync } from "node:fs";
import { caseFile, tableFiles } from "../design/index.js";
import { demoJob, type Job, jobFolder, readJob } from "../job/index.js";
import { alsoInWords, type Problem, ProblemsError } from "../problem.js";
import { Area, Length, Mass, type ShowStyle } from "../quantity/index.js";

/**
 * Checks one job.
 *
 * @param args name of the job; the demo job when there is none
 * @returns exit code: 1 when there is any problem
 */
export async function check([name = demoJob]: readonly string[]): Promise<number> {
  const read = readNamed(name);
  if ("problems" in read) {
    console.log(problemReport(name, read.problems));
    return 1;
  }
  console.log([partsSummary(read.job), ...notesOn(read.job)].join("\n"));
  return 0;
}

/**
 * Reads a job by its name: the job, or every problem, the name itself among them.
 *
 * @throws whatever is no problem of a file
 */
export function readNamed(name: string): ReturnType<typeof readJob> {
  try {
    return readJob(jobFolder(name));
  } catch (error) {
    if (error instanceof ProblemsError) return { problems: error.problems };
    throw error;
  }
}

/** Every problem in a few lines of its own, in the order of the files' rows. */
export function problemReport(name: string, problems: readonly Problem[]): string {
  const sorted = [...problems].sort((a, b) => a.file.localeCompare(b.file) || (a.row ?? 0) - (b.row ?? 0));
  const count = problems.length === 1 ? "1 problem" : `${problems.length} problems`;
  return [`${name}: ${count}`, ...sorted.map(problemLines)].join("\n\n");
}

function problemLines(problem: Problem): string {
  const { file, row, column, value, expected } = problem;
  const also = alsoInWords(problem);
  return [
    [file, row === undefined ? "" : `row ${row}`, column ?? ""].filter(Boolean).join(", "),
    ...(value === undefined ? [] : [`  found     ${value}`]),
    `  expected  ${expected}`,
    ...(also ? [`  also in   ${also}`] : []),
  ].join("\n");
}

/** What a case without a problem is made of, in a few lines. */
function partsSummary(job: Job): string {
  const { case: description, parts, stock, measurements } = job;
  const style: ShowStyle = { system: description.units };
  const outside = parts.sections.map(({ name, outside: { size } }) => {
    const shown = [size.x, size.y, size.z].map((length) => Length.show(length, style)).join(" x ");
    return `  ${name}: ${shown} outside`;
  });
  const doors = parts.panels.some(({ role }) => role === "leaf");
  const bought = Object.values(stock).flat().length;
  const measured = Object.values(measurements).flat().length;
  const read = [
    ...counted(bought, "row").map((rows) => `${rows} of stock`),
    ...(measured > 0 ? [`${measured} of measurements`] : []),
  ];
  const lines = [
    `${job.name}: no problems in ${read.join(" and ")}`,
    "",
    `${description.name}${description.invented ? " (invented)" : ""}`,
    ...outside,
    `  ${parts.panels.length} ${doors ? "panels and doors" : "panels"}, ${Area.show(Area.si(sum(parts.panels.map(({ netArea }) => netArea))), style)} of sheet`,
    ...insideLines(job, style),
  ];
  return lines.join("\n");
}

/** Counts of what the case has of each kind, on a line where it has some. */
function insideLines({ parts }: Job, style: ShowStyle): string[] {
  const { facings, shelves, drawers, bars, hardware, fastenings, contents } = parts;
  const joined = sum(fastenings.map(({ count }) => count));
  const bar = Length.show(Length.si(sum(bars.map(({ length }) => length))), style);
  const mass = Mass.show(Mass.si(sum(contents.map(({ content }) => content.mass))), style);
  const lines = [
    [
      ...counted(facings.length, "facing"),
      ...counted(shelves.length, "shelf", "shelves"),
      ...counted(drawers.length, "drawer"),
    ],
    counted(bars.length, "edge bar").map((words) => `${words}, ${bar} in all`),
    [...counted(hardware.length, "piece of hardware", "pieces of hardware"), ...counted(joined, "fastener")],
    counted(contents.length, "thing inside", "things inside").map((words) => `${words}, ${mass}`),
  ];
  return lines.filter((words) => words.length > 0).map((words) => `  ${words.join(", ")}`);
}

/** How many there are of something, in words; nothing where there is none. */
function counted(count: number, one: string, many = `${one}s`): string[] {
  return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** Files beside the case that belong there, though the check reads none of them. */
const welcome = /^\.|^~|\.(?:md|ipynb|png|jpe?g|svg|webp|pdf)$/i;

/** What is no problem and yet may not be meant: files that nothing reads, and suppliers without a row of their own. */
function notesOn({ folder, stock, offers: { suppliers } }: Job): string[] {
  const own = [caseFile, ...Object.values(tableFiles)];
  const strays = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isFile() && !own.includes(entry.name) && !welcome.test(entry.name))
    .map(({ name }) => name);
  const known = suppliers.map(({ name }) => name);
  const bought: readonly { readonly supplier: string }[] = Object.values(stock).flat();
  const used = [...new Set(bought.map(({ supplier }) => supplier))];
  const without = known.length === 0 ? [] : used.filter((supplier) => !known.includes(supplier));
  return [
    ...(strays.length > 0 ? [`Not read: ${strays.join(", ")}.`] : []),
    ...(without.length > 0
      ? [`Not in ${tableFiles.suppliers}, so without shipping and tax: ${without.join(", ")}.`]
      : []),
  ];
}
