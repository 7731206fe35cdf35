import { mkdtemp, readFile, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import type { Option } from "../../lib/improve/option.js";
import { optionsFor } from "../../lib/improve/options/index.js";
import { type Improvement, improve } from "../../lib/improve/search.js";
import { graveTiers, holdsForSure, mayFail } from "../../lib/improve/standing.js";
import { textsWith, withOptions } from "../../lib/improve/trial.js";
import { type Job, openJob } from "../../lib/job/index.js";
import type { ProblemsError } from "../../lib/problem.js";
import { otherJob } from "../other-jobs.js";

/** A bare box that a gentle push does not tip: only somebody on its top breaks it. */
async function gentleBox(more = ""): Promise<Job> {
  const folder = await otherJob("bare-box");
  const file = join(folder, "case.yaml");
  const text = await readFile(file, "utf8");
  await writeFile(file, `${text.replace("push: 100 N", "push: 40 N")}${more}`);
  return openJob(folder);
}

function failingOf({ review }: Job): readonly string[] {
  return review.findings.filter((one) => graveTiers.includes(one.tier) && mayFail(one)).map(({ id }) => id);
}

/** Every set of options with one of a lever at the most. */
function subsetsOf(options: readonly Option[]): readonly (readonly Option[])[] {
  const sets: (readonly Option[])[] = [[]];
  for (const one of options) {
    const free = sets.filter((set) => !set.some(({ lever }) => lever === one.lever));
    sets.push(...free.map((set) => [...set, one]));
  }
  return sets;
}

describe("a box on whose top nobody may stand", () => {
  let job: Job;
  let found: Improvement;
  beforeAll(async () => {
    job = await gentleBox();
    found = await improve(job, { seconds: 240 });
  }, 900_000);

  test("fails for that alone, and gets a design in which nothing fails", () => {
    expect(failingOf(job)).toEqual(["strength.person.box.top"]);
    expect(found.designs.length).toBeGreaterThan(0);
    for (const design of found.designs) expect(failingOf(design.job)).toEqual([]);
  });

  test("costs no more than the cheapest of all sets of what is offered", () => {
    const failing = job.review.findings.filter(({ id }) => failingOf(job).includes(id));
    const holding = subsetsOf(optionsFor(job, failing)).flatMap((options) => {
      const tried = withOptions(job, options);
      return tried && failingOf(tried).length === 0 ? [tried.review.bill.total.amount] : [];
    });
    expect(found.designs[0]?.measures.cost).toBeCloseTo(Math.min(...holding), 6);
  }, 900_000);

  test("holds in files that are written and read again", async () => {
    const [design] = found.designs;
    const folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
    const texts = textsWith(job, design?.options ?? []);
    for (const [file, text] of Object.entries(texts)) await writeFile(join(folder, file), text);
    const again = openJob(folder);
    expect(failingOf(again)).toEqual([]);
    expect(again.review.bill.total).toEqual(design?.job.review.bill.total);
  });
});

describe("what is kept", () => {
  test("never moves", async () => {
    const kept = await gentleBox("keep: [demands]\n");
    const { designs, nearest } = await improve(kept, { seconds: 240 });
    const all = [...designs, ...(nearest ? [nearest] : [])];
    for (const design of all) expect(design.job.case.demands).toEqual(kept.case.demands);
  }, 900_000);

  test("is found by what the case comes to, not by what its file says", async () => {
    const kept = await gentleBox("keep: [box]\n");
    const option: Option = {
      id: "all of another sheet",
      lever: "build.sheet",
      words: "",
      changes: [{ kind: "set", at: "build.sheet", to: "ply 6" }],
      helps: [],
      rule: false,
    };
    const other = kept.stock.sheets.find(({ name }) => name !== "ply 10");
    const changes = [{ kind: "set", at: "build.sheet", to: other?.name ?? "" }] as const;
    expect(withOptions(await gentleBox(), [{ ...option, changes }])).toBeDefined();
    expect(withOptions(kept, [{ ...option, changes }])).toBeUndefined();
  });

  test("must be there", async () => {
    const error = await gentleBox("keep: [lid]\n").catch((one) => one);
    expect((error as ProblemsError).problems).toEqual([
      {
        file: "case.yaml",
        row: 44,
        column: "keep.0",
        value: "lid",
        expected: 'a place that this file has, such as "sections" or "hardware", or a table of the job',
      },
    ]);
  });
});

test("a search that is told to end ends, with the best so far", async () => {
  const job = await gentleBox();
  const stop = new AbortController();
  const words: string[] = [];
  const found = await improve(job, {
    signal: stop.signal,
    onProgress: (progress) => {
      words.push(progress.words);
      if (progress.designs > 0) stop.abort();
    },
  });
  expect(found.designs.length).toBe(1);
  expect(found.isWhole).toBe(false);
  expect(words[0]).toBe("reviewing the case as it is");
}, 900_000);

test("a finding holds for sure only with the upper end of its interval", () => {
  const interval = { low: 0.8, high: 1.1, source: "tests" } as never;
  expect(holdsForSure({ verdict: "holds", ratio: 0.9 })).toBe(true);
  expect(holdsForSure({ verdict: "holds", ratio: 0.9, interval })).toBe(false);
  expect(mayFail({ verdict: "unknown" })).toBe(false);
  expect(mayFail({ verdict: "close", ratio: 0.9, interval })).toBe(true);
});
