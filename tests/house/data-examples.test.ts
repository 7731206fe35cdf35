/** The examples of data/README.md: each is laid over a small job, which must still be read whole. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { showProblem } from "../../lib/problem.js";
import { caseWith } from "../design/case-with.js";
import { problemsOf, smallJob } from "../design/small-job.js";

const page = readFileSync("data/README.md", "utf8");
/** Those of a section "box", as the small job has one; others stand for jobs of their own. */
const examples = [...page.matchAll(/```yaml\n(.*?)```/gs)]
  .map(([, text = ""]) => text)
  .filter((text) => /\bbox\b/.test(text) && !/^case:/m.test(text));

const hardware = smallJob["hardware.csv"] ?? "";
const [heading = "", ...rows] = hardware.split("\n");

const tables = {
  "hardware.csv": [
    `${heading},side room (mm),extension (mm)`,
    ...rows.map((row) => `${row},,`),
    "rubber foot,foot,40,1,counter,40,40,2,0,0,20,screw,2,2,1,20,0,,,",
    "slide 300,slide,700,14,counter,300,45,1,0,0,0,screw,12,6,2,250,20,250,13,300",
    "lid stay,stay,150,6,counter,200,15,1,0,0,0,screw,2,2,1,150,0,120,,",
  ].join("\n"),
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
