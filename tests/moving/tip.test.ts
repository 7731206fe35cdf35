import fc from "fast-check";
import { expect, test } from "vitest";
import {
  halfBaseNeeded,
  pushLimits,
  type StandingCase,
  steadinessPush,
  steadyTilt,
  tipAngle,
  tippingBraking,
  tipWays,
} from "../../lib/moving/index.js";
import { Acceleration, Angle, kg, mm, ratio } from "../../lib/quantity/index.js";

const standing: StandingCase = {
  baseWidth: mm(600),
  baseDepth: mm(500),
  fromLeft: mm(280),
  fromFront: mm(200),
  height: mm(700),
};
const extent = fc.integer({ min: 50, max: 1500 }).map(mm);

test("the half base needed for a tip angle is the half base that has it", () => {
  fc.assert(
    fc.property(extent, extent, (halfBase, height) => {
      expect(halfBaseNeeded({ height, angle: tipAngle({ halfBase, height }) })).toBeCloseTo(halfBase, 9);
    }),
  );
});

test("a case tips first towards the edge nearest its weight", () => {
  expect(tipWays(standing).map(({ way }) => way)).toEqual(["front", "left", "back", "right"]);
});

test("a mirrored case tips the other way by as much", () => {
  const mirrored = { ...standing, fromLeft: mm(320) };
  const angle = (one: StandingCase, way: string) => tipWays(one).find((tip) => tip.way === way)?.worked.value;
  expect(angle(mirrored, "right")).toBeCloseTo(angle(standing, "left") ?? 0, 12);
  expect(angle(mirrored, "front")).toBe(angle(standing, "front"));
});

test("a case whose weight is not over its base falls", () => {
  expect(() => tipWays({ ...standing, fromFront: mm(520) })).toThrow(
    new RangeError("tip angle: the centre of gravity does not stand over the base, it falls to the back"),
  );
});

test("the criterion is ten degrees", () => {
  expect(Angle.show(steadyTilt.angle)).toBe("10°");
});

test("a push as strong as the friction tips exactly where half base over height is the friction", () => {
  fc.assert(
    fc.property(extent, extent, (halfBase, pushHeight) => {
      const { tips, slides } = pushLimits({
        mass: kg(50),
        halfBase,
        pushHeight,
        friction: ratio(halfBase / pushHeight),
      });
      expect(tips).toBeCloseTo(slides, 6);
    }),
  );
});

test("says when a push tips before it slides", () => {
  const push = { mass: kg(50), halfBase: mm(200), pushHeight: mm(1000) };
  expect(pushLimits.worked({ ...push, friction: ratio(0.5) }).warnings).toEqual([
    "it tips before it slides: push lower down",
  ]);
  expect(pushLimits.worked({ ...push, friction: ratio(0.1) }).warnings).toEqual([]);
});

test("braking tips a case as its lean does: the tangent of the tip angle, in gravities", () => {
  fc.assert(
    fc.property(extent, extent, (halfBase, height) => {
      const gravities = Acceleration.in(tippingBraking({ halfBase, height }), "gn");
      expect(gravities).toBeCloseTo(Math.tan(tipAngle({ halfBase, height })), 9);
    }),
  );
});

test("the test push grows with the mass up to 250 N", () => {
  expect(steadinessPush({ mass: kg(50) })).toBeCloseTo(steadinessPush({ mass: kg(100) }) / 2, 9);
  expect(steadinessPush({ mass: kg(1000) })).toBe(250);
});

test("refuses a case without a base", () => {
  expect(() => tipAngle({ halfBase: mm(0), height: mm(700) })).toThrow(
    new RangeError("tip.angle: halfBase must be positive, got 0 mm"),
  );
});
