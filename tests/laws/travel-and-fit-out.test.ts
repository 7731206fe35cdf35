/** The review of a case on the way and of what rides inside: criteria, margins, cautions, and what is missing. */
import { describe, expect, test } from "vitest";
import type { Case } from "../../lib/design/index.js";
import { type Finding, reviewCase } from "../../lib/findings/index.js";
import { Force, Length, mm, Power, ratio, type TemperatureRise } from "../../lib/index.js";
import { openJob } from "../../lib/job/index.js";
import {
  type BusinessInput,
  movesFor,
  protectedOrRemoved,
  sectionBalance,
  sectionHeat,
  statesOfMass,
} from "../../lib/model/index.js";
import { designOf, rolling, smallJob } from "../design/small-job.js";

const demo: BusinessInput = openJob("soil-lab-draft");
const small = reviewCase(designOf(rolling(smallJob)));
const find = (findings: readonly Finding[], id: string): Finding | undefined =>
  findings.find((one) => one.id === id);

function withCase(change: Partial<Case>): BusinessInput {
  return { ...demo, case: { ...demo.case, ...change } };
}

const { travel, fitOut } = reviewCase(demo);

describe("every finding of the way and the inside", () => {
  const all = [...travel, ...fitOut];

  test("has an id of its own", () => {
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
  });

  test("that concerns a person's safety prints a caution", () => {
    expect(all.filter(({ cautions }) => cautions.length === 0).map(({ id }) => id)).toEqual([]);
  });

  test("that is answered says its criterion and its margin", () => {
    const answered = all.filter(({ verdict }) => verdict !== "unknown");
    expect(
      answered.filter(({ answer }) => !/The criterion is .+\./.test(answer)).map(({ id }) => id),
    ).toEqual([]);
    expect(
      answered
        .filter(({ answer }) => !/(The margin is|It is over by|It is over by more than) \d/.test(answer))
        .map(({ id }) => id),
    ).toEqual([]);
    expect(answered.filter(({ source }) => source.length === 0)).toEqual([]);
  });

  test("holds where the demand is within the capacity, and fails where it is not", () => {
    const judged = all.filter(({ ratio: used, interval }) => used !== undefined && interval === undefined);
    expect(judged.filter(({ ratio: used, verdict }) => Number(used) <= 1 !== (verdict === "holds"))).toEqual(
      [],
    );
  });

  test("that is unknown names the measurement and how to make it", () => {
    const open = all.filter(({ verdict }) => verdict === "unknown");
    expect(open.filter(({ missing }) => !missing?.measure || !missing.how)).toEqual([]);
  });
});

describe("a job that tells nothing of its way", () => {
  test.each([
    ["travel.stairs.box", "the slope of the stairs"],
    ["travel.threshold", "the highest step on the way"],
    ["travel.gap", "the widest gap on the way"],
    ["travel.ramp", "the slope of the ramp"],
    ["travel.ramp-down", "the slope of the ramp"],
    ["travel.brakes", "how many casters have a brake"],
    ["travel.floor", "the print of a wheel, rolled over carbon paper"],
    ["travel.wind", "the strongest gust where it stands"],
    ["travel.slope", "the slope of the ground"],
    ["travel.lashing.box", "the straps, their angle and the friction on the vehicle's floor"],
  ])("leaves %s unknown: %s", (id, measure) => {
    const finding = find(small.travel, id);
    expect(finding).toMatchObject({ verdict: "unknown", missing: { measure } });
    expect(finding?.cautions.length).toBeGreaterThan(0);
  });

  test("does not know whether what stands on a floor stays there", () => {
    expect(find(small.fitOut, "fit-out.hold.battery")).toMatchObject({
      verdict: "unknown",
      missing: { measure: "what holds the battery against sliding and lifting off the floor" },
    });
  });

  test("asks nothing of a battery while nothing draws power", () => {
    expect(small.fitOut.filter(({ id }) => id.startsWith("fit-out.power"))).toEqual([]);
  });
});

