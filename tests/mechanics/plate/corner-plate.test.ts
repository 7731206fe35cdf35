import { expect, test } from "vitest";
import { cornerPlatePatch, cornerPlateUniform, edgePlateUniform } from "../../../lib/mechanics/index.js";
import { metre, pascal } from "../../../lib/quantity/index.js";
import { close, edges, patchOf, plywood } from "./plates.js";

const floor = { length: metre(0.62), width: metre(0.41), stiffness: plywood };

test("a floor on its corners sags more than one held along two edges, which sags more than on four", () => {
  const loaded = { ...floor, pressure: pascal(1000) };
  const onCorners = cornerPlateUniform(loaded).largestDeflection;
  const onTwo = edgePlateUniform({
    ...loaded,
    ...edges("hinged", "hinged", "free", "free"),
  }).largestDeflection;
  const onFour = edgePlateUniform({
    ...loaded,
    ...edges("hinged", "hinged", "hinged", "hinged"),
  }).largestDeflection;
  expect(onCorners).toBeGreaterThan(onTwo);
  expect(onTwo).toBeGreaterThan(onFour);
});

test("a patch over the whole floor is a uniform load", () => {
  const uniform = cornerPlateUniform({ ...floor, pressure: pascal(1000) });
  const patch = cornerPlatePatch({ ...floor, ...patchOf(0.31, 0.205, 0.62, 0.41, 1000 * 0.62 * 0.41) });
  expect(close(uniform.deflection, patch.deflection, 1e-4)).toBe(true);
});

test("a box on the left sags the floor as the same box on the right", () => {
  const under = (x: number): number =>
    cornerPlatePatch({ ...floor, ...patchOf(x, 0.205, 0.2, 0.41, 60) }).deflection;
  expect(close(under(0.15), under(0.47), 1e-9)).toBe(true);
});

test("refuses a patch off the floor", () => {
  expect(() => cornerPlatePatch({ ...floor, ...patchOf(0.6, 0.2, 0.1, 0.1) })).toThrow(
    new RangeError("plate.corners.patch: the patch must lie on the plate"),
  );
});
