import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  gapDepth,
  pushGuides,
  rampHold,
  rollingPush,
  rollingShares,
  stepPush,
  wheelResistance,
} from "../../lib/moving/index.js";
import { degree, kg, mm, newton, ratio } from "../../lib/quantity/index.js";

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("thresholds and gaps", () => {
  test("a higher step takes more push, until none gets over it", () => {
    fc.assert(
      fc.property(positive(0.1, 40), (step) => {
        const push = (high: number) => stepPush({ load: newton(100), diameter: mm(100), step: mm(high) });
        expect(push(step + 5)).toBeGreaterThan(push(step));
      }),
    );
    expect(() => stepPush({ load: newton(100), diameter: mm(100), step: mm(50) })).toThrow(
      "roll.step: step must be lower than the axle: no push gets over it",
    );
  });

  test("a wheel sinks at most its radius into a gap", () => {
    fc.assert(
      fc.property(positive(0, 99), (gap) => {
        expect(gapDepth({ diameter: mm(100), gap: mm(gap) })).toBeLessThan(mm(50));
      }),
    );
    expect(() => gapDepth({ diameter: mm(100), gap: mm(100) })).toThrow(
      "roll.gap: gap must be narrower than the wheel",
    );
  });
});

const level = { mass: kg(120), resistance: rollingShares.good.share, slope: degree(0) };

test("uneven ground takes five times the push of a good floor", () => {
  const uneven = rollingPush({ ...level, resistance: rollingShares.uneven.share });
  expect(uneven).toBeCloseTo(5 * rollingPush(level), 9);
});

test("a ramp adds the weight along the slope", () => {
  expect(rollingPush({ ...level, resistance: ratio(0), slope: degree(30) })).toBeCloseTo(60 * 9.80665, 9);
});

test("guide figures: starting takes more than keeping on", () => {
  expect(pushGuides.men).toMatchObject({ startOrStop: newton(200), keepMoving: newton(100) });
  expect(pushGuides.women).toMatchObject({ startOrStop: newton(150), keepMoving: newton(70) });
});

test("refuses a ramp no one pushes up", () => {
  expect(() => rollingPush({ ...level, slope: degree(50) })).toThrow(
    new RangeError("roll.push: slope must be at most 45°, got 50°"),
  );
});

test("what friction adds on the way up it takes on the way down, until the case stands by itself", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 45 }),
      fc.double({ min: 0, max: 0.5, noNaN: true }),
      (slope, share) => {
        const ramp = { mass: kg(80), resistance: ratio(share), slope: degree(slope) };
        const weightAlong = rollingPush({ ...ramp, resistance: ratio(0) });
        const friction = rollingPush(ramp) - weightAlong;
        expect(rampHold(ramp)).toBeCloseTo(Math.max(0, weightAlong - friction), 9);
      },
    ),
  );
});

test("a wheel twice as large takes half the push, a softer tread more", () => {
  const push = (tread: "plastic" | "hard rubber" | "soft rubber", diameter: number) =>
    wheelResistance({ tread, diameter: mm(diameter) });
  expect(push("plastic", 200)).toBeCloseTo(push("plastic", 100) / 2, 12);
  expect(push("hard rubber", 100)).toBeGreaterThan(push("plastic", 100));
  expect(push("soft rubber", 100)).toBeGreaterThan(push("hard rubber", 100));
});
