import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  compositeBeam,
  plywoodLamination,
  sheetLayer,
  sheetMaterials,
  veneerLayer,
} from "../../lib/material/index.js";
import { Angle, Length, mm, Pressure, Ratio } from "../../lib/quantity/index.js";
import { anyStack, birch, birchText, close, right } from "./layers.js";

describe("plywood lamination", () => {
  test("with no Poisson effect is the beam of bonded layers", () => {
    fc.assert(
      fc.property(anyStack, (given) => {
        const layers = given.map((layer) => ({ ...layer, poissonRatio: Ratio.si(0) }));
        const panel = plywoodLamination({ layers });
        const beam = compositeBeam({
          layers: layers.map(({ thickness, grain, modulusAlong, modulusAcross }) => ({
            thickness,
            modulus: grain === 0 ? modulusAlong : modulusAcross,
          })),
        });
        return (
          close(panel.alongX, beam.stiffness, 1e-6) &&
          close(panel.neutralX, beam.neutral, 1e-6) &&
          close(panel.bendingModulusX, beam.modulus, 1e-6)
        );
      }),
    );
  });

  test("weighs what its layers weigh", () => {
    fc.assert(
      fc.property(anyStack, (layers) => {
        const whole = plywoodLamination({ layers }).massPerArea;
        const parts = layers.map((layer) => plywoodLamination({ layers: [layer] }).massPerArea);
        return close(
          whole,
          parts.reduce((sum, part) => sum + part, 0),
        );
      }),
    );
  });

  test("moves its neutral line towards a stiff facing", () => {
    const bare = plywoodLamination({ layers: [birch] });
    const faced = plywoodLamination({ layers: [birch, sheetLayer(sheetMaterials.aluminium, mm(0.5))] });
    expect(bare.neutralX).toBeCloseTo(0.0007, 12);
    expect(faced.neutralX).toBeGreaterThan(bare.neutralX);
    expect(faced.neutralX).toBeLessThan(faced.thickness);
  });

  test.each([
    [[], "plywood.lamination: layers must hold at least one layer"],
    [
      [{ ...birch, thickness: Length.si(-0.001) }],
      "plywood.lamination: thickness of layer 1 must be positive, got -0.001",
    ],
    [
      [birch, { ...birch, shearModulus: Pressure.si(0) }],
      "plywood.lamination: shearModulus of layer 2 must be positive, got 0",
    ],
    [
      [{ ...birch, poissonRatio: Ratio.si(5) }],
      "plywood.lamination: poissonRatio of layer 1 does not fit its moduli, got 5",
    ],
  ])("refuses an unsound stack %#", (layers, message) => {
    expect(() => plywoodLamination({ layers })).toThrow(new RangeError(message));
  });

  test("warns of slanted grain, and of nothing else", () => {
    const slanted = plywoodLamination.worked({ layers: [{ ...birch, grain: Angle.of(20, "deg") }] });
    expect(slanted.warnings).toEqual([
      "slanted grain makes this panel twist as it bends, which the plate formulas leave out",
    ]);
    expect(plywoodLamination.worked({ layers: [birch, { ...birch, grain: right }] }).warnings).toEqual([]);
  });

  test("reads layers from text", () => {
    expect(plywoodLamination.read({ layers: [birchText] })).toEqual({ layers: [birch] });
  });
});

test("a peeled yellow birch veneer has the handbook's ratios of its modulus", () => {
  const veneer = veneerLayer("yellow birch", mm(1.5), Angle.si(0));
  expect(Pressure.in(veneer.modulusAlong, "GPa")).toBeCloseTo(15.29, 9);
  expect(Pressure.in(veneer.modulusAcross, "GPa")).toBeCloseTo(0.7645, 9);
  expect(Pressure.in(veneer.shearModulus, "GPa")).toBeCloseTo(1.03972, 9);
  expect(veneer.density).toBeCloseTo(694.4, 9);
});

test("composite beam refuses layers that carry nothing", () => {
  expect(() => compositeBeam({ layers: [{ thickness: mm(1), modulus: Pressure.si(0) }] })).toThrow(
    new RangeError("composite.beam: layers must hold at least one stiff layer"),
  );
  expect(() => compositeBeam({ layers: [{ thickness: mm(0), modulus: Pressure.si(1e9) }] })).toThrow(
    new RangeError("composite.beam: layer 1 must have a positive thickness and a modulus of at least zero"),
  );
});
