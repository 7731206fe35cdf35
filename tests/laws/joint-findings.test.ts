import { describe, expect, test } from "vitest";
import type { SecondHold } from "../../lib/design/index.js";
import { handles, latches, loneHandles } from "../../lib/findings/joints/handles.js";
import { corners, hinges } from "../../lib/findings/joints/hardware.js";
import { inserts as askInserts, hung, secondHolds } from "../../lib/findings/joints/held.js";
import { seams } from "../../lib/findings/joints/seams.js";
import { openJob } from "../../lib/job/index.js";
import {
  facingModuli,
  fastenerKinds,
  fastenerStrength,
  type ReviewInput,
  sheetModuli,
} from "../../lib/model/index.js";
import {
  faceOptions,
  facingStresses,
  fastenerSchedule,
  fastenerTotals,
  gluePlans,
} from "../../lib/plan/index.js";
import { mm, newton, ratio } from "../../lib/quantity/index.js";
import { caseWith } from "../design/case-with.js";
import { designOf } from "../design/small-job.js";

const job = openJob("soil-lab-draft");
const { joints } = job.review;
const changed = (changes: Partial<ReviewInput>): ReviewInput => ({ ...job, ...changes });

/** Tests of a fastener or a latch in shear. */
function shearsOf(fastener: string, loads: readonly number[]): typeof job.measurements.pulls {
  return loads.map((load, i) => ({
    test: `${fastener} ${i}`,
    fastener,
    sheet: "birch ply 3/8",
    washer: "no",
    direction: "shear",
    load: newton(load),
  }));
}

/** The parts with all hardware rated alike. */
function rated(load: number): typeof job.parts {
  const hardware = job.parts.hardware.map((part) => ({
    ...part,
    stock: { ...part.stock, rated: newton(load) },
  }));
  return { ...job.parts, hardware };
}

describe("findings about joints", () => {
  test("have ids of their own", () => {
    expect(new Set(joints.map(({ id }) => id)).size).toBe(joints.length);
  });

  test.each([
    "handles",
    "handle-alone",
    "corners",
    "casters",
    "hinges",
    "latches",
    "seams",
    "shelf",
    "hung",
    "second-hold",
    "inserts",
    "grip",
  ])("ask about %s", (kind) => {
    expect(joints.some(({ id }) => id.startsWith(`joints.${kind}.`))).toBe(true);
  });

  test("show demand over capacity and the working behind it, unless they are unknown", () => {
    for (const { verdict, demand, capacity, because, missing } of joints) {
      expect(
        verdict === "unknown" ? missing !== undefined : demand && capacity && because.length > 0,
      ).toBeTruthy();
    }
  });

  test("grow with the jerk, but for a handle alone, which is not jerked", () => {
    const coarser = changed({
      case: {
        ...job.case,
        demands: { ...job.case.demands, dynamicFactor: ratio(3 * job.case.demands.dynamicFactor) },
      },
    });
    for (const ask of [handles, corners, hinges, hung]) {
      expect(ask(coarser)[0]?.ratio).toBeCloseTo(3 * (ask(job)[0]?.ratio ?? 0), 6);
    }
    expect(loneHandles(coarser)[0]?.ratio).toBe(loneHandles(job)[0]?.ratio);
  });

  test("carry the scatter of own tests as an interval about the ratio, and are close where it straddles the limit", () => {
    const tested = joints.filter(({ interval }) => interval !== undefined);
    expect(tested.length).toBeGreaterThan(0);
    for (const { ratio: used = Number.NaN, interval, verdict } of tested) {
      expect(interval?.low).toBeLessThan(used);
      expect(interval?.high).toBeGreaterThan(used);
      expect(verdict === "close").toBe((interval?.low ?? 1) < 1 && (interval?.high ?? 1) > 1);
    }
  });

  test.each([
    ["handles", handles, ["shear tests of rivet 3/16 long"]],
    ["hinges", hinges, ["pull tests of rivet 3/16 short", "shear tests of rivet 3/16 short"]],
    ["latches", latches, ["shear tests of rivet 3/16 short"]],
  ])("about %s carry the scatter of the tests their fasteners had", (_, ask, tests) => {
    const [found] = ask(changed({ parts: rated(9000) }));
    expect(found?.interval?.low).toBeLessThan(found?.ratio ?? 0);
    expect(found?.interval?.high).toBeGreaterThan(found?.ratio ?? Number.NaN);
    const shares = [...(found?.interval?.shares ?? [])].sort((a, b) => a.input.localeCompare(b.input));
    expect(shares.map(({ input }) => input)).toEqual(tests.map((words) => `your ${words}`));
    expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 0);
  });

  test("have no interval where a maker's word sets the limit", () => {
    const [found] = handles(changed({ parts: rated(1) }));
    expect(found?.answer).toContain("the handle itself sets the limit");
    expect(found?.interval).toBeUndefined();
  });

  test("count pulls of a whole latch for want of a maker's word, over the safety factor", () => {
    const of = (loads: readonly number[]) => {
      const pulls = [...job.measurements.pulls, ...shearsOf("draw latch", loads)];
      return latches(changed({ measurements: { ...job.measurements, pulls } }))[0];
    };
    expect(of([700, 720])?.missing?.measure).toBe("the load rating of draw latch");
    expect(of([700, 720, 690])?.answer).toContain("the latch itself sets the limit");
    expect(of([700, 720, 690])?.interval?.shares[0]?.input).toBe("your pull tests of draw latch");
    expect(of([7000, 7200, 6900])?.answer).toContain("its fasteners set the limit");
    expect(of([1400, 1440, 1380])?.ratio).toBeCloseTo((of([700, 720, 690])?.ratio ?? 0) / 2, 9);
  });

  const hungWith = (secondHold: boolean | SecondHold) => {
    const parts = {
      ...job.parts,
      contents: job.parts.contents.map((part) =>
        part.content.held.by === "hung"
          ? { ...part, content: { ...part.content, held: { ...part.content.held, secondHold } } }
          : part,
      ),
    };
    const found = [hung, secondHolds].flatMap((ask) => ask(changed({ parts })));
    return (kind: string) => found.find(({ id }) => id.startsWith(`joints.${kind}.`));
  };
  const cord: SecondHold = {
    fastener: "bolt 1/4 x 1",
    count: 1,
    rated: newton(250),
    slack: mm(0),
    give: mm(5),
  };

  test("about a thing overhead fail without a second hold", () => {
    const hung = hungWith(false);
    expect(hung("hung")?.verdict).toBe("fails");
    expect(hung("hung")?.answer).toMatch(/^The lamp has no second hold\./);
    expect(hung("second-hold")).toBeUndefined();
  });

  test("ask for the strength of a second hold that nobody described", () => {
    const second = hungWith(true)("second-hold");
    expect(second?.verdict).toBe("unknown");
    expect(second?.missing?.measure).toBe(
      "what the second hold of the lamp bears, and how far it lets it fall",
    );
    expect(second?.cautions.join()).toContain("Follow local rules");
  });

  test("let a second hold without slack bear twice the weight, and more the longer the fall", () => {
    const use = (hold: Partial<SecondHold>) => hungWith({ ...cord, ...hold })("second-hold")?.ratio ?? 0;
    const weight =
      (job.parts.contents.find(({ content }) => content.name === "lamp")?.content.mass ?? 0) * 9.80665;
    expect(use({})).toBeCloseTo((2 * weight) / 250, 9);
    expect(use({ slack: mm(10) })).toBeGreaterThan(use({ slack: mm(5) }));
    expect(use({ slack: mm(10), give: mm(20) })).toBeLessThan(use({ slack: mm(10) }));
    const far = hungWith({ ...cord, slack: mm(100), give: mm(1) })("second-hold");
    expect(far?.verdict).toBe("fails");
    expect(far?.answer).toContain("Take up the slack");
    expect(far?.cautions.join()).toContain("spent");
  });
});

