import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  balanceMove,
  bodyInertia,
  boxInertia,
  centreOfMass,
  type PlacedBox,
} from "../../lib/moving/index.js";
import { kg, type Length, Length as LengthKind, metre, mm } from "../../lib/quantity/index.js";

const size = fc.double({ min: 0.01, max: 2, noNaN: true });

const place = fc.double({ min: -3, max: 3, noNaN: true });

const box: fc.Arbitrary<PlacedBox> = fc
  .record({
    mass: fc.double({ min: 0.1, max: 50, noNaN: true }),
    x: place,
    y: place,
    z: place,
    w: size,
    d: size,
    h: size,
  })
  .map(({ mass, x, y, z, w, d, h }) => ({
    name: "thing",
    mass: kg(mass),
    x: metre(x),
    y: metre(y),
    z: metre(z),
    width: metre(w),
    depth: metre(d),
    height: metre(h),
  }));

const boxes = fc.array(box, { minLength: 1, maxLength: 8 });

const origin = { x: metre(0), y: metre(0), z: metre(0) };

const moved = (one: PlacedBox, by: number): PlacedBox => ({
  ...one,
  x: LengthKind.si(one.x + by),
  y: LengthKind.si(one.y - by),
  z: LengthKind.si(one.z + 2 * by),
});

describe("balance and inertia", () => {
  test("moving everything moves the centre by as much", () => {
    fc.assert(
      fc.property(boxes, place, (all, by) => {
        const before = centreOfMass({ masses: all, origin });
        const after = centreOfMass({ masses: all.map((one) => moved(one, by)), origin });
        expect(after.x - before.x).toBeCloseTo(by, 9);
        expect(after.y - before.y).toBeCloseTo(-by, 9);
        expect(after.z - before.z).toBeCloseTo(2 * by, 9);
      }),
    );
  });

  test("moving everything changes no moment of inertia", () => {
    fc.assert(
      fc.property(boxes, place, (all, by) => {
        const before = bodyInertia({ boxes: all });
        const after = bodyInertia({ boxes: all.map((one) => moved(one, by)) });
        for (const axis of ["x", "y", "z"] as const) expect(after[axis]).toBeCloseTo(before[axis], 6);
      }),
    );
  });

  test("one box alone has its own moments, many at least the sum of theirs", () => {
    fc.assert(
      fc.property(boxes, (all) => {
        const body = bodyInertia({ boxes: all });
        const own = all.reduce((sum, one) => sum + boxInertia(one).z, 0);
        if (all.length === 1) expect(body.z).toBeCloseTo(own, 9);
        expect(body.z).toBeGreaterThanOrEqual(own - 1e-9);
      }),
    );
  });

  test("no moment exceeds the sum of the other two", () => {
    fc.assert(
      fc.property(boxes, (all) => {
        const { x, y, z } = bodyInertia({ boxes: all });
        expect(x).toBeLessThanOrEqual(y + z + 1e-9);
        expect(z).toBeLessThanOrEqual(x + y + 1e-9);
      }),
    );
  });

  test("the move that is asked for brings the centre where it was wanted", () => {
    fc.assert(
      fc.property(fc.array(box, { minLength: 2, maxLength: 6 }), place, (all, wanted) => {
        const [first, ...others] = all;
        if (!first) return;
        const before = centreOfMass({ masses: all, origin });
        const way = balanceMove({ total: before.mass, mass: first.mass, wanted: metre(wanted) });
        const shifted = { ...first, x: LengthKind.si(first.x + way) as Length };
        expect(centreOfMass({ masses: [shifted, ...others], origin }).x - before.x).toBeCloseTo(wanted, 6);
      }),
    );
  });

  test("what cannot be is refused", () => {
    expect(() => bodyInertia({ boxes: [] })).toThrow("inertia.body: there is no mass to turn");
    expect(() => boxInertia({ mass: kg(1), width: mm(-1), depth: mm(1), height: mm(1) })).toThrow(
      "inertia.box: width must be at least 0 mm, got -1 mm",
    );
    expect(() => balanceMove({ total: kg(5), mass: kg(6), wanted: mm(1) })).toThrow(
      "balance.move: the thing must not weigh more than everything",
    );
  });
});
