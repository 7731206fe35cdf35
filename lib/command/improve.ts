/** npm run improve -- JOB: which changes make a case hold, what each design costs, and the changed case to keep. */
import { existsSync } from "node:fs";
import { mkdir, writeFile } from "node:fs/promises";
import { join, relative, resolve } from "node:path";
import { parseArgs } from "node:util";
import { asTyped } from "../book/index.js";
import type { Finding, Tier } from "../findings/index.js";
import {
  beforeAndAfter,
  failingOf,
  figuresOf,
  graveTiers,
  howFar,
  type Improved,
  type Improvement,
  improve as improved,
  movedHeadings,
  movedInWords,
  type Progress,
  reachHeadings,
  reachInWords,
  searchInWords,
  textsWith,
  unpricedOf,
  wishCosts,
  wishHeadings,
  wishInWords,
} from "../improve/index.js";
import { demoJob, type Job } from "../job/index.js";
import { problemReport, readNamed } from "./check.js";
import { usageOf } from "./help.js";
import { triedCase } from "./improve-cases.js";
import { reviewedAfresh } from "./review-afresh.js";
import { textTable } from "./text-table.js";

/** What is asked for. */
interface Asked {
  /** The job. */
  readonly name: string;
  /** The design to write, counted from 1. */
  readonly apply?: number;
  /** Where it is written. */
  readonly out?: string;
  /** How long it may take, s. */
  readonly seconds: number;
  /** Whether handling must hold too. */
  readonly handling: boolean;
  /** How many made-up cases to try in place of a job, and the number of the first. */
  readonly cases?: { readonly count: number; readonly seed: number };
  /** Whether the question is only what fails of the case as it is. */
  readonly verify: boolean;
  /** Whether the question is what the builder's wishes cost. */
  readonly wishes: boolean;
  /** Whether the question is how far its numbers may go; words of their places, where some were said. */
  readonly howFar?: readonly string[];
}

/**
 * Looks for the least changes that make a job hold, and tells the designs that no other beats.
 *
 * @param args name of the job, and options
 * @returns exit code: 0 with a design or nothing to mend, 1 without a job or with a wrong option, 2 where nothing found holds
 */
export async function improve(args: readonly string[]): Promise<number> {
  const asked = askedBy(args);
  if (typeof asked === "string") return refused(`${asked}\n${usageOf("improve")}`);
  if (asked.cases) return toldCases(asked.cases, asked);
  const read = readNamed(asked.name);
  if ("problems" in read) return refused(problemReport(asked.name, read.problems));
  const { job } = read;
  if (asked.verify) return toldFailing(job, asked);
  if (asked.howFar) return toldHowFar(job, asked, asked.howFar);
  if (asked.wishes) return toldWishes(job, asked);
  const folder = resolve(asked.out ?? `${job.folder}-design-${asked.apply ?? 1}`);
  if (asked.apply !== undefined && existsSync(folder)) {
    return refused(`${shown(folder)} is there already: choose another with --out, or remove it first`);
  }
  const found = await searched(job, asked);
  console.log(report(asked.name, job, found));
  return asked.apply === undefined ? exitCode(found) : written(job, found, asked, folder);
}

function refused(words: string): number {
  console.error(words);
  return 1;
}

function shown(folder: string): string {
  return relative(process.cwd(), folder) || folder;
}

/** Ctrl+C ends the search and keeps the best so far; a second one ends the program. */
async function searched(job: Job, { seconds, handling }: Asked): Promise<Improvement> {
  return untilInterrupted((signal) =>
    improved(job, {
      seconds,
      signal,
      onProgress: (progress) => console.log(progressLine(progress)),
      tiers: tiersOf({ handling }),
    }),
  );
}

function tiersOf({ handling }: Pick<Asked, "handling">): readonly Tier[] {
  return handling ? [...graveTiers, "handling"] : graveTiers;
}

/** What may fail of a case as its files stand; 0 where nothing does. */
function toldFailing({ review }: Job, asked: Asked): number {
  const failing = failingOf(review, tiersOf(asked));
  const words = failing.map(({ id, question }) => `${id}: ${question}`);
  console.log(failing.length === 0 ? "nothing fails" : words.join("\n"));
  return failing.length === 0 ? 0 : 2;
}

async function untilInterrupted<Found>(work: (signal: AbortSignal) => Promise<Found>): Promise<Found> {
  const stop = new AbortController();
  const onInterrupt = (): void => stop.abort();
  process.once("SIGINT", onInterrupt);
  try {
    return await work(stop.signal);
  } finally {
    process.off("SIGINT", onInterrupt);
  }
}

