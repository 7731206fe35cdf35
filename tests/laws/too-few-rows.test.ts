/** No estimate is printed from fewer rows than it needs. */
import { expect, test } from "vitest";
import { type Job, openJob } from "../../lib/job/index.js";
import {
  measuringAnswer,
  moduliTable,
  oddReadings,
  strengthTable,
  stripModuli,
  twistTable,
  twoSpanTable,
  warmUpTable,
} from "../../lib/notebook/index.js";

const job = openJob("soil-lab-draft");
const { measurements } = job;

/** The first so many rows of each group. */
function first<Row>(rows: readonly Row[], count: number, group: (row: Row) => string): Row[] {
  return rows.filter((row, i) => rows.slice(0, i).filter((one) => group(one) === group(row)).length < count);
}

const few: Job = {
  ...job,
  measurements: {
    ...measurements,
    bends: first(measurements.bends, 2, ({ strip }) => strip),
    twists: first(measurements.twists, 2, ({ sample }) => sample),
    pulls: first(
      measurements.pulls,
      2,
      ({ fastener, direction, washer }) => `${fastener} ${direction} ${washer}`,
    ),
    temperatures: first(measurements.temperatures, 2, ({ section }) => section),
  },
};

test("two loads on a strip or an offcut give no modulus, and each is told with its row", () => {
  expect(stripModuli(few, "birch ply 3/8")).toEqual([]);
  expect(moduliTable(few).rows.map((row) => row[3])).toEqual(moduliTable(few).rows.map(() => "not yet"));
  expect(twistTable(few).rows).toEqual([]);
  expect(twoSpanTable(few).rows).toEqual([]);
  expect(measuringAnswer(few)).toContain("No bend tests");
  const told = oddReadings(few);
  const strips = new Set(few.measurements.bends.map(({ strip }) => strip));
  const offcuts = new Set(few.measurements.twists.map(({ sample }) => sample));
  expect(told.filter(({ odd }) => odd.includes("hang more weights on it"))).toHaveLength(
    strips.size + offcuts.size,
  );
  for (const { where } of told) expect(where).toMatch(/\.csv, row \d+$/);
});

test("two pulls give no strength, two readings no warm-up", () => {
  expect(strengthTable(few).rows.map((row) => row[3])).toEqual(
    strengthTable(few).rows.map(() => "pull at least 3"),
  );
  expect(warmUpTable(few).rows).toEqual([]);
});