describe("edges of unlike walls", () => {
  test("are asked where their fasteners use most of what they hold, at the left and at the right", () => {
    const asked = (weak: string): string | undefined => {
      const plain = { openings: { door: null } };
      const panels = { left: plain, [weak]: { ...plain, sheet: "ply 10" } };
      const input = designOf(caseWith({ build: { sheet: "ply 15" }, sections: { box: { panels } } }));
      return seams({ ...input, box: () => ({ refused: "no boxes here" }) })[0]?.answer;
    };
    expect(asked("left")).toContain("box.left");
    expect(asked("right")).toContain("box.right");
  });
});

describe("strength of a fastener", () => {
  const riveted = job.parts.fastenings.find(
    ({ fastener, panel }) => fastener.name === "rivet 3/16 short" && panel === "lower.left",
  );
  if (!riveted) throw new Error("the demo has riveted walls");
  const pulls = (count: number) => ({
    ...job.measurements,
    pulls: job.measurements.pulls
      .filter(
        (row) => row.fastener === riveted.fastener.name && row.direction === "pull" && row.washer === "yes",
      )
      .slice(0, count),
  });

  test("comes from three tests, not from two", () => {
    const from = (count: number) =>
      fastenerStrength(riveted, "pull", changed({ measurements: pulls(count) }));
    expect(from(2)).toMatchObject({ from: "formula" });
    expect(from(3)).toMatchObject({ from: "tests" });
    expect(from(3)).toHaveProperty("uncertainty.degreesOfFreedom", 2);
  });
});

