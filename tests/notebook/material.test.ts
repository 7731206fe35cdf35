/** What a climate does to the ply, in a table. */
import { expect, test } from "vitest";
import { openJob } from "../../lib/job/index.js";
import { durationTable, massIntervalTable, woodClimateTable } from "../../lib/notebook/index.js";
import { ratio, Temperature } from "../../lib/quantity/index.js";
import { otherJob } from "../other-jobs.js";

const between = (from: number, to: number, dry: number) =>
  woodClimateTable(
    {
      fromTemperature: Temperature.of(from, "°C"),
      toTemperature: Temperature.of(to, "°C"),
      fromHumidity: ratio(0.65),
      toHumidity: ratio(dry),
    },
    { system: "metric" },
  );

test("damp air takes strength, dry air gives some, heat takes it back", () => {
  const [before, after] = between(21.1, 60, 0.35).rows as [string[], string[]];
  // At 70 degrees F and 65 % the Wood Handbook has 12 % moisture, where the values stand.
  expect(before?.[2]).toBe("12 %");
  expect(before?.slice(3)).toEqual(["100 %", "100 %", "100 %", "100 %"]);
  expect(Number.parseFloat(String(after?.[3]))).toBeGreaterThan(100);
  expect(after?.slice(5)).toEqual(["70 %", "90 %"]);
});

test("beyond a rule it says so", () => {
  const [, after] = between(20, 70, 0.1).rows;
  expect(after?.slice(3)).toEqual(Array(4).fill("beyond its rule"));
});

test("a brief load may be larger than a lasting one", () => {
  const shares = durationTable().rows.map(([, share]) => Number.parseFloat(String(share)));
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
});

test("a mass of which nothing was weighed has no interval, and says what would give one", async () => {
  const box = openJob(await otherJob("bare-box"));
  const { rows } = massIntervalTable(box, "box", 0.8);
  expect(rows.map(([, , interval]) => interval)).toEqual(rows.map(() => "not known: weigh offcuts"));
  const weighed = massIntervalTable(openJob("soil-lab"), "lower", 0.8);
  for (const [, , interval] of weighed.rows) expect(interval).toMatch(/^[\d.]+ lb to [\d.]+ lb$/);
});
