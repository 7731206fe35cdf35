import fc from "fast-check";
import { expect, test } from "vitest";
import { type LoadBetweenTwo, pairShares } from "../../lib/moving/index.js";
import { degree, kg, mm } from "../../lib/quantity/index.js";

const load: LoadBetweenTwo = {
  mass: kg(40),
  span: mm(1000),
  toCentre: mm(300),
  rise: mm(200),
  incline: degree(0),
};

test("the shares add up to the load", () => {
  const some = fc.record({
    mass: fc.integer({ min: 0, max: 900 }).map((tenths) => kg(tenths / 10)),
    span: fc.integer({ min: 400, max: 2000 }).map(mm),
    toCentre: fc.integer({ min: 100, max: 300 }).map(mm),
    rise: fc.integer({ min: -50, max: 50 }).map(mm),
    incline: fc.integer({ min: 0, max: 40 }).map(degree),
  });
  fc.assert(
    fc.property(some, (one) => {
      const { first, second } = pairShares(one);
      expect(first + second).toBeCloseTo(one.mass, 9);
    }),
  );
});

test("swapping ends swaps the shares on the flat", () => {
  const there = pairShares(load);
  const back = pairShares({ ...load, toCentre: mm(700) });
  expect(back.first).toBeCloseTo(there.second, 9);
  expect(back.second).toBeCloseTo(there.first, 9);
});

test("on stairs the lower person carries more, unless the weight hangs below the handles", () => {
  const onStairs = pairShares({ ...load, incline: degree(35) });
  expect(onStairs.first).toBeGreaterThan(pairShares(load).first);
  expect(pairShares({ ...load, rise: mm(-200), incline: degree(35) }).first).toBeLessThan(
    pairShares(load).first,
  );
});

test("refuses a load that would tip over a handle", () => {
  expect(() => pairShares({ ...load, toCentre: mm(-10) })).toThrow(
    new RangeError("lift.pair.shares: the load tips over: the second person would have to hold it down"),
  );
  expect(() => pairShares({ ...load, toCentre: mm(1010) })).toThrow(
    new RangeError("lift.pair.shares: the load tips over: the first person would have to hold it down"),
  );
});
