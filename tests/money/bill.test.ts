import fc from "fast-check";
import { expect, test } from "vitest";
import { type BillLine, billTotal, groupBill, totalOf } from "../../lib/money/index.js";
import { money, ratio } from "../../lib/quantity/index.js";

const ply: BillLine = {
  section: "lower",
  trade: "panels",
  item: "ply",
  supplier: "yard",
  quantity: 3,
  used: 2.4,
  unit: "sheet",
  unitPrice: money(80, "USD"),
};
const rivets: BillLine = {
  section: "upper",
  trade: "rivets",
  item: "rivet",
  quantity: 300,
  used: 212,
  unit: "each",
  unitPrice: money(0.08, "USD"),
};

const someBill: fc.Arbitrary<BillLine[]> = fc.array(
  fc
    .record({
      section: fc.constantFrom("upper", "lower"),
      trade: fc.constantFrom("panels", "rivets", "adhesive"),
      supplier: fc.option(fc.constantFrom("yard", "shop"), { nil: undefined }),
      quantity: fc.integer({ min: 0, max: 50 }),
      share: fc.integer({ min: 0, max: 100 }),
      cents: fc.integer({ min: 0, max: 20_000 }),
    })
    .map(({ supplier, quantity, share, cents, ...heading }) => ({
      ...heading,
      ...(supplier === undefined ? {} : { supplier }),
      item: "thing",
      quantity,
      used: (quantity * share) / 100,
      unit: "each",
      unitPrice: money(cents / 100, "USD"),
    })),
  { minLength: 1, maxLength: 20 },
);

test.each(["section", "trade", "supplier"] as const)("the totals by %s add up to the bill", (by) => {
  fc.assert(
    fc.property(someBill, (lines) => {
      const groups = groupBill(lines, by);
      const whole = totalOf(lines);
      const sum = (figure: "total" | "waste") => groups.reduce((all, group) => all + group[figure].amount, 0);
      expect(sum("total")).toBeCloseTo(whole.total.amount, 6);
      expect(sum("waste")).toBeCloseTo(whole.waste.amount, 6);
      expect(groups.flatMap((group) => group.lines)).toHaveLength(lines.length);
    }),
  );
});

test("the waste is never more than the total", () => {
  fc.assert(
    fc.property(someBill, (lines) => {
      const { total, waste } = totalOf(lines);
      expect(waste.amount).toBeLessThanOrEqual(total.amount + 1e-9);
      expect(waste.amount).toBeGreaterThanOrEqual(-1e-9);
    }),
  );
});

test("a line without a figure for use is used up, and one without a supplier says so", () => {
  const { used: _, ...usedUp } = ply;
  expect(totalOf([usedUp]).waste).toEqual(money(0, "USD"));
  expect(groupBill([ply, rivets], "supplier").map(({ name }) => name)).toEqual(["yard", "not yet chosen"]);
});

test("refuses an empty bill, two currencies, and more used than bought", () => {
  expect(() => totalOf([])).toThrow(new RangeError("bill.total: there is nothing on the bill"));
  expect(() => totalOf([ply, { ...rivets, unitPrice: money(1, "EUR") }])).toThrow(
    new RangeError("bill.total: amounts are in USD and EUR, expected one currency"),
  );
  expect(() => totalOf([{ ...ply, used: 4 }])).toThrow(
    new RangeError("bill.total: ply: used must be from 0 to the 3 bought, got 4"),
  );
  const line = { item: "ply", quantity: ratio(1), used: ratio(1), unitPrice: money(-1, "USD") };
  expect(() => billTotal({ lines: [line] })).toThrow(
    new RangeError("bill.total: ply: price must be at least 0, got -1.00 USD"),
  );
});
