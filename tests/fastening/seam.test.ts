import fc from "fast-check";
import { expect, test } from "vitest";
import { inclinedScrewPull } from "../../lib/fastening/index.js";
import { Density, degree, mm, ratio } from "../../lib/quantity/index.js";

test("a screw along the grain holds less than one across it, and twice as many hold less than twice", () => {
  fc.assert(
    fc.property(fc.double({ min: 15, max: 80, noNaN: true }), (angle) => {
      const screw = { density: Density.si(420), diameter: mm(6), penetration: mm(40), count: ratio(1) };
      const pull = inclinedScrewPull({ ...screw, angle: degree(angle) });
      expect(pull).toBeLessThan(inclinedScrewPull({ ...screw, angle: degree(90) }));
      expect(inclinedScrewPull({ ...screw, angle: degree(angle), count: ratio(2) })).toBeLessThan(2 * pull);
    }),
  );
});
