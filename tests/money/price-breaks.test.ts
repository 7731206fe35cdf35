import fc from "fast-check";
import { expect, test } from "vitest";
import { paybackChance, quantityPrice } from "../../lib/money/index.js";
import { money } from "../../lib/quantity/index.js";

const usd = (amount: number) => money(amount, "USD");
const someBreaks = fc
  .uniqueArray(fc.integer({ min: 2, max: 60 }), { maxLength: 4 })
  .map((froms) => froms.map((from) => ({ from, price: usd(Math.max(1, 20 - from / 4)) })));
const count = fc.integer({ min: 0, max: 80 });

test("one more never lowers the bill, with breaks too", () => {
  fc.assert(
    fc.property(count, someBreaks, (needed, breaks) => {
      const cost = (n: number) => quantityPrice({ needed: n, price: usd(20), breaks }).cost.amount;
      expect(cost(needed + 1)).toBeGreaterThanOrEqual(cost(needed) - 1e-9);
    }),
  );
});

test("a cheaper price never raises the bill", () => {
  fc.assert(
    fc.property(count, someBreaks, fc.integer({ min: 0, max: 100 }), (needed, breaks, share) => {
      const cheaper = breaks.map((one) => ({ ...one, price: usd((one.price.amount * share) / 100) }));
      const before = quantityPrice({ needed, price: usd(20), breaks }).cost.amount;
      expect(quantityPrice({ needed, price: usd(20), breaks: cheaper }).cost.amount).toBeLessThanOrEqual(
        before + 1e-9,
      );
    }),
  );
});

test("at least as many are bought as needed", () => {
  fc.assert(
    fc.property(count, someBreaks, (needed, breaks) => {
      expect(quantityPrice({ needed, price: usd(20), breaks }).bought).toBeGreaterThanOrEqual(needed);
    }),
  );
});

test("more jobs, a larger margin or a smaller outlay make payback likelier", () => {
  const amount = fc.integer({ min: 1, max: 3000 }).map(usd);
  fc.assert(
    fc.property(amount, amount, amount, fc.integer({ min: 1, max: 200 }), (outlay, margin, scatter, jobs) => {
      const chance = paybackChance({ outlay, margin, scatter, jobs });
      expect(paybackChance({ outlay, margin, scatter, jobs: jobs + 1 })).toBeGreaterThanOrEqual(
        chance - 1e-9,
      );
      expect(paybackChance({ outlay, margin: usd(margin.amount + 1), scatter, jobs })).toBeGreaterThanOrEqual(
        chance - 1e-9,
      );
      expect(paybackChance({ outlay: usd(outlay.amount + 1), margin, scatter, jobs })).toBeLessThanOrEqual(
        chance + 1e-9,
      );
    }),
  );
});

test("without scatter the chance is all or nothing, the breaking job counted", () => {
  const at = (jobs: number) => paybackChance({ outlay: usd(1000), margin: usd(100), scatter: usd(0), jobs });
  expect([at(9), at(10)]).toEqual([0, 1]);
});

test.each<[string, () => unknown, string]>([
  [
    "two currencies",
    () => quantityPrice({ needed: 1, price: usd(2), breaks: [{ from: 5, price: money(1, "EUR") }] }),
    "buy.price.breaks: amounts are in USD and EUR, expected one currency",
  ],
  [
    "a break that raises the price",
    () => quantityPrice({ needed: 1, price: usd(2), breaks: [{ from: 5, price: usd(3) }] }),
    "buy.price.breaks: a break must lower the price, got 3.00 USD from 5 on",
  ],
])("refuses %s", (_what, run, message) => {
  expect(run).toThrow(new RangeError(message));
});
