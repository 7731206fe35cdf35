import fc from "fast-check";
import { expect, test } from "vitest";
import { packs } from "../../lib/money/index.js";
import { money, ratio } from "../../lib/quantity/index.js";

test("buys enough, and one pack less would not do", () => {
  const count = fc.integer({ min: 1, max: 2000 });
  fc.assert(
    fc.property(count, fc.integer({ min: 0, max: 30 }), count, (needed, percent, perPack) => {
      const spare = ratio(percent / 100);
      const bought = packs({ needed, spare, perPack, price: money(7, "USD") });
      const wanted = needed * (1 + spare);
      expect(bought.bought).toBeGreaterThanOrEqual(wanted - 1e-6);
      expect(bought.bought - perPack).toBeLessThan(wanted + 1e-6);
      expect(bought.over).toBe(bought.bought - needed);
    }),
  );
});

test("a share that comes out whole does not open another pack", () => {
  expect(packs({ needed: 100, spare: ratio(0.1), perPack: 110, price: money(7, "USD") }).packs).toBe(1);
});

test("refuses an empty pack", () => {
  expect(() => packs({ needed: 5, spare: ratio(0), perPack: 0, price: money(7, "USD") })).toThrow(
    new RangeError("buy.packs: perPack must be at least 1, got 0"),
  );
});
