import { expect, test } from "vitest";
import { openJob } from "../../lib/job/index.js";
import { jobsInWords } from "../../lib/plan/money/business.js";
import {
  jobsForChance,
  type Outlay,
  outlays,
  paybackChances,
  paybackSwings,
  swingOf,
} from "../../lib/plan/money/payback-spread.js";
import { ratio } from "../../lib/quantity/index.js";

const job = openJob("soil-lab-draft");
const { business, bill } = job.review;
const [build, buy] = outlays(job, bill, business) as [Outlay, Outlay];
const { incomePerJob, runningCostPerJob } = job.case.business;
const margin = incomePerJob.amount - runningCostPerJob.amount;
const withBusiness = (change: Partial<typeof job.case.business>) => ({
  ...job,
  case: { ...job.case, business: { ...job.case.business, ...change } },
});

test("the chance rises month by month and is near one half where the jobs just pay", () => {
  const chances = paybackChances(job, build, 3, 36).map(({ chance }) => chance);
  expect(chances).toEqual([...chances].sort((a, b) => a - b));
  const { jobs } = business.built;
  if (jobs === "never") throw new Error(jobsInWords(jobs));
  expect(chances[Math.floor(jobs / 3) - 2] ?? 1).toBeLessThan(0.5);
  expect(chances[Math.ceil(jobs / 3)] ?? 0).toBeGreaterThan(0.5);
});

test("before the first job nothing is paid", () => {
  expect(paybackChances(job, build, 0.5, 1)).toEqual([{ month: 1, chance: 0 }]);
});

test("even chances need the jobs of the break-even, surer ones more, and a job at a loss never pays", () => {
  expect(jobsForChance(job, build, ratio(0.5))).toBe(business.built.jobs);
  expect(jobsForChance(job, buy, ratio(0.5))).toBe(business.bought.jobs);
  expect(Number(jobsForChance(job, build, ratio(0.95)))).toBeGreaterThan(Number(business.built.jobs));
  expect(jobsForChance(withBusiness({ runningCostPerJob: incomePerJob }), build, ratio(0.9))).toBe("never");
});

test("without spread or doubt every chance needs the same jobs", () => {
  const sure = withBusiness({ incomeSpread: ratio(0), priceDoubt: ratio(0), hoursDoubt: ratio(0) });
  const [own] = outlays(sure, bill, business) as [Outlay];
  expect(own.doubt.amount).toBe(0);
  expect(jobsForChance(sure, own, ratio(0.99))).toBe(business.built.jobs);
});

test("the doubt of a ready-made case is its price's alone, over the root of three", () => {
  const sure = withBusiness({ priceDoubt: ratio(0.3) });
  const [, bought] = outlays(sure, bill, business) as [Outlay, Outlay];
  expect(bought.doubt.amount).toBeCloseTo((0.3 * buy.cost.amount) / 1.7320508, 4);
});

test("costs delay payback and income hastens it, by what their own doubt of them is worth", () => {
  const swings = paybackSwings(withBusiness({ priceDoubt: ratio(0.1) }), business);
  const of = (figure: string) => swings.find((swing) => swing.figure === figure);
  const material = of("price of the material");
  expect(swingOf(material ?? { low: 0, high: 0 })).toBeCloseTo((0.2 * business.material.amount) / margin, 9);
  expect(Number(of("income per job")?.high)).toBeLessThan(Number(of("income per job")?.low));
});

test("a figure that may prevent payback stands first", () => {
  const [first] = paybackSwings(withBusiness({ incomeSpread: ratio(3) }), business);
  expect(first?.figure).toBe("income per job");
  expect(first?.low).toBe("never");
});
