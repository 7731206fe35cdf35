/** npm run check -- JOB: every problem of a job's files at once, or what the case is made of. */
import { demoJob, type Job, jobFolder, readJob } from "../job/index.js";
import { type Problem, ProblemsError } from "../problem.js";
import { Area, Length, Mass, type ShowStyle } from "../quantity/index.js";
import { textTable } from "./text-table.js";

/**
 * Checks one job.
 *
 * @param args name of the job; the demo job when there is none
 * @returns exit code: 1 when there is any problem
 */
export async function check([name = demoJob]: readonly string[]): Promise<number> {
  const read = readNamed(name);
  if ("problems" in read) {
    console.error(problemReport(name, read.problems));
    return 1;
  }
  console.log(partsSummary(read.job));
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

/** A table of problems, in the order of the files' rows. */
export function problemReport(name: string, problems: readonly Problem[]): string {
  const rows = [...problems]
    .sort((a, b) => a.file.localeCompare(b.file) || (a.row ?? 0) - (b.row ?? 0))
    .map(({ file, row, column, value, expected }) => [
      file,
      row === undefined ? "" : String(row),
      column ?? "",
      value ?? "",
      expected,
    ]);
  const count = problems.length === 1 ? "1 problem" : `${problems.length} problems`;
  return `${name}: ${count}\n\n${textTable(["file", "row", "where", "found", "expected"], rows)}`;
}

/** What a case without a problem is made of, in a few lines. */
function partsSummary(job: Job): string {
  const { case: description, parts, stock, measurements } = job;
  const style: ShowStyle = { system: description.units };
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
  const outside = parts.sections.map(({ name, outside: { size } }) => {
    const shown = [size.x, size.y, size.z].map((length) => Length.show(length, style)).join(" x ");
    return `  ${name}: ${shown} outside`;
  });
  const bought = Object.values(stock).flat().length;
  const measured = Object.values(measurements).flat().length;
  const lines = [
    `${job.name}: no problems in ${bought} rows of stock and ${measured} of measurements`,
    "",
    `${description.name}${description.invented ? " (invented)" : ""}`,
    ...outside,
    `  ${parts.panels.length} panels and doors, ${Area.show(Area.si(sum(parts.panels.map(({ netArea }) => netArea))), style)} of sheet`,
    `  ${parts.facings.length} facings, ${parts.shelves.length} shelves`,
    `  ${parts.bars.length} edge bars, ${Length.show(Length.si(sum(parts.bars.map(({ length }) => length))), style)} in all`,
    `  ${parts.hardware.length} pieces of hardware, ${sum(parts.fastenings.map(({ count }) => count))} fasteners`,
    `  ${parts.contents.length} things inside, ${Mass.show(Mass.si(sum(parts.contents.map(({ content }) => content.mass))), style)}`,
  ];
  return lines.join("\n");
}
