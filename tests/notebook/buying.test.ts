/** What the chapter about buying says of a small case. */
import { expect, test } from "vitest";
import { openJob } from "../../lib/job/index.js";
import { buyingAnswer, kerfPoints } from "../../lib/notebook/index.js";
import { mm } from "../../lib/quantity/index.js";
import { otherJob } from "../other-jobs.js";

test("the answer names what there is to buy, one and many, and nothing else", async () => {
  expect(buyingAnswer(openJob(await otherJob("bare-box")))).toMatch(
    /^Buy 1 sheet of ply and 2 bars for 84\.00 EUR\. With a kerf of 3\.2 mm \([a-z ]+\) no plan can cost less\.$/,
  );
});

test("kerfs are charted in the case's own unit", async () => {
  const kerfs = [mm(2), mm(4)];
  const of = (rows: ReturnType<typeof kerfPoints>): number[] => [...new Set(rows.map(({ kerf }) => kerf))];
  expect(of(kerfPoints(openJob(await otherJob("bare-box")), kerfs))).toEqual([2, 4]);
  expect(of(kerfPoints(openJob("soil-lab-draft"), kerfs))).toEqual([0.07874, 0.15748]);
});
