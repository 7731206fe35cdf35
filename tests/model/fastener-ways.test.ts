/** One fastener every way it can give, and groups loaded off their middle. */
import { describe, expect, test } from "vitest";
import { openJob } from "../../lib/job/index.js";
import { fastenerStrength, fastenerWays, isKnown, offMiddle } from "../../lib/model/index.js";
import { fastenerWaysTable, hardwareRivets, offMiddleTable, rivetNames } from "../../lib/notebook/index.js";
import { mm, ratio } from "../../lib/quantity/index.js";

const job = openJob("soil-lab-draft");
const edge = job.parts.fastenings.find(({ why }) => why === "edge");
if (!edge) throw new Error("the demo has riveted edges");

describe("one fastener, every way it can give", () => {
  const { ways } = fastenerWays(edge, job);

  test("is listed with the weakest first, formula and own tests beside each other", () => {
    expect(ways.map(({ load }) => load)).toEqual([...ways].map(({ load }) => load).sort((a, b) => a - b));
    expect(ways.map(({ way }) => way)).toEqual(
      expect.arrayContaining([
        "sheared off",
        "crushes the side of its hole in the ply",
        "tears out to the nearest edge",
        "pulled through, washer at the back",
        "pulled through, by its head",
        "shear, 95 of 100 hold",
      ]),
    );
  });

  test("of the formulas none is weaker than the strength that findings take from them", () => {
    const untested = { ...job, measurements: { ...job.measurements, pulls: [] } };
    const strength = fastenerStrength(edge, "shear", untested);
    if (!isKnown(strength)) throw new Error("its maker states its shear");
    const shears = fastenerWays(edge, untested).ways.filter(({ way }) => /sheared|crushes/.test(way));
    expect(Math.min(...shears.map(({ load }) => load))).toBeCloseTo(strength.strength, 9);
  });

  test("fills a table for every rivet and bolt of the case", () => {
    for (const name of rivetNames(job)) expect(fastenerWaysTable(job, name).rows.length).toBeGreaterThan(3);
  });
});

describe("a group whose load is off its middle", () => {
  const handle = job.parts.fastenings.find(({ holds }) => holds === "carry handle 1");
  if (!handle) throw new Error("the demo has handles");

  test("holds all of it through its middle, less the further off, and never less than elastic", () => {
    const rows = offMiddle(handle, [mm(0), mm(20), mm(40), mm(80)]);
    expect(rows[0]).toMatchObject({ elastic: 1, ultimate: 1 });
    for (const [i, { elastic, ultimate }] of rows.entries()) {
      expect(ultimate).toBeGreaterThanOrEqual(elastic - 1e-9);
      if (i > 0) expect(elastic).toBeLessThan(rows[i - 1]?.elastic ?? 0);
    }
    expect(offMiddleTable(job, [ratio(0), ratio(0.5), ratio(1)]).rows).toHaveLength(3);
  });
});

test("rivets of the hardware are counted by part: four handles of ten and corners of six", () => {
  const counted = hardwareRivets(job);
  if (typeof counted === "string") throw new Error(counted);
  expect(counted.inputs[0]?.show()).toContain("recessed handle");
  const rivets = job.parts.fastenings.filter(
    ({ why, fastener }) => why === "hardware" && fastener.kind === "rivet",
  );
  expect(counted.results[0]?.show()).toBe(String(rivets.reduce((sum, { count }) => sum + count, 0)));
});

test("a case without a rivet says so, and the tables beside it stay", () => {
  const bare = { ...job, parts: { ...job.parts, fastenings: [] } };
  expect(hardwareRivets(bare)).toBe("No hardware is riveted.");
});
