import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  creepAllowance,
  cushionFactor,
  cushionRate,
  cushionThickness,
  dropEnergy,
  dropHeight,
  impactSpeed,
  springLanding,
  tiltedCushion,
} from "../../lib/moving/index.js";
import { kg, Length, metre, mm, pound, ratio, SpringRate } from "../../lib/quantity/index.js";

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("drops", () => {
  test("a heavier case is never dropped from higher, rougher hands never from lower", () => {
    fc.assert(
      fc.property(positive(0.5, 195), positive(0, 5), (weight, more) => {
        const at = (lb: number, handling: "careful" | "usual" | "rough") =>
          dropHeight({ mass: pound(lb), handling });
        expect(at(weight + more, "usual")).toBeLessThanOrEqual(at(weight, "usual"));
        expect(at(weight, "careful")).toBeLessThan(at(weight, "usual"));
        expect(at(weight, "usual")).toBeLessThan(at(weight, "rough"));
      }),
    );
  });

  test("the energy of the fall is that of the speed", () => {
    fc.assert(
      fc.property(positive(0.1, 80), positive(0.01, 2), (mass, height) => {
        const speed = impactSpeed({ height: metre(height) });
        expect((mass * speed ** 2) / 2).toBeCloseTo(dropEnergy({ mass: kg(mass), height: metre(height) }), 6);
      }),
    );
  });

  test("a spring takes up all the energy of fall and squeeze", () => {
    fc.assert(
      fc.property(positive(0.5, 40), positive(1e3, 1e6), positive(0, 1.5), (mass, rate, height) => {
        const { squeeze } = springLanding({
          mass: kg(mass),
          stiffness: SpringRate.si(rate),
          drop: metre(height),
        });
        const fallen = dropEnergy({ mass: kg(mass), height: Length.si(height + squeeze) });
        expect((rate * squeeze ** 2) / 2 / fallen).toBeCloseTo(1, 9);
      }),
    );
  });

  test("an edge or a corner is between the softest and the stiffest face", () => {
    fc.assert(
      fc.property(
        positive(1e3, 1e5),
        positive(1e3, 1e5),
        positive(1e3, 1e5),
        positive(0.01, 1),
        positive(0.01, 1),
        (x, y, z, a, b) => {
          const k = tiltedCushion({
            sides: SpringRate.si(x),
            ends: SpringRate.si(y),
            flats: SpringRate.si(z),
            towards: { sides: ratio(a), ends: ratio(b), flats: ratio(1) },
          });
          expect(k).toBeGreaterThanOrEqual(Math.min(x, y, z) * (1 - 1e-9));
          expect(k).toBeLessThanOrEqual(Math.max(x, y, z) * (1 + 1e-9));
        },
      ),
    );
  });

  test("what creeps and is crushed has just enough left", () => {
    fc.assert(
      fc.property(positive(1, 200), positive(0, 0.5), positive(0, 0.5), (needed, creep, crush) => {
        const bought = creepAllowance({ needed: mm(needed), creep: ratio(creep), crush: ratio(crush) });
        expect(bought * (1 - creep) * (1 - crush)).toBeCloseTo(mm(needed), 12);
      }),
    );
  });

  test("a heavier parcel never falls from higher, and none is taken over 150 lb", () => {
    fc.assert(
      fc.property(positive(0.5, 145), positive(0, 5), (weight, more) => {
        const at = (lb: number) => dropHeight({ mass: pound(lb), handling: "parcel" });
        expect(at(weight + more)).toBeLessThanOrEqual(at(weight));
      }),
    );
    expect(() => dropHeight({ mass: pound(160), handling: "parcel" })).toThrow(
      new RangeError("drop.height: a parcel weighs at most 150 lb, got 160 lb"),
    );
  });

  test("the spring of a landing gives that landing", () => {
    fc.assert(
      fc.property(positive(0.5, 40), positive(2.1, 120), positive(0.05, 1.5), (mass, gravities, height) => {
        const fall = { mass: kg(mass), drop: metre(height) };
        const stiffness = cushionRate({ ...fall, deceleration: ratio(gravities) });
        expect(springLanding({ ...fall, stiffness }).deceleration).toBeCloseTo(gravities, 9);
      }),
    );
  });

  test("the thickness by a foam's own factor is the thickness its curve was measured with", () => {
    fc.assert(
      fc.property(positive(5, 120), positive(10, 200), positive(0.1, 1.5), (gravities, thick, height) => {
        fc.pre((gravities * thick) / 1000 >= height);
        const curve = { deceleration: ratio(gravities), thickness: mm(thick), drop: metre(height) };
        const thickness = cushionThickness({
          drop: curve.drop,
          fragility: curve.deceleration,
          cushionFactor: cushionFactor(curve),
        });
        expect(thickness).toBeCloseTo(curve.thickness, 9);
      }),
    );
  });
});
