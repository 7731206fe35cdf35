/** Whatever a builder reads: sentences that are whole and short, labels in one unit, figures that make sense. */
import { describe, expect, test } from "vitest";
import { textsOf } from "../../lib/command/reference/cases/case-content.js";
import { reviewOf } from "../../lib/command/reference/cases/case-faults.js";
import { randomCase } from "../../lib/command/reference/cases/random-case.js";
import { type Design, designReader } from "../../lib/design/index.js";
import { type Job, openJob } from "../../lib/index.js";
import { problemsOf, smallJob } from "../design/small-job.js";
import { otherJob } from "../other-jobs.js";
import { faultsIn } from "./sentence-faults.js";
import { type Told, toldByNotebooks, toldByProblems, toldOf } from "./told-text.js";

/** What is bent by finite elements takes most of the time; a few random cases do. */
const isBent = (seed: number): boolean => seed % 10 === 0;

const readTexts = designReader();

function randomJob(seed: number): Job {
  const read = readTexts(textsOf(randomCase(seed, { sections: 1 })));
  if (!("design" in read)) throw new Error(`seed ${seed} is no case`);
  const design: Design = read.design;
  const review = reviewOf(design, isBent(seed));
  const job: Job = { ...design, name: "random", folder: "random", texts: {}, review, with: () => job };
  return job;
}

describe("every word of the pages and papers", () => {
  test.each([
    ["the demo", async () => openJob("soil-lab")],
    ["its draft", async () => openJob("soil-lab-draft")],
    ["a bare box", async () => openJob(await otherJob("bare-box"))],
    ["a tower of six", async () => openJob(await otherJob("tower-of-six"))],
  ] as const)(
    "of %s is plain",
    async (_, job) => {
      const all = toldOf(await job());
      expect(all.length).toBeGreaterThan(500);
      expect(faultsIn(all)).toEqual([]);
    },
    900_000,
  );

  test.each(Array.from({ length: 30 }, (_, i) => i + 1))(
    "of random case %i is plain",
    (seed) => {
      expect(faultsIn(toldOf(randomJob(seed)))).toEqual([]);
    },
    900_000,
  );
});

test("the prose of every chapter is plain", () => {
  const all = toldByNotebooks();
  expect(all.length).toBeGreaterThan(100);
  expect(faultsIn(all)).toEqual([]);
});

describe("what check says", () => {
  /** A file, what stands in it, and what a slip puts there. */
  const slips = [
    ["case.yaml", "width: 600", "width: wide"],
    ["case.yaml", "width: 600", "width: 600,5"],
    ["case.yaml", "width: 600", "width: -600"],
    ["case.yaml", "units: metric", "units: metres"],
    ["case.yaml", "currency: EUR", "currency: USD"],
    ["case.yaml", "lengths: mm", "lengths: in"],
    ["case.yaml", "purpose: tests", "purpose: tests\ncolour: red"],
    ["case.yaml", "pitch: 100", "pitch: 1/2000"],
    ["case.yaml", "people: 2", "people: 1000000000"],
    ["case.yaml", "diameter: 100", "diameter: 5000"],
    ["case.yaml", "mass: 4 kg", "mass: 4"],
    ["case.yaml", "sheet: ply 10", "sheet: ply 9"],
    ["case.yaml", "case:", "case"],
    ["case.yaml", "build:", "build: ["],
    ["case.yaml", "inside:", "\tinside:"],
    ["sheet-stock.csv", "thickness (mm)", "thickness"],
    ["sheet-stock.csv", "3+3+3+3+3", "3+3+3+x+3"],
    ["sheet-stock.csv", "ply 15,", "ply 10,"],
    ["hardware.csv", "rivet 4,10,5,2", "rivet 4,9,5,2"],
    ["hardware.csv", "2,140,104", "2,170,104"],
    ["hardware.csv", "0,0,0,rivet 4,4", "0,0,0,nail,4"],
    ["fasteners.csv", "18,9,14", "18,14,14"],
    ["facings.csv", "lam 1,sheet", "lam 1,tile"],
    ["bar-stock.csv", "price (EUR)", "price (USD)"],
  ] as const;

  test.each(slips)("of %s with %j as %j is plain", (file, stands, slip) => {
    const problems = problemsOf({ ...smallJob, [file]: smallJob[file]?.replaceAll(stands, slip) });
    expect(problems).not.toEqual([]);
    expect(faultsIn(toldByProblems(slip, problems))).toEqual([]);
  });

  test.each(Object.keys(smallJob))("of a job without %s is plain", (file) => {
    const { [file]: _, ...left } = smallJob;
    expect(faultsIn(toldByProblems("left out", problemsOf(left)))).toEqual([]);
  });
});

test("a fault is seen", () => {
  const sentence = (text: string): Told => ({ where: "x", text, as: "sentences" });
  const wrong = [
    `It ${"goes ".repeat(25)}on.`,
    "it is",
    "It is 3 in (76 mm) long.",
    "It has 1 rivets.",
    "It has 2 rivet.",
    "It is 5e-13 mm.",
    "It weighs 12.3456 kg.",
    "It is 5 mm mm long.",
    "The the case stands.",
    "There is no source.",
    "A thicker bottom.",
    "They holds it.",
    "It hold.",
    "The rivets holds.",
    "It has a QXR.",
    "It is approx. 3 mm.",
  ];
  for (const text of wrong) expect([text, faultsIn([sentence(text)])]).not.toEqual([text, []]);
  const right = ["It has 1 rivet.", "The front sags 1 in of 2 in.", "Use a thicker bottom.", "Let it hold."];
  for (const text of right) expect(faultsIn([sentence(text)])).toEqual([]);
});
