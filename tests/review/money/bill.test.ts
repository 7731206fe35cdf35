import { expect, test } from "vitest";
import { openJob } from "../../../lib/job/index.js";
import { money, ratio } from "../../../lib/quantity/index.js";
import { billOf } from "../../../lib/review/money/bill.js";

const { purchases } = openJob("soil-lab").review;
const plain = billOf(purchases);
const usd = (amount: number) => money(amount, "USD");
const none = { priceBreaks: [], suppliers: [] };

test("shipping and tax of an order are lines of their own", () => {
  const suppliers = [{ name: "timber yard", shipping: usd(35), tax: ratio(0.1) }];
  const { lines, total } = billOf(purchases, { ...none, suppliers });
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
  const { lines, total, waste } = billOf(purchases, { ...none, priceBreaks });
  expect(lines[0]).toMatchObject({ quantity: sheet.quantity + 1, unitPrice: usd(1) });
  expect(total.amount).toBeLessThan(plain.total.amount);
  expect(waste.amount).toBeGreaterThan(0);
});

test("an order at a supplier nobody buys from adds nothing", () => {
  const suppliers = [{ name: "nobody", shipping: usd(35), tax: ratio(0.1) }];
  expect(billOf(purchases, { ...none, suppliers })).toEqual(plain);
});
