import { expect, test } from "vitest";
import type { BusinessInput } from "../../lib/model/index.js";
import { purchaseList, workTimes } from "../../lib/plan/index.js";
import { designOf, smallJob } from "../design/small-job.js";

const timings = `work,unit,tool,pieces,time (min)
set rivet,rivet,hand riveter,40,14
set rivet,rivet,powered riveter,40,6
cut sheet,cut,track saw,12,60`;
const described = (tools: string): BusinessInput =>
  designOf({
    ...smallJob,
    "timings.csv": timings,
    "case.yaml": (smallJob["case.yaml"] ?? "").replace("tools: { riveter: 40 }", tools),
  });

const toolFor = (input: BusinessInput): string | undefined =>
  workTimes(input, purchaseList(input)).find(({ work }) => work === "set rivet")?.tool;

test("hours are those of the tool that the case pays for, whether another is quicker or not", () => {
  expect(toolFor(described("tools: { hand riveter with long handles: 58 }"))).toBe("hand riveter");
  expect(toolFor(described("tools: { powered riveter: 300 }"))).toBe("powered riveter");
});

test("where the case pays for none of them, or does not say which, they are those of the quickest", () => {
  expect(toolFor(described("tools: { J-roller: 19 }"))).toBe("powered riveter");
  expect(toolFor(described("tools: { hand riveter: 58, powered riveter: 300 }"))).toBe("powered riveter");
});

test("every cut counts: through sheets and laminate, and four to trim each sheet", () => {
  const input = described("tools: { J-roller: 19 }");
  const purchases = purchaseList(input);
  const cutsThrough = (
    needs: readonly {
      readonly plan: { readonly sheets: readonly { readonly cuts: readonly unknown[] }[] };
    }[],
  ) => needs.flatMap(({ plan }) => plan.sheets).map(({ cuts }) => cuts.length);
  const wood = cutsThrough(purchases.sheets);
  const laminate = cutsThrough(purchases.facings);
  const all = [...wood, ...laminate].reduce((sum, one) => sum + one, 4 * wood.length);
  const cut = workTimes(input, purchases).find(({ work }) => work === "cut sheet");
  expect(laminate.length).toBeGreaterThan(0);
  expect(cut?.pieces).toBe(all);
  expect(cut?.time).toBeCloseTo(all * 300, 6);
});
