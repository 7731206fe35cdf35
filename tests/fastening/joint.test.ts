import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  combinedUse,
  dowelShear,
  dowelYieldMoment,
  headPullThrough,
  metalBearing,
  rivetJointPull,
  rivetJointShear,
  screwWithdrawalAllowable,
  screwWithdrawalUltimate,
  woodDowelBearing,
} from "../../lib/fastening/index.js";
import { Density, megapascal, mm, newton, ratio } from "../../lib/quantity/index.js";

const millimetres = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("one rivet in ply", () => {
  const shear = {
    rivetShear: newton(1200),
    diameter: mm(4.8),
    metalThickness: mm(1.5),
    metalStrength: megapascal(200),
    metalEdge: mm(10),
    plyThickness: mm(6.5),
    plyDensity: Density.si(680),
  };
  const pull = {
    rivetTension: newton(1700),
    bearingDiameter: mm(9.5),
    plyThickness: mm(6.5),
    plyGravity: ratio(0.6),
  };

  test("is as strong in shear as the mode that gives first, and no mode is weaker", () => {
    fc.assert(
      fc.property(millimetres(2, 20), millimetres(0.5, 4), millimetres(200, 3000), (ply, metal, own) => {
        const joint = rivetJointShear({
          ...shear,
          plyThickness: mm(ply),
          metalThickness: mm(metal),
          rivetShear: newton(own),
        });
        const modes = { "rivet shear": joint.rivet, "ply bearing": joint.ply, "metal bearing": joint.metal };
        expect(joint.strength).toBe(modes[joint.governs]);
        expect(joint.strength).toBe(Math.min(joint.rivet, joint.ply, joint.metal));
      }),
    );
  });

  test("is never weaker in thicker ply", () => {
    fc.assert(
      fc.property(millimetres(2, 20), millimetres(0, 10), (thickness, more) => {
        const thin = { ...shear, plyThickness: mm(thickness) };
        const thick = { ...shear, plyThickness: mm(thickness + more) };
        expect(rivetJointShear(thick).strength).toBeGreaterThanOrEqual(rivetJointShear(thin).strength);
        const pulled = (ply: number) => rivetJointPull({ ...pull, plyThickness: mm(ply) }).strength;
        expect(pulled(thickness + more)).toBeGreaterThanOrEqual(pulled(thickness));
      }),
    );
  });

  test("never pulls out easier with a wider washer", () => {
    const strengths = [6, 9.5, 12, 16].map(
      (d) => rivetJointPull({ ...pull, bearingDiameter: mm(d) }).strength,
    );
    expect(strengths).toEqual([...strengths].sort((a, b) => a - b));
  });

  test("says that ply governs by an estimate", () => {
    expect(rivetJointShear.worked(shear).warnings).toEqual([
      "bearing of a rivet in ply is an estimate from nails: shear a few of your own to be sure",
    ]);
    expect(rivetJointShear.worked({ ...shear, rivetShear: newton(300) }).warnings).toEqual([]);
    expect(rivetJointPull.worked(pull).warnings).toEqual([
      "pull-through is a code value for nail and screw heads, not for rivets in ply: pull a few of your own to be sure",
    ]);
    expect(rivetJointPull.worked({ ...pull, rivetTension: newton(100) }).warnings).toEqual([]);
  });

  test("is refused at the very edge of the metal", () => {
    expect(() => rivetJointShear({ ...shear, metalEdge: mm(4) })).toThrow(
      "metal.bearing: edgeDistance must be at least one diameter (4.8 mm), got 4 mm",
    );
  });
});

test("metal bears no more beyond two diameters from the edge", () => {
  const hole = { diameter: mm(4.8), thickness: mm(1.5), tensileStrength: megapascal(200) };
  expect(metalBearing({ ...hole, edgeDistance: mm(50) })).toBe(
    metalBearing({ ...hole, edgeDistance: mm(9.6) }),
  );
});

test("head pull-through does not jump where the thick-board rule takes over", () => {
  const head = { specificGravity: ratio(0.5), headDiameter: mm(10) };
  const at = (thickness: number) => headPullThrough({ ...head, thickness: mm(thickness) });
  expect(at(24.999) / at(25)).toBeCloseTo(1, 3);
  expect(at(40)).toBe(at(25));
});

