import { expect, test } from "vitest";
import { cheapestMending, mendingInWords } from "../../lib/improve/index.js";
import { type Job, openJob } from "../../lib/job/index.js";

/** The demo, and its first draft. */
const [lab, draft] = [openJob("soil-lab"), openJob("soil-lab-draft")];

/** The answer about a thing that may have got more words to its name. */
function answerOf(job: Job, id: string) {
  const steps = job.review.steps.filter((step) => id.startsWith(`${step.id}.`) || id === step.id);
  return steps.flatMap(({ ask }) => ask()).find((one) => one.id.startsWith(id));
}

test.each([
  [lab, "joints.drop-corner.lower.ball corner", false],
  [draft, "fit-out.clear.lamp", false],
  [draft, "fit-out.air.upper", true],
])("%# is mended on the changed case, at the cost that is told", (job, id, byRule) => {
  expect(answerOf(job, id)?.verdict).not.toBe("holds");
  const mending = cheapestMending(job, id);
  expect(mending?.rule).toBe(byRule);
  const changed = job.with(...(mending?.changes ?? []));
  expect(answerOf(changed, id)?.verdict).toBe("holds");
  const more = changed.review.bill.total.amount - job.review.bill.total.amount;
  expect(mending?.moreCost).toBeCloseTo(more, 9);
});

test("a change is told with what it costs", () => {
  const told = { figures: {} as never, changes: [], words: "Do it." };
  expect(mendingInWords({ ...told, moreCost: 5.384, rule: false }, "USD")).toBe(
    "Do it. Tried: with it this holds, for 5.38 USD more.",
  );
  expect(mendingInWords({ ...told, moreCost: -2, rule: false }, "USD")).toBe(
    "Do it. Tried: with it this holds, for 2.00 USD less.",
  );
  expect(mendingInWords({ ...told, moreCost: 0, rule: true }, "USD")).toBe(
    "Do it. Tried: with it this holds and costs no more.",
  );
  expect(mendingInWords({ ...told, moreCost: 0, rule: false, unpriced: "a strap" }, "USD")).toBe(
    "Do it. Tried: with it this holds; your tables do not price a strap.",
  );
});

test("a finding for which panels bend is not tried, nor one that is not there", () => {
  expect(cheapestMending(draft, "stiffness.upper.front")).toBeUndefined();
  expect(cheapestMending(draft, "travel.nothing")).toBeUndefined();
});
