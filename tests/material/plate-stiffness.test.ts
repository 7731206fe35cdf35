import fc from "fast-check";
import { expect, test } from "vitest";
import {
  isotropicStiffness,
  orthotropicStiffness,
  stiffnessFaults,
  turnedQuarter,
} from "../../lib/material/index.js";
import { megapascal, mm, PlateStiffness, Pressure, ratio } from "../../lib/quantity/index.js";
import { close } from "./layers.js";

const modulus = fc.double({ min: 1e9, max: 2e11, noNaN: true });

test("a panel alike both ways is a plain sheet", () => {
  fc.assert(
    fc.property(modulus, fc.double({ min: 0.01, max: 0.49, noNaN: true }), (e, nu) => {
      const plain = isotropicStiffness({
        thickness: mm(3),
        modulus: Pressure.si(e),
        poissonRatio: ratio(nu),
      });
      const panel = orthotropicStiffness({
        thickness: mm(3),
        modulusX: Pressure.si(e),
        modulusY: Pressure.si(e),
        poissonXY: ratio(nu),
        shearModulus: Pressure.si(e / 2 / (1 + nu)),
      });
      return (["alongX", "alongY", "coupling", "twist"] as const).every((field) =>
        close(plain[field], panel[field]),
      );
    }),
  );
});

test("twice the thickness is eight times as stiff", () => {
  const sheet = { modulus: megapascal(69000), poissonRatio: ratio(0.33) };
  const [thin, thick] = [3, 6].map((t) => isotropicStiffness({ ...sheet, thickness: mm(t) }));
  expect(thick?.alongX).toBeCloseTo(8 * (thin?.alongX ?? 0), 9);
});

test("a panel turned by a quarter twice is as it was", () => {
  const panel = orthotropicStiffness({
    thickness: mm(9),
    modulusX: megapascal(9000),
    modulusY: megapascal(6000),
    poissonXY: ratio(0.05),
    shearModulus: megapascal(620),
  });
  expect(turnedQuarter(panel).alongX).toBe(panel.alongY);
  expect(turnedQuarter(turnedQuarter(panel))).toEqual(panel);
});

test("refuses a Poisson's ratio that would make energy from nothing", () => {
  const panel = {
    thickness: mm(9),
    modulusX: megapascal(4000),
    modulusY: megapascal(9000),
    poissonXY: ratio(0.7),
    shearModulus: megapascal(620),
  };
  expect(() => orthotropicStiffness(panel)).toThrow(
    new RangeError("plate.stiffness.orthotropic: poissonXY must be below 0.667 for these moduli"),
  );
});

test("names what is wrong with a stiffness", () => {
  const [one, none] = [PlateStiffness.si(1), PlateStiffness.si(0)];
  expect(stiffnessFaults({ alongX: one, alongY: one, coupling: none, twist: none })).toEqual([
    "stiffness must be positive along x, along y and in twist, got along x 1 N·m, along y 1 N·m, coupling 0 N·m, twist 0 N·m",
  ]);
  expect(stiffnessFaults({ alongX: one, alongY: one, coupling: one, twist: one })).toEqual([
    "stiffness must have a coupling below the mean of x and y, got along x 1 N·m, along y 1 N·m, coupling 1 N·m, twist 1 N·m",
  ]);
  expect(stiffnessFaults({ alongX: one, alongY: one, coupling: none, twist: one })).toEqual([]);
});
