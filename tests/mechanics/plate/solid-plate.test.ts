import { describe, expect, test } from "vitest";
import {
  cantileverUniform,
  cornerPlatePatch,
  cornerPlateUniform,
  edgePlatePatch,
  edgePlateUniform,
  edgePlateUniformAt,
  fixedUniform,
  proppedUniform,
  simpleUniform,
} from "../../../lib/mechanics/index.js";
import { BeamStiffness, LineLoad, metre, pascal } from "../../../lib/quantity/index.js";
import { close, edges, patchOf, plywood, stiffnessOf } from "./plates.js";

const plate = { length: metre(0.62), width: metre(0.41), stiffness: plywood, pressure: pascal(1000) };

describe("a panel with any mix of edges", () => {
  test("mirrored edges mirror the place of the largest sag", () => {
    const one = edgePlateUniform({ ...plate, ...edges("clamped", "free", "hinged", "hinged") });
    const other = edgePlateUniform({ ...plate, ...edges("free", "clamped", "hinged", "hinged") });
    expect(other.largestX).toBeCloseTo(0.62 - one.largestX, 6);
    expect(other.largestDeflection).toBeCloseTo(one.largestDeflection, 9);
  });

  test("twice the load and half the stiffness each double the sag", () => {
    const held = edges("clamped", "hinged", "free", "hinged");
    const once = edgePlateUniform({ ...plate, ...held });
    const loaded = edgePlateUniform({ ...plate, ...held, pressure: pascal(2000) });
    const softer = edgePlateUniform({ ...plate, ...held, stiffness: stiffnessOf(547 / 2, 365 / 2, 9, 19) });
    expect(close(loaded.largestDeflection, 2 * once.largestDeflection, 1e-9)).toBe(true);
    expect(close(softer.largestDeflection, 2 * once.largestDeflection, 1e-9)).toBe(true);
    expect(close(softer.clampedMoment, once.clampedMoment, 1e-6)).toBe(true);
  });

  test.each([
    ["hinged", "hinged", simpleUniform],
    ["clamped", "clamped", fixedUniform],
    ["clamped", "hinged", proppedUniform],
    ["clamped", "free", cantileverUniform],
  ] as const)("%s and %s with free sides and no Poisson effect is a shelf", (left, right, shelf) => {
    const strip = { ...plate, stiffness: stiffnessOf(547, 365, 0, 38) };
    const answer = edgePlateUniform({ ...strip, ...edges(left, right, "free", "free") });
    const beam = shelf({ load: LineLoad.si(1000), span: metre(0.62), stiffness: BeamStiffness.si(547) });
    expect(close(answer.largestDeflection, beam.sag, 1e-4)).toBe(true);
    const moment = left === "clamped" ? -answer.clampedMoment : answer.momentX;
    expect(close(moment, beam.moment, 1e-4)).toBe(true);
  });

  test("the answer at the middle is the one of the whole", () => {
    const held = edges("clamped", "free", "hinged", "clamped");
    const { deflection, momentX, momentY, momentXY } = edgePlateUniform({ ...plate, ...held });
    const there = edgePlateUniformAt({ ...plate, ...held, x: metre(0.31), y: metre(0.205) });
    expect(there).toEqual({ deflection, momentX, momentY, momentXY });
  });

  test.each([
    [
      { ...plate, ...edges("hinged", "free", "free", "free") },
      "plate.edges.uniform: the plate needs a clamped edge or two hinged edges to stay in place",
    ],
    [
      { ...plate, ...edges("hinged", "hinged", "free", "free"), stiffness: stiffnessOf(1, 0, 0, 1) },
      "plate.edges.uniform: stiffness must be positive along x, along y and in twist, got along x 1 N·m, along y 0 N·m, coupling 0 N·m, twist 1 N·m",
    ],
    [
      { ...plate, ...edges("hinged", "hinged", "free", "free"), pressure: pascal(0) },
      "plate.edges.uniform: pressure must be positive, got 0 Pa",
    ],
  ])("refuses what cannot stand %#", (inputs, message) => {
    expect(() => edgePlateUniform(inputs)).toThrow(new RangeError(message));
  });

  test("refuses a place off the plate", () => {
    const held = edges("hinged", "hinged", "free", "free");
    expect(() => edgePlateUniformAt({ ...plate, ...held, x: metre(0.7), y: metre(0.1) })).toThrow(
      new RangeError("plate.edges.uniform.at: the place must lie on the plate, got 700 mm, 100 mm"),
    );
  });

  test("two hinged edges hold a plate, next to each other or opposite", () => {
    for (const held of [
      edges("hinged", "free", "hinged", "free"),
      edges("free", "free", "hinged", "hinged"),
    ]) {
      expect(edgePlateUniform({ ...plate, ...held }).largestDeflection).toBeGreaterThan(0);
    }
  });

  test("a wide and a small patch of the same force bend a plate alike away from them", () => {
    const held = edges("clamped", "clamped", "hinged", "hinged");
    const { pressure: _, ...shape } = plate;
    const bent = (size: number) => edgePlatePatch({ ...shape, ...held, ...patchOf(0.31, 0.2, size, size) });
    const [small, wide] = [bent(0.01), bent(0.03)];
    expect(close(small.clampedMoment, wide.clampedMoment, 0.03)).toBe(true);
    expect(small.momentX).toBeGreaterThan(wide.momentX);
  });
});

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
