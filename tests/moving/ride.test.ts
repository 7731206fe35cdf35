import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cradlePressure, cradleRim, rideShare, rideWays, shelfRide } from "../../lib/moving/index.js";
import { kg, mm } from "../../lib/quantity/index.js";

describe("what rides inside", () => {
  test("a cradle's wall that is high enough balances the push about its rim", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 500 }),
        fc.integer({ min: 20, max: 500 }),
        fc.constantFrom(...rideWays),
        (height, base, way) => {
          const rim = cradleRim({ height: mm(height), base: mm(base), way });
          const share = rideShare({ way, movement: "tilting" });
          expect(rim).toBeLessThan(mm(height));
          if (rim > 0) expect(share * (mm(height) - rim)).toBeCloseTo(mm(base) / 2, 12);
          else expect(share * mm(height)).toBeLessThanOrEqual(mm(base) / 2 + 1e-12);
        },
      ),
    );
  });

  test("more fasteners, a higher wall and a lighter thing never press harder", () => {
    const shelf = (mass: number, count: number) => shelfRide({ mass: kg(mass), count, way: "forward" });
    const foam = (mass: number, rim: number) =>
      cradlePressure({ mass: kg(mass), width: mm(200), rim: mm(rim), way: "forward" });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 20 }), (mass, more) => {
        expect(shelf(mass, 4 + more)).toBeLessThan(shelf(mass, 4));
        expect(shelf(mass + more, 4)).toBeGreaterThan(shelf(mass, 4));
        expect(foam(mass, 50 + more)).toBeLessThan(foam(mass, 50));
        expect(foam(mass + more, 50)).toBeGreaterThan(foam(mass, 50));
      }),
    );
  });
});
