import { expect, test } from "vitest";
import { openJob } from "../../lib/job/index.js";
import { offcutUse, rollLengths, sheetJobs } from "../../lib/plan/index.js";
import { Length, mm } from "../../lib/quantity/index.js";

const job = openJob("soil-lab-draft");

test("every facing comes off the roll, and no shorter length would do by area", () => {
  const [roll] = rollLengths(job);
  if (!roll) throw new Error("the demo sells no laminate by the roll");
  const area = job.parts.facings.reduce((sum, { width, height }) => sum + width * height, 0);
  expect(roll.length * roll.stock.width).toBeGreaterThan(area);
  expect(roll.length).toBeGreaterThanOrEqual(roll.atLeast);
  expect(Length.in(roll.atLeast, "m") * roll.stock.width).toBeGreaterThanOrEqual(area);
});

test("an offcut gives each panel once at most, those that fit it, and nothing when it is too small", () => {
  for (const {
    stock,
    job: { pieces },
  } of sheetJobs(job)) {
    const size = { length: mm(900), width: mm(700) };
    const { panels, area, atMost } = offcutUse(job, { sheet: stock.name, ...size });
    expect(new Set(panels).size).toBe(panels.length);
    const cut = pieces.filter(({ name }) => panels.includes(name));
    expect(cut.every(({ length, width }) => length <= size.length && width <= size.width)).toBe(true);
    expect(cut.reduce((sum, { length, width }) => sum + length * width, 0)).toBeCloseTo(area, 9);
    expect(area).toBeLessThanOrEqual(atMost + 1e-12);
    expect(atMost).toBeLessThanOrEqual(size.length * size.width + 1e-12);
    expect(offcutUse(job, { sheet: stock.name, length: mm(20), width: mm(20) }).panels).toEqual([]);
  }
});
