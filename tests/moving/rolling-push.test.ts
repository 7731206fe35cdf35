import { expect, test } from "vitest";
import { pushGuides, rollingPush, rollingShares } from "../../lib/moving/index.js";
import { degree, kg, newton, ratio } from "../../lib/quantity/index.js";

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
