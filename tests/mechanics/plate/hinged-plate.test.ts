import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { turnedQuarter } from "../../../lib/material/index.js";
import {
  edgePlatePatch,
  edgePlateUniform,
  hingedPlatePatch,
  hingedPlateUniform,
} from "../../../lib/mechanics/index.js";
import { Force, Length, metre, pascal } from "../../../lib/quantity/index.js";
import { anySide, anyStiffness, close, edges, few, patchOf, plywood } from "./plates.js";

const hinged = edges("hinged", "hinged", "hinged", "hinged");
const plate = { length: metre(0.62), width: metre(0.41), stiffness: plywood };

describe("a panel on four hinged edges", () => {
  test("sags alike by Navier's series and by the polynomial series, whatever the panel", () => {
    fc.assert(
      fc.property(anySide, anySide, anyStiffness, (length, width, stiffness) => {
        const panel = { length, width, stiffness, pressure: pascal(700) };
        const navier = hingedPlateUniform(panel);
        const ritz = edgePlateUniform({ ...panel, ...hinged });
        return (
          close(navier.deflection, ritz.deflection, 1e-5) &&
          Math.abs(navier.momentX - ritz.momentX) < 1e-3 * Math.max(navier.momentX, navier.momentY) &&
          Math.abs(navier.momentY - ritz.momentY) < 1e-3 * Math.max(navier.momentX, navier.momentY)
        );
      }),
      few,
    );
  });

  test("sags alike by both series under a load on part of it, and most at the same place", () => {
    const load = { ...plate, ...patchOf(0.22, 0.25, 0.12, 0.09) };
    const navier = hingedPlatePatch(load);
    const ritz = edgePlatePatch({ ...load, ...hinged });
    expect(close(navier.deflection, ritz.deflection, 2e-3)).toBe(true);
    expect(close(navier.largestDeflection, ritz.largestDeflection, 2e-3)).toBe(true);
    expect(ritz.largestX).toBeCloseTo(navier.largestX, 2);
    expect(ritz.largestY).toBeCloseTo(navier.largestY, 2);
    expect(close(navier.momentY, ritz.momentY, 0.02)).toBe(true);
  });

  test("turned by a quarter answers the same, with x and y swapped", () => {
    fc.assert(
      fc.property(anySide, anySide, anyStiffness, (length, width, stiffness) => {
        const pressure = pascal(700);
        const one = hingedPlateUniform({ length, width, stiffness, pressure });
        const other = hingedPlateUniform({
          length: width,
          width: length,
          stiffness: turnedQuarter(stiffness),
          pressure,
        });
        return (
          close(one.deflection, other.deflection, 1e-9) &&
          close(one.momentX, other.momentY, 1e-9) &&
          close(one.cornerForce, other.cornerForce, 1e-9)
        );
      }),
      few,
    );
  });

  test("a patch over the whole panel is a uniform load", () => {
    const uniform = hingedPlateUniform({ ...plate, pressure: pascal(1000) });
    const patch = hingedPlatePatch({ ...plate, ...patchOf(0.31, 0.205, 0.62, 0.41, 1000 * 0.62 * 0.41) });
    expect(close(uniform.deflection, patch.deflection, 1e-9)).toBe(true);
    expect(close(uniform.momentX, patch.momentX, 1e-9)).toBe(true);
  });

  test.each([
    [{ ...plate, ...patchOf(0.6, 0.2, 0.1, 0.1) }, "plate.hinged.patch: the patch must lie on the plate"],
    [
      { ...plate, ...patchOf(0.3, 0.2, 0.1, 0.1), force: Force.si(0) },
      "plate.hinged.patch: force must be positive, got 0 N",
    ],
    [
      { ...plate, length: Length.si(-1), ...patchOf(0.3, 0.2, 0.1, 0.1) },
      "plate.hinged.patch: length must be positive, got -1000 mm",
    ],
  ])("refuses what makes no sense %#", (inputs, message) => {
    expect(() => hingedPlatePatch(inputs)).toThrow(new RangeError(message));
  });

  test("warns when the moment under a small patch is cut off", () => {
    const warnings = (size: number): readonly string[] =>
      hingedPlatePatch.worked({ ...plate, ...patchOf(0.3, 0.2, size, size) }).warnings;
    expect(warnings(0.01)).toEqual([
      "the load is so concentrated that the moment under it is too low here; the deflection holds",
    ]);
    expect(warnings(0.05)).toEqual([]);
  });
});
