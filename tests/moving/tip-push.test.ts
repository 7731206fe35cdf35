import fc from "fast-check";
import { expect, test } from "vitest";
import {
  allowedGust,
  pushLimits,
  steadinessPush,
  tipAngle,
  tippingBraking,
  windForce,
} from "../../lib/moving/index.js";
import { Acceleration, Area, Density, kg, mm, ratio, Speed } from "../../lib/quantity/index.js";

test("the allowed gust presses 0.6 times as hard as the one that tips", () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 60, noNaN: true }), (speed) => {
      const side = { area: Area.si(1), dragFactor: ratio(1.3), airDensity: Density.si(1.2) };
      const push = (gust: Speed) => windForce({ ...side, speed: gust }).force;
      const tips = Speed.si(speed);
      expect(push(allowedGust({ tips })) / push(tips)).toBeCloseTo(0.6, 9);
    }),
  );
});

const extent = fc.integer({ min: 50, max: 1500 }).map(mm);

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
