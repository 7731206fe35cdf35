import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dowelShear, dowelYieldMoment, slipStiffness } from "../../lib/fastening/index.js";
import { Density, megapascal, mm, newton, ratio } from "../../lib/quantity/index.js";

test("slip stiffness grows with density and diameter", () => {
  const of = (density: number, diameter: number) =>
    slipStiffness({ density: Density.si(density), diameter: mm(diameter), shank: "driven nail" });
  expect(of(500, 4)).toBeGreaterThan(of(400, 4));
  expect(of(400, 5)).toBeGreaterThan(of(400, 4));
});

const millimetres = (min: number, max: number) => fc.double({ min, max, noNaN: true });

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
