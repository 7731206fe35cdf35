/** How much processor time the whole review of the demo takes again after one edit of one of its files. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openJob } from "../../job/index.js";
import { Refusal } from "../../refusal.js";
import { type Timed, timesOf } from "./stopwatch.js";

/** An edit that raises one figure of one file. */
export interface Edit {
  /** What is edited, in words. */
  readonly what: string;
  /** The file in the job's folder. */
  readonly file: string;
  /** The figure, between what stands before it and what stands after it. */
  readonly figure: RegExp;
  /** How much is added, in the figure's own unit. */
  readonly by: number;
}

/** One edit of each kind: money, a sheet, a mass, an opening, a measurement. */
export const edits: readonly Edit[] = [
  { what: "own hour", file: "case.yaml", figure: /(own hour: )([\d.]+)()/, by: 1 },
  {
    what: "a sheet's price",
    file: "sheet-stock.csv",
    figure: /(\n(?!name,)(?:[^,\n]*,){5})([\d.]+)(,)/,
    by: 1,
  },
  { what: "a mass inside", file: "case.yaml", figure: /(mass: )([\d.]+)( lb)/, by: 0.5 },
  {
    what: "an opening's width",
    file: "case.yaml",
    figure: /(rectangle: \{ width: )([\d.]+)(,)/,
    by: 0.125,
  },
  {
    what: "a bend test",
    file: "bend-tests.csv",
    figure: /(\n(?!strip,)(?:[^,\n]*,){8})([\d.]+)(,)/,
    by: 0.001,
  },
];

/** Each edit is made this often. */
const rounds = 3;

/**
 * Reviews a copy of the demo again after one edit at a time, and after none. What an edit leaves alone is kept between
 * reviews.
 *
 * @throws Refusal when the demo has no figure to edit
 */
export function editBench(): readonly Timed[] {
  const folder = mkdtempSync(join(tmpdir(), "casewright-bench-"));
  try {
    cpSync(openJob("soil-lab").folder, folder, { recursive: true });
    reviewed(folder);
    return [
      cpuTimed("nothing edited", () => {}, folder),
      ...edits.map((edit) => cpuTimed(`edited ${edit.what}`, () => raise(folder, edit), folder)),
    ];
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function reviewed(folder: string): string {
  return `${openJob(folder).review.findings.length} findings, processor time`;
}

function cpuTimed(work: string, prepare: () => void, folder: string): Timed {
  const times: number[] = [];
  let note = "";
  for (let round = 0; round < rounds; round++) {
    prepare();
    const before = process.cpuUsage();
    note = reviewed(folder);
    const { user, system } = process.cpuUsage(before);
    times.push((user + system) / 1000);
  }
  return timesOf(work, times, note);
}

/**
 * Makes an edit in a job's folder.
 *
 * @throws Refusal when the file has no figure to edit
 */
export function raise(folder: string, { what, file, figure, by }: Edit): void {
  const path = join(folder, file);
  const text = readFileSync(path, "utf8");
  if (!figure.test(text)) throw new Refusal(`bench: ${file} has no figure for ${what}, expected ${figure}`);
  writeFileSync(
    path,
    text.replace(figure, (_, before: string, value: string, after: string) => {
      return `${before}${Number((Number(value) + by).toFixed(4))}${after}`;
    }),
  );
}
