/** What an outside reckoning of the draft says of its stance, with casters of 1-1/2 in of offset. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Journey } from "../../lib/design/index.js";
import type { Finding } from "../../lib/findings/index.js";
import type { Question } from "../../lib/findings/question.js";
import { child, push, slope, tip, wind } from "../../lib/findings/travel/standing.js";
import { lashing, stackLashing, strapsOnCasters } from "../../lib/findings/travel/straps.js";
import { openJob } from "../../lib/job/index.js";
import { lashingWays, type ReviewInput } from "../../lib/model/index.js";
import {
  Angle,
  Force,
  inch,
  kg,
  type Length,
  type Mass,
  ratio,
  standardGravity,
} from "../../lib/quantity/index.js";

const draft: ReviewInput = openJob("soil-lab-draft");

function withOffset(offset: Length | undefined, input: ReviewInput = draft): ReviewInput {
  const hardware = input.parts.hardware.map((part) => {
    if (part.item.duty !== "roll") return part;
    const { offset: _, ...stock } = part.stock;
    return { ...part, stock: offset === undefined ? stock : { ...stock, offset } };
  });
  return { ...input, parts: { ...input.parts, hardware } };
}

function withJourney(input: ReviewInput, change: Partial<Journey>): ReviewInput {
  return { ...input, case: { ...input.case, journey: { ...input.case.journey, ...change } } };
}

function asked(question: Question, input: ReviewInput, id = ""): Finding {
  const found = question(input).find((one) => one.id.endsWith(id));
  if (!found) throw new Error(`nothing is asked by ${question.id} ${id}`);
  return found;
}

const swivelling = withOffset(inch(1.5));
const fixed = withOffset(inch(0));

describe("on casters of 1-1/2 in of offset", () => {
  test("it tips at 11.5 degrees, where the line of the axes has 14.7", () => {
    expect(10 / (asked(tip, swivelling).ratio ?? 0)).toBeCloseTo(11.5, 1);
    expect(10 / (asked(tip, fixed).ratio ?? 0)).toBeCloseTo(14.7, 1);
  });

  test("24 lbf push it over, and 27.6 mph is the gust it may stand in", () => {
    expect(asked(push, swivelling).answer).toMatch(/A level push of 2[34](\.\d)? lbf/);
    expect(25 / (asked(wind, swivelling).ratio ?? 0)).toBeCloseTo(27.6, 0);
  });

  test("a child of 76 lb on the drawer, less what the drawer itself weighs out there, tips it", () => {
    const capacity = 60 / (asked(child, swivelling, "drawer unit").ratio ?? 0);
    // 26 lb that come 12 in out weigh, at the edge 17-1/4 in past the wheels, 18.1 lb.
    expect(capacity).toBeCloseTo(76 - (26 * 12) / 17.25, 0);
  });

  test("an offset that nobody measured is taken as three tenths of the height, and said", () => {
    const unmeasured = asked(tip, withOffset(undefined));
    expect(unmeasured.assumes.join()).toContain("three tenths of their height");
    expect(asked(tip, swivelling).assumes.join()).not.toContain("three tenths");
    expect(unmeasured.ratio).toBeCloseTo(asked(tip, withOffset(inch(0.3 * 5.125))).ratio ?? 0, 9);
  });

  test("sloping ground asks for the more of two tilts, never for their sum", () => {
    const on = (degrees: number) =>
      asked(slope, withJourney(swivelling, { slope: Angle.of(degrees, "deg") })).demand?.show();
    expect(on(3)).toBe("10°");
    expect(on(8)).toBe("13°");
  });
});

describe("straps in the van", () => {
  const straps = draft.case.journey.lashing;
  if (!straps) throw new Error("the draft has straps");

  test("reckon with the height on the casters and the line of the wheels", () => {
    // By an outside reckoning lower balances 15.5 in up and 6.7 in from the line of its axes.
    const g = (input: ReviewInput): number =>
      (lashingWays(input, "lower", straps).find(({ way }) => way === "forward")?.loose.value ?? 0) /
      standardGravity;
    expect(g(fixed)).toBeCloseTo(6.7 / 15.5, 2);
    expect(g(swivelling)).toBeCloseTo((6.7 - 1.5) / 15.5, 2);
  });

  test("count friction under locked wheels only: half of it where two of four lock", () => {
    const [forward] = lashingWays(swivelling, "lower", straps);
    const mass = forward?.slide?.inputs.find(({ name }) => name === "mass");
    expect(mass).toBeDefined();
    // (0.8 - 0.2) m g 1.25 / (2 x 0.2 x sin 70) = 1.9954 m g of 161.9 lb, by hand.
    expect(Force.in(forward?.slide?.value ?? Force.si(0), "lbf")).toBeCloseTo(1.9954 * 161.9, 0);
  });

  test("of unlocked wheels never hold, and an unknown count of brakes is asked for", () => {
    expect(asked(lashing, withJourney(swivelling, { brakes: 0 }), "lower")).toMatchObject({
      verdict: "fails",
    });
    const { brakes: _, ...journey } = swivelling.case.journey;
    const open = { ...swivelling, case: { ...swivelling.case, journey } };
    expect(asked(lashing, open, "lower")).toMatchObject({
      verdict: "unknown",
      missing: { measure: "how many casters have a brake" },
    });
    expect(asked(lashing, open, "upper").verdict).toBe("holds");
  });

  test("of none never pass, whatever friction holds", () => {
    const none = withJourney(swivelling, {
      brakes: 4,
      lashing: { ...straps, straps: 0, friction: ratio(0.9) },
    });
    for (const section of ["lower", "upper"]) expect(asked(lashing, none, section).verdict).toBe("fails");
    const one = asked(
      lashing,
      withJourney(none, { lashing: { ...straps, straps: 1, friction: ratio(0.9) } }),
      "upper",
    );
    expect(one.answer).toContain("1 strap is the least all the same");
    expect(one.ratio).toBeCloseTo(1, 9);
  });

  test("count 0.925 of what a tilt test gave", () => {
    const tilted = lashingWays(swivelling, "upper", { ...straps, frictionFrom: "tilt test" });
    // (0.8 - 0.37) 1.25 / (2 x 0.37 x sin 70) m g of 95.6 lb, by hand: 0.77296 m g.
    expect(Force.in(tilted[0]?.slide?.value ?? Force.si(0), "lbf")).toBeCloseTo(0.77296 * 95.6, 0);
  });

  test("are asked of the stack too, which tips sooner", () => {
    const stacked = asked(stackLashing, swivelling);
    expect(stacked.id).toBe("travel.lashing-stacked");
    // 5.06 in to the line of the wheels, 25 in up, by an outside reckoning.
    expect(stacked.answer).toContain("tip forward at 0.2 g");
  });

  test("on blocks spare the casters, and tip over the walls", () => {
    const blocks = withJourney(swivelling, { brakes: 0, lashing: { ...straps, standsOn: "blocks" } });
    expect(strapsOnCasters(blocks)).toEqual([]);
    const [forward] = lashingWays(blocks, "lower", straps);
    // 15.5 in up as on its casters, 10.4 in from the wall: half of 20.8 in, less what it balances off the middle.
    expect((forward?.loose.value ?? 0) / standardGravity).toBeCloseTo(10.4 / 15.5, 1);
    expect(asked(lashing, blocks, "lower").verdict).toBe("holds");
  });

  test("press 2100 lbf on four casters rated 175", () => {
    const pressed = asked(strapsOnCasters, swivelling);
    expect(pressed).toMatchObject({ verdict: "fails", tier: "strength" });
    expect(pressed.ratio).toBeCloseTo((2105 + 161.9) / 4 / 175, 2);
  });
});

describe("laws", () => {
  test("a heavier open drawer never tips the case later", () => {
    const heavier = (mass: Mass): ReviewInput => {
      const contents = swivelling.parts.contents.map((part) =>
        part.content.name === "drawer unit" ? { ...part, content: { ...part.content, mass } } : part,
      );
      return { ...swivelling, parts: { ...swivelling.parts, contents } };
    };
    const used = (mass: Mass): number =>
      asked(child, heavier(mass), "drawer unit").ratio ?? Number.POSITIVE_INFINITY;
    const load = fc.double({ min: 1, max: 60, noNaN: true });
    fc.assert(
      // Pulled out, the drawer's own middle lies beyond the line of the wheels: more in it tips sooner.
      fc.property(load, load, (one, more) => used(kg(one + more)) >= used(kg(one)) - 1e-9),
      { numRuns: 20 },
    );
  });

  test("more straps never hold less", () => {
    const { lashing: straps } = swivelling.case.journey;
    if (!straps) throw new Error("the draft has straps");
    const used = (count: number): number =>
      asked(lashing, withJourney(swivelling, { lashing: { ...straps, straps: count } }), "lower").ratio ??
      Number.POSITIVE_INFINITY;
    const count = fc.integer({ min: 0, max: 20 });
    fc.assert(
      fc.property(count, count, (one, more) => used(one + more) <= used(one)),
      { numRuns: 20 },
    );
  });
});
