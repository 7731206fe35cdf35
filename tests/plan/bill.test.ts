import fc from "fast-check";
import { expect, test } from "vitest";
import { openJob } from "../../lib/job/index.js";
import { groupBill } from "../../lib/money/index.js";
import { billOf, pricedItems, priceWhatIf } from "../../lib/plan/money/bill.js";
import { money, ratio } from "../../lib/quantity/index.js";

const job = openJob("soil-lab-draft");
const { parts } = job;
const { purchases, bill } = job.review;
const plain = billOf({ parts }, purchases);
const usd = (amount: number) => money(amount, "USD");
const none = { priceBreaks: [], suppliers: [], leftovers: [] };

test("shipping and tax of an order are lines of their own", () => {
  const suppliers = [{ name: "timber yard", shipping: usd(35), tax: ratio(0.1) }];
  const { lines, total } = billOf({ parts, offers: { ...none, suppliers } }, purchases);
  const goods = plain.lines
    .filter(({ supplier }) => supplier === "timber yard")
    .reduce((sum, { quantity, unitPrice }) => sum + quantity * unitPrice.amount, 0);
  expect(lines.filter(({ trade }) => trade === "shipping and tax").map(({ item }) => item)).toEqual([
    "shipping, timber yard",
    "tax, timber yard",
  ]);
  expect(total.amount).toBeCloseTo(plain.total.amount + 35 + 0.1 * (goods + 35), 9);
});

test("a break lowers the price of all, and what is bought beyond the need is waste", () => {
  const [sheet] = plain.lines;
  if (!sheet) throw new Error("no lines");
  const priceBreaks = [{ item: sheet.item, from: sheet.quantity + 1, price: usd(1) }];
  const { lines, total, waste } = billOf({ parts, offers: { ...none, priceBreaks } }, purchases);
  expect(lines[0]).toMatchObject({ quantity: sheet.quantity + 1, unitPrice: usd(1) });
  expect(total.amount).toBeLessThan(plain.total.amount);
  expect(waste.amount).toBeGreaterThan(0);
});

test("an order at a supplier nobody buys from adds nothing", () => {
  const suppliers = [{ name: "nobody", shipping: usd(35), tax: ratio(0.1) }];
  expect(billOf({ parts, offers: { ...none, suppliers } }, purchases)).toEqual(plain);
});

test("an order just short of free shipping is filled up, and what fills it is waste", () => {
  const goods = groupBill(plain.lines, "supplier").find(({ name }) => name === "timber yard");
  if (!goods) throw new Error("no timber");
  const freeFrom = usd(goods.total.amount + 4);
  const suppliers = [
    { name: "timber yard", shipping: usd(35), perKilogram: usd(0.1), freeFrom, tax: ratio(0) },
  ];
  const { total, waste } = billOf({ parts, offers: { ...none, suppliers } }, purchases);
  expect(total.amount).toBeCloseTo(plain.total.amount + 4, 9);
  expect(waste.amount).toBeCloseTo(plain.waste.amount + 4, 9);
});

test("shipping by weight weighs whole sheets, bars, packs and cans", () => {
  const { sheets, facings } = purchases;
  const suppliers = [{ name: "timber yard", shipping: usd(0), perKilogram: usd(2), tax: ratio(0) }];
  const mass = [...sheets, ...facings].reduce(
    (sum, { stock, plan }) =>
      sum + plan.sheets.length * stock.length * stock.width * stock.thickness * stock.density,
    0,
  );
  expect(billOf({ parts, offers: { ...none, suppliers } }, purchases).total.amount).toBeCloseTo(
    plain.total.amount + 2 * mass,
    6,
  );
});

test("every line is for the sections its parts are in, and the sections add up to the bill", () => {
  const sections = groupBill(job.review.bill.lines, "section");
  expect(sections.map(({ name }) => name)).toEqual(["lower", "upper"]);
  expect(sections.reduce((sum, { total }) => sum + total.amount, 0)).toBeCloseTo(
    job.review.bill.total.amount,
    6,
  );
  const sharesOf = (item: string) => job.review.bill.lines.find((line) => line.item === item)?.shares;
  // Casters are under the lower section; eight corners of sixteen are on each.
  expect(sharesOf("swivel caster 4 in")).toEqual([{ section: "lower", share: 1 }]);
  expect(sharesOf("ball corner")).toEqual([
    { section: "lower", share: 0.5 },
    { section: "upper", share: 0.5 },
  ]);
});

test("a price lowered by any share never raises the bill, breaks, shipping and tax in it", () => {
  const items = job.review.bill.lines.filter(({ unit }) => unit !== "order").map(({ item }) => item);
  fc.assert(
    fc.property(fc.constantFrom(...items), fc.integer({ min: 0, max: 99 }), (item, percent) => {
      const cheaper = billOf(job, purchases, { [item]: percent / 100 });
      expect(cheaper.total.amount).toBeLessThanOrEqual(job.review.bill.total.amount + 1e-9);
    }),
  );
});

const [dearest = ""] = pricedItems(bill);

test("no change leaves the bill as it is", () => {
  expect(priceWhatIf(job, purchases, {}).bill).toEqual(bill);
  expect(priceWhatIf(job, purchases, { [dearest]: 0 }).effects[0]?.added.amount).toBeCloseTo(0, 9);
});

test("a dearer item adds its share of the price, the supplier's tax in it", () => {
  const line = bill.lines.find(({ item }) => item === dearest);
  if (!line) throw new Error("no lines");
  const tax = job.offers.suppliers.find(({ name }) => name === line.supplier)?.tax ?? 0;
  const { effects } = priceWhatIf(job, purchases, { [dearest]: 0.25 });
  expect(effects).toHaveLength(1);
  expect(effects[0]?.added.amount).toBeCloseTo(0.25 * line.quantity * line.unitPrice.amount * (1 + tax), 6);
});

test("items are ranked by what is paid for them, shipping and tax left out", () => {
  const costs = pricedItems(bill).map((item) => {
    const line = bill.lines.find((one) => one.item === item);
    return (line?.quantity ?? 0) * (line?.unitPrice.amount ?? 0);
  });
  expect(costs).toEqual([...costs].sort((a, b) => b - a));
  expect(pricedItems(bill).some((item) => item.startsWith("tax"))).toBe(false);
});

test("an item that is not bought and a price below nothing are refused", () => {
  expect(() => priceWhatIf(job, purchases, { marble: 0.1 })).toThrow(
    /^what if: "marble" is not on the bill, expected one of .*birch ply 3\/8/,
  );
  expect(() => priceWhatIf(job, purchases, { [dearest]: -1.5 })).toThrow(
    new RangeError(`what if: ${dearest} must cost at least nothing, got a change of -1.5`),
  );
});
