import { describe, expect, test } from "vitest";
import { judgeLift, type Lift, LiftRate, liftIndex } from "../../lib/moving/index.js";
import { degree, kg, mm } from "../../lib/quantity/index.js";

const perMinute = (rate: number): LiftRate => LiftRate.of(rate, "lifts/min");

describe("a whole lift", () => {
  const hands = { reach: mm(350), height: mm(400), twist: degree(0) };
  const lift: Lift = {
    start: hands,
    end: { ...hands, reach: mm(500), height: mm(900) },
    rate: perMinute(0.2),
    duration: "up to 1 h",
    grip: "good",
  };

  test("is judged by the worse of its two ends", () => {
    const verdict = judgeLift(kg(15), lift);
    const [start, end] = [verdict.atStart.value.limit, verdict.atEnd.value.limit];
    expect(end).toBeLessThan(start);
    expect(verdict.index.value).toBeCloseTo(15 / end, 9);
  });

  test("travels as far down as up", () => {
    const down = { ...lift, start: lift.end, end: lift.start };
    const distances = [lift, down].map((one) => judgeLift(kg(15), one).atStart.value.distance);
    expect(distances[0]).toBe(distances[1]);
  });

  test("takes the frequency from where it begins", () => {
    const often = { ...lift, rate: perMinute(13), end: { ...hands, height: mm(1000) } };
    expect(() => judgeLift(kg(5), often)).toThrow(
      new RangeError("lift.index: limit must be positive, got 0 g"),
    );
    expect(
      judgeLift(kg(5), { ...often, start: { ...hands, height: mm(800) } }).atStart.value.frequency,
    ).toBeCloseTo(0.34, 9);
  });

  test("comes with its caution", () => {
    expect(judgeLift(kg(15), lift).caution).toMatch(/one healthy adult lifting with both hands/);
  });
});

test("twice the load has twice the index", () => {
  expect(liftIndex({ load: kg(20), limit: kg(16) })).toBe(2 * liftIndex({ load: kg(10), limit: kg(16) }));
});
