import fc from "fast-check";
import { expect, test } from "vitest";
import { type BillLine, billTotal, groupBill, sharesOf, totalOf } from "../../lib/money/index.js";
import { money, ratio } from "../../lib/quantity/index.js";

const ply: BillLine = {
  shares: [{ section: "lower", share: 1 }],
  trade: "panels",
  item: "ply",
  supplier: "yard",
  quantity: 3,
  used: 2.4,
  unit: "sheet",
  unitPrice: money(80, "USD"),
};
const rivets: BillLine = {
  shares: [{ section: "upper", share: 1 }],
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
      lower: fc.integer({ min: 0, max: 100 }),
      trade: fc.constantFrom("panels", "rivets", "adhesive"),
      supplier: fc.option(fc.constantFrom("yard", "shop"), { nil: undefined }),
      quantity: fc.integer({ min: 0, max: 50 }),
      share: fc.integer({ min: 0, max: 100 }),
      cents: fc.integer({ min: 0, max: 20_000 }),
    })
    .map(({ supplier, quantity, share, cents, lower, ...heading }) => ({
      ...heading,
      ...(supplier === undefined ? {} : { supplier }),
      shares: sharesOf([
        { section: "lower", amount: lower },
        { section: "upper", amount: 101 - lower },
      ]),
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
      const items = groups.flatMap((group) => group.lines).reduce((all, { quantity }) => all + quantity, 0);
      expect(items).toBeCloseTo(
        lines.reduce((all, { quantity }) => all + quantity, 0),
        6,
      );
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

test("a shared line stands under each section with its share", () => {
  const shares = sharesOf([
    { section: "lower", amount: 3 },
    { section: "upper", amount: 1 },
    { section: "lower", amount: 1 },
  ]);
  expect(shares).toEqual([
    { section: "lower", share: 0.8 },
    { section: "upper", share: 0.2 },
  ]);
  const groups = groupBill([{ ...ply, shares }, rivets], "section");
  expect(groups.map(({ name, lines, total }) => [name, lines.length, total.amount])).toEqual([
    ["lower", 1, expect.closeTo(192, 9)],
    ["upper", 2, expect.closeTo(48 + 24, 9)],
  ]);
});

test.each([
  { parts: [], all: 0 },
  { parts: [{ section: "lower", amount: 0 }], all: 0 },
])("parts that add up to nothing cannot be shared", ({ parts, all }) => {
  expect(() => sharesOf(parts)).toThrow(
    new RangeError(`shares: parts must be at least 0 and add up to more, got ${all} in all`),
  );
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
