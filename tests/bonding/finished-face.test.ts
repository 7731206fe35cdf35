import fc from "fast-check";
import { expect, test } from "vitest";
import {
  adhesiveNeed,
  type FaceCostInputs,
  finishedFaceCost,
  finishedFaceMass,
  finishedFacePrice,
  oversizeWaste,
} from "../../lib/bonding/index.js";
import { Area, AreaDensity, Density, mm, money, ratio, Volume } from "../../lib/quantity/index.js";

const grams = (value: number): AreaDensity => AreaDensity.of(value, "g/m2");
const face: FaceCostInputs = {
  facingPrice: money(58, "USD"),
  facingArea: Area.si(2.9),
  facingWaste: ratio(0.18),
  sheetRate: grams(130),
  facingRate: grams(110),
  adhesiveWaste: ratio(0.1),
  adhesiveDensity: Density.si(850),
  container: Volume.of(1, "L"),
  containerPrice: money(14, "USD"),
};

test("a finished face costs its facing and its glue together", () => {
  const { facing, adhesive, total } = finishedFaceCost(face);
  expect(total.amount).toBeCloseTo(facing.amount + adhesive.amount, 12);
  expect(total.currency).toBe("USD");
});

test("ten times the area costs ten times as much", () => {
  const ten = finishedFacePrice({ ...face, area: Area.si(10) });
  expect(ten.total.amount).toBeCloseTo(10 * finishedFaceCost(face).total.amount, 9);
});

test("never gets cheaper with more waste", () => {
  const share = fc.double({ min: 0, max: 0.45, noNaN: true });
  fc.assert(
    fc.property(share, share, (waste, more) => {
      const cost = (facingWaste: number) =>
        finishedFaceCost({ ...face, facingWaste: ratio(facingWaste) }).total.amount;
      expect(cost(waste + more)).toBeGreaterThanOrEqual(cost(waste));
    }),
  );
});

test("the glue of a square metre times many is the glue of the whole job", () => {
  const job = adhesiveNeed({
    kind: "contact",
    area: Area.si(100),
    sheetRate: face.sheetRate,
    facingRate: face.facingRate,
    waste: face.adhesiveWaste,
    density: face.adhesiveDensity,
    container: face.container,
    price: face.containerPrice,
  });
  const used = (job.volume / face.container) * face.containerPrice.amount;
  expect(finishedFaceCost(face).adhesive.amount * 100).toBeCloseTo(used, 9);
});

test("two currencies are refused", () => {
  expect(() => finishedFaceCost({ ...face, containerPrice: money(14, "EUR") })).toThrow(
    "finished.face.cost: prices in one currency, got USD and EUR",
  );
});

test("a glue without solids adds no mass", () => {
  const mass = finishedFaceMass({
    facingThickness: mm(0.8),
    facingDensity: Density.si(1400),
    sheetRate: grams(130),
    facingRate: grams(110),
    solids: ratio(0),
  });
  expect(mass.dryAdhesive).toBe(0);
  expect(mass.total).toBe(mass.facing);
});

test("oversize wastes less on a larger panel, and never all", () => {
  const size = fc.integer({ min: 50, max: 2000 });
  fc.assert(
    fc.property(size, size, fc.integer({ min: 1, max: 100 }), (width, height, oversize) => {
      const waste = (times: number) =>
        oversizeWaste({ width: mm(times * width), height: mm(times * height), oversize: mm(oversize) });
      expect(waste(2)).toBeLessThan(waste(1));
      expect(waste(1)).toBeLessThan(1);
    }),
  );
  expect(oversizeWaste({ width: mm(300), height: mm(200), oversize: mm(0) })).toBeCloseTo(0, 12);
});
