/** Pushes against the guidance's own figures: one person, starting and going on, ramps from above. */
import { describe, expect, test } from "vitest";
import type { Journey } from "../../lib/design/index.js";
import type { Question } from "../../lib/findings/question.js";
import { gap, rampDown, rampUp, roll, start, threshold } from "../../lib/findings/travel/rolling.js";
import { openJob } from "../../lib/job/index.js";
import { footprint, type ReviewInput } from "../../lib/model/index.js";
import { degree, Force, kg, mm, standardGravity } from "../../lib/quantity/index.js";

const { journey: whole } = openJob("soil-lab-draft").case;
const { rampSize: _, ...journey } = whole;
const draft: ReviewInput = openJob("soil-lab-draft");

function travelling(change: Partial<Journey>): ReviewInput {
  return { ...draft, case: { ...draft.case, journey: { ...journey, ...change } } };
}

function asked(question: Question, change: Partial<Journey>) {
  const [finding] = question(travelling(change));
  if (!finding) throw new Error(`nothing is asked by ${question.id}`);
  return finding;
}

const weight = footprint(draft).balance.value.mass * standardGravity;

describe("pushing by hand", () => {
  test("is judged going on by 70 N and starting by 150 N of one person", () => {
    // 2 % of the weight on an even floor, twice that to start, by the guidance; plastic wheels of 1 m take 1 %.
    const even = { floor: "even", wheel: mm(1000) } as const;
    expect(asked(roll, even).ratio).toBeCloseTo((0.02 * weight) / 70, 9);
    expect(asked(start, even).ratio).toBeCloseTo((0.04 * weight) / 150, 9);
  });

  test("up a ramp takes the slope's part of the weight, going on and starting", () => {
    const up = asked(rampUp, { floor: "even", wheel: mm(1000), ramp: degree(10) });
    // sin 10 = 0.173648, cos 10 = 0.984808, by table.
    expect(up.ratio).toBeCloseTo((weight * (0.173648 + 0.02 * 0.984808)) / 70, 3);
    expect(asked(rampDown, { ramp: degree(10) }).ratio).toBeCloseTo(
      (weight * (0.173648 - 0.02 * 0.984808)) / 70,
      3,
    );
  });

  test("on an uneven floor never simply holds: the guidance sends it to a fuller assessment", () => {
    const contents = draft.parts.contents.map((part) => ({
      ...part,
      content: { ...part.content, mass: kg(0.001) },
    }));
    const near = travelling({ floor: "uneven", wheel: mm(1000) });
    const [found] = roll({ ...near, parts: { ...near.parts, contents, bars: [], panels: [] } });
    expect(found?.ratio).toBeLessThan(1);
    expect(found?.verdict).toBe("close");
    expect(found?.answer).toContain("fuller assessment");
    expect(asked(roll, { floor: "even" }).answer).not.toContain("fuller assessment");
  });

  test("over a step the heavier pair of wheels climbs", () => {
    const { fromFront, baseDepth, fromLeft, baseWidth } = footprint(draft);
    const [deep, across] = [fromFront / baseDepth, fromLeft / baseWidth];
    const share = Math.max(deep, 1 - deep, across, 1 - across);
    expect(share).toBeGreaterThan(0.5);
    // Over half the radius: sqrt(2 r s - s2) / (r - s) = sqrt(0.75) / 0.5 = 1.7320508.
    const step = { threshold: mm(50), wheel: mm(200) };
    expect(asked(threshold, step).ratio).toBeCloseTo((1.7320508 * share * weight) / 150, 6);
    expect(asked(gap, { gap: mm(0), wheel: mm(200) }).ratio).toBe(0);
  });
});

describe("on a ramp", () => {
  test("the cautions of both ways agree: nobody below, from above, or empty", () => {
    const [up, down] = [asked(rampUp, { ramp: degree(10) }), asked(rampDown, { ramp: degree(10) })];
    expect(up.cautions).toEqual(down.cautions);
    expect(up.cautions.join()).toContain("Let nobody stand below");
    expect([...up.cautions, up.answer].join()).not.toMatch(/two people|push, do not pull/i);
  });

  test("a winch is asked for its rated pull instead of a person", () => {
    const winch = Force.of(500, "lbf");
    const down = asked(rampDown, { ramp: degree(10), winch });
    expect(down).toMatchObject({ verdict: "holds" });
    expect(down.ratio).toBeCloseTo((weight * (0.173648 - 0.02 * 0.984808)) / winch, 3);
    expect(asked(rampUp, { ramp: degree(10), winch: Force.of(10, "lbf") }).verdict).toBe("fails");
  });
});
