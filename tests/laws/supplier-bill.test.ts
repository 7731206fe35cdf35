import fc from "fast-check";
import { expect, test } from "vitest";
import { type SupplierOrder, supplierBill } from "../../lib/money/index.js";
import { kg, money, ratio } from "../../lib/quantity/index.js";

const usd = (amount: number) => money(amount, "USD");
const amount = fc.integer({ min: 0, max: 2000 }).map((cents) => usd(cents / 10));

const someOrder: fc.Arbitrary<SupplierOrder> = fc.record({
  goods: amount,
  mass: fc.integer({ min: 0, max: 400 }).map((tenths) => kg(tenths / 10)),
  shipping: amount,
  perKilogram: fc.integer({ min: 0, max: 30 }).map((tenths) => usd(tenths / 10)),
  freeFrom: fc.oneof(fc.constant("never" as const), amount),
  tax: fc.integer({ min: 0, max: 25 }).map((percent) => ratio(percent / 100)),
});
const totalOf = (order: SupplierOrder): number => supplierBill(order).total.amount;

test("cheaper or fewer goods never make an order dearer, wherever shipping turns free", () => {
  fc.assert(
    fc.property(someOrder, amount, (order, more) => {
      const dearer = { ...order, goods: usd(order.goods.amount + more.amount) };
      expect(totalOf(dearer)).toBeGreaterThanOrEqual(totalOf(order) - 1e-9);
      const heavier = { ...order, mass: kg(order.mass + 1) };
      expect(totalOf(heavier)).toBeGreaterThanOrEqual(totalOf(order) - 1e-9);
    }),
  );
});

test("what is paid is goods, shipping or what fills the order up, and tax", () => {
  fc.assert(
    fc.property(someOrder, (order) => {
      const { shipping, filledUp, tax, total } = supplierBill(order);
      expect(order.goods.amount + shipping.amount + filledUp.amount + tax.amount).toBeCloseTo(
        total.amount,
        9,
      );
      expect(Math.min(shipping.amount, filledUp.amount)).toBe(0);
    }),
  );
});

const order: SupplierOrder = {
  goods: usd(90),
  mass: kg(4),
  shipping: usd(12),
  perKilogram: usd(1),
  freeFrom: "never",
  tax: ratio(0),
};

test.each<[string, Partial<SupplierOrder>, string]>([
  ["a negative tax", { tax: ratio(-0.1) }, "buy.supplier: tax must be at least 0, got -0.1"],
  [
    "a second currency",
    { freeFrom: money(100, "EUR") },
    "buy.supplier: amounts are in USD and EUR, expected one currency",
  ],
])("refuses %s", (_what, wrong, message) => {
  expect(() => supplierBill({ ...order, ...wrong })).toThrow(new RangeError(message));
});
