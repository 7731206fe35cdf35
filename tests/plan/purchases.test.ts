import { expect, test } from "vitest";
import { openJob } from "../../lib/job/index.js";
import { boughtOf } from "../../lib/plan/buying/cut-plans.js";
import { purchaseList } from "../../lib/plan/buying/purchases.js";
import { billOf } from "../../lib/plan/money/bill.js";
import { inch } from "../../lib/quantity/index.js";

const job = openJob("soil-lab-draft");
const [panel] = job.parts.panels;
const [bar] = job.parts.bars;
if (!panel || !bar) throw new Error("the demo has panels and bars");
const leftovers = [
  { name: "rack 1", stock: panel.sheet.name, length: inch(48), width: inch(48), count: 1 },
  { name: "rack 2", stock: bar.stock.name, length: bar.length, count: 4 },
];
const withRack = { ...job, offers: { ...job.offers, leftovers } };
const purchases = purchaseList(withRack);
const pieces = (plans: readonly { readonly pieces: readonly { readonly name: string }[] }[]) =>
  plans.flatMap((cut) => cut.pieces.map(({ name }) => name)).sort();

test("offcuts of sheets are used before a sheet is bought, and every panel is still cut", () => {
  const need = purchases.sheets.find(({ stock }) => stock.name === panel.sheet.name);
  const plain = job.review.purchases.sheets.find(({ stock }) => stock.name === panel.sheet.name);
  if (!need || !plain) throw new Error("no sheets");
  expect(need.plan.sheets.map(({ stock }) => stock)).toContain("rack 1");
  expect(boughtOf(need)).toBeLessThan(boughtOf(plain));
  expect(pieces(need.plan.sheets)).toEqual(pieces(plain.plan.sheets));
});

test("bars on the rack come first, and every edge is still cut", () => {
  const [need] = purchases.bars;
  const [plain] = job.review.purchases.bars;
  if (!need || !plain) throw new Error("no bars");
  expect(need.plan.bars.filter(({ from }) => from === "rack")).toHaveLength(4);
  expect(boughtOf(need)).toBeLessThan(boughtOf(plain));
  expect(pieces(need.plan.bars)).toEqual(pieces(plain.plan.bars));
});

test("what comes from the rack is not on the bill, and the bill is smaller for it", () => {
  const bill = billOf(withRack, purchases);
  expect(bill.lines.some(({ item }) => item.startsWith("rack"))).toBe(false);
  expect(bill.total.amount).toBeLessThan(job.review.bill.total.amount);
  expect(bill.lines.every(({ quantity, used = 0 }) => used <= quantity)).toBe(true);
});