describe("power without services", () => {
  test("leaves battery and circuit unknown, with the caution of mains", () => {
    const { fitOut: bare } = reviewCase(withCase({ services: { cooling: [] } }));
    expect(find(bare, "fit-out.power.battery")?.verdict).toBe("unknown");
    expect(find(bare, "fit-out.power.circuit")).toMatchObject({
      verdict: "unknown",
      missing: { measure: "the circuit it is plugged into, and the cable to it" },
    });
    expect(find(bare, "fit-out.power.circuit")?.cautions.join(" ")).toContain("licensed");
    expect(find(bare, "fit-out.heat.upper")?.verdict).toBe("unknown");
  });
});

describe("mass", () => {
  test("empty and contents make loaded; the stack is the sum of its sections", () => {
    const states = statesOfMass(demo);
    const mass = (what: string, state: string): number =>
      states.find((one) => one.what === what && one.state === state)?.balance.value.mass ?? 0;
    const contents = demo.case.contents.reduce((sum, one) => sum + one.mass, 0);
    expect(mass("stacked", "loaded") - mass("stacked", "empty")).toBeCloseTo(contents, 9);
    expect(mass("upper", "loaded") + mass("lower", "loaded")).toBeCloseTo(mass("stacked", "loaded"), 9);
    expect(mass("lower", "loaded, lids and doors off")).toBeLessThan(mass("lower", "loaded"));
    expect(mass("upper", "loaded, lids and doors off")).toBe(mass("upper", "loaded"));
  });

  test("has an interval from the weighed offcuts, none where nothing was weighed twice", () => {
    expect(statesOfMass(demo).every(({ halfWidth }) => Number(halfWidth) > 0)).toBe(true);
    expect(statesOfMass(demo).every(({ centreHalf }) => Number(centreHalf?.z) > 0)).toBe(true);
    const unweighed = { ...demo, measurements: { ...demo.measurements, weights: [] } };
    expect(statesOfMass(unweighed).filter((state) => "halfWidth" in state)).toEqual([]);
    expect(find(reviewCase(unweighed).travel, "travel.tip")).not.toHaveProperty("interval");
  });

  test("leaves the tilt an interval that the weighings explain", () => {
    const tip = find(travel, "travel.tip");
    expect(tip?.interval?.low).toBeLessThan(tip?.ratio ?? 0);
    expect(tip?.interval?.high).toBeGreaterThan(tip?.ratio ?? 0);
    const shares = tip?.interval?.shares ?? [];
    expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    expect(shares.every(({ input }) => input.startsWith("density of "))).toBe(true);
  });

  test("a content moved as advised brings the balance where it was wanted", () => {
    const balance = sectionBalance(demo, "upper");
    const [move] = movesFor(demo, "upper", balance, mm(-4));
    const contents = demo.parts.contents.map((part) =>
      part.content.name === move?.name
        ? { ...part, centre: { ...part.centre, x: Length.si(part.centre.x + move.possible) } }
        : part,
    );
    const after = sectionBalance({ ...demo, parts: { ...demo.parts, contents } }, "upper");
    expect(after.value.x - balance.value.x).toBeCloseTo(mm(-4), 9);
  });
});

