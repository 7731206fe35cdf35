/** The same answers from one thread and from two, which no expected value is needed for. */
import { expect, test } from "vitest";
import { set } from "../../lib/design/index.js";
import { Asking, answersHere } from "../../lib/improve/asking.js";
import { improve } from "../../lib/improve/search.js";
import { openJob } from "../../lib/job/index.js";
import { otherJob } from "../other-jobs.js";

const bareBox = async () => openJob(await otherJob("bare-box")).with(set("demands.push", "40 N"));
const questions = new Set(["travel.tip", "joints.seams", "strength.person", "strength.panel"]);

test("two threads answer as one does, in the order of the review", async () => {
  const job = await bareBox();
  const asking = new Asking(2);
  try {
    const [both, there, here] = [
      await asking.both(job, questions),
      await asking.there(job, questions),
      await new Asking(1).both(job, questions),
    ];
    expect([...both]).toEqual([...here]);
    expect([...there]).toEqual([...here]);
    expect(new Set([...here.values()].map(({ asks }) => asks)).size).toBeGreaterThan(1);
  } finally {
    await asking.end();
  }
}, 120_000);

test("a case in memory is asked, not the files of its folder", async () => {
  const job = await bareBox();
  const asking = new Asking(2);
  const bears = job.with(set("demands.top bears", "sits"));
  try {
    const ratio = async (one: typeof job) =>
      [...(await asking.there(one, new Set(["strength.person"]))).values()].map((found) => found.ratio);
    expect(await ratio(bears)).not.toEqual(await ratio(job));
  } finally {
    await asking.end();
  }
}, 120_000);

test("what was begun aside is answered here where the thread has ended", async () => {
  const job = await bareBox();
  const asking = new Asking(2);
  asking.begin(job, ["joints.seams"]);
  await asking.end();
  const found = [...(await asking.there(job, new Set(["joints.seams"]))).values()];
  expect(found).toEqual(answersHere(job, new Set(["joints.seams"])));
}, 120_000);

test("a search on one thread finds what a search on two finds", async () => {
  const job = await bareBox();
  const found = async (threads: number) => {
    const { designs } = await improve(job, { threads, seconds: 300 });
    return designs.map(({ options, weights }) => [options.map(({ id }) => id), weights]);
  };
  const one = await found(1);
  expect(one.length).toBeGreaterThan(0);
  expect(await found(2)).toEqual(one);
}, 600_000);
