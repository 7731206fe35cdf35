/** A refusal that answers the question is a plain no, never something to measure. */
import { expect, test } from "vitest";
import type { Journey } from "../../lib/design/index.js";
import type { Finding } from "../../lib/findings/index.js";
import type { Question } from "../../lib/findings/question.js";
import { brakes, casters } from "../../lib/findings/travel/ground.js";
import { lift, stairs, team } from "../../lib/findings/travel/lifting.js";
import { gap, threshold } from "../../lib/findings/travel/rolling.js";
import { child, push, slope, tip, wind } from "../../lib/findings/travel/standing.js";
import { openJob } from "../../lib/job/index.js";
import type { ReviewInput } from "../../lib/model/index.js";
import { degree, Length, mm, Speed, Time } from "../../lib/quantity/index.js";

const demo: ReviewInput = openJob("soil-lab-draft");

function withJourney(change: Partial<Journey>): ReviewInput {
  return { ...demo, case: { ...demo.case, journey: { ...demo.case.journey, ...change } } };
}

/** Every caster half a metre to the right, so that nothing stands under the left half. */
function castersAside(): ReviewInput {
  const hardware = demo.parts.hardware.map((part) =>
    part.item.duty === "roll"
      ? { ...part, centre: { ...part.centre, x: Length.si(part.centre.x + 0.5) } }
      : part,
  );
  const input = withJourney({ slope: degree(3), gust: Speed.of(25, "mph") });
  return { ...input, parts: { ...input.parts, hardware } };
}

function first(ask: Question, input: ReviewInput): Finding {
  const [finding] = ask(input);
  if (!finding) throw new Error(`nothing is asked by ${ask.id}`);
  return finding;
}

const often = { liftsPerMinute: 14, liftingTime: Time.of(8, "h") };

test.each([
  [
    "a step up to the axle",
    threshold,
    withJourney({ threshold: mm(50), wheel: mm(100) }),
    "no push gets over it",
  ],
  ["a gap as wide as a wheel", gap, withJourney({ gap: mm(100), wheel: mm(100) }), "the wheel falls in"],
  ["no brake on a slope", brakes, withJourney({ brakes: 0, slope: degree(5) }), "hold it on no slope at all"],
  ["a lift that allows nothing", lift, withJourney(often), "Nobody may lift so, whatever the load"],
  ["a team's lift that allows nothing", team, withJourney(often), "Nobody may lift so"],
  [
    "stairs with a lift that allows nothing",
    stairs,
    withJourney({ ...often, stairs: degree(30) }),
    "Nobody may",
  ],
  [
    "stairs alone",
    stairs,
    withJourney({ people: 1, stairs: degree(30) }),
    "Nobody carries a case on stairs alone",
  ],
  ["leaning off its base", tip, castersAside(), "It falls to the left as it stands"],
  ["a push off its base", push, castersAside(), "It falls to the left as it stands"],
  ["a slope off its base", slope, castersAside(), "It falls to the left as it stands"],
  ["wind off its base", wind, castersAside(), "It falls to the left as it stands"],
  ["a child off its base", child, castersAside(), "It falls to the left as it stands"],
  ["casters beside the load", casters, castersAside(), "It falls to the left as it stands"],
])("%s fails with a plain sentence", (_, ask, input, words) => {
  const finding = first(ask, input);
  expect(finding).toMatchObject({ verdict: "fails", answer: expect.stringContaining(words) });
  expect(finding.answer).toMatch(/It has no margin\. The criterion is [^.]+/);
  expect(finding.cautions.length).toBeGreaterThan(0);
  expect([finding.ratio, finding.missing]).toEqual([undefined, undefined]);
});

test.each([
  ["a step just below the axle", threshold, withJourney({ threshold: mm(49), wheel: mm(100) })],
  ["a gap just narrower than a wheel", gap, withJourney({ gap: mm(99), wheel: mm(100) })],
  ["one brake", brakes, withJourney({ brakes: 1, slope: degree(5) })],
])("%s is still told by how much", (_, ask, input) => {
  expect(first(ask, input).ratio).toBeGreaterThan(0);
});