describe("laws of the review", () => {
  test("more straps never make a lashing worse", () => {
    const used = (straps: number): number => {
      const { lashing } = demo.case.journey;
      if (!lashing) throw new Error("the demo has straps");
      const journey = { ...demo.case.journey, lashing: { ...lashing, straps } };
      return find(reviewCase(withCase({ journey })).travel, "travel.lashing.lower")?.ratio ?? Number.NaN;
    };
    expect([2, 3, 4].map(used).every((now, i) => now < used(i + 1))).toBe(true);
  });

  test("a stronger gust, a higher step and a steeper ramp are never easier", () => {
    const used = (id: string, change: Partial<Case["journey"]>): number =>
      find(reviewCase(withCase({ journey: { ...demo.case.journey, ...change } })).travel, id)?.ratio ??
      Number.NaN;
    const { gust, threshold, rampSize } = demo.case.journey;
    if (!rampSize) throw new Error("the demo has a ramp");
    const steeper = { rampSize: { ...rampSize, rise: Length.si(1.5 * rampSize.rise) } };
    const double = <T extends number>(value: T | undefined): T => (2 * (value ?? Number.NaN)) as T;
    expect(used("travel.wind", { gust: double(gust) })).toBeCloseTo(2 * used("travel.wind", {}), 9);
    expect(used("travel.threshold", { threshold: double(threshold) })).toBeGreaterThan(
      used("travel.threshold", {}),
    );
    expect(used("travel.ramp", steeper)).toBeGreaterThan(used("travel.ramp", {}));
    expect(used("travel.ramp-down", steeper)).toBeGreaterThan(used("travel.ramp-down", {}));
  });

  test("the rise inside goes to zero with the power, by the log and by reckoning", () => {
    const unlogged = { ...demo, measurements: { ...demo.measurements, temperatures: [] } };
    for (const input of [demo, unlogged]) {
      const at = (share: number): TemperatureRise => {
        const contents = input.case.contents.map((one) =>
          one.power === undefined ? one : { ...one, power: Power.si(one.power * share) },
        );
        return sectionHeat({ ...input, case: { ...input.case, contents } }, "upper").rise;
      };
      expect(at(0)).toBe(0);
      expect(at(0.01)).toBeLessThan(at(1) / 50);
      expect(at(1)).toBeGreaterThan(0);
    }
  });

  test("a larger pad moves along the curve, one off its end is unknown", () => {
    const withPad = (side: number): Finding | undefined => {
      const contents = demo.case.contents.map((one) =>
        one.needs.foam
          ? {
              ...one,
              needs: { ...one.needs, foam: { ...one.needs.foam, padWidth: mm(side), padDepth: mm(side) } },
            }
          : one,
      );
      return find(reviewCase(withCase({ contents })).travel, "travel.drop.field spectrometer");
    };
    expect(withPad(200)?.ratio).toBeGreaterThan(0);
    expect(withPad(20)).toMatchObject({ verdict: "unknown" });
    expect(withPad(20)?.missing?.how).toContain("stress must be within the curve");
  });

  test("what slides under less than the road's push fails, under more it holds", () => {
    const sliding = (push: number): Finding | undefined => {
      const contents = demo.case.contents.map((one) =>
        one.name === "storage bay crate" ? { ...one, needs: { slidesAt: Force.of(push, "lbf") } } : one,
      );
      const parts = {
        ...demo.parts,
        contents: demo.parts.contents.map((part) => ({
          ...part,
          content: contents.find(({ name }) => name === part.content.name) ?? part.content,
        })),
      };
      return find(reviewCase({ ...withCase({ contents }), parts }).fitOut, "fit-out.hold.storage bay crate");
    };
    // 0.8 of 18 lb
    expect(sliding(14)?.verdict).toBe("fails");
    expect(sliding(15)?.verdict).toBe("holds");
    expect(sliding(14.4)?.ratio).toBeCloseTo(ratio(1), 9);
  });

  test("by itself a content is never dropped from lower than in its case, rough hands never from lower than careful", () => {
    const rows = protectedOrRemoved(demo);
    // the upper section weighs less than a parcel may
    const ways = ["careful", "usual", "rough", "parcel"];
    expect(rows.map(({ handling }) => handling)).toEqual([...ways, ...ways]);
    expect(rows.every(({ inCase, byItself }) => byItself.height >= inCase.height)).toBe(true);
    expect(rows.slice(1, 3).every(({ inCase }, i) => inCase.height > (rows[i]?.inCase.height ?? 0))).toBe(
      true,
    );
    expect(rows[4]?.inCase).not.toHaveProperty("deceleration");
  });
});
