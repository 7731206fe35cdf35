import fc from "fast-check";
import { expect, test } from "vitest";
import { quantityPrice } from "../../lib/money/index.js";
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
