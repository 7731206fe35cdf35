import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { facingEdgeStress, facingWarp, porousEdgeShare, workPlan } from "../../lib/bonding/index.js";
import { hour, megapascal, minute, mm, Pressure, ratio, squareMetre } from "../../lib/quantity/index.js";

const unit = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const plan = {
  area: squareMetre(6),
  faces: 2,
  spreadInMinute: squareMetre(0.4),
  openTime: minute(20),
  pressTime: minute(30),
  cureTime: hour(24),
  share: ratio(0.5),
};

describe("a gluing plan", () => {
  test("has rounds enough for the area, and not one too many", () => {
    fc.assert(
      fc.property(unit(0.1, 40), unit(5, 90), (area, open) => {
        const { rounds, roundArea } = workPlan({ ...plan, area: squareMetre(area), openTime: minute(open) });
        expect(rounds * roundArea).toBeGreaterThanOrEqual(area * (1 - 1e-6));
        expect((rounds - 1) * roundArea).toBeLessThan(area);
      }),
    );
  });

  test("takes twice as long to spread on both faces", () => {
    const [one, both] = [workPlan({ ...plan, faces: 1 }), workPlan(plan)];
    expect(both.spreading).toBeCloseTo(2 * one.spreading, 9);
    expect(both.ready).toBeGreaterThan(one.ready);
  });

  test("is refused for three faces", () => {
    expect(() => workPlan({ ...plan, faces: 3 })).toThrow("bonding.plan: faces must be at most 2, got 3");
  });
});

const layers = {
  facingModulus: Pressure.of(9, "GPa"),
  facingThickness: mm(1),
  sheetModulus: Pressure.of(5, "GPa"),
  sheetThickness: mm(9),
  mismatch: ratio(0.001),
};
const glue = { length: mm(600), glueShearModulus: megapascal(0.5), glueThickness: mm(0.2) };

describe("the edge of a facing", () => {
  test("bears in proportion to the mismatch", () => {
    fc.assert(
      fc.property(unit(1e-5, 0.01), (mismatch) => {
        const [once, twice] = [mismatch, 2 * mismatch].map((one) =>
          facingEdgeStress({ ...layers, ...glue, mismatch: ratio(one) }),
        );
        expect((twice?.shear ?? 0) / (once?.shear ?? 1)).toBeCloseTo(2, 9);
        expect((twice?.peel ?? 0) / (once?.peel ?? 1)).toBeCloseTo(2, 9);
      }),
    );
  });

  test("bears less on thicker glue, and no more on a longer panel once the ends are apart", () => {
    const at = (changes: Partial<typeof glue>) => facingEdgeStress({ ...layers, ...glue, ...changes });
    expect(at({ glueThickness: mm(0.4) }).shear).toBeLessThan(at({}).shear);
    expect(at({ length: mm(5000) }).shear).toBeCloseTo(at({ length: mm(4000) }).shear, 3);
    expect(at({ length: mm(10) }).shear).toBeLessThan(at({}).shear);
  });
});

describe("the bow of a panel faced on one side", () => {
  test("grows with the square of the span, and is alike with the layers changed over", () => {
    fc.assert(
      fc.property(unit(100, 2000), (span) => {
        const bow = facingWarp({ ...layers, span: mm(span) });
        expect(facingWarp({ ...layers, span: mm(2 * span) }) / bow).toBeCloseTo(4, 9);
        const turned = facingWarp({
          facingModulus: layers.sheetModulus,
          facingThickness: layers.sheetThickness,
          sheetModulus: layers.facingModulus,
          sheetThickness: layers.facingThickness,
          mismatch: layers.mismatch,
          span: mm(span),
        });
        expect(turned / bow).toBeCloseTo(1, 9);
      }),
    );
  });

  test("is nothing without a mismatch", () => {
    expect(facingWarp({ ...layers, mismatch: ratio(0), span: mm(900) })).toBe(0);
  });
});

test("raw edges cannot take less than a face", () => {
  expect(() =>
    porousEdgeShare({ edgeArea: squareMetre(0.1), soaking: ratio(0.5), faceArea: squareMetre(2) }),
  ).toThrow("adhesive.edges: soaking must be at least 1, got 0.5");
});
