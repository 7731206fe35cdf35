import { expect, test } from "vitest";
import { openJob } from "../../../lib/job/index.js";
import { ratio } from "../../../lib/quantity/index.js";
import { jobsInWords } from "../../../lib/review/money/business.js";
import { paybackChances, paybackSwings, swingOf } from "../../../lib/review/money/payback-spread.js";

const job = openJob("soil-lab");
const { business } = job.review;

test("the chance rises month by month and is near one half where the jobs just pay", () => {
  const chances = paybackChances(job, business.built.outlay, 3, ratio(0.5), 36).map(({ chance }) => chance);
  expect(chances).toEqual([...chances].sort((a, b) => a - b));
  const { jobs } = business.built;
  if (jobs === "never") throw new Error(jobsInWords(jobs));
  expect(chances[Math.floor(jobs / 3) - 2] ?? 1).toBeLessThan(0.5);
  expect(chances[Math.ceil(jobs / 3)] ?? 0).toBeGreaterThan(0.5);
});

test("before the first job nothing is paid", () => {
  expect(paybackChances(job, business.built.outlay, 0.5, ratio(0.5), 1)).toEqual([{ month: 1, chance: 0 }]);
});

test("costs delay payback and income hastens it, by what a tenth of them is worth", () => {
  const swings = paybackSwings(job, business, ratio(0.1));
  const of = (figure: string) => swings.find((swing) => swing.figure === figure);
  const material = of("price of the material");
  const { incomePerJob, runningCostPerJob } = job.case.business;
  const margin = incomePerJob.amount - runningCostPerJob.amount;
  expect(swingOf(material ?? { figure: "", low: 0, high: 0 })).toBeCloseTo(
    (0.2 * business.material.amount) / margin,
    9,
  );
  expect(Number(of("income per job")?.high)).toBeLessThan(Number(of("income per job")?.low));
});

test("a figure that may prevent payback stands first", () => {
  const [first] = paybackSwings(job, business, ratio(0.9));
  expect(first?.figure).toBe("income per job");
  expect(first?.low).toBe("never");
});
