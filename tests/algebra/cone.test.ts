import fc from "fast-check";
import { expect, test } from "vitest";
import { lengthOf, nearestInCone, outOfReach, product } from "../../lib/algebra/cone.js";

const vector = fc
  .array(fc.integer({ min: -9, max: 9 }), { minLength: 4, maxLength: 4 })
  .map((values) => Float64Array.from(values))
  .filter((values) => lengthOf(values) > 0);
const columns = fc.array(vector, { minLength: 0, maxLength: 9 });

test("the nearest place of a cone is a sum of its columns, and nothing nearer is to be had", () => {
  fc.assert(
    fc.property(columns, vector, (cone, place) => {
      const { shares, rest } = nearestInCone(cone, place);
      const scale = lengthOf(place);
      expect(Math.min(0, ...shares)).toBe(0);
      place.forEach((value, i) => {
        const reached = cone.reduce((sum, column, j) => sum + shares[j]! * column[i]!, 0);
        expect(Math.abs(value - reached - rest[i]!)).toBeLessThan(1e-9 * scale);
      });
      // The conditions of Karush, Kuhn and Tucker: no column leans towards the rest, those that are used stand across it.
      cone.forEach((column, j) => {
        const lean = product(column, rest) / lengthOf(column) / scale;
        expect(lean).toBeLessThan(1e-9);
        if (shares[j]! > 0) expect(Math.abs(lean)).toBeLessThan(1e-9);
      });
    }),
  );
});

test("a place of the cone is found", () => {
  fc.assert(
    fc.property(columns, fc.infiniteStream(fc.integer({ min: 0, max: 5 })), (cone, stream) => {
      const place = new Float64Array(4);
      for (const column of cone) {
        const share = stream.next().value as number;
        column.forEach((value, i) => {
          place[i]! += share * value;
        });
      }
      expect(lengthOf(nearestInCone(cone, place).rest)).toBeLessThan(1e-9 * (1 + lengthOf(place)));
    }),
  );
});

test("what is out of reach stands across all vectors, and with them reaches every place", () => {
  fc.assert(
    fc.property(columns, (given) => {
      const beyond = outOfReach(given, 4);
      for (const way of beyond) {
        expect(lengthOf(way)).toBeCloseTo(1, 9);
        for (const one of given) expect(Math.abs(product(way, one))).toBeLessThan(1e-6 * lengthOf(one));
      }
      expect(outOfReach([...given, ...beyond], 4)).toEqual([]);
    }),
  );
});
