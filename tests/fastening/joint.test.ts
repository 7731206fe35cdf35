import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  combinedUse,
  edgeTearOut,
  rivetJointPull,
  rivetJointShear,
  threadArea,
} from "../../lib/fastening/index.js";
import { Density, megapascal, mm, newton, ratio } from "../../lib/quantity/index.js";

test("a hole that reaches the edge and a thread without a core are refused", () => {
  expect(() =>
    edgeTearOut({ edgeDistance: mm(2), hole: mm(5), thickness: mm(9), shearStrength: megapascal(4) }),
  ).toThrow("edge.tearout: edgeDistance must be more than half the hole (2.5 mm), got 2 mm");
  expect(() => threadArea({ diameter: mm(4), pitch: mm(3), form: "metric" })).toThrow(
    "thread.area: pitch must be below half the diameter",
  );
});

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
