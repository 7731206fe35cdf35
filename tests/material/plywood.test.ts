import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  compositeBeam,
  type Layer,
  laminateStiffness,
  plywoodLamination,
  sheetLayer,
  sheetMaterials,
} from "../../lib/material/index.js";
import { Angle, Density, Length, megapascal, mm, Pressure, Ratio, ratio } from "../../lib/quantity/index.js";
import { anyStack, birch, birchText, close, right } from "./layers.js";

const unit = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("the matrices of a stack", () => {
  const layer = (thickness: number, grain: number): Layer => ({
    thickness: mm(thickness),
    grain: Angle.of(grain, "deg"),
    modulusAlong: megapascal(15000),
    modulusAcross: megapascal(750),
    shearModulus: megapascal(1000),
    poissonRatio: ratio(0.43),
    density: Density.si(600),
  });
  const stack = fc.array(fc.tuple(unit(0.5, 3), fc.integer({ min: -90, max: 90 })), {
    minLength: 1,
    maxLength: 5,
  });

  test("turned upside down change the sign of B and nothing else, for straight grain", () => {
    fc.assert(
      fc.property(stack, (plies) => {
        const layers = plies.map(([t, angle]) => layer(t, angle > 0 ? 90 : 0));
        const [up, down] = [
          laminateStiffness({ layers }),
          laminateStiffness({ layers: [...layers].reverse() }),
        ];
        expect(down.B11).toBeCloseTo(-up.B11, 3);
        expect(down.D11 / up.D11).toBeCloseTo(1, 9);
        expect(down.A22 / up.A22).toBeCloseTo(1, 9);
      }),
    );
  });

  test("mirrored about the middle have no B, whatever the angles", () => {
    fc.assert(
      fc.property(stack, (plies) => {
        const half = plies.map(([t, angle]) => layer(t, angle));
        const { B11, B16, B66, D11, thickness } = {
          ...laminateStiffness({ layers: [...half, ...[...half].reverse()] }),
          thickness: half.reduce((sum, one) => sum + one.thickness, 0),
        };
        for (const entry of [B11, B16, B66]) expect(Math.abs(entry) * thickness).toBeLessThan(1e-9 * D11);
      }),
    );
  });

  test("keep A11 + A22 + 2 A12 when the whole stack turns", () => {
    fc.assert(
      fc.property(stack, fc.integer({ min: -90, max: 90 }), (plies, by) => {
        const trace = (turn: number) => {
          const { A11, A22, A12 } = laminateStiffness({
            layers: plies.map(([t, angle]) => layer(t, angle + turn)),
          });
          return A11 + A22 + 2 * A12;
        };
        expect(trace(by) / trace(0)).toBeCloseTo(1, 9);
      }),
    );
  });
});

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
