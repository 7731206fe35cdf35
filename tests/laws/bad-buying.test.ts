/** What a builder may get wrong about stock and prices: each is named with its file, row, column and value. */
import { expect, test } from "vitest";
import type { Problem } from "../../lib/problem.js";
import { problemsOf, rowOf, smallJob, spoilt } from "../design/small-job.js";

const kerfs = (row: string): Record<string, string> => ({
  ...smallJob,
  "kerfs.csv": `blade,before (mm),after (mm),offcuts (mm),cuts,use\n${row}`,
});

const cases: [string, Readonly<Record<string, string>>, Problem][] = [
  [
    "a kerf below zero",
    kerfs("saw,1000,520,500,10,sheets"),
    {
      file: "kerfs.csv",
      row: 2,
      column: "after",
      value: "520 mm",
      expected: "less than before less offcuts, 500 mm",
    },
  ],
  [
    "a price missing for a sheet that is used",
    spoilt("sheet-stock.csv", "10,700,60,yard", "10,700,,yard"),
    {
      file: "sheet-stock.csv",
      row: 2,
      column: "price (EUR)",
      value: "",
      expected: "a number in EUR (12, 0.5 or 3/8), at least 0.00",
    },
  ],
  [
    "a price missing for the washer that a rivet takes",
    spoilt("fasteners.csv", "2,12,1,0.02\nscrew", "2,12,1,\nscrew"),
    {
      file: "fasteners.csv",
      row: 2,
      column: "washer price",
      value: "",
      expected: "washer diameter, washer thickness and washer price of a rivet",
    },
  ],
  [
    "a price below zero",
    spoilt("facings.csv", "9,50,yard", "9,-50,yard"),
    {
      file: "facings.csv",
      row: 2,
      column: "price (EUR)",
      value: "-50",
      expected: "a number in EUR (12, 0.5 or 3/8), at least 0.00",
    },
  ],
  [
    "a second currency in a table",
    spoilt("adhesives.csv", "price (EUR)", "price (USD)"),
    {
      file: "adhesives.csv",
      row: 2,
      column: "price",
      value: "20.00 USD",
      expected:
        'a price in EUR, the currency of the case: change (USD) in the headings of adhesives.csv, or "currency" in case.yaml',
    },
  ],
  [
    "a second currency in the case file",
    spoilt("case.yaml", "income per job: 100", "income per job: 100 USD"),
    {
      file: "case.yaml",
      row: rowOf(smallJob, "case.yaml", "income per job"),
      column: "business.income per job",
      value: "100 USD",
      expected: "an amount in EUR such as 12.50, at least 0",
    },
  ],
  [
    "a price doubt that leaves no price",
    spoilt("case.yaml", "interest: 5 %", "interest: 5 %\n  price doubt: 100 %"),
    {
      file: "case.yaml",
      row: rowOf(smallJob, "case.yaml", "interest: 5 %") + 1,
      column: "business.price doubt",
      value: "100 %",
      expected: 'a ratio such as "0.35 or 35 %", at least 0, at most 0.9',
    },
  ],
];

test.each(cases)("%s", (_what, texts, problem) => {
  expect(problemsOf(texts)).toEqual([problem]);
});
