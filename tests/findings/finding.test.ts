import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { byDanger, keepsFromRelease, type Tier, type Verdict } from "../../lib/findings/index.js";
import { openJob, recipeOf } from "../../lib/job/index.js";

const tiers: readonly Tier[] = ["safety", "strength", "handling", "feel"];
const verdicts: readonly Verdict[] = ["fails", "broken", "unknown", "close", "holds"];

const standing = fc.record({
  tier: fc.constantFrom(...tiers),
  verdict: fc.constantFrom(...verdicts),
  ratio: fc.option(fc.double({ min: 0, max: 50, noNaN: true }), { nil: undefined }),
});

describe("findings by danger", () => {
  test("stand by tier, then by what fails, then by how far over", () => {
    const at = (tier: Tier, verdict: Verdict, ratio?: number) => ({ tier, verdict, ratio });
    const mixed = [
      at("feel", "fails", 1.02),
      at("safety", "holds", 0.9),
      at("safety", "fails", 1.1),
      at("safety", "fails"),
      at("strength", "unknown"),
      at("safety", "fails", 4),
      at("handling", "fails", 9),
    ];
    expect(byDanger(mixed).map(({ tier, verdict, ratio }) => `${tier} ${verdict} ${ratio}`)).toEqual([
      "safety fails undefined",
      "safety fails 4",
      "safety fails 1.1",
      "safety holds 0.9",
      "strength unknown undefined",
      "handling fails 9",
      "feel fails 1.02",
    ]);
  });

  test("lose none, and no comfort stands before what hurts", () => {
    fc.assert(
      fc.property(fc.array(standing), (list) => {
        const sorted = byDanger(list);
        expect(new Set(sorted)).toEqual(new Set(list));
        const ranks = sorted.map(({ tier }) => tiers.indexOf(tier));
        expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
      }),
    );
  });

  test("keep a case from release only where somebody is hurt or something breaks", () => {
    expect(tiers.filter((tier) => keepsFromRelease({ tier, verdict: "fails" }))).toEqual([
      "safety",
      "strength",
    ]);
    expect(verdicts.filter((verdict) => keepsFromRelease({ tier: "safety", verdict }))).toEqual([
      "fails",
      "broken",
      "unknown",
    ]);
  });
});

describe("what a finding says of its limit", () => {
  const { findings } = openJob("soil-lab-draft").review;
  const of = (id: string): string => findings.find((one) => one.id === id)?.answer ?? "";

  test("is a standard, guidance, a rule of the trade or the builder's wish", () => {
    expect(of("travel.tip")).toContain("The criterion is a standard or code: IEC 62368-1");
    expect(of("travel.roll")).toContain("The criterion is guidance: Manual handling");
    expect(of("travel.casters")).toContain(
      "The criterion is a rule of the trade, as no published rule was found: a third",
    );
    expect(findings.some(({ answer }) => answer.includes("The criterion is your own wish: "))).toBe(true);
    expect(findings.filter(({ answer }) => answer.includes("no source")).map(({ id }) => id)).toEqual([]);
  });

  test("comes with an interval, or with what it rests on, wherever somebody is hurt or something breaks", () => {
    const grave = findings.filter(
      ({ tier, verdict }) => (tier === "safety" || tier === "strength") && verdict !== "unknown",
    );
    expect(grave.length).toBeGreaterThan(20);
    expect(
      grave.filter(({ interval, assumes }) => !interval && assumes.length === 0).map(({ id }) => id),
    ).toEqual([]);
    const sure = grave.filter(({ verdict, interval }) => verdict === "holds" && interval !== undefined);
    expect(sure.filter(({ interval }) => (interval?.high ?? 0) > 1).map(({ id }) => id)).toEqual([]);
  });
});

describe("the recipe of the demo", () => {
  const recipe = recipeOf(openJob("soil-lab"));
  const blocks = recipe.sections.flatMap((section) => section.blocks);

  test("tells at most 25 cautions, each once, and says whether it is released", () => {
    const told = blocks.flatMap((block) => (block.kind === "cautions" ? block.items : []));
    expect(told.length).toBeLessThanOrEqual(25);
    expect(new Set(told).size).toBe(told.length);
    expect(JSON.stringify(recipe.sections[0])).toContain(
      "RELEASED. No question of safety or strength is open.",
    );
    expect(JSON.stringify(recipe)).not.toMatch(/NOT RELEASED|Do not cut/);
  });

  test("is kept back where safety or strength is not settled", () => {
    expect(JSON.stringify(recipeOf(openJob("soil-lab-draft")).sections[0])).toMatch(
      /NOT RELEASED\. \d+ checks of safety or strength fail or wait\. Do not cut\./,
    );
  });
});
