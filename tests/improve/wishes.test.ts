import { beforeAll, describe, expect, test } from "vitest";
import { sheetEdgeTrim } from "../../lib/cutting/index.js";
import { set } from "../../lib/design/index.js";
import { failingOf, graveTiers, type WishCost, type WishCosts, wishCosts } from "../../lib/improve/index.js";
import { type Job, openJob } from "../../lib/job/index.js";
import { Length } from "../../lib/quantity/index.js";
import { otherJob } from "../other-jobs.js";

/** The bare box, its sheets of another size; four of its six panels are 620 mm long, along the grain. */
let boxOf: (length: number, width: number) => Job;
/** On sheets of 1250 x 640. */
let narrow: { readonly job: Job; readonly found: WishCosts };
beforeAll(async () => {
  const bare = openJob(await otherJob("bare-box"));
  const cell = (column: string) => ({ file: "sheet-stock.csv", row: "ply 10", column });
  boxOf = (length, width) => bare.with(set(cell("length"), `${length}`), set(cell("width"), `${width}`));
  const job = boxOf(1250, 640);
  narrow = { job, found: await wishCosts(job) };
});

function costIn({ costs }: WishCosts, what: RegExp): WishCost | undefined {
  return costs.find((one) => what.test(one.what));
}

describe("the grain of a piece", () => {
  // A sheet of 1250 x 640 holds one piece of 620 x 500 lengthwise, and two where one lies across: 500 + 620 < 1225.
  test("costs a sheet where a turned piece goes beside another", () => {
    const { job, found } = narrow;
    expect(job.review.purchases.sheets[0]?.plan.sheets).toHaveLength(4);
    expect(costIn(found, /grain of box\.front/)).toMatchObject({
      money: { amount: 60, currency: "EUR" },
      sheets: 1,
      bars: 0,
      proven: true,
    });
    expect(costIn(found, /grain of box\.left/)).toBeUndefined();
  });

  test("costs no more for one piece than for all", () => {
    const { found } = narrow;
    const all = costIn(found, /every piece/)?.sheets ?? 0;
    for (const cost of found.costs.filter(({ what }) => /^the grain/.test(what)))
      expect(cost.sheets).toBeLessThanOrEqual(all);
  });

  test("costs nothing on a sheet that holds everything", async () => {
    const found = await wishCosts(boxOf(2500, 1250));
    expect(found.costs.filter(({ what }) => /grain/.test(what))).toEqual([]);
    expect(found.free).toBeGreaterThan(6);
  });
});

describe("a size", () => {
  // Two pieces of 617 mm and the cut between them go into a trimmed sheet that two of 620 or 619 do not.
  test("is told at the least step that saves, and the bill is that of the smaller case", async () => {
    const job = boxOf(Length.in(Length.si(2 * 0.617 + 0.0032 + 2 * sheetEdgeTrim), "mm"), 640);
    const found = await wishCosts(job);
    const cost = costIn(found, /in width/);
    expect(cost?.without).toBe("it is 3 mm less");
    const billAt = (width: number): number =>
      job.with(set("sections.box.inside.width", `${width} mm`)).review.bill.total.amount;
    expect(cost?.money.amount).toBeCloseTo(job.review.bill.total.amount - billAt(597), 9);
    expect(billAt(599)).toBe(job.review.bill.total.amount);
  });
});

test("of what fails, only what did not fail before is told", () => {
  const { job, found } = narrow;
  const before = new Set(failingOf(job.review, graveTiers).map(({ id }) => id));
  const told = found.costs.flatMap(({ fails }) => fails ?? []);
  expect(told.filter((id) => before.has(id))).toEqual([]);
  expect(costIn(found, /grain of box\.front/)?.fails).toBeDefined();
});

test("spares and whole packs are told at what the bill leaves over", async () => {
  const job = boxOf(2500, 1250);
  const { costs } = await wishCosts(job);
  const left = job.review.bill.lines
    .filter(({ trade }) => trade === "fasteners" || trade === "adhesive")
    .reduce((sum, { quantity, used = quantity, unitPrice }) => sum + (quantity - used) * unitPrice.amount, 0);
  const washers = costs.find(({ what }) => /^packs/.test(what));
  expect(washers?.money.amount).toBeLessThanOrEqual(left + 1e-9);
  expect(washers?.money.amount).toBeGreaterThan(0);
});

test("a search that is ended keeps what is known and says how many were untried", async () => {
  const found = await wishCosts(boxOf(2500, 1250), { signal: AbortSignal.abort() });
  expect(found.costs).toEqual([]);
  expect(found.untried).toBeGreaterThan(10);
});
