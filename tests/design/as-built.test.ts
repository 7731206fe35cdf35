import { describe, expect, test } from "vitest";
import { showProblem } from "../../lib/problem.js";
import { Length, Mass, Time } from "../../lib/quantity/index.js";
import { designOf, problemsOf, smallJob } from "./small-job.js";

const head = "number,what,of,at,length (mm),can (g),mass (kg),time (min),pieces,price (EUR)";
const withRows = (...rows: readonly string[]) => ({
  ...smallJob,
  "as-built.csv": [head, ...rows].join("\n"),
});
const planned = designOf(smallJob);

describe("as-built.csv", () => {
  test("with no figure in it, a job is as before", () => {
    const design = designOf(withRows("M1,thickness,ply 10,1,,,,,,", "M2,weight empty,box,,,,,,,"));
    const { asBuilt, ...rest } = design.measurements;
    expect(asBuilt).toHaveLength(2);
    expect({ ...rest, asBuilt: [] }).toEqual(planned.measurements);
    expect(design.parts).toEqual(planned.parts);
    expect(design.stock).toEqual(planned.stock);
  });

  test("the mean of the thicknesses stands in place of the table's, and everything is laid out with it", () => {
    const design = designOf(withRows("M1,thickness,ply 10,1,10.2,,,,,", "M1,thickness,ply 10,2,10.6,,,,,"));
    const sheet = design.stock.sheets.find(({ name }) => name === "ply 10");
    expect(Length.in(sheet?.thickness ?? Length.si(0), "mm")).toBeCloseTo(10.4, 9);
    expect(sheet?.planned).toBe(planned.stock.sheets.find(({ name }) => name === "ply 10")?.thickness);
    const widthOf = ({ parts }: typeof planned): number =>
      parts.panels.find(({ id }) => id === "box.top")?.width ?? 0;
    const grown = 10.4e-3 - (sheet?.planned ?? 0);
    expect(widthOf(design) - widthOf(planned)).toBeCloseTo(2 * grown, 9);
  });

  test("a slot that was measured is the kerf of its use, and of no other", () => {
    const { measurements } = designOf(withRows("M3,kerf,sheets,1,2.6,,,,,"));
    const of = (use: string) => measurements.kerfs.filter((row) => row.use === use || row.use === "both");
    expect(of("sheets").map(({ before }) => Length.in(before, "mm"))).toEqual([2.6]);
    const both = planned.measurements.kerfs.filter(({ use }) => use !== "sheets");
    expect(of("bars")).toHaveLength(both.length);
  });

  test("what a work took stands in place of its trial, and other works keep theirs", () => {
    const trials = `work,unit,tool,pieces,time (min)
drill hole,hole,hand drill,40,18
set rivet,rivet,hand riveter,40,14`;
    const rows = withRows("M4,time,drill hole,hand drill,,,,90,200,");
    const { timings } = designOf({ ...rows, "timings.csv": trials }).measurements;
    const told = timings.map(({ work, unit, tool, pieces, time }) => [
      work,
      unit,
      tool,
      pieces,
      Time.in(time, "min"),
    ]);
    expect(told).toEqual([
      ["drill hole", "hole", "hand drill", 200, 90],
      ["set rivet", "rivet", "hand riveter", 40, 14],
    ]);
  });

  test("glue that left the can over the faces it went to is the spread, the label's waste taken off", () => {
    const { measurements } = designOf(
      withRows('M5,can before,"box.front, outside",,,900,,,,', 'M5,can after,"box.front, outside",,,800,,,,'),
    );
    const facing = planned.parts.facings.find(
      ({ panel, side }) => panel === "box.front" && side === "outside",
    );
    const glue = planned.stock.adhesives.find(({ name }) => name === "glue");
    const [spread, ...others] = measurements.spreads.filter(({ adhesive }) => adhesive === "glue");
    expect(others).toEqual([]);
    expect(spread?.area).toBeCloseTo(facing?.gluedArea ?? 0, 9);
    expect(Mass.in(spread?.before ?? Mass.si(0), "g")).toBeCloseTo(100 * (1 - (glue?.waste ?? 0)), 9);
  });

  test("everything that is wrong is told at once", () => {
    const told = problemsOf(
      withRows(
        "M1,thickness,ply 11,1,10,,,,,",
        "M2,weight empty,box,,12,,,,,",
        "M3,width,box.frnt,,600,,,,,",
        "M4,time,drill hole,,,,,30,,",
        'M5,can before,"box.front, outside",,,800,,,,',
        'M5,can after,"box.front, outside",,,900,,,,',
        "M6,breadth,box.front,,600,,,,,",
      ),
    )
      .map(showProblem)
      .join("\n");
    expect(told).toMatch(/as-built\.csv.*row 2.*"ply 11".*ply 10, ply 15/);
    expect(told).toMatch(/as-built\.csv.*row 3.*length.*a weight empty stands in the column mass/);
    expect(told).toMatch(/as-built\.csv.*row 4.*"box\.frnt".*did you mean "box\.front"/);
    expect(told).toMatch(/as-built\.csv.*row 5.*how many pieces of the work/);
    expect(told).toMatch(/as-built\.csv.*row 7.*less than the can weighed before/);
    expect(told).toMatch(/as-built\.csv.*row 8.*"breadth"/);
  });
});
