/** The beam against closed forms of mechanics texts. */
import { describe, expect, test } from "vitest";
import {
  type BeamSection,
  type BoxProblem,
  beamMatrix,
  beamRows,
  boxStructure,
  displacementsUnder,
  factoredBox,
  factorPieces,
  moved,
  movementAt,
  type Piece,
  sheetOfLayers,
  spaceDofs,
} from "../../../lib/fem/index.js";
import { plainLayer } from "../sheets.js";

const modulus = 7e10;
const shearModulus = 2.6e10;

/** A section with all its terms, unequal. */
const odd: BeamSection = {
  axial: modulus * 1.1e-4,
  bending: { aa: modulus * 1.5e-8, bb: modulus * 2.6e-8, ab: modulus * 0.8e-8 },
  torsion: shearModulus * 9e-11,
  shear: { a: shearModulus * 4e-5, b: shearModulus * 6e-5 },
  centroid: { a: 0, b: 0 },
  shearCentre: { a: 0, b: 0 },
};
const length = 0.8;

/** Movement of the tip of a cantilever of so many beams, its line along an axis, under a force and a moment there. */
function tip(
  section: BeamSection,
  load: Readonly<Partial<Record<number, number>>>,
  axis: 0 | 1 | 2 = 0,
  beams = 3,
): Float64Array {
  const pieces = Array.from({ length: beams }, (_, i): Piece => {
    const first = 2 * i * spaceDofs;
    return {
      dofs: Int32Array.from({ length: beamRows }, (_unused, k) => first + k),
      matrix: beamMatrix(axis, length / beams, section),
      middle: [i, 0, 0],
    };
  });
  const size = (2 * beams + 1) * spaceDofs;
  const held = Uint8Array.from({ length: size }, (_, dof) => (dof < spaceDofs ? 1 : 0));
  const forces = new Float64Array(size);
  for (const [dof, value] of Object.entries(load)) forces[size - spaceDofs + Number(dof)] = value ?? 0;
  return displacementsUnder(factorPieces(pieces, held), forces).subarray(size - spaceDofs);
}

describe("a cantilever of beams", () => {
  const plain: BeamSection = { ...odd, bending: { ...odd.bending, ab: 0 } };
  const { axial, bending, torsion, shear } = plain;

  test.each<[string, number, number, number, number]>([
    ["pulled: P L / E A", 0, 100, 0, (100 * length) / axial],
    [
      "pushed along a: P L3 / 3 E I + P L / G A",
      1,
      100,
      1,
      (100 * length ** 3) / (3 * bending.bb) + (100 * length) / shear.a,
    ],
    [
      "pushed along b: P L3 / 3 E I + P L / G A",
      2,
      100,
      2,
      (100 * length ** 3) / (3 * bending.aa) + (100 * length) / shear.b,
    ],
    ["twisted: T L / G J", 3, 2, 3, (2 * length) / torsion],
    ["bent by a moment about b: M L2 / 2 E I", 5, 10, 1, (10 * length ** 2) / (2 * bending.bb)],
    ["bent by a moment about b, its turn: M L / E I", 5, 10, 5, (10 * length) / bending.bb],
  ])("%s", (_, dof, load, result, exact) => {
    expect(tip(plain, { [dof]: load })[result]! / exact).toBeCloseTo(1, 9);
  });

  test("is the same along every axis", () => {
    const along = ([0, 1, 2] as const).map((axis) => {
      const turned = (kind: number): number => (((kind % 3) + axis) % 3) + 3 * Math.floor(kind / 3);
      const found = tip(odd, { [turned(1)]: 100, [turned(3)]: 2 }, axis);
      return Array.from({ length: spaceDofs }, (_, kind) => found[turned(kind)]!);
    });
    for (const other of along.slice(1))
      other.forEach((value, i) => {
        expect(value).toBeCloseTo(along[0]![i]!, 9);
      });
  });

  test("of an unequal section moves aside too: E (Iaa, Ibb, Iab) in two directions at once", () => {
    // Curvatures from moments by the inverse of the matrix of second moments (any text on unsymmetrical bending).
    const { aa, bb, ab } = odd.bending;
    const arm = (100 * length ** 3) / 3 / (aa * bb - ab * ab);
    const found = tip(odd, { 1: 100 });
    expect(found[1]! / (arm * aa + (100 * length) / odd.shear.a)).toBeCloseTo(1, 9);
    expect(found[2]! / (-arm * ab)).toBeCloseTo(1, 9);
  });

  test("pulled beside its centroid bends: w = P e L2 / 2 E I", () => {
    const beside = { ...plain, centroid: { a: 0, b: 0.01 } };
    const found = tip(beside, { 0: 100 });
    // Pulling the line below the centroid lifts its end: the centroid lies on the squeezed side.
    expect(found[2]! / ((100 * 0.01 * length ** 2) / (2 * bending.aa))).toBeCloseTo(1, 9);
    expect(found[0]! / ((100 * length) / axial + (100 * 0.01 ** 2 * length) / bending.aa)).toBeCloseTo(1, 9);
  });

  test("pushed beside its shear centre twists: T = P e", () => {
    const beside = { ...plain, shearCentre: { a: 0, b: 0.012 } };
    const found = tip(beside, { 1: 100 });
    expect(Math.abs(found[3]!) / ((100 * 0.012 * length) / torsion)).toBeCloseTo(1, 9);
  });

  test("a thin one does not lock: a tenth of a millimetre high, a metre long", () => {
    const height = 1e-4;
    const thin: BeamSection = {
      ...plain,
      bending: { aa: (modulus * height ** 3) / 12, bb: (modulus * height ** 3) / 12, ab: 0 },
      shear: { a: shearModulus * height, b: shearModulus * height },
    };
    const exact = length ** 3 / (3 * thin.bending.aa);
    expect(tip(thin, { 2: 1 }, 0, 1)[2]! / exact).toBeCloseTo(1, 5);
  });

  test.each<[string, Partial<BeamSection>]>([
    ["beam: axial must be positive, got 0", { axial: 0 }],
    ["beam: torsion must be positive, got -1", { torsion: -1 }],
    ["beam: bending.ab must be smaller than aa and bb allow, got 3", { bending: { aa: 2, bb: 2, ab: 3 } }],
  ])("refuses: %s", (message, change) => {
    expect(() => beamMatrix(0, 1, { ...odd, ...change })).toThrow(message);
  });
});

