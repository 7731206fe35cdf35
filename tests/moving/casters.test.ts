import fc from "fast-check";
import { expect, test } from "vitest";
import {
  type CaseOnCasters,
  type CasterLoads,
  casterRating,
  casterStands,
  type corners,
  loadsOnFour,
  loadsOnThree,
  restsOnFour,
  restsOnThree,
} from "../../lib/moving/index.js";
import { kg, mm, ratio, standardGravity } from "../../lib/quantity/index.js";

const middle: CaseOnCasters = {
  mass: kg(60),
  across: mm(500),
  deep: mm(400),
  fromLeft: mm(250),
  fromFront: mm(200),
};

const someCase: fc.Arbitrary<CaseOnCasters> = fc.record({
  mass: fc.integer({ min: 10, max: 2000 }).map((tenths) => kg(tenths / 10)),
  across: fc.constant(mm(500)),
  deep: fc.constant(mm(400)),
  fromLeft: fc.integer({ min: 0, max: 500 }).map(mm),
  fromFront: fc.integer({ min: 0, max: 400 }).map(mm),
});

/** Weight, and moments about the left and the front casters, that a set of caster forces balances. */
function carried(
  { frontLeft, frontRight, backLeft, backRight }: CasterLoads,
  { across, deep }: CaseOnCasters,
) {
  return [
    frontLeft + frontRight + backLeft + backRight,
    (frontRight + backRight) * across,
    (backLeft + backRight) * deep,
  ];
}

test("every way of standing balances weight and moments, and no caster pulls", () => {
  fc.assert(
    fc.property(someCase, (standing) => {
      const weight = standing.mass * standardGravity;
      const balance = [weight, weight * standing.fromLeft, weight * standing.fromFront];
      for (const { worked, greatest } of casterStands(standing)) {
        expect(carried(worked.value, standing)).toEqual(balance.map((one) => expect.closeTo(one, 6)));
        expect(Math.min(...Object.values(worked.value))).toBeGreaterThanOrEqual(-1e-6);
        expect(Math.max(...Object.values(worked.value))).toBe(greatest);
      }
    }),
  );
});

test("of each pair of diagonal casters one can hang, both where the weight is on the other diagonal", () => {
  fc.assert(
    fc.property(someCase, (standing) => {
      const rests = (corner: (typeof corners)[number]) => restsOnThree({ ...standing, lifted: corner });
      expect(rests("front left") || rests("back right")).toBe(true);
      expect(rests("front right") || rests("back left")).toBe(true);
    }),
  );
});

test("on three casters the worst carries at least a third, and half with the weight in the middle", () => {
  const worst = casterStands(middle)[0];
  expect(worst?.on).toBe("three casters");
  expect(worst?.greatest).toBeCloseTo(30 * standardGravity, 9);
  fc.assert(
    fc.property(someCase, (standing) => {
      expect(casterStands(standing)[0]?.greatest).toBeGreaterThanOrEqual(
        (standing.mass * standardGravity) / 3 - 1e-6,
      );
    }),
  );
});

test("mirroring the case mirrors the loads", () => {
  const standing = { ...middle, fromLeft: mm(200) };
  const mirrored = { ...middle, fromLeft: mm(300) };
  expect(loadsOnFour(mirrored).frontRight).toBeCloseTo(loadsOnFour(standing).frontLeft, 9);
  expect(loadsOnThree({ ...mirrored, lifted: "back left" }).frontRight).toBeCloseTo(
    loadsOnThree({ ...standing, lifted: "back right" }).frontLeft,
    9,
  );
});

test("refuses a way of standing that cannot be", () => {
  const offMiddle = { ...middle, fromLeft: mm(100), fromFront: mm(60) };
  expect(restsOnFour(offMiddle)).toBe(false);
  expect(() => loadsOnFour(offMiddle)).toThrow(
    new RangeError("caster.four: the centre of gravity is so far off the middle that a caster would lift"),
  );
  expect(() => loadsOnThree({ ...offMiddle, lifted: "front left" })).toThrow(
    new RangeError(
      "caster.three: the case would rock off these three, the centre of gravity does not stand between them",
    ),
  );
  expect(() => casterStands({ ...middle, fromLeft: mm(-20) })).toThrow(
    new RangeError("casters: the centre of gravity does not stand between the casters, the case tips"),
  );
});

test("rougher use asks for a higher rating, never for a lower one than a third", () => {
  expect(casterRating({ mass: kg(90), serviceFactor: ratio(1.2) })).toBeCloseTo(36, 9);
  expect(() => casterRating({ mass: kg(90), serviceFactor: ratio(0.9) })).toThrow(
    new RangeError("caster.rating: serviceFactor must be at least 1, got 0.9"),
  );
});
