import fc from "fast-check";
import { expect, test } from "vitest";
import { paybackChance, type ScatteredJobs } from "../../lib/money/index.js";
import { money } from "../../lib/quantity/index.js";

const usd = (amount: number) => money(amount, "USD");
const amount = fc.integer({ min: 1, max: 3000 }).map(usd);
const someJobs: fc.Arbitrary<ScatteredJobs> = fc.record({
  outlay: amount,
  doubt: fc.integer({ min: 0, max: 600 }).map(usd),
  margin: amount,
  scatter: amount,
  jobs: fc.integer({ min: 1, max: 200 }),
});

test("more jobs, a larger margin or a smaller outlay make payback likelier", () => {
  fc.assert(
    fc.property(someJobs, (asked) => {
      const { outlay, margin, jobs } = asked;
      const chance = paybackChance(asked);
      const likelier = [
        { ...asked, jobs: jobs + 1 },
        { ...asked, margin: usd(margin.amount + 1) },
        { ...asked, outlay: usd(outlay.amount - 1) },
      ].map((one) => paybackChance(one));
      expect(Math.min(...likelier)).toBeGreaterThanOrEqual(chance - 1e-9);
    }),
  );
});

test("more doubt of the outlay makes either answer less sure", () => {
  fc.assert(
    fc.property(someJobs, fc.integer({ min: 1, max: 500 }), (asked, more) => {
      const sure = (one: ScatteredJobs): number => Math.abs(paybackChance(one) - 0.5);
      const doubtful = { ...asked, doubt: usd(asked.doubt.amount + more) };
      expect(sure(doubtful)).toBeLessThanOrEqual(sure(asked) + 1e-9);
    }),
  );
});

test("without scatter or doubt the chance is all or nothing, the breaking job counted", () => {
  const at = (jobs: number) =>
    paybackChance({ outlay: usd(1000), doubt: usd(0), margin: usd(100), scatter: usd(0), jobs });
  expect([at(9), at(10)]).toEqual([0, 1]);
});

test("refuses two currencies", () => {
  const asked = { outlay: usd(1000), doubt: money(1, "EUR"), margin: usd(100), scatter: usd(0), jobs: 1 };
  expect(() => paybackChance(asked)).toThrow(
    new RangeError("payback.chance: amounts are in USD and EUR, expected one currency"),
  );
});
