import { expect, test } from "vitest";
import { openJob } from "../../../lib/job/index.js";
import { addMoney, ratio } from "../../../lib/quantity/index.js";
import { materialOptions } from "../../../lib/review/buying/material-options.js";

const job = openJob("soil-lab");
const options = materialOptions(job, ratio(0.1));

test("the choice of the case file stands among the options once, at the cost of its plans", () => {
  const { sheets, facings, bars, adhesives } = job.review.purchases;
  const planned = addMoney([
    ...[...sheets, ...facings, ...bars].map(({ plan }) => plan.cost),
    ...adhesives.map(({ cost }) => cost),
  ]);
  expect(options.filter(({ chosen }) => chosen).map(({ cost }) => cost)).toEqual([planned]);
});

test("options are ranked by cost, each within its own range", () => {
  const costs = options.map(({ cost }) => cost.amount);
  expect(costs).toEqual([...costs].sort((a, b) => a - b));
  expect(options.every(({ cost, low, high }) => low.amount < cost.amount && cost.amount < high.amount)).toBe(
    true,
  );
});

test("cheaper ply makes a cheaper case, all else the same", () => {
  const of = (sheet: string) =>
    options.find(
      (one) =>
        one.sheet === sheet &&
        one.bar === options[0]?.bar &&
        one.facing === options[0]?.facing &&
        one.adhesive === options[0]?.adhesive,
    );
  expect(of("poplar ply 3/8")?.cost.amount).toBeLessThan(of("birch ply 3/8")?.cost.amount ?? 0);
});
