import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  displacementsUnder,
  factorPieces,
  lowestModes,
  type Piece,
  timesPieces,
  UnconstrainedDof,
} from "../../../lib/fem/index.js";

function spring(a: number, b: number, stiffness: number): Piece {
  return {
    dofs: Int32Array.of(a, b),
    matrix: Float64Array.of(stiffness, -stiffness, -stiffness, stiffness),
    middle: [(a + b) / 2, 0, 0],
  };
}

function mass(at: number): Piece {
  return { dofs: Int32Array.of(at), matrix: Float64Array.of(1), middle: [at, 0, 0] };
}

const chain = (count: number): Piece[] => Array.from({ length: count - 1 }, (_, i) => spring(i, i + 1, 1));

describe("solver", () => {
  test("gives back any displacement from its forces", () => {
    const network = fc.integer({ min: 2, max: 60 }).chain((count) =>
      fc.record({
        count: fc.constant(count),
        links: fc.array(
          fc.tuple(
            fc.integer({ min: 0, max: count - 1 }),
            fc.integer({ min: 0, max: count - 1 }),
            fc.double({ min: 0.1, max: 10, noNaN: true }),
          ),
          { maxLength: 150 },
        ),
        wanted: fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: count, maxLength: count }),
      }),
    );
    fc.assert(
      fc.property(network, ({ count, links, wanted }) => {
        const pieces = [
          ...chain(count),
          ...links.filter(([a, b]) => a !== b).map(([a, b, stiffness]) => spring(a, b, stiffness)),
        ];
        const held = Uint8Array.from({ length: count }, (_, i) => (i === 0 ? 1 : 0));
        const moved = Float64Array.from(wanted, (value, i) => (i === 0 ? 0 : value));
        const found = displacementsUnder(factorPieces(pieces, held), timesPieces(pieces, moved));
        found.forEach((value, i) => {
          expect(value).toBeCloseTo(moved[i]!, 8);
        });
      }),
    );
  });

  test.each([1, 2, 7, 8, 9, 33, 130, 301])("factors a full matrix of %i freedoms", (count) => {
    // A A' + count I resists every motion; the pieces' middles lie apart, so that fronts are halved too.
    const random = Array.from({ length: count * count }, (_, i) => Math.sin(12.9898 * (i + 1)));
    const matrix = Float64Array.from({ length: count * count }, (_, at) => {
      const [i, j] = [Math.floor(at / count), at % count];
      let sum = i === j ? count : 0;
      for (let k = 0; k < count; k++) sum += random[i * count + k]! * random[j * count + k]!;
      return sum;
    });
    const dofs = Int32Array.from({ length: count }, (_, i) => i);
    const pieces = Array.from({ length: 9 }, (_, i): Piece => ({ dofs, matrix, middle: [i, 0, 0] }));
    const moved = Float64Array.from({ length: count }, (_, i) => Math.cos(i));
    const found = displacementsUnder(factorPieces(pieces, new Uint8Array(count)), timesPieces(pieces, moved));
    found.forEach((value, i) => {
      expect(value).toBeCloseTo(moved[i]!, 10);
    });
  });

  test("names the freedom that nothing holds", () => {
    const apart = [spring(0, 1, 1), spring(2, 3, 1)];
    const solve = (): unknown => factorPieces(apart, Uint8Array.of(1, 0, 0, 0));
    expect(solve).toThrow(UnconstrainedDof);
    expect(solve).toThrow(/freedom [23] moves without resistance/);
  });

  test("finds the frequencies of a chain of equal masses and springs", () => {
    // Exact: 2 - 2 cos(k pi / (n + 1)) for n masses between two walls.
    const count = 40;
    const pieces = chain(count + 2);
    const held = Uint8Array.from({ length: count + 2 }, (_, i) => (i === 0 || i === count + 1 ? 1 : 0));
    const masses = Array.from({ length: count + 2 }, (_, i) => mass(i));
    const modes = lowestModes(factorPieces(pieces, held), masses, 4);
    expect(modes.map(({ value }) => value)).toHaveLength(4);
    modes.forEach(({ value }, k) => {
      expect(value).toBeCloseTo(2 - 2 * Math.cos(((k + 1) * Math.PI) / (count + 1)), 9);
    });
  });
});