/** Tries made-up cases one after another, a line each; 2 where something should not be. */
async function toldCases(
  { count, seed }: { readonly count: number; readonly seed: number },
  { seconds }: Asked,
): Promise<number> {
  let bad = 0;
  for (let one = seed; one < seed + count; one++) {
    const { failing, designs, locked, faults } = await triedCase({ seed: one, seconds });
    const lock = locked === undefined ? "" : `, ${locked} locked`;
    console.log(`case ${one}: ${failing} open, ${designs} designs${lock}: ${faults.join("; ") || "well"}`);
    if (faults.length > 0) bad++;
  }
  console.log(`${count} cases, ${bad} of them not well`);
  return bad > 0 ? 2 : 0;
}

/** How far each number may go, and what moves each finding most. */
async function toldHowFar(job: Job, { seconds }: Asked, places: readonly string[]): Promise<number> {
  const found = await untilInterrupted((signal) =>
    howFar(job, { seconds, signal, ...(places.length > 0 ? { places } : {}) }),
  );
  const { reaches, moved, untried, questions } = found;
  const left =
    untried > 0
      ? [`Time ran out with ${untried} numbers untried: give more --seconds, or name a place.`]
      : [];
  console.log(
    [
      textTable(reachHeadings, reaches.map(reachInWords)),
      "",
      textTable(movedHeadings, moved.map(movedInWords)),
      "",
      `Both values of a row were tried on the case itself. ${questions.length} questions were asked, those of safety and strength told.`,
      places.length > 0
        ? "Those that bend panels or boxes were asked where a small step of the number moves them; those about shared space were not."
        : "Those that bend panels or boxes were not, nor those about shared space: name a place to have the former.",
      ...left,
    ].join("\n"),
  );
  return 0;
}

/** What each wish of the builder costs, the dearest first. */
async function toldWishes(job: Job, { seconds }: Asked): Promise<number> {
  const { costs, free, untried } = await untilInterrupted((signal) => wishCosts(job, { seconds, signal }));
  const left = untried > 0 ? [`Time ran out with ${untried} wishes untried: give more --seconds.`] : [];
  console.log(
    [
      ...(costs.length > 0 ? [textTable(wishHeadings, costs.map(wishInWords)), ""] : []),
      `Without ${free === 1 ? "1 other wish" : `${free} other wishes`} nothing is saved. Each was planned again by itself, so savings do not add up.`,
      ...left,
    ].join("\n"),
  );
  return 0;
}

function progressLine({ words, seconds }: Progress): string {
  return `${seconds.toFixed(1).padStart(6)} s  ${words}`;
}

/** What is asked for, or what is wrong with it. */
function askedBy(args: readonly string[]): Asked | string {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        apply: { type: "string" },
        out: { type: "string" },
        seconds: { type: "string", default: "60" },
        handling: { type: "boolean", default: false },
        "how-far": { type: "boolean", default: false },
        verify: { type: "boolean", default: false },
        wishes: { type: "boolean", default: false },
        cases: { type: "string" },
        seed: { type: "string", default: "1" },
      },
    });
    const [name = demoJob, ...more] = positionals;
    if (values["how-far"]) return askedOf(name, values, more);
    if (more.length > 0) return `expected one job, got ${positionals.join(", ")}`;
    return askedOf(name, values);
  } catch (error) {
    if (error instanceof TypeError) return error.message.split(". ")[0] ?? "";
    throw error;
  }
}

function askedOf(
  name: string,
  values: {
    readonly apply?: string;
    readonly out?: string;
    readonly seconds: string;
    readonly handling: boolean;
    readonly verify: boolean;
    readonly wishes: boolean;
    readonly cases?: string;
    readonly seed: string;
  },
  howFar?: readonly string[],
): Asked | string {
  const { apply, out, seconds, handling, verify, wishes, cases, seed } = values;
  if (![cases ?? "1", seed].every((one) => /^\d{1,9}$/.test(one)))
    return `--cases and --seed: found ${cases ?? ""} ${seed}, expected whole numbers`;
  if (!/^\d+(\.\d+)?$/.test(seconds) || !(Number(seconds) > 0))
    return `--seconds: found "${seconds}", expected seconds, such as --seconds 120`;
  if (apply !== undefined && !/^[1-7]$/.test(apply))
    return `--apply: found "${apply}", expected the number of a design, 1 to 7`;
  if (out !== undefined && apply === undefined) return "--out: expected --apply beside it";
  return {
    name,
    seconds: Number(seconds),
    handling,
    verify,
    wishes,
    ...(howFar === undefined ? {} : { howFar }),
    ...(apply === undefined ? {} : { apply: Number(apply) }),
    ...(out === undefined ? {} : { out }),
    ...(cases === undefined ? {} : { cases: { count: Number(cases), seed: Number(seed) } }),
  };
}

