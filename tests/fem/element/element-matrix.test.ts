import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  displacementsUnder,
  elementRows,
  elementStiffness,
  factorPieces,
  nodePlaces,
  type Piece,
  sheetOfLayers,
} from "../../../lib/fem/index.js";
import { plainLayer, ply, plyLayer } from "../sheets.js";

/** Nine nodes from four corners, sides straight. */
function nodes(corners: readonly (readonly [number, number])[]): { x: Float64Array; y: Float64Array } {
  const at = (axis: 0 | 1): Float64Array =>
    Float64Array.from(nodePlaces, ([xi, eta]) =>
      corners.reduce((sum, corner, i) => {
        const [cx, cy] = nodePlaces[i]!;
        return sum + (corner[axis] * (1 + cx * xi) * (1 + cy * eta)) / 4;
      }, 0),
    );
  return { x: at(0), y: at(1) };
}

const skew = nodes([
  [0, 0],
  [0.2, 0.03],
  [0.17, 0.15],
  [-0.02, 0.12],
]);

function times(matrix: Float64Array, vector: readonly number[]): number[] {
  return vector.map((_, i) =>
    vector.reduce((sum, value, j) => sum + matrix[i * elementRows + j]! * value, 0),
  );
}

/** u, v, w, bx, by at each node. */
type Field = (x: number, y: number) => readonly [number, number, number, number, number];

function sampled({ x, y }: { x: Float64Array; y: Float64Array }, field: Field): number[] {
  return Array.from(x, (at, i) => [...field(at, y[i]!)]).flat();
}

const rigid: Readonly<Record<string, Field>> = {
  "slide along x": () => [1, 0, 0, 0, 0],
  "slide along y": () => [0, 1, 0, 0, 0],
  lift: () => [0, 0, 1, 0, 0],
  "turn in its plane": (x, y) => [-y, x, 0, 0, 0],
  "tip about y": (x) => [0, 0, x, -1, 0],
  "tip about x": (_, y) => [0, 0, y, 0, -1],
};

describe("one bent-out-of-square element", () => {
  const faced = sheetOfLayers([plyLayer(0.009, 20), plainLayer(0.0008, 9e9, 0.3)], 0.0045);

  test.each(Object.entries(rigid))("offers no resistance to: %s", (_, field) => {
    const matrix = elementStiffness(skew.x, skew.y, faced);
    const largest = Math.max(...matrix);
    expect(Math.max(...times(matrix, sampled(skew, field)).map(Math.abs))).toBeLessThan(1e-9 * largest);
  });

  test("has the stiffness of its area for any constant strain", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 6, maxLength: 6 }),
        (strain) => {
          const [ex, ey, g, kx, ky, kxy] = strain as [number, number, number, number, number, number];
          const field: Field = (x, y) => [
            ex * x + (g * y) / 2,
            ey * y + (g * x) / 2,
            -(kx * x * x + ky * y * y + kxy * x * y) / 2,
            kx * x + (kxy * y) / 2,
            ky * y + (kxy * x) / 2,
          ];
          const u = sampled(skew, field);
          const energy = times(elementStiffness(skew.x, skew.y, faced), u).reduce(
            (sum, f, i) => sum + (f * u[i]!) / 2,
            0,
          );
          const [m, k] = [
            [ex, ey, g],
            [kx, ky, kxy],
          ];
          const form = (q: readonly (readonly number[])[], a: number[], b: number[]): number =>
            a.reduce((sum, value, i) => sum + value * q[i]!.reduce((s, entry, j) => s + entry * b[j]!, 0), 0);
          const each =
            form(faced.membrane, m!, m!) / 2 + form(faced.coupling, m!, k!) + form(faced.bending, k!, k!) / 2;
          const scale =
            faced.membrane[0][0] * shoelace() * strain.reduce((sum, value) => sum + value * value, 0);
          expect(Math.abs(energy - each * shoelace())).toBeLessThanOrEqual(1e-9 * scale);
        },
      ),
    );
  });
});

