import { expect, test } from "vitest";
import { breakEvenHour, makeOrBuy, ownCost } from "../../lib/money/index.js";
import { hour, money } from "../../lib/quantity/index.js";

const usd = (amount: number) => money(amount, "USD");
const work = { material: usd(420), time: hour(30), hourlyRate: usd(25), tools: usd(150) };

test("the first case costs the tools more than the next", () => {
  const { each, first } = ownCost(work);
  expect(first.amount - each.amount).toBe(150);
});

test("an hour saved saves its rate", () => {
  expect(ownCost(work).each.amount - ownCost({ ...work, time: hour(29) }).each.amount).toBeCloseTo(25, 9);
});

test("after that many cases building has cost no more than buying, and one fewer has not", () => {
  const choice = { own: usd(1170), tools: usd(400), readyMade: usd(1301.5) };
  const { cases } = makeOrBuy(choice);
  const dearer = (count: number) => count * 1170 + 400 > count * 1301.5;
  expect([dearer(Number(cases)), dearer(Number(cases) - 1)]).toEqual([false, true]);
});

test("never pays where buying costs no more than building", () => {
  expect(makeOrBuy({ own: usd(900), tools: usd(0), readyMade: usd(900) })).toEqual({
    saving: usd(0),
    cases: "never",
  });
});

test("at the break-even worth of an hour the first case costs what a ready-made one does", () => {
  const { material, time, tools } = work;
  const { hour: hourlyRate } = breakEvenHour({ material, time, tools, readyMade: usd(1303) });
  if (hourlyRate === "never") throw new Error("dearer in material alone");
  expect(ownCost({ ...work, hourlyRate }).first.amount).toBeCloseTo(1303, 9);
  expect(breakEvenHour({ material, time, tools, readyMade: usd(569) })).toEqual({ hour: "never" });
});

test("the worked line says never in words", () => {
  const { results } = makeOrBuy.worked({ own: usd(900), tools: usd(10), readyMade: usd(800) });
  expect(results.map((one) => one.show())).toEqual(["-100.00 USD", "never"]);
});

test("refuses two currencies", () => {
  expect(() => ownCost({ ...work, tools: money(150, "EUR") })).toThrow(
    new RangeError("make.cost: amounts are in USD and EUR, expected one currency"),
  );
  expect(() => makeOrBuy({ own: usd(1), tools: usd(1), readyMade: money(2, "EUR") })).toThrow(
    new RangeError("make.or.buy: amounts are in USD and EUR, expected one currency"),
  );
});