function exitCode({ designs, failing }: Improvement): number {
  return designs.length > 0 || failing.length === 0 ? 0 : 2;
}

/** Everything that was found, in words and tables. */
function report(name: string, job: Job, found: Improvement): string {
  const { failing, designs, nearest, unmet, atOdds } = found;
  if (failing.length === 0) return `${name}: nothing fails, so nothing has to change`;
  const parts = [
    `${name}: ${failing.length === 1 ? "1 finding does" : `${failing.length} findings do`} not hold for sure`,
    ...(designs.length > 0 ? [frontTable(job, found)] : []),
    ...designs.map((design, i) => designWords(job, design, `Design ${i + 1}`)),
    ...(designs.length === 0 && nearest ? [designWords(job, nearest, "No design holds. The nearest")] : []),
    ...(unmet.length > 0 ? [unmetWords(unmet)] : []),
    ...(atOdds.length > 0 ? [atOddsWords(atOdds, [...failing, ...unmet])] : []),
    searchInWords(found).join("\n"),
    ...(designs.length > 0 ? [`To keep one: ${asTyped("improve")} ${name} --apply 1`] : []),
  ];
  return `\n${parts.join("\n\n")}`;
}

function frontTable(job: Job, { before, designs }: Improvement): string {
  const rows = designs.map((design, i) => {
    const { cost, mass, time } = figuresOf(before, design, { system: job.case.units });
    const { rules } = design.weights;
    return [
      `${i + 1}`,
      `${design.options.length}`,
      `${rules}`,
      `${cost.after} (${cost.more})`,
      `${mass.after} (${mass.more})`,
      `${time.after} (${time.more})`,
      `${design.unknown.length}`,
    ];
  });
  const [first] = designs;
  const now = first && figuresOf(before, first, { system: job.case.units });
  const asIs = ["now", "", "", now?.cost.before ?? "", now?.mass.before ?? "", now?.time.before ?? "", ""];
  const header = [
    "design",
    "changes",
    "of them rules",
    "cost",
    "mass with contents",
    "hours",
    "still unknown",
  ];
  return textTable(header, [asIs, ...rows]);
}

function designWords(job: Job, design: Improved, title: string): string {
  const lines = design.options.flatMap((option) => [
    `  - ${option.words}`,
    ...beforeAndAfter(job, option).map(
      ({ place, before, after }) => `      ${place}: ${before || "nothing"} → ${after || "nothing"}`,
    ),
  ]);
  const unpriced = unpricedOf(design);
  const unknown = design.unknown.map(({ id, missing }) => `  ${id}: ${missing?.measure ?? "not known"}`);
  return [
    `${title}:`,
    ...lines,
    ...(unpriced.length > 0 ? [`  Not priced by your tables: ${unpriced.join("; ")}.`] : []),
    ...(unknown.length > 0 ? ["  Still to be measured:", ...unknown.map((line) => `  ${line}`)] : []),
  ].join("\n");
}

function unmetWords(unmet: readonly Finding[]): string {
  const lines = unmet.map(({ id, question }) => `  ${id}: ${question}`);
  return ["Nothing known helps here: give up one of these demands, or find another way.", ...lines].join(
    "\n",
  );
}

/** Which demands do not go together, each with its question. */
function atOddsWords(ids: readonly string[], findings: readonly Finding[]): string {
  const lines = ids.map((id) => `  ${id}: ${findings.find((one) => one.id === id)?.question ?? ""}`);
  return ["Each of these can be met, and not all together: give up one.", ...lines].join("\n");
}

/** Writes the changed case, and has a fresh process review what was written; 2 where there is no such design, or it fails. */
async function written(
  job: Job,
  found: Improvement,
  { apply = 1, handling }: Asked,
  folder: string,
): Promise<number> {
  const design = found.designs[apply - 1];
  if (!design) {
    console.error(`--apply ${apply}: there are ${found.designs.length} designs`);
    return 2;
  }
  await mkdir(folder, { recursive: true });
  const texts = Object.entries(textsWith(job, design.options));
  await Promise.all(texts.map(([file, text]) => writeFile(join(folder, file), text)));
  console.log(`wrote ${shown(folder)}, and now review it from its files`);
  const failing = await reviewedAfresh(folder, handling);
  if (failing === undefined) console.log("nothing of it fails, as a process of its own reviewed it");
  else console.error(`a process of its own finds of it:\n${failing}`);
  return failing === undefined ? 0 : 2;
}