function shoelace(): number {
  let twice = 0;
  for (let i = 0; i < 4; i++) {
    const j = (i + 1) % 4;
    twice += skew.x[i]! * skew.y[j]! - skew.x[j]! * skew.y[i]!;
  }
  return twice / 2;
}

describe("patch of five elements, MacNeal and Harder 1985", () => {
  // Corners of the patch and its inner nodes, m: from memory of the paper; any inner nodes must pass.
  const corners: readonly (readonly [number, number])[] = [
    [0, 0],
    [0.24, 0],
    [0.24, 0.12],
    [0, 0.12],
    [0.04, 0.02],
    [0.18, 0.03],
    [0.16, 0.08],
    [0.08, 0.08],
  ];
  const quads = [
    [0, 1, 5, 4],
    [1, 2, 6, 5],
    [2, 3, 7, 6],
    [3, 0, 4, 7],
    [4, 5, 6, 7],
  ];
  const sheet = sheetOfLayers([plainLayer(0.001, 1e6, 0.25)]);
  const exact: Field = (x, y) => [
    1e-3 * (x + y / 2),
    1e-3 * (y + x / 2),
    (1e-3 * (x * x + x * y + y * y)) / 2,
    -1e-3 * (x + y / 2),
    -1e-3 * (y + x / 2),
  ];

  test("finds the inner nodes of a constant strain exactly", () => {
    const places: [number, number][] = [];
    const number = (x: number, y: number): number => {
      const known = places.findIndex(([a, b]) => Math.hypot(a - x, b - y) < 1e-9);
      return known >= 0 ? known : places.push([x, y]) - 1;
    };
    const pieces = quads.map((quad): Piece => {
      const { x, y } = nodes(quad.map((corner) => corners[corner]!));
      const own = Array.from(x, (at, i) => number(at, y[i]!));
      return {
        dofs: Int32Array.from(own.flatMap((node) => [0, 1, 2, 3, 4].map((kind) => 5 * node + kind))),
        matrix: elementStiffness(x, y, sheet),
        middle: [x[8]!, y[8]!, 0],
      };
    });
    const wanted = places.flatMap(([x, y]) => [...exact(x, y)]);
    const onRim = ([x, y]: readonly [number, number]): boolean =>
      x === 0 || y === 0 || Math.abs(x - 0.24) < 1e-12 || Math.abs(y - 0.12) < 1e-12;
    const held = Uint8Array.from(places.flatMap((place) => Array(5).fill(onRim(place) ? 1 : 0)));
    const moved = Float64Array.from(wanted, (value, i) => (held[i] ? value : 0));
    const pull = new Float64Array(wanted.length);
    for (const { dofs, matrix } of pieces)
      dofs.forEach((row, i) => {
        dofs.forEach((column, j) => {
          pull[row]! -= matrix[i * elementRows + j]! * moved[column]!;
        });
      });
    const found = displacementsUnder(factorPieces(pieces, held), pull);
    const scale = Math.max(...wanted.map(Math.abs));
    wanted.forEach((value, i) => {
      if (!held[i]) expect(Math.abs(found[i]! - value)).toBeLessThan(1e-9 * scale);
    });
  });
});

describe("sheet", () => {
  test("refuses what would give way, naming the layer", () => {
    expect(() => sheetOfLayers([{ ...plyLayer(0.009), thickness: plyLayer(0).thickness }])).toThrow(
      "sheet: thickness of layer 1 must be positive, got 0",
    );
    const { poissonRatio } = plainLayer(1, 1, 1.5);
    expect(() => sheetOfLayers([{ ...plyLayer(0.009), poissonRatio }])).toThrow(
      "sheet: poissonRatio of layer 1 does not fit its moduli, got 1.5",
    );
  });

  test("does not couple stretching and bending when it is the same from both faces", () => {
    expect(ply.coupling.flat().every((value) => value === 0)).toBe(true);
  });
});