describe("a beam under a strip of plate", () => {
  // Without Poisson's ratio and nearly without shear, the strip is a transformed section (any text).
  const [strip, thickness, wood] = [0.06, 0.009, 1e10];
  const stiff = { ...plainLayer(thickness, wood, 0), throughAlong: plainLayer(1, 1e15, 0).throughAlong };
  const [bar, high, metal] = [0.02, 0.025, 7e10];
  const batten: BeamSection = {
    axial: metal * bar * high,
    bending: { aa: (metal * bar * high ** 3) / 12, bb: (metal * high * bar ** 3) / 12, ab: 0 },
    torsion: 1e5,
    shear: { a: 1e12, b: 1e12 },
    centroid: { a: 0, b: (thickness + high) / 2 },
    shearCentre: { a: 0, b: (thickness + high) / 2 },
  };
  const problem: BoxProblem = {
    name: "strip",
    length: 1,
    width: strip,
    height: 0,
    faces: { bottom: { sheet: sheetOfLayers([stiff]), regions: [], cutouts: [] } },
    beams: [
      { name: "batten", on: "bottom", from: [0, strip / 2, 0], to: [1, strip / 2, 0], section: batten },
    ],
  };

  test("bends as the transformed section says, P L3 / 3 E I", () => {
    const structure = boxStructure(problem, 0.05);
    const box = factoredBox(structure, [{ where: ([x]) => x < 1e-9, dofs: [0, 1, 2, 3, 4, 5] }]);
    const end = structure.nodes.flatMap(([x], node) => (x > 1 - 1e-9 ? [node] : []));
    const share = end.map(() => 1 / end.length);
    const found = movementAt(moved(box, [{ on: { nodes: end, shares: share }, force: [0, 0, 10] }]), [
      1,
      strip / 2,
      0,
    ]);
    const [first, second] = [wood * strip * thickness, metal * bar * high];
    const arm = (thickness + high) / 2;
    const rigidity =
      (wood * strip * thickness ** 3) / 12 +
      batten.bending.aa +
      ((first * second) / (first + second)) * arm ** 2;
    expect(found[2] / (10 / (3 * rigidity))).toBeCloseTo(1, 2);
  });

  test.each<[string, Partial<NonNullable<BoxProblem["beams"]>[number]>]>([
    ["strip, batten: a beam must run along an axis", { to: [1, 0, 0] }],
    ["strip, batten: its face top is open", { on: "top" }],
    ["strip, batten: 500 mm of it touch no material of bottom", { to: [1.5, strip / 2, 0] }],
  ])("refuses: %s", (message, change) => {
    const beams = problem.beams!.map((beam) => ({ ...beam, ...change }));
    expect(() => boxStructure({ ...problem, beams }, 0.05)).toThrow(message);
  });
});
