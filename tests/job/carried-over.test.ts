/** A case that was built, and the next one from its figures: what is read of the second is what was measured on the first. */
import { expect, test } from "vitest";
import { carriedOver } from "../../lib/job/index.js";
import { massItems, massOfAll, plannedMasses } from "../../lib/model/index.js";
import { Length, Mass, Time } from "../../lib/quantity/index.js";
import { designOf, smallJob } from "../design/small-job.js";

const trials: Readonly<Record<string, string>> = {
  ...smallJob,
  "timings.csv": `work,unit,tool,pieces,time (min)
drill hole,hole,"hand drill, 5 mm",40,18
set rivet,rivet,hand riveter,40,14
set rivet,rivet,powered riveter,40,6`,
  "kerfs.csv": "blade,before (mm),after (mm),offcuts (mm),cuts,use\nfine,500,479,0,10,both",
  "weights.csv": `sample,material,length (mm),width (mm),thickness (mm),mass (g)
one,ply 10,200,100,10,140`,
};
const built: Readonly<Record<string, string>> = {
  ...trials,
  "as-built.csv": `number,what,of,at,length (mm),can (g),mass (kg),time (min),pieces,price (EUR)
M1,thickness,ply 10,1,10.2,,,,,
M1,thickness,ply 10,2,10.6,,,,,
M2,kerf,sheets,1,2.6,,,,,
M3,time,drill hole,"hand drill, 5 mm",,,,90,200,
M4,time,set rivet,hand riveter,,,,60,150,
M5,can before,"box.front, outside",,,900,,,,
M5,can after,"box.front, outside",,,800,,,,
M6,weight empty,box,,,,40,,,
M7,price paid,yard,,,,,,,300`,
};
const last = { ...designOf(built), texts: built };
const next = carriedOver(last);
const read = designOf(next);

test("the files of the next case have no as-built table and say nothing else than what was measured", () => {
  expect(Object.keys(next).sort()).toEqual([...Object.keys(trials), "spread-trials.csv"].sort());
  expect(next["case.yaml"]).toBe(built["case.yaml"]);
  expect(next["hardware.csv"]).toBe(built["hardware.csv"]);
});

test("times are those that the case took, with its tool; another tool keeps its trial", () => {
  const told = read.measurements.timings.map(({ work, tool, pieces, time }) => [
    work,
    tool,
    pieces,
    Time.in(time, "min"),
  ]);
  expect(told).toEqual([
    ["drill hole", "hand drill, 5 mm", 200, 90],
    ["set rivet", "hand riveter", 150, 60],
    ["set rivet", "powered riveter", 40, 6],
  ]);
});

test("slots, glue and thickness are read again as they were on the case", () => {
  const slots = (of: typeof read) =>
    of.measurements.kerfs.map(({ blade, before, after, offcuts, cuts, use }) => [
      ...[blade, before, after, offcuts],
      ...[cuts, use],
    ]);
  expect(slots(read)).toEqual(slots(last));
  const rates = (of: typeof read) =>
    of.measurements.spreads.map(({ adhesive, area, before, after }) => [
      adhesive,
      Number((Mass.in(before, "g") - Mass.in(after, "g")).toFixed(9)),
      Number(area.toFixed(9)),
    ]);
  expect(rates(read)).toEqual(rates(last));
  const thickness = (of: typeof read) => of.stock.sheets.map((row) => Length.in(row.thickness, "mm"));
  expect(thickness(read)[0]).toBeCloseTo(10.4, 9);
  expect(thickness(read)[1]).toBe(15);
});

test("panels of the next case are as heavy as the scale made them on the last", () => {
  const panels = (items: ReturnType<typeof massItems>): number =>
    massOfAll(items.filter(({ material }) => material === "ply 10"));
  expect(panels(massItems(read))).toBeCloseTo(panels(massItems(last)), 6);
  expect(panels(plannedMasses(last)) / panels(massItems(last))).not.toBeCloseTo(1, 2);
});

test("carried over once more, nothing moves; with nothing filled in, the files are as they were", () => {
  expect(carriedOver({ ...read, texts: next })).toEqual(next);
  const empty = { ...trials, "as-built.csv": "number,what,of,length (mm)\nM1,thickness,ply 10,\n" };
  expect(carriedOver({ ...designOf(empty), texts: empty })).toEqual(trials);
});

test("a sheet further off than its veneers allow keeps the thickness of its table, so that the files can be read", () => {
  const thick = { ...trials, "as-built.csv": "number,what,of,length (mm)\nM1,thickness,ply 10,11.5\n" };
  const carried = designOf(carriedOver({ ...designOf(thick), texts: thick }));
  expect(carried.stock.sheets[0]?.thickness).toBeCloseTo(10e-3, 12);
});
