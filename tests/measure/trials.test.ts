import fc from "fast-check";
import { expect, test } from "vitest";
import {
  kerfFromCuts,
  oversprayShare,
  pullEstimate,
  sheetDensity,
  spreadTrialRate,
} from "../../lib/measure/index.js";
import { gram, kg, mm, newton, squareMetre } from "../../lib/quantity/index.js";

test("a board that lost no length has no kerf", () => {
  expect(() => kerfFromCuts({ before: mm(1000), after: mm(500), offcuts: mm(500), cuts: 10 })).toThrow(
    "kerf.from.cuts: board after and offcuts must be shorter than the board before: measure them again",
  );
});

test("few cuts come with a warning", () => {
  const few = { before: mm(1000), after: mm(486), offcuts: mm(500), cuts: 5 };
  expect(kerfFromCuts.worked(few).warnings).toEqual(["only 5 cuts: ten or more make the rule's error small"]);
  expect(kerfFromCuts.worked({ ...few, cuts: 10 }).warnings).toEqual([]);
});

test("a container that did not get lighter gives no spread rate", () => {
  expect(() => spreadTrialRate({ before: kg(1), after: kg(1), area: squareMetre(0.25), faces: 2 })).toThrow(
    "adhesive.trial.rate: container after must be lighter than before (1 kg), got 1 kg",
  );
});

test("mass per area is density times thickness", () => {
  const length = fc.integer({ min: 50, max: 600 });
  fc.assert(
    fc.property(length, length, fc.integer({ min: 1, max: 30 }), length, (l, b, t, m) => {
      const { density, massPerArea } = sheetDensity({
        length: mm(l),
        width: mm(b),
        thickness: mm(t),
        mass: gram(m),
      });
      expect(massPerArea / (density * mm(t))).toBeCloseTo(1, 12);
    }),
  );
});

test("the lowest of pull tests is never above their mean", () => {
  const loads = fc.array(fc.integer({ min: 1, max: 2000 }), { minLength: 2, maxLength: 10 });
  fc.assert(
    fc.property(loads, (values) => {
      const { lowest, mean } = pullEstimate({ loads: values.map(newton) });
      expect(lowest).toBeLessThanOrEqual(mean * (1 + 1e-12));
    }),
  );
});

test("pull tests are refused when there are too few or one reads nothing", () => {
  expect(() => pullEstimate({ loads: [newton(400)] })).toThrow("pull.lowest: at least 2 tests, got 1");
  expect(() => pullEstimate({ loads: [newton(400), newton(0)] })).toThrow(
    "pull.lowest: every load must be positive",
  );
});

test("fewer than five pull tests come with a warning", () => {
  const loads = [400, 410, 420, 430].map(newton);
  expect(pullEstimate.worked({ loads }).warnings).toEqual(["only 4 tests: pull five or more"]);
});

test("a panel cannot gain more glue than the container lost", () => {
  expect(() => oversprayShare({ before: gram(60), after: gram(20), gained: gram(41) })).toThrow(
    "adhesive.trial.overspray: gained must be at most what the container lost (40 g), got 41 g",
  );
});
