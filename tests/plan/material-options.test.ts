import { expect, test } from "vitest";
import { openJob } from "../../lib/job/index.js";
import { materialOptions } from "../../lib/plan/money/material-options.js";
import { addMoney, Mass, ratio, Volume } from "../../lib/quantity/index.js";

const job = openJob("soil-lab-draft");
const options = materialOptions(job);

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

test("without a price doubt only what was measured is left open, and without either nothing", () => {
  const { business } = job.case;
  const sure = { ...job, case: { ...job.case, business: { ...business, priceDoubt: ratio(0) } } };
  const widest = Math.max(...materialOptions(sure).map(({ low, high }) => high.amount - low.amount));
  expect(widest).toBeLessThan(Math.max(...options.map(({ low, high }) => high.amount - low.amount)));
  const unmeasured = { ...sure, measurements: { ...job.measurements, kerfs: [], spreads: [] } };
  for (const { cost, low, high } of materialOptions(unmeasured)) {
    expect([low.amount, high.amount]).toEqual([cost.amount, cost.amount]);
  }
});

test("spread trials far apart leave open how many cans are needed", () => {
  const [trial] = job.measurements.spreads;
  if (!trial) throw new Error("no trial");
  const apart = [1, 1.3, 1, 1.3].map((factor, i) => ({
    ...trial,
    trial: `trial ${i}`,
    gained: undefined,
    after: Mass.si(trial.before - factor * (trial.before - trial.after)),
  }));
  const { business } = job.case;
  const input = {
    ...job,
    case: { ...job.case, business: { ...business, priceDoubt: ratio(0) } },
    measurements: { ...job.measurements, kerfs: [], spreads: apart },
  };
  const small = {
    ...input.stock,
    adhesives: input.stock.adhesives.filter(({ name }) => name === trial.adhesive),
  };
  const cans = small.adhesives.map((glue) => ({ ...glue, content: Volume.si(glue.content / 20) }));
  const [option] = materialOptions({ ...input, stock: { ...small, adhesives: cans } });
  expect(option?.low.amount).toBeLessThan(option?.cost.amount ?? 0);
  expect(option?.high.amount).toBeGreaterThan(option?.cost.amount ?? 0);
});
