/** The chapter about what rides inside, of a case in which nothing does. */
import { expect, test } from "vitest";
import { openJob } from "../../lib/job/index.js";
import {
  bracketRows,
  hasPlatform,
  insideAnswer,
  nothingInside,
  nothingWarms,
} from "../../lib/notebook/index.js";
import { designOf, smallJob } from "../design/small-job.js";
import { otherJob } from "../other-jobs.js";

test("an empty case without power is asked nothing, and says so", async () => {
  const box = openJob(await otherJob("bare-box"));
  expect(nothingInside(box)).toBe(true);
  expect(insideAnswer(box)).toBe("Nothing rides inside and nothing draws power, so there is nothing to ask.");
});

test("one thing inside is enough to be asked about", async () => {
  expect(nothingInside(openJob(await otherJob("tower-of-six")))).toBe(false);
  expect(nothingInside(openJob("soil-lab-draft"))).toBe(false);
});

test("a platform and heat are shown of a case that has them, and of no other", async () => {
  const tower = openJob(await otherJob("tower-of-six"));
  const demo = openJob("soil-lab");
  expect([hasPlatform(tower), hasPlatform(demo)]).toEqual([false, false]);
  const words = {
    "case.yaml": `${smallJob["case.yaml"]}`.replace("support: two ends", "support: back only"),
  };
  expect(hasPlatform(designOf({ ...smallJob, ...words }))).toBe(true);
  const warm = (job: typeof demo) => job.parts.sections.filter(({ name }) => !nothingWarms(job, name)).length;
  expect([warm(tower), warm(demo)]).toEqual([0, demo.parts.sections.length]);
});

test("a bracket is charted in the case's own units, twice as high as the reach at most", async () => {
  const platform = { load: "100 N", reach: "120 mm", width: "250 mm", screws: 4 };
  const rows = bracketRows(openJob(await otherJob("bare-box")), platform);
  // Moments about the bearing edge: 100 N over 120 mm against four screws over 240 mm.
  expect(rows.at(-1)?.height).toBeCloseTo(240, 9);
  expect(rows.at(-1)?.pull).toBeCloseTo(12.5, 9);
});