describe("inserts", () => {
  const inserts = (changes: Partial<ReviewInput> = {}) => askInserts(changed(changes))[0];
  const withPulls = (keep: (row: (typeof job.measurements.pulls)[number]) => boolean) => ({
    measurements: { ...job.measurements, pulls: job.measurements.pulls.filter(keep) },
  });

  test("count own tests first, with their scatter, or else a formula", () => {
    expect(inserts()?.answer).toContain("Their strength comes from your own tests");
    expect(
      inserts()
        ?.interval?.shares.map(({ input }) => input)
        .sort(),
    ).toEqual(["your pull tests of insert 10-24", "your shear tests of insert 10-24"]);
    const untested = inserts(withPulls(({ fastener }) => fastener !== "insert 10-24"));
    expect(untested?.answer).toContain("Their strength comes from a formula");
    expect(untested?.interval).toBeUndefined();
  });

  test("have a hole of their own in the schedule, no washer, and a grip of what the screw goes through", () => {
    const row = fastenerSchedule(job).find(({ fastener }) => fastener.kind === "insert");
    expect(row?.hole).toBeCloseTo((5 / 16) * 0.0254, 9);
    expect(row?.washers).toBe(0);
    expect(row?.grip).toBeCloseTo(0.0015, 9);
  });
});

describe("the schedule of fasteners", () => {
  const rows = fastenerSchedule(job);
  const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);

  test("has every fastener of the case once", () => {
    expect(sum(rows.map(({ count }) => count))).toBe(sum(job.parts.fastenings.map(({ count }) => count)));
  });

  test("counts washers only under what has bare wood behind it and a hand to hold them", () => {
    const backed = job.parts.fastenings.filter(
      ({ backIsBareWood, noHandBehind, fastener }) =>
        backIsBareWood && !noHandBehind && ["rivet", "bolt"].includes(fastener.kind),
    );
    expect(sum(rows.map(({ washers }) => washers))).toBe(sum(backed.map(({ count }) => count)));
  });

  test("takes less time with the powered riveter than by hand", () => {
    const [most] = fastenerTotals(job, job.review.purchases);
    const time = (tool: string) => most?.byTool.find((one) => one.tool === tool)?.time ?? Number.NaN;
    expect(time("powered riveter")).toBeLessThan(time("hand riveter"));
  });

  test("sets kinds of fasteners side by side", () => {
    const [sheet] = job.stock.sheets;
    if (!sheet) throw new Error("the demo has sheets");
    for (const { load, because } of fastenerKinds(sheet)) {
      expect(load).toBeGreaterThan(0);
      expect(because.source.length).toBeGreaterThan(0);
    }
  });
});

describe("own tests of the stock", () => {
  test("of twist take the place of the veneers' estimate", () => {
    const [sheet] = job.stock.sheets;
    if (!sheet) throw new Error("the demo has sheets");
    expect(sheetModuli(sheet, job.measurements).shear.from).toBe("measured");
    expect(sheetModuli(sheet, { ...job.measurements, twists: [] }).shear.from).toBe("veneers");
  });

  test("of bare and faced strips find a facing whose table value lies in their interval", () => {
    const found = facingModuli(job.stock.sheets, job.measurements);
    const modulus = job.stock.facings.find(({ name }) => name === "laminate sheet 1 mm")?.modulus ?? 0;
    expect(found.length).toBeGreaterThan(0);
    for (const { modulus: drawn } of found) {
      expect(drawn.interval.low).toBeLessThan(modulus);
      expect(drawn.interval.high).toBeGreaterThan(modulus);
    }
  });
});

describe("faces compared", () => {
  const options = faceOptions(job);

  test("none on the front is beaten by any other", () => {
    for (const one of options.filter(({ front }) => front)) {
      const better = options.filter(
        (other) =>
          other.cost.total.amount < one.cost.total.amount &&
          other.mass < one.mass &&
          other.stiffening > one.stiffening,
      );
      expect(better).toEqual([]);
    }
    expect(options[0]?.front).toBe(true);
  });

  test("a thicker laminate of one modulus stiffens more", () => {
    const gain = (name: string) => options.find(({ facing }) => facing.name === name)?.stiffening ?? 0;
    expect(gain("laminate sheet 1 mm")).toBeGreaterThan(gain("laminate sheet 0.7 mm"));
    expect(gain("laminate sheet 0.7 mm")).toBeGreaterThan(1);
  });

  test("trials give the cost an interval about it, labels do not", () => {
    for (const { cost, costInterval, rateFrom } of options) {
      if (rateFrom === "label") expect(costInterval).toBeUndefined();
      if (costInterval) {
        expect(costInterval.low).toBeLessThan(cost.total.amount);
        expect(costInterval.high).toBeGreaterThan(cost.total.amount);
      }
    }
    expect(options.some(({ costInterval }) => costInterval !== undefined)).toBe(true);
  });

  test("every adhesive of the case has a plan, every facing its edge", () => {
    expect(gluePlans(job).map(({ adhesive }) => adhesive.name)).toEqual([
      ...new Set(job.parts.facings.map(({ adhesive }) => adhesive.name)),
    ]);
    const still = facingStresses(job, { warming: ratio(0), moistening: ratio(0) });
    expect(still.map(({ shear, peel }) => shear + peel)).toEqual(still.map(() => 0));
  });
});
