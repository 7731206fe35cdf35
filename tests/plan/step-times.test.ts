/** Rows of the found steps of the small job: no timed work is lost, and each goes to the steps that do it. */
import { describe, expect, test } from "vitest";
import { caseOrder, purchaseList, timedRows, workTimes } from "../../lib/plan/index.js";
import { Time } from "../../lib/quantity/index.js";
import { designOf, smallJob } from "../design/small-job.js";

const design = designOf({
  ...smallJob,
  "timings.csv": `work,unit,tool,pieces,time (min)
cut sheet,cut,saw,10,30
mark out hole,hole,square,10,5
drill hole,hole,drill,10,10
set rivet,rivet,riveter,10,4
mount hardware,hardware,hands,1,6
cut bar,bar,mitre saw,1,2
assemble box,case,clamps,1,100
clean and check,case,cloth,1,45`,
});
const found = caseOrder(design);
const times = workTimes(design, purchaseList(design));
const cure = Time.of(24, "h");
const rows = timedRows(found, design.parts, times, cure);
const minutes = (some: readonly { readonly time: Time }[]): number =>
  some.reduce((sum, { time }) => sum + Time.in(time, "min"), 0);
const withStep = (key: string) => rows.filter(({ steps }) => steps.some((step) => step.key === key));

describe("rows of the found order", () => {
  test("take as long as all works together, and have every found step once", () => {
    expect(found.order.kind).toBe("found");
    expect(minutes(rows)).toBeCloseTo(minutes(times), 6);
    const keys = rows
      .flatMap(({ steps }) => steps.map(({ key }) => key))
      .filter((key) => key !== "cut the bars");
    expect(keys).toEqual(found.order.kind === "found" ? found.order.steps.map(({ key }) => key) : []);
  });

  test("count marking with drilling, bars by themselves, and cleaning last", () => {
    const holes = design.parts.fastenings.reduce((sum, { count }) => sum + count, 0);
    expect(minutes(withStep("drill the panels"))).toBeCloseTo(1.5 * holes, 6);
    expect(minutes(withStep("cut the bars"))).toBeCloseTo(2 * design.parts.bars.length, 6);
    expect(rows.at(-1)).toMatchObject({ steps: [], works: ["clean and check"] });
    expect(minutes(rows.slice(-1))).toBeCloseTo(45, 6);
  });

  test("wait for the glue once, without work, and never come before what they follow", () => {
    expect(rows.filter(({ wait }) => wait > 0).map(({ time, wait }) => [time, wait])).toEqual([[0, cure]]);
    rows.forEach(({ after }, i) => {
      for (const before of after) expect(before).toBeLessThan(i);
    });
  });
});
