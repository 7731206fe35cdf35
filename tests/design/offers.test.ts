import { expect, test } from "vitest";
import { readDesign } from "../../lib/design/index.js";
import { showProblem } from "../../lib/problem.js";
import { smallJob } from "./small-job.js";

const problemsOf = (files: Readonly<Record<string, string>>): string[] => {
  const read = readDesign({ ...smallJob, ...files });
  return "problems" in read ? read.problems.map(showProblem) : [];
};

test("both files may be absent, and are read when they are there", () => {
  const read = readDesign({
    ...smallJob,
    "price-breaks.csv": "item,from,price (EUR)\nply 10,5,55",
    "suppliers.csv": "name,shipping (EUR),tax (%)\nyard,20,19",
  });
  expect("design" in read && read.design.offers).toEqual({
    priceBreaks: [{ line: 2, item: "ply 10", from: 5, price: { amount: 55, currency: "EUR" } }],
    suppliers: [{ line: 2, name: "yard", shipping: { amount: 20, currency: "EUR" }, tax: 0.19 }],
    leftovers: [],
  });
  expect(problemsOf({})).toEqual([]);
});

test("what is wrong with a break is named with its row and column", () => {
  const rows = ["ply 10,5,65", "ply 99,5,1", "ply 10,9,50", "ply 10,9,49"];
  expect(problemsOf({ "price-breaks.csv": `item,from,price (EUR)\n${rows.join("\n")}` })).toEqual([
    'price-breaks.csv, row 2, price: found "65.00 EUR", expected no more than 60, the price of one',
    'price-breaks.csv, row 3, item: found "ply 99", expected a name of one of the tables of stock',
    'price-breaks.csv, row 5, from: found "9", expected each quantity of ply 10 only once',
  ]);
});

test("a second currency is one problem with the headings to change", () => {
  expect(
    problemsOf({
      "price-breaks.csv": "item,from,price (USD)\nply 10,5,55",
      "suppliers.csv": "name,shipping (USD),shipping per kg (EUR),free from (USD),tax (%)\nyard,20,1,99,19",
    }),
  ).toEqual([
    'price-breaks.csv, row 2, price: found "55.00 USD", expected an amount in EUR, the currency of the case: change (USD) in the headings of price-breaks.csv, suppliers.csv, or "currency" in case.yaml (also in suppliers.csv row 2)',
  ]);
});

test("shipping by weight and an amount from which it is free may be left blank", () => {
  const read = readDesign({
    ...smallJob,
    "suppliers.csv":
      "name,shipping (EUR),shipping per kg (EUR),free from (EUR),tax (%)\nyard,20,0.5,400,19\nshop,5,,,0",
  });
  expect("design" in read && read.design.offers.suppliers).toEqual([
    {
      line: 2,
      name: "yard",
      shipping: { amount: 20, currency: "EUR" },
      perKilogram: { amount: 0.5, currency: "EUR" },
      freeFrom: { amount: 400, currency: "EUR" },
      tax: 0.19,
    },
    { line: 3, name: "shop", shipping: { amount: 5, currency: "EUR" }, tax: 0 },
  ]);
});

const rack = (...rows: readonly string[]) => ({
  "leftovers.csv": ["name,stock,length (mm),width (mm),count", ...rows].join("\n"),
});

test("leftovers of sheets, laminate and bars are read", () => {
  const read = readDesign({ ...smallJob, ...rack("rack 1,ply 10,900,600,1", "rack 2,angle 50,750,,3") });
  expect("design" in read && read.design.offers.leftovers).toEqual([
    { line: 2, name: "rack 1", stock: "ply 10", length: 0.9, width: 0.6, count: 1 },
    { line: 3, name: "rack 2", stock: "angle 50", length: 0.75, count: 3 },
  ]);
});

test("what is wrong with a leftover is named with its row and column", () => {
  const wrong = rack(
    "rack 1,marble,900,600,1",
    "rack 2,angle 50,700,50,1",
    "rack 3,ply 10,700,,1",
    "rack 4,ply 10,700,10,1",
    "angle 50,angle 50,700,,1",
    "rack 5,angle 50,700,,0",
  );
  expect(problemsOf(wrong)).toEqual([
    'leftovers.csv, row 7, count: found "0", expected a whole number from 0 up, at least 1',
    'leftovers.csv, row 2, stock: found "marble", expected a sheet, laminate or bar (ply 10, ply 15, lam 1, angle 50, seat 50)',
    'leftovers.csv, row 3, width: found "50 mm", expected nothing, for a bar',
    'leftovers.csv, row 4, width: found "", expected a width, for a piece of ply 10',
    'leftovers.csv, row 5, width: found "10 mm", expected both sides above 12.7 mm, what trimming takes',
    'leftovers.csv, row 6, name: found "angle 50", expected a name of its own, not that of a stock',
  ]);
});
