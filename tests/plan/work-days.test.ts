/** Days of made-up rows, against sums done by hand. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { plannedDays, sharedWork, type TimedRow } from "../../lib/plan/index.js";
import { Time } from "../../lib/quantity/index.js";

const row = (
  hours: number,
  after: readonly number[],
  more: Partial<Pick<TimedRow, "section" | "wait" | "lifted">> = {},
): TimedRow => ({
  ...{ steps: [], works: [], time: Time.of(hours, "h"), wait: Time.si(0), lifted: false, after },
  ...more,
});
const told = (rows: readonly TimedRow[], people: 1 | 2) =>
  plannedDays(rows, people).map(({ row: at, day, hands, time, begins }) => [
    at,
    day,
    hands,
    Number(Time.in(time, "h").toFixed(6)),
    Number(Time.in(begins, "h").toFixed(6)),
  ]);

test("one person goes from row to row; what does not fit into 8 hours goes on the next day", () => {
  expect(told([row(5, []), row(4, [0])], 1)).toEqual([
    [0, 1, "one", 5, 0],
    [1, 1, "one", 3, 5],
    [1, 2, "one", 1, 0],
  ]);
});

test("what waits for glue begins when it has cured by the clock, and other work fills the time", () => {
  const glued = [row(4, []), row(0, [0], { wait: Time.of(24, "h") }), row(2, [1]), row(1, [0])];
  expect(told(glued, 1)).toEqual([
    [0, 1, "one", 4, 0],
    [3, 1, "one", 1, 4],
    [2, 2, "one", 2, 4],
  ]);
});

test("two people work side by side in two sections, and together at what there is one of", () => {
  const two = [row(1, []), row(2, [0], { section: "a" }), row(2, [0], { section: "b" }), row(1, [1, 2])];
  expect(told(two, 2)).toEqual([
    [0, 1, "both", 0.6, 0],
    [1, 1, "one", 2, 0.6],
    [2, 1, "other", 2, 0.6],
    [3, 1, "both", 0.6, 2.6],
  ]);
});

const someRows = fc
  .array(
    fc.record({
      hours: fc.integer({ min: 0, max: 40 }).map((quarters) => quarters / 4),
      section: fc.constantFrom("a", "b", "c"),
      lifted: fc.boolean(),
      before: fc.array(fc.nat(20), { maxLength: 3 }),
    }),
    { minLength: 1, maxLength: 12 },
  )
  .map((list) =>
    list.map(({ hours, section, lifted, before }, i) =>
      row(hours, i === 0 ? [] : [...new Set(before.map((one) => one % i))], { section, lifted }),
    ),
  );

test("no work is lost, no day is longer than 8 hours, and nobody is in two places", () => {
  fc.assert(
    fc.property(someRows, fc.constantFrom(1 as const, 2 as const), (rows, people) => {
      const stints = plannedDays(rows, people);
      rows.forEach(({ time }, at) => {
        const done = stints
          .filter((one) => one.row === at)
          .reduce((sum, one) => sum + one.time / (one.hands === "both" ? sharedWork : 1), 0);
        expect(done).toBeCloseTo(time, 3);
      });
      for (const { begins, time } of stints) expect(begins + time).toBeLessThanOrEqual(8 * 3600 + 1e-6);
      for (const who of ["one", "other"] as const) {
        const mine = stints
          .filter(({ hands }) => hands === who || hands === "both")
          .map(({ day, begins, time }) => ({ from: day * 86_400 + begins, to: day * 86_400 + begins + time }))
          .sort((a, b) => a.from - b.from);
        mine.forEach(({ from }, i) => {
          expect(from).toBeGreaterThanOrEqual((mine[i - 1]?.to ?? 0) - 1e-6);
        });
      }
    }),
  );
});
