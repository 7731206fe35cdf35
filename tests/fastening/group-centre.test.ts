import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { groupCentre, groupShear, type SlipLaw, steelBoltSlip } from "../../lib/fastening/index.js";
import { mm, newton, ratio } from "../../lib/quantity/index.js";

const at = (x: number, y: number) => ({ x: mm(x), y: mm(y) });

const row = (count: number, pitch = 40) => Array.from({ length: count }, (_, i) => at(0, i * pitch));

const down = { x: newton(0), y: newton(-1) };

const force = fc.double({ min: 10, max: 5000, noNaN: true });

const scattered = fc.uniqueArray(
  fc.tuple(fc.integer({ min: -90, max: 90 }), fc.integer({ min: -90, max: 90 })),
  {
    minLength: 3,
    maxLength: 8,
    selector: ([x, y]) => `${x} ${y}`,
  },
);

describe("an elastic group", () => {
  test("doubled in load has every force doubled", () => {
    fc.assert(
      fc.property(scattered, force, (places, size) => {
        const positions = places.map(([x, y]) => at(x, y));
        const under = (n: number) =>
          groupShear({ positions, load: { x: newton(0), y: newton(n) }, at: at(200, 0) }).forces;
        for (const [i, one] of under(size).entries()) {
          expect(under(2 * size)[i]?.x).toBeCloseTo(2 * one.x, 6);
          expect(under(2 * size)[i]?.y).toBeCloseTo(2 * one.y, 6);
        }
      }),
    );
  });

  test("gives forces that add up to the load", () => {
    fc.assert(
      fc.property(scattered, force, force, (places, x, y) => {
        const { forces } = groupShear({
          positions: places.map(([u, v]) => at(u, v)),
          load: { x: newton(x), y: newton(-y) },
          at: at(150, -30),
        });
        expect(forces.reduce((sum, one) => sum + one.x, 0)).toBeCloseTo(x, 6);
        expect(forces.reduce((sum, one) => sum + one.y, 0)).toBeCloseTo(-y, 6);
      }),
    );
  });

  test("of a symmetric pattern is never loaded more by more rivets", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 9 }), fc.integer({ min: 0, max: 300 }), (count, aside) => {
        // The same rectangle, more rivets along its sides.
        const pattern = (n: number) =>
          Array.from({ length: n }, (_, i) => [
            at(-30, (i * 120) / (n - 1)),
            at(30, (i * 120) / (n - 1)),
          ]).flat();
        const largest = (n: number) =>
          groupShear({ positions: pattern(n), load: { x: newton(0), y: newton(-900) }, at: at(aside, 60) })
            .largest;
        expect(largest(count + 1)).toBeLessThanOrEqual(largest(count) * (1 + 1e-9));
      }),
    );
  });
});

describe("a group about its instantaneous centre", () => {
  const each = newton(1000);

  test("with force in proportion to slip is the elastic group", () => {
    const straight: SlipLaw = { bend: mm(1e6), power: ratio(1), largest: mm(1) };
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 7 }), fc.integer({ min: 20, max: 400 }), (count, aside) => {
        const positions = row(count);
        const point = at(aside, 20 * (count - 1));
        // What the most slipped fastener bears at its largest slip.
        const most = each * (1 - Math.exp(-1e-6));
        const { strength } = groupCentre({ positions, direction: down, at: point, each, law: straight });
        const elastic = groupShear({ positions, load: { x: newton(0), y: newton(-1) }, at: point }).largest;
        expect(strength / (most / elastic)).toBeCloseTo(1, 5);
      }),
    );
  });

  test("holds more than its weakest elastic fastener allows, and less than all together", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 7 }), fc.integer({ min: 20, max: 400 }), (count, aside) => {
        const [positions, point] = [row(count), at(aside, 20 * (count - 1))];
        const { worth } = groupCentre({ positions, direction: down, at: point, each, law: steelBoltSlip });
        const elastic =
          1 / groupShear({ positions, load: { x: newton(0), y: newton(-1) }, at: point }).largest;
        expect(worth).toBeGreaterThan(0.98 * elastic);
        expect(worth).toBeLessThan(count);
      }),
    );
  });

  test("is worth less the further aside the load is", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 6 }), fc.integer({ min: 20, max: 300 }), (count, aside) => {
        const worth = (by: number) =>
          groupCentre({ positions: row(count), direction: down, at: at(by, 0), each, law: steelBoltSlip })
            .worth;
        expect(worth(aside + 20)).toBeLessThan(worth(aside));
      }),
    );
  });

  test.each([
    [row(1), down, at(50, 0), "at least two fasteners apart from each other"],
    [row(3), down, at(0, 0), "the load goes through the middle: each fastener carries its equal share"],
    [row(3), { x: newton(0), y: newton(0) }, at(50, 0), "direction must point somewhere"],
  ] as const)("is refused, case %#", (positions, direction, point, message) => {
    expect(() => groupCentre({ positions, direction, at: point, each, law: steelBoltSlip })).toThrow(
      `group.centre: ${message}`,
    );
  });
});
