import fc from "fast-check";
import { expect, test } from "vitest";
import { handleForce, snatchFactor } from "../../lib/moving/index.js";
import { kg, mm, ratio } from "../../lib/quantity/index.js";

test("the energy of the fall is the energy of the spring", () => {
  const extent = fc.integer({ min: 1, max: 300 });
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 300 }), extent, (slack, give) => {
      const factor = snatchFactor({ slack: mm(slack), give: mm(give) });
      // weight x (slack + stretch) = stretch squared x rate / 2, in units of weight and give
      expect(slack / give + factor).toBeCloseTo(factor ** 2 / 2, 6);
    }),
  );
});

test("one handle alone carries as much as all together", () => {
  const load = { mass: kg(30), dynamicFactor: ratio(2) };
  expect(handleForce({ ...load, handles: 1 })).toBeCloseTo(4 * handleForce({ ...load, handles: 4 }), 9);
});

test("refuses handles that do not carry, and a factor below rest", () => {
  expect(() => handleForce({ mass: kg(30), handles: 0, dynamicFactor: ratio(1) })).toThrow(
    new RangeError("handle.force: handles must be at least 1, got 0"),
  );
  expect(() => handleForce({ mass: kg(30), handles: 1, dynamicFactor: ratio(0.5) })).toThrow(
    new RangeError("handle.force: dynamicFactor must be at least 1, got 0.5"),
  );
});
