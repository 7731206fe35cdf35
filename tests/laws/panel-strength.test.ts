/** Laws of strength: a thicker sheet is never weaker, a larger patch never worse, and twice the load is twice the use. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { panelMoments, panelPatchMoments } from "../../lib/fem/index.js";
import { panelsBend } from "../../lib/findings/strength/panels.js";
import { openJob } from "../../lib/job/index.js";
import { panelUse, type SheetStrength, sheetStrength } from "../../lib/model/index.js";
import { Force, Length, MembraneStiffness, PlateStiffness, Pressure } from "../../lib/quantity/index.js";

const job = openJob("soil-lab");
const panel = job.parts.panels.find(({ id }) => id === "upper.top")!;
const strength = sheetStrength(panel.sheet, job.measurements) as SheetStrength;

const held = { left: "hinged", right: "hinged", bottom: "hinged", top: "hinged" } as const;

/** An isotropic sheet of 9 GPa. */
function sheetOf(thickness: number) {
  const stiff = (9e9 * thickness ** 3) / 12 / (1 - 0.3 ** 2);
  return {
    thickness: Length.si(thickness),
    stiffness: {
      alongX: PlateStiffness.si(stiff),
      alongY: PlateStiffness.si(stiff),
      coupling: PlateStiffness.si(0.3 * stiff),
      twist: PlateStiffness.si(0.35 * stiff),
    },
    throughShear: MembraneStiffness.si(1e8 * thickness),
  };
}

const span = { ...held, length: Length.si(0.8), width: Length.si(0.5), openings: [], points: [] };

function useAt(thickness: number, pressure: number): number {
  const moments = panelMoments({ ...span, ...sheetOf(thickness), pressure: Pressure.si(pressure) });
  const thick = { ...panel, sheet: { ...panel.sheet, thickness: Length.si(thickness) } };
  const { worst } = panelUse({ panel: thick, strength, moments, duration: "short" }, job);
  return worst.stress / worst.allowed;
}

test("a thicker sheet is never weaker, and twice the pressure asks twice as much", () => {
  const thickness = fc.double({ min: 0.005, max: 0.02, noNaN: true });
  const pressure = fc.double({ min: 100, max: 5000, noNaN: true });
  fc.assert(
    fc.property(thickness, fc.double({ min: 1.02, max: 1.5, noNaN: true }), pressure, (thin, more, load) => {
      expect(useAt(thin * more, load)).toBeLessThan(useAt(thin, load));
      expect(useAt(thin, 2 * load) / useAt(thin, load)).toBeCloseTo(2, 9);
    }),
    { numRuns: 6 },
  );
});

test("a larger patch about the same place never bends a panel more", () => {
  const at = (size: number): number => {
    const { alongX, alongY } = panelPatchMoments({
      ...span,
      ...sheetOf(0.009),
      patch: { x: Length.si(0.4 - size / 2), y: Length.si(0.25 - size / 2) },
      patchLength: Length.si(size),
      patchWidth: Length.si(size),
      force: Force.si(1000),
    });
    return Math.max(alongX, alongY);
  };
  fc.assert(
    fc.property(fc.double({ min: 0.04, max: 0.2, noNaN: true }), (size) => {
      expect(at(1.5 * size)).toBeLessThan(at(size));
    }),
    { numRuns: 5 },
  );
});

test("whatever side pressure a panel holds, twice what it can bear makes it fail, its caution told either way", () => {
  const ask = (pressure: number) => {
    const demands = { ...job.case.demands, sidePressure: Pressure.si(pressure) };
    return panelsBend({ ...job, case: { ...job.case, demands } }).find(
      ({ subject }) => subject === "upper.right",
    )!;
  };
  fc.assert(
    fc.property(fc.double({ min: 300, max: 3000, noNaN: true }), (pressure) => {
      const before = ask(pressure);
      const past = ask((2 * pressure) / before.ratio!);
      expect([past.verdict, past.ratio!.toFixed(6)]).toEqual(["fails", "2.000000"]);
      expect(past.cautions).toEqual(before.cautions);
      expect(past.cautions.length).toBeGreaterThan(0);
    }),
    { numRuns: 4 },
  );
});
