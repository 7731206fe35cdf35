import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  blockingForce,
  rideShare,
  rideWays,
  strapCount,
  tieDownTension,
  tieDownTilt,
} from "../../lib/moving/index.js";
import { degree, kg, metre, newton, ratio, standardGravity } from "../../lib/quantity/index.js";

const mass = fc.double({ min: 1, max: 2000, noNaN: true }).map(kg);

const friction = fc.double({ min: 0.05, max: 0.9, noNaN: true });

const angle = fc.double({ min: 30, max: 90, noNaN: true });

const way = fc.constantFrom(...rideWays);

describe("lashing", () => {
  test("more straps never allow more slip, and so many are just enough", () => {
    fc.assert(
      fc.property(
        mass,
        friction,
        angle,
        way,
        fc.integer({ min: 1, max: 20 }),
        (load, mu, alpha, which, count) => {
          const needed = tieDownTension({
            mass: load,
            friction: ratio(mu),
            strapAngle: degree(alpha),
            way: which,
          });
          const straps = strapCount({ tension: needed, each: newton(1500) });
          // Friction under weight and straps, the straps' share divided by the safety factor, against the road's push.
          const safety = which === "forward" ? 1.25 : 1.1;
          const push = rideShare({ way: which, movement: "sliding" }) * load * standardGravity;
          const holds = (n: number): boolean => {
            const pressed = (2 * n * 1500 * Math.sin(degree(alpha))) / safety;
            return mu * (load * standardGravity + pressed) >= push - 1e-6;
          };
          expect(holds(straps)).toBe(true);
          if (straps > 0) expect(holds(straps - 1)).toBe(false);
          if (holds(count)) expect(holds(count + 1)).toBe(true);
        },
      ),
    );
  });

  test("tension and blocking grow with mass in proportion", () => {
    fc.assert(
      fc.property(mass, friction, way, (load, mu, which) => {
        const slide = (m: number) =>
          tieDownTension({ mass: kg(m), friction: ratio(mu), strapAngle: degree(60), way: which });
        const block = (m: number) => blockingForce({ mass: kg(m), friction: ratio(mu), way: which });
        expect(slide(2 * load)).toBeCloseTo(2 * slide(load), 6);
        expect(block(2 * load)).toBeCloseTo(2 * block(load), 6);
      }),
    );
  });

  test("a load wide beside its height asks for nothing against tipping", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 1, noNaN: true }), way, (height, which) => {
        const share = rideShare({ way: which, movement: "tilting" });
        const tension = tieDownTilt({
          mass: kg(50),
          height: metre(height),
          toEdge: metre(share * height + 0.001),
          width: metre(1),
          strapAngle: degree(80),
          way: which,
        });
        expect(tension).toBe(0);
      }),
    );
  });

  test("a flat strap is warned of, no friction refused", () => {
    const flat = { mass: kg(50), friction: ratio(0.4), strapAngle: degree(20), way: "forward" } as const;
    expect(tieDownTension.worked(flat).warnings).toEqual([
      "below 30 degrees a strap presses too little: block the case instead",
    ]);
    expect(() => tieDownTension({ ...flat, friction: ratio(0) })).toThrow(
      "lashing.slide: friction must be positive, got 0",
    );
  });
});
