import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { insertJointPull, insertJointShear } from "../../lib/fastening/index.js";
import { Density, Force, megapascal, mm, newton } from "../../lib/quantity/index.js";

const pull = (length: number, change: Partial<Parameters<typeof insertJointPull>[0]> = {}) =>
  insertJointPull({
    screwTension: Force.of(1000, "kN"),
    insertDiameter: mm(8),
    insertLength: mm(length),
    plyThickness: mm(18),
    shearStrength: megapascal(13),
    ...change,
  });

const shear = (length: number, change: Partial<Parameters<typeof insertJointShear>[0]> = {}) =>
  insertJointShear({
    screwShear: Force.of(1000, "kN"),
    insertDiameter: mm(8),
    insertLength: mm(length),
    plyThickness: mm(18),
    plyDensity: Density.of(680, "kg/m3"),
    ...change,
  });

describe("an insert in ply", () => {
  test("holds in proportion to its length, until its screw gives first", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 9, noNaN: true }), (length) => {
        expect(pull(2 * length).strength / pull(length).strength).toBeCloseTo(2, 9);
        expect(shear(2 * length).strength / shear(length).strength).toBeCloseTo(2, 9);
      }),
    );
    expect(pull(9, { screwTension: newton(500) })).toMatchObject({ strength: 500, governs: "screw" });
    expect(shear(9, { screwShear: newton(400) })).toMatchObject({ strength: 400, governs: "screw" });
  });

  test("is refused when it is longer than the ply is thick", () => {
    expect(() => pull(20)).toThrow(
      "insert.joint.pull: insertLength must be at most the ply's 18 mm, got 20 mm",
    );
    expect(() => shear(20)).toThrow(
      "insert.joint.shear: insertLength must be at most the ply's 18 mm, got 20 mm",
    );
  });

  test("asks for tests of one's own where the ply gives first", () => {
    const inputs = { screwTension: newton(5000), insertDiameter: mm(8), insertLength: mm(8) };
    const { warnings } = insertJointPull.worked({
      ...inputs,
      plyThickness: mm(9),
      shearStrength: megapascal(13),
    });
    expect(warnings.join()).toContain("pull and shear a few of your own");
  });
});
