/** The examples of data/README.md: each is laid over a small job, which must still be read whole. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { showProblem } from "../../lib/problem.js";
import { caseWith } from "../design/case-with.js";
import { problemsOf } from "../design/small-job.js";

const page = readFileSync("data/README.md", "utf8");
/** Those of a section "box", as the small job has one; others stand for jobs of their own. */
const examples = [...page.matchAll(/```yaml\n(.*?)```/gs)]
  .map(([, text = ""]) => text)
  .filter((text) => /\bbox\b/.test(text) && !/^case:/m.test(text));

const tables = {
  "strip-stock.csv": `name,length (mm),width (mm),thickness (mm),density (kg/m3),modulus (GPa),price (EUR),supplier
pine 20 x 30,2400,30,20,500,9,4,yard`,
  "pane-stock.csv": `name,length (mm),width (mm),thickness (mm),density (kg/m3),modulus (GPa),poisson,price (EUR),supplier
acrylic 3,1000,500,3,1190,3.2,0.37,22,yard`,
};

describe("examples of the page on files", () => {
  test("there are some", () => {
    expect(examples.length).toBeGreaterThan(0);
  });

  test.each(examples)("this one is read without a problem:\n%s", (text) => {
    expect(problemsOf(caseWith(parse(text), tables)).map(showProblem)).toEqual([]);
  });
});
