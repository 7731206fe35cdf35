import { beforeAll, describe, expect, test } from "vitest";
import { set } from "../../lib/design/index.js";
import { Asking } from "../../lib/improve/asking.js";
import { graveTiers, holdsForSure } from "../../lib/improve/standing.js";
import { caseWith, goalsOf, questionsOfIds, type Stepping, stepByStep } from "../../lib/improve/steps.js";
import { type Job, openJob } from "../../lib/job/index.js";
import { otherJob } from "../other-jobs.js";

let job: Job;
beforeAll(async () => {
  job = openJob(await otherJob("bare-box")).with(set("demands.push", "40 N"));
});

const stepping: Stepping = {
  isWanted: ({ tier }) => graveTiers.includes(tier),
  stillTime: () => true,
  tell: () => undefined,
  ask: new Asking(1).both,
  askAside: new Asking(1).there,
};

describe("steps", () => {
  test("end in a case of which every question was asked, and each change names what it mends", async () => {
    const { job: after, open, taken, isWhole } = await stepByStep(job, [], stepping);
    expect(isWhole).toBe(true);
    expect(open.filter(({ verdict }) => verdict !== "unknown")).toEqual([]);
    expect(taken.length).toBeGreaterThan(0);
    for (const { option, mends } of taken) expect([option.id, mends.size > 0]).toEqual([option.id, true]);
    const asked = after.review.findings.filter(({ tier }) => graveTiers.includes(tier));
    expect(asked.filter((one) => one.verdict !== "unknown" && !holdsForSure(one))).toEqual([]);
    expect(caseWith(job, taken)?.texts).toEqual(after.texts);
  }, 300_000);

  test("begin with changes that are given", async () => {
    const first = await stepByStep(job, [], stepping);
    const again = await stepByStep(job, first.taken, stepping);
    expect(again.taken).toEqual(first.taken);
    expect(again.job.texts).toEqual(first.job.texts);
  }, 300_000);

  test("end when there is no time", async () => {
    const { taken, isWhole } = await stepByStep(job, [], { ...stepping, stillTime: () => false });
    expect(taken).toEqual([]);
    expect(isWhole).toBe(false);
  });
});

test("goals are what is wanted and does not hold for sure", async () => {
  const goals = await goalsOf(job, (id) => id === "strength.person", stepping);
  expect(goals.map(({ id }) => id)).toEqual(["strength.person.box.top"]);
});

test("a finding answers the question with the longest id that begins its own", () => {
  const ids = ["travel.drop.lamp", "travel.drop-edge.lamp", "strength.person.box.top"];
  expect([...questionsOfIds(job, ids)].sort()).toEqual([
    "strength.person",
    "travel.drop",
    "travel.drop-edge",
  ]);
});
