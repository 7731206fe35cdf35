/** The files of a next case, which begins with what the last one took: its as-built figures stand where trials stood. */
import {
  applyChange,
  type Change,
  type Design,
  type Measurements,
  readDesign,
  set,
  type Texts,
  tableFiles,
} from "../design/index.js";
import { csvCell } from "../measure/index.js";
import { massItems, massOfAll, plannedMasses } from "../model/index.js";
import { Area, Length, Mass, Time } from "../quantity/index.js";
import type { Job } from "./open-job.js";

/**
 * The texts of a job's files with its as-built.csv put into its tables: times, slots, glue, thickness, and what the scale
 * said more or less than planned put on the offcuts of what was sawn. The as-built table itself is left out.
 *
 * @throws Error where the other tables cannot be read without it
 */
export function carriedOver(job: ReadFiles): Texts {
  const { [tableFiles.asBuilt]: built, ...texts } = job.texts;
  if (built === undefined) return texts;
  const before = readDesign(texts);
  if ("problems" in before) throw new Error(`without its as-built table: ${before.problems[0]?.expected}`);
  const { measurements: trials } = before.design;
  const known = { now: job.measurements, trials };
  const tables = { ...timesOf(known), ...kerfsOf(known), ...spreadsOf(known), ...weightsOf(job) };
  return { ...applyChange(texts, ...thicknesses(job)).texts, ...tables };
}

/** A design and the files that it was read from. */
export type ReadFiles = Design & Pick<Job, "texts">;

/** What was measured with the case built, and before. */
interface Known {
  /** As the job reads it. */
  readonly now: Measurements;
  /** As its tables alone say it. */
  readonly trials: Measurements;
}

/** A sheet whose veneers are further from its thickness is another sheet, and keeps the thickness of its table. */
const veneerAllowance = 0.1;

/** The thickness of each sheet and laminate that was measured on the case. */
function thicknesses({ stock: { sheets, facings } }: Design): readonly Change[] {
  const told = sheets.filter(({ veneers, thickness }) => {
    const total = veneers.reduce((sum: number, veneer) => sum + veneer, 0);
    return Math.abs(total - thickness) <= veneerAllowance * thickness;
  });
  const tables = [
    [tableFiles.sheets, told],
    [tableFiles.facings, facings],
  ] as const;
  return tables.flatMap(([file, rows]) =>
    rows
      .filter(({ planned }) => planned !== undefined)
      .map(({ name, thickness }) =>
        set({ file, row: name, column: "thickness" }, `${figure(Length.in(thickness, "mm"))} mm`),
      ),
  );
}

/** What each work took with its tool; trials with another tool stay beside it. */
function timesOf({ now, trials }: Known): Texts {
  if (!now.asBuilt.some(({ time }) => time !== undefined)) return {};
  const rows = trials.timings.map(
    (row) => now.timings.find(({ work, tool }) => work === row.work && tool === row.tool) ?? row,
  );
  const cells = rows.map(({ work, unit, tool, pieces, time }) => [
    ...[work, unit, tool, figure(pieces)],
    figure(Time.in(time, "min")),
  ]);
  return tableOf(tableFiles.timings, ["work", "unit", "tool", "pieces", "time (min)"], cells);
}

function kerfsOf({ now: { kerfs, asBuilt } }: Known): Texts {
  if (!asBuilt.some(({ what, length }) => what === "kerf" && length !== undefined)) return {};
  const cells = kerfs.map(({ blade, before, after, offcuts, cuts, use }) => [
    blade,
    ...[before, after, offcuts].map((one) => figure(Length.in(one, "mm"))),
    ...[figure(cuts), use],
  ]);
  return tableOf(
    tableFiles.kerfs,
    ["blade", "before (mm)", "after (mm)", "offcuts (mm)", "cuts", "use"],
    cells,
  );
}

function spreadsOf({ now: { spreads, asBuilt } }: Known): Texts {
  if (!asBuilt.some(({ can }) => can !== undefined)) return {};
  const cells = spreads.map(({ trial, adhesive, area, faces, before, after, gained }) => [
    ...[trial, adhesive, figure(Area.in(area, "m2")), figure(faces)],
    ...[before, after].map((one) => figure(Mass.in(one, "g"))),
    gained === undefined ? "" : figure(Mass.in(gained, "g")),
  ]);
  const head = ["trial", "adhesive", "area (m2)", "faces", "before (g)", "after (g)", "gained (g)"];
  return tableOf(tableFiles.spreads, head, cells);
}

/** Offcuts as heavy as the pieces of their material, by what the scale said of the sections that these are in. */
function weightsOf(job: Design): Texts {
  const { weights, asBuilt } = job.measurements;
  if (!asBuilt.some(({ mass }) => mass !== undefined)) return {};
  const [weighed, planned] = [massItems(job), plannedMasses(job)];
  const heavier = (of: string): number => {
    const [real, reckoned] = [weighed, planned].map((items) =>
      massOfAll(items.filter(({ material }) => material === of)),
    );
    return real && reckoned ? real / reckoned : 1;
  };
  const cells = weights.map(({ sample, material, length, width, thickness, mass }) => [
    ...[sample, material],
    ...[length, width, thickness].map((one) => figure(Length.in(one, "mm"))),
    figure(Mass.in(mass, "g") * heavier(material)),
  ]);
  const head = ["sample", "material", "length (mm)", "width (mm)", "thickness (mm)", "mass (g)"];
  return tableOf(tableFiles.weights, head, cells);
}

function tableOf(file: string, head: readonly string[], rows: readonly (readonly string[])[]): Texts {
  const lines = rows.map((cells) => cells.map(csvCell).join(","));
  const remark =
    "# Carried over from the last case: what it took as it was built, and the trials that it says nothing of.";
  return { [file]: [remark, head.join(","), ...lines, ""].join("\n") };
}

/** A number without what floating point adds to it. */
function figure(value: number): string {
  return String(Number(value.toPrecision(12)));
}
