/** The interval of a panel's sag from the builder's own tests of its sheet. */
import { expect, test } from "vitest";
import { openJob } from "../../lib/job/index.js";
import { panelSag, type SagCase } from "../../lib/model/stiffness/panel-sag.js";
import { sagInterval, sagSlopes, type TestedModulus } from "../../lib/model/stiffness/sag-interval.js";
import { sheetModuli } from "../../lib/model/stiffness/sheet-moduli.js";
import { Pressure } from "../../lib/quantity/index.js";

const job = openJob("soil-lab-draft");
const panel = job.parts.panels.find(({ id }) => id === "upper.front")!;
const usual = sheetModuli(panel.sheet, job.measurements);
/** A through-shear as if a piece had been bent over two spans, whether this job's sheet was or not. */
const moduli = {
  ...usual,
  throughShear: usual.throughShear ?? { ...usual.shear, modulus: Pressure.of(180, "MPa") },
};
const sagCase: SagCase = { panel, moduli, pressure: Pressure.of(500, "Pa"), edges: "hinged" };
const names: readonly TestedModulus[] = ["along", "across", "shear", "throughShear"];

test.each(names)(
  "the sag with its openings answers to the %s modulus as two full solutions say",
  { timeout: 600_000 },
  (name) => {
    const [slope = 0] = sagSlopes(sagCase, [name]);
    const sagAt = (share: number): number => {
      const known = moduli[name];
      const changed = { ...moduli, [name]: { ...known, modulus: Pressure.si(share * known.modulus) } };
      return panelSag({ ...sagCase, moduli: changed }).sag;
    };
    const difference = (sagAt(1.05) - sagAt(0.95)) / 0.1 / sagAt(1);
    expect(slope).toBeLessThan(0);
    expect(Math.abs(slope - difference)).toBeLessThan(
      0.02 * Math.max(...names.map((one) => -sagSlopes(sagCase, [one])[0]!)) + 0.03 * Math.abs(difference),
    );
  },
);

test("a bare sheet stiffer in every way sags in proportion less; a faced one by less than that", () => {
  const { facing: _facing, ...bare } = panel;
  const total = (one: SagCase): number => sagSlopes(one, names).reduce((sum, slope) => sum + slope, 0);
  expect(total({ ...sagCase, panel: bare })).toBeCloseTo(-1, 3);
  expect(total(sagCase)).toBeGreaterThan(-0.9);
});

test("every test with scatter owns a share of the interval", () => {
  const doubtful = Object.fromEntries(
    names.map((name) => [
      name,
      { ...moduli[name], uncertainty: { standard: 0.1 * moduli[name].modulus, degreesOfFreedom: 5 } },
    ]),
  ) as unknown as SagCase["moduli"];
  const interval = sagInterval({ ...sagCase, moduli: { ...moduli, ...doubtful } }, 0.7);
  expect(interval?.shares.map(({ input }) => input).sort()).toEqual([
    "modulus across the grain",
    "modulus along the grain",
    "shear modulus in its plane",
    "shear modulus through it",
  ]);
  expect(interval!.low).toBeLessThan(0.7);
  expect(interval!.high).toBeGreaterThan(0.7);
});

test("without a test there is nothing to say", () => {
  const untested = Object.fromEntries(
    names.map((name) => {
      const { uncertainty: _none, ...known } = moduli[name];
      return [name, known];
    }),
  ) as unknown as SagCase["moduli"];
  expect(sagInterval({ ...sagCase, moduli: { ...moduli, ...untested } }, 0.7)).toBeUndefined();
});
