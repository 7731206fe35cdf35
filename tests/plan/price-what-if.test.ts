import { expect, test } from "vitest";
import { openJob } from "../../lib/job/index.js";
import { pricedItems, priceWhatIf } from "../../lib/plan/money/bill.js";

const job = openJob("soil-lab");
const { purchases, bill } = job.review;
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
