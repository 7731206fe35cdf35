import fc from "fast-check";
import { expect, test } from "vitest";
import { centreOfMass, type PlacedMass } from "../../lib/moving/index.js";
import { kg, type Length, mm } from "../../lib/quantity/index.js";

const corner = { x: mm(0), y: mm(0), z: mm(0) };

const length = fc.integer({ min: -2000, max: 2000 }).map(mm);

const somePlace = fc.record({ x: length, y: length, z: length });

const someMasses: fc.Arbitrary<PlacedMass[]> = fc.array(
  fc
    .tuple(somePlace, fc.integer({ min: 1, max: 400 }))
    .map(([place, tenths]) => ({ ...place, name: "thing", mass: kg(tenths / 10) })),
  { minLength: 1, maxLength: 8 },
);

const add = (a: Length, b: Length): Length => (a + b) as Length;

test("moving everything moves the centre by as much", () => {
  fc.assert(
    fc.property(someMasses, somePlace, (masses, by) => {
      const moved = masses.map((one) => ({
        ...one,
        x: add(one.x, by.x),
        y: add(one.y, by.y),
        z: add(one.z, by.z),
      }));
      const [before, after] = [masses, moved].map((list) => centreOfMass({ masses: list, origin: corner }));
      for (const axis of ["x", "y", "z"] as const) {
        expect(after?.[axis]).toBeCloseTo((before?.[axis] ?? 0) + by[axis], 9);
      }
    }),
  );
});

test("moving the origin moves the centre the other way", () => {
  fc.assert(
    fc.property(someMasses, somePlace, (masses, origin) => {
      const about = centreOfMass({ masses, origin });
      const plain = centreOfMass({ masses, origin: corner });
      for (const axis of ["x", "y", "z"] as const)
        expect(about[axis]).toBeCloseTo(plain[axis] - origin[axis], 9);
    }),
  );
});

test("the centre lies among the things, and two lists balance as their two centres do", () => {
  fc.assert(
    fc.property(someMasses, someMasses, (some, more) => {
      const all = centreOfMass({ masses: [...some, ...more], origin: corner });
      const parts = [some, more].map((masses) => ({
        name: "part",
        ...centreOfMass({ masses, origin: corner }),
      }));
      expect(centreOfMass({ masses: parts, origin: corner }).z).toBeCloseTo(all.z, 9);
      const heights = [...some, ...more].map(({ z }) => z);
      expect(all.z).toBeGreaterThanOrEqual(Math.min(...heights) - 1e-9);
      expect(all.z).toBeLessThanOrEqual(Math.max(...heights) + 1e-9);
    }),
  );
});

test("refuses no mass, and a mass below nothing by its name", () => {
  expect(() => centreOfMass({ masses: [], origin: corner })).toThrow(
    new RangeError("balance.centre: there is no mass to balance"),
  );
  expect(() => centreOfMass({ masses: [{ ...corner, name: "lid", mass: kg(-1) }], origin: corner })).toThrow(
    new RangeError("balance.centre: lid: mass must be at least 0, got -1 kg"),
  );
});
