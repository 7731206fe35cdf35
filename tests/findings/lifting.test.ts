/** Lifts by people of the journey: where each stands, what each carries, and whether hands fit. */
import { describe, expect, test } from "vitest";
import type { Journey } from "../../lib/design/index.js";
import { type Finding, reviewCase } from "../../lib/findings/index.js";
import { openJob } from "../../lib/job/index.js";
import { type BusinessInput, enoughPeople, sectionBalance, teamLoad } from "../../lib/model/index.js";
import { teamShares } from "../../lib/moving/index.js";
import { mm, pound } from "../../lib/quantity/index.js";
import { caseWith } from "../design/case-with.js";
import { designOf } from "../design/small-job.js";

const demo: BusinessInput = openJob("soil-lab-draft");

function withJourney(change: Partial<Journey>): BusinessInput {
  return { ...demo, case: { ...demo.case, journey: { ...demo.case.journey, ...change } } };
}

function travelOf(input: BusinessInput, id: string): Finding {
  const found = reviewCase(input).travel.find((finding) => finding.id === id);
  if (!found) throw new Error(`no finding ${id}`);
  return found;
}

describe("a team at the ends of a section", () => {
  const balance = sectionBalance(demo, "upper");
  const team = (people: number) => teamLoad(demo, "upper", balance, people);

  test("stands half at each end, the odd one at the heavier", () => {
    // the demo's upper section balances to the right of the middle
    expect(team(2).people.map(({ name }) => name)).toEqual(["left end", "right end"]);
    expect(team(3).people.map(({ name }) => name)).toEqual([
      "left end",
      "right end, front",
      "right end, back",
    ]);
    expect(team(4).people.map(({ name }) => name)).toEqual([
      "left end, front",
      "left end, back",
      "right end, front",
      "right end, back",
    ]);
  });

  test("has one person at the handle, two spread over the width of an end", () => {
    const box = demo.parts.sections.find(({ name }) => name === "upper")?.outside;
    const [alone] = team(3).people;
    const handle = demo.parts.hardware.find(
      ({ section, item, id }) => section === "upper" && item.duty === "lift" && id.includes("carry handle"),
    );
    expect(alone?.y).toBeCloseTo(handle?.centre.y ?? Number.NaN, 9);
    const [, front, back] = team(3).people;
    expect((back?.y ?? 0) - (front?.y ?? 0)).toBeCloseTo((box?.size.y ?? 0) / 2, 9);
  });

  test("carries all of it, and the odd one relieves the heavier end", () => {
    for (const people of [2, 3, 4]) {
      const { shares, greatest } = teamShares(team(people));
      expect(shares.reduce<number>((sum, share) => sum + share, 0)).toBeCloseTo(balance.value.mass, 9);
      expect(greatest).toBeLessThan(balance.value.mass);
    }
    expect(teamShares(team(3)).greatest).toBeLessThan(teamShares(team(2)).greatest);
  });

  test("is large enough from the number on that brings the largest share under a limit", () => {
    const { greatest } = teamShares(team(3));
    expect(enoughPeople(demo, "upper", balance, greatest)).toBe(3);
    expect(enoughPeople(demo, "upper", balance, pound(5))).toBeUndefined();
  });
});

describe("one person at an end with two handles", () => {
  test("stands in the middle between them, so that the case's mirror image is lifted alike", () => {
    const at = (on: string, across: number) => ({ on: `box.${on}`, from: "bottom-left", across, up: 250 });
    const standing = (...places: object[]) => {
      const hardware = { handle: { item: "handle", duty: "lift", places } };
      const panels = { front: { openings: { window: null, port: null } } };
      const input = designOf(caseWith({ hardware, sections: { box: { panels } } }));
      const { people } = teamLoad(input, "box", sectionBalance(input, "box"), 2);
      return people.map(({ x }) => Math.round(1000 * x));
    };
    // The front is 622 mm wide; 150 and 420 from its left edge are 285 on average.
    expect(standing(at("front", 150), at("front", 420), at("back", 300))).toEqual([285, 322]);
    expect(standing(at("front", 202), at("front", 472), at("back", 322))).toEqual([337, 300]);
  });
});

describe("the lift finding", () => {
  test("of three says where they stand", () => {
    const { answer } = travelOf(withJourney({ people: 3 }), "travel.lift.upper");
    expect(answer).toContain("They stand at the left end; right end, front; right end, back.");
  });

  test("of four says that statics does not settle it", () => {
    const { because } = travelOf(withJourney({ people: 4 }), "travel.lift.upper");
    expect(because.flatMap(({ warnings }) => warnings).join()).toContain("statics alone does not settle");
  });

  test("of one person judges the whole section, and no team is asked about", () => {
    const alone = withJourney({ people: 1 });
    const { demand } = travelOf(alone, "travel.lift.upper");
    expect(demand?.meaning).toBe("carried by one person");
    expect(reviewCase(alone).travel.filter(({ id }) => id.startsWith("travel.team"))).toEqual([]);
    expect(travelOf(alone, "travel.stairs.upper")).toMatchObject({
      verdict: "fails",
      answer: expect.stringContaining("Nobody carries a case on stairs alone."),
    });
  });

  test("of five is not judged as a team", () => {
    expect(travelOf(withJourney({ people: 5 }), "travel.team.upper")).toMatchObject({
      verdict: "unknown",
      missing: { measure: "a way to lift it with 4 people at most" },
    });
  });
});

describe("hands on the handles", () => {
  test("two hands need two handholds, unless the grip is counted as poor", () => {
    expect(travelOf(withJourney({ grip: "good" }), "travel.hands.upper")).toMatchObject({
      verdict: "fails",
      ratio: 2,
    });
    expect(travelOf(withJourney({ grip: "poor" }), "travel.hands.upper").verdict).toBe("holds");
  });

  test("a box larger than the manual's optimal one is no good grip, and the finding says so", () => {
    expect(travelOf(withJourney({ grip: "fair" }), "travel.grip.upper").answer).toContain(
      "counts the grip of a box over 16 in wide or 12 in high as poor",
    );
    expect(travelOf(withJourney({ grip: "poor" }), "travel.grip.upper").answer).not.toContain("16 in wide");
  });

  test("a narrow handle fails with a glove, one without a cut-out is unknown", () => {
    const withCut = (width: number): BusinessInput => ({
      ...demo,
      parts: {
        ...demo.parts,
        hardware: demo.parts.hardware.map((part) => ({
          ...part,
          stock: { ...part.stock, cutWidth: mm(width) },
        })),
      },
    });
    expect(travelOf(withCut(120), "travel.grip.upper")).toMatchObject({ verdict: "fails" });
    expect(travelOf(withCut(120), "travel.grip.upper").answer).toContain("which fits");
    expect(travelOf(withCut(0), "travel.grip.upper")).toMatchObject({
      verdict: "unknown",
      missing: { measure: "the grip of recessed handle, which has no cut-out" },
    });
  });

  test("a section that balances above its handles rolls over in the hands", () => {
    const low = {
      ...demo,
      parts: {
        ...demo.parts,
        hardware: demo.parts.hardware.map((part) =>
          part.item.duty === "lift" ? { ...part, centre: { ...part.centre, z: mm(700) } } : part,
        ),
      },
    };
    expect(travelOf(demo, "travel.hang.upper").verdict).toBe("holds");
    expect(travelOf(low, "travel.hang.upper").verdict).toBe("fails");
  });
});
