import { expect, test } from "vitest";
import { elasticRatios, species } from "../../lib/material/index.js";
import { Pressure } from "../../lib/quantity/index.js";

const rows = Object.entries(species);

/** Wood Handbook regressions over all species at 12 % moisture, psi: 2.80e6 G and 25 700 G^1.25 (seen). */
const regressions = {
  bendingModulus: (gravity: number) => 2.8e6 * gravity,
  bendingStrength: (gravity: number) => 25700 * gravity ** 1.25,
};

test.each(rows)("%s lies near the regression for its specific gravity", (_name, wood) => {
  for (const field of ["bendingModulus", "bendingStrength"] as const) {
    const tabulated = Pressure.in(wood[field].value, "psi");
    const usual = regressions[field](wood.specificGravity.value);
    expect(tabulated / usual).toBeGreaterThan(0.7);
    expect(tabulated / usual).toBeLessThan(1.5);
  }
});

test.each(rows)("%s shears at a tenth to a fifth of its bending strength", (_name, wood) => {
  const share = wood.shearStrength.value / wood.bendingStrength.value;
  expect(share).toBeGreaterThan(0.08);
  expect(share).toBeLessThan(0.2);
});

test("the pound and the metric columns of the handbook agree where both were read", () => {
  const psi: Record<string, [number, number]> = {
    "yellow birch": [2.01e6, 1880],
    "sweet birch": [2.17e6, 2240],
    "paper birch": [1.59e6, 1210],
    "quaking aspen": [1.18e6, 850],
    basswood: [1.46e6, 990],
    "american beech": [1.72e6, 2010],
    "white ash": [1.74e6, 1910],
  };
  for (const [name, [modulus, shear]] of Object.entries(psi)) {
    const wood = species[name as keyof typeof species];
    expect(Pressure.in(wood.bendingModulus.value, "psi") / modulus).toBeCloseTo(1, 2);
    expect(Pressure.in(wood.shearStrength.value, "psi") / shear).toBeCloseTo(1, 1);
  }
});

test("wood is softest along the rings, and shears more easily than it stretches along the grain", () => {
  for (const ratios of Object.values(elasticRatios)) {
    expect(ratios.tangential.value).toBeLessThan(ratios.radial.value);
    expect(ratios.shearTangential.value).toBeLessThan(0.5);
    expect(ratios.tangential.known).toBe("memory");
  }
});