test("wood bears less across the grain than along it under a thick dowel, alike under a thin one", () => {
  const dowel = (diameter: number, grain: "along" | "across") =>
    woodDowelBearing({ specificGravity: ratio(0.5), diameter: mm(diameter), grain });
  expect(dowel(8, "across")).toBeLessThan(dowel(8, "along"));
  expect(dowel(5, "across")).toBe(dowel(5, "along"));
});

test("screws hold in proportion to their thread, and ultimate is the same multiple of allowable", () => {
  const screw = { specificGravity: ratio(0.6), diameter: mm(4), base: "solid wood" as const };
  fc.assert(
    fc.property(millimetres(5, 60), (length) => {
      const one = { ...screw, penetration: mm(length) };
      const two = { ...screw, penetration: mm(2 * length) };
      expect(screwWithdrawalAllowable(two) / screwWithdrawalAllowable(one)).toBeCloseTo(2, 9);
      expect(screwWithdrawalUltimate(one) / screwWithdrawalAllowable(one)).toBeCloseTo(15_700 / 2850, 9);
    }),
  );
});

test("a screw in thin plywood comes with both cautions", () => {
  const screw = {
    specificGravity: ratio(0.6),
    diameter: mm(4),
    penetration: mm(6),
    base: "plywood" as const,
  };
  expect(screwWithdrawalAllowable.worked(screw).warnings).toEqual([
    "plywood holds screws less well than solid wood of its weight: pull a few of your own to be sure",
    "thread shorter than six diameters: outside the tests behind this formula",
  ]);
  const deep = { ...screw, penetration: mm(24), base: "solid wood" as const };
  expect(screwWithdrawalUltimate.worked(deep).warnings).toEqual([]);
});

test("a fastener at its full shear or its full pull is fully used, and both together are more", () => {
  const strengths = { shearStrength: newton(800), pullStrength: newton(500) };
  for (const shank of ["smooth", "threaded"] as const) {
    const used = (shear: number, pull: number) =>
      combinedUse({ ...strengths, shear: newton(shear), pull: newton(pull), shank });
    expect(used(800, 0)).toBeCloseTo(1, 12);
    expect(used(0, 500)).toBeCloseTo(1, 12);
    expect(used(800, 500)).toBeGreaterThan(1.4);
  }
});

describe("a screw between two pieces of wood", () => {
  const joint = {
    outerThickness: mm(9),
    innerThickness: mm(25),
    outerEmbedment: megapascal(45),
    innerEmbedment: megapascal(20),
    diameter: mm(4),
    yieldMoment: dowelYieldMoment({ tensileStrength: megapascal(600), diameter: mm(4) }),
    withdrawal: newton(0),
    helpShare: ratio(1),
  };

  test("is as strong as its weakest mode", () => {
    fc.assert(
      fc.property(millimetres(3, 30), millimetres(10, 60), (outer, inner) => {
        const {
          strength,
          governs: _governs,
          ...modes
        } = dowelShear({
          ...joint,
          outerThickness: mm(outer),
          innerThickness: mm(inner),
        });
        expect(strength).toBe(Math.min(...Object.values(modes)));
      }),
    );
  });

  test("swaps its modes when the pieces are swapped", () => {
    const there = dowelShear(joint);
    const back = dowelShear({
      ...joint,
      outerThickness: joint.innerThickness,
      innerThickness: joint.outerThickness,
      outerEmbedment: joint.innerEmbedment,
      innerEmbedment: joint.outerEmbedment,
    });
    expect(back.outerBearing).toBeCloseTo(there.innerBearing, 6);
    expect(back.tilts).toBeCloseTo(there.tilts, 6);
    expect(back.innerHinge).toBeCloseTo(there.outerHinge, 6);
    expect(back.twoHinges).toBeCloseTo(there.twoHinges, 6);
    expect(back.strength).toBeCloseTo(there.strength, 6);
  });

  test("is helped by its thread up to the share allowed", () => {
    const plain = dowelShear(joint).strength;
    const helped = (withdrawal: number, share: number) =>
      dowelShear({ ...joint, withdrawal: newton(withdrawal), helpShare: ratio(share) }).strength;
    expect(helped(400, 1)).toBeCloseTo(plain + 100, 6);
    expect(helped(1e5, 0.15)).toBeCloseTo(Math.min(1.15 * plain, dowelShear(joint).outerBearing), 6);
  });
});
