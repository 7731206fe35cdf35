import fc from "fast-check";
import { expect, test } from "vitest";
import {
  headPullThrough,
  nailWithdrawalAllowable,
  nailWithdrawalUltimate,
  screwWithdrawalAllowable,
  screwWithdrawalUltimate,
} from "../../lib/fastening/index.js";
import { mm, ratio } from "../../lib/quantity/index.js";

test("a nail's average pull is well above its allowable one", () => {
  const nail = { specificGravity: ratio(0.5), diameter: mm(3), penetration: mm(30) };
  expect(nailWithdrawalUltimate(nail) / nailWithdrawalAllowable(nail)).toBeCloseTo(7850 / 1380, 9);
});

const millimetres = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test("head pull-through does not jump where the thick-board rule takes over", () => {
  const head = { specificGravity: ratio(0.5), headDiameter: mm(10) };
  const at = (thickness: number) => headPullThrough({ ...head, thickness: mm(thickness) });
  expect(at(24.999) / at(25)).toBeCloseTo(1, 3);
  expect(at(40)).toBe(at(25));
});

test("screws hold in proportion to their thread, and ultimate is the same multiple of allowable", () => {
  const screw = { specificGravity: ratio(0.6), diameter: mm(4), base: "solid wood" as const };
  fc.assert(
    fc.property(millimetres(5, 60), (length) => {
      const one = { ...screw, penetration: mm(length) };
      const two = { ...screw, penetration: mm(2 * length) };
      expect(screwWithdrawalAllowable(two) / screwWithdrawalAllowable(one)).toBeCloseTo(2, 9);
      expect(screwWithdrawalUltimate(one) / screwWithdrawalAllowable(one)).toBeCloseTo(15_700 / 2850, 9);
    }),
  );
});

test("a screw in thin plywood comes with both cautions", () => {
  const screw = {
    specificGravity: ratio(0.6),
    diameter: mm(4),
    penetration: mm(6),
    base: "plywood" as const,
  };
  expect(screwWithdrawalAllowable.worked(screw).warnings).toEqual([
    "plywood holds screws less well than solid wood of its weight: pull a few of your own to be sure",
    "thread shorter than six diameters: outside the tests behind this formula",
  ]);
  const deep = { ...screw, penetration: mm(24), base: "solid wood" as const };
  expect(screwWithdrawalUltimate.worked(deep).warnings).toEqual([]);
});
