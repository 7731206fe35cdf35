/** Made-up cases, each made to hold: what is proposed is written and reviewed by a process of its own, and locks hold. */
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { placesOf, type Texts } from "../design/index.js";
import { type Improved, type Improvement, improve, textsWith } from "../improve/index.js";
import { type Job, readJob } from "../job/index.js";
import { textsOf } from "./reference/cases/case-content.js";
import { randomCase } from "./reference/cases/random-case.js";
import { reviewedAfresh } from "./review-afresh.js";

/** How a made-up case is tried. */
export interface TryWanted {
  /** The number of the case: the same case for the same number. */
  readonly seed: number;
  /** How long each search may take, s. */
  readonly seconds: number;
}

/** What became of a made-up case. */
export interface TriedCase {
  /** Findings that did not hold. */
  readonly failing: number;
  /** Designs that were proposed, with and without a lock. */
  readonly designs: number;
  /** What was locked the second time: a block that a design, or the nearest to one, moved. */
  readonly locked?: string;
  /** What should not be. */
  readonly faults: readonly string[];
}

/** Makes one case hold, writes each design and has it reviewed afresh; then again with something locked. */
export async function triedCase({ seed, seconds }: TryWanted): Promise<TriedCase> {
  const folder = await mkdtemp(join(tmpdir(), "casewright-improve-"));
  try {
    const job = await writtenJob(join(folder, "case"), textsOf(randomCase(seed, { sections: 2 })));
    const found = await improve(job, { seconds });
    const { designs, failing } = found;
    const faults = await faultsOf(job, designs, join(folder, "design"));
    const locked = movedBlock(triedIn(found));
    if (locked === undefined) return { failing: failing.length, designs: designs.length, faults };
    const kept = await writtenJob(join(folder, "kept"), withLock(job.texts, locked));
    const again = await improve(kept, { seconds });
    const later = await faultsOf(kept, again.designs, join(folder, "kept-design"));
    const moved = triedIn(again).flatMap((design, i) => movedLock(kept, design, locked, i));
    return {
      failing: failing.length,
      designs: designs.length + again.designs.length,
      locked,
      faults: [...faults, ...later, ...moved],
    };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** The designs, or the one that came nearest: a lock holds for it too. */
function triedIn({ designs, nearest }: Improvement): readonly Improved[] {
  return [...designs, ...(nearest ? [nearest] : [])];
}

/** @throws Error where the texts are no job */
async function writtenJob(folder: string, texts: Texts): Promise<Job> {
  await mkdir(folder, { recursive: true });
  for (const [file, text] of Object.entries(texts)) await writeFile(join(folder, file), text);
  const read = readJob(folder);
  if ("problems" in read) throw new Error(`a made-up case has problems: ${JSON.stringify(read.problems[0])}`);
  return read.job;
}

/** What a process of its own finds in designs that were written. */
async function faultsOf(job: Job, designs: readonly Improved[], folder: string): Promise<readonly string[]> {
  const faults: string[] = [];
  for (const [i, { options }] of designs.entries()) {
    await writtenJob(`${folder}-${i}`, textsWith(job, options));
    const found = await reviewedAfresh(`${folder}-${i}`, false);
    if (found !== undefined) faults.push(`design ${i + 1}: ${found}`);
  }
  return faults;
}

/** The block of case.yaml that the first change of a design is in. */
function movedBlock(designs: readonly Improved[]): string | undefined {
  const places = designs.flatMap(({ options }) =>
    options.flatMap(({ changes }) =>
      changes.flatMap((change) =>
        change.kind !== "edits" && typeof change.at === "string" ? change.at : [],
      ),
    ),
  );
  return places.map((place) => place.split(".")[0]).find((block) => block !== "stiffeners");
}

function withLock(texts: Texts, block: string): Texts {
  return { ...texts, "case.yaml": `${texts["case.yaml"] ?? ""}keep: [${block}]\n` };
}

/** A block that is locked and says something else in a design. */
function movedLock(job: Job, { options }: Improved, block: string, i: number): readonly string[] {
  const said = (texts: Texts): string =>
    JSON.stringify(placesOf(texts["case.yaml"] ?? "", block).map(({ value }) => value));
  return said(job.texts) === said(textsWith(job, options)) ? [] : [`design ${i + 1} moves ${block}`];
}
