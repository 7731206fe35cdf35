import { expect, test } from "vitest";
import { set } from "../../lib/design/index.js";
import { openJob } from "../../lib/job/index.js";
import { timeTable } from "../../lib/notebook/tables/money.js";

test("what counts by area counts by the foot of a case in inches, and takes as long in all", () => {
  const job = openJob("soil-lab");
  const row = (of: typeof job): readonly string[] =>
    timeTable(of).rows.find(([, , many = ""]) => /t²$|m²$/.test(many)) ?? [];
  const [inches, metric] = [row(job), row(job.with(set("units", "metric")))];
  const number = (text = ""): number => Number.parseFloat(text);
  expect([inches[2], metric[2]]).toEqual([expect.stringMatching(/ ft²$/), expect.stringMatching(/ m²$/)]);
  expect(number(inches[2]) / number(metric[2])).toBeCloseTo(10.76, 1);
  expect(number(metric[3]) / number(inches[3])).toBeCloseTo(10.76, 0);
  expect(inches[4]).toBe(metric[4]);
});
