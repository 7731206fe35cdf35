/** Laws that hold for every panel: units, turns, energy, and more material. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  bent,
  bucklingFactor,
  deflectionAt,
  elementRows,
  elementStiffness,
  factoredPanel,
  type Hold,
  naturalFrequencies,
  nodePlaces,
  type PanelLoad,
  type PanelProblem,
  panelForces,
  type SheetLayer,
  sheetOfLayers,
  timesPieces,
  withBatten,
} from "../../lib/fem/index.js";
import { Angle, Density, Length, Pressure } from "../../lib/quantity/index.js";
import { cut, type DrawnCutout, panel, plainLayer, ply, plyLayer, roundedWindow } from "../fem/sheets.js";

const coarse = 40;
const runs = { numRuns: 5 };
const hinged: Hold = { kind: "hinged" };

function opened(problem: PanelProblem, cutout: DrawnCutout = roundedWindow): PanelProblem {
  return { ...problem, outline: { ...problem.outline, cutouts: [cut(cutout)] } };
}

/** Half of force times way, and what elements and springs store. */
function energies(problem: PanelProblem): readonly [outer: number, inner: number] {
  const { structure, displacement } = bent(factoredPanel(problem, coarse));
  const half = (forces: Float64Array): number =>
    forces.reduce((sum, force, i) => sum + (force * displacement[i]!) / 2, 0);
  const stored = timesPieces([...structure.elements, ...structure.springs], displacement);
  return [half(panelForces(structure, problem.loads)), half(stored)];
}

describe("units", () => {
  /** The panel with lengths in so many to the metre and forces in so many to the newton. */
  function inUnits(
    length: number,
    force: number,
    radius: number,
  ): { way: number; frequency: number; critical: number } {
    const pressure = force / length ** 2;
    const layers = [plyLayer(0.009, 20), plainLayer(0.0008, 9e9, 0.3)].map(
      (layer): SheetLayer => ({
        ...layer,
        thickness: Length.si(length * layer.thickness),
        modulusAlong: Pressure.si(pressure * layer.modulusAlong),
        modulusAcross: Pressure.si(pressure * layer.modulusAcross),
        shearModulus: Pressure.si(pressure * layer.shearModulus),
        throughAlong: Pressure.si(pressure * layer.throughAlong),
        throughAcross: Pressure.si(pressure * layer.throughAcross),
        density: Density.si((layer.density * force) / length ** 4),
      }),
    );
    const load: PanelLoad = { kind: "pressure", pressure: 1000 * pressure };
    const problem = opened(panel(0.6 * length, 0.4 * length, sheetOfLayers(layers), hinged, [load]), {
      kind: "rectangle",
      name: "window",
      left: 0.2 * length,
      bottom: 0.1 * length,
      width: 0.2 * length,
      height: 0.15 * length,
      radius: radius * length,
    });
    const solved = bent(factoredPanel({ ...problem, places: [] }, coarse));
    const far = 0.6 * length;
    return {
      way: deflectionAt(solved, { x: 0.3 * length, y: 0.3 * length }) / length,
      frequency: naturalFrequencies(solved, 1)[0]!,
      critical:
        (bucklingFactor(solved, [
          { from: { x: 0, y: 0 }, to: { x: 0, y: 0.4 * length }, x: 1, y: 0 },
          { from: { x: far, y: 0 }, to: { x: far, y: 0.4 * length }, x: -1, y: 0 },
        ]) *
          length) /
        force,
    };
  }

  const units = [
    ["millimetres and newtons", 1000, 1],
    ["inches and pounds", 1 / 0.0254, 1 / 4.44822],
    ["kilometres and kilonewtons", 1e-3, 1e-3],
  ] as const;

  // A mesh of triangles may turn a diagonal where rounding decides between two; one of straight lines may not.
  describe.each([
    ["a sharp window", 0, 7],
    ["a rounded window", 0.02, 3],
  ])("with %s", (_, radius, digits) => {
    const plain = inUnits(1, 1, radius);

    test.each(units)("in %s a panel sags, swings and buckles the same", (__, length, force) => {
      const other = inUnits(length, force, radius);
      expect(other.way / plain.way).toBeCloseTo(1, digits);
      expect(other.frequency / plain.frequency).toBeCloseTo(1, digits);
      expect(other.critical / plain.critical).toBeCloseTo(1, Math.min(6, digits));
    });
  });
});

describe("turns", () => {
  const corners = [
    [0, 0],
    [0.2, 0.03],
    [0.17, 0.15],
    [-0.02, 0.12],
  ] as const;

  test("an element turned by any angle with its grain stores the same energy in the turned shape", () => {
    const shape = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 45, maxLength: 45 });
    fc.assert(
      fc.property(fc.double({ min: -180, max: 180, noNaN: true }), shape, (degrees, moved) => {
        const at = (turn: number): number => {
          const [c, s] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
          const places = nodePlaces.map(([xi, eta]) =>
            corners.reduce(
              ([x, y], [px, py], i) => {
                const [cx, cy] = nodePlaces[i]!;
                const share = ((1 + cx * xi) * (1 + cy * eta)) / 4;
                return [x + share * px, y + share * py] as const;
              },
              [0, 0] as readonly [number, number],
            ),
          );
          const x = Float64Array.from(places, ([px, py]) => c * px - s * py);
          const y = Float64Array.from(places, ([px, py]) => s * px + c * py);
          const layers = [
            plyLayer(0.009, 20 + turn),
            { ...plainLayer(0.0008, 9e9, 0.3), grain: Angle.of(turn, "deg") },
          ];
          const matrix = elementStiffness(x, y, sheetOfLayers(layers, 0.0045));
          const turned = moved.map((value, i) => {
            const kind = i % 5;
            if (kind === 2) return value;
            const [first, second] = kind < 2 ? [i - kind, i - kind + 1] : [i - kind + 3, i - kind + 4];
            return kind === 0 || kind === 3
              ? c * moved[first]! - s * moved[second]!
              : s * moved[first]! + c * moved[second]!;
          });
          return turned.reduce(
            (sum, value, i) =>
              sum + value * turned.reduce((row, other, j) => row + matrix[i * elementRows + j]! * other, 0),
            0,
          );
        };
        fc.pre(at(0) > 0);
        expect(at(degrees) / at(0)).toBeCloseTo(1, 8);
      }),
      { numRuns: 20 },
    );
  });

  test("a panel turned by a quarter, its window, load and supports with it, sags the same", () => {
    const lying = panel(0.6, 0.4, sheetOfLayers([plyLayer(0.009, 30)]), hinged, [
      { kind: "point", at: { x: 0.5, y: 0.3 }, force: 10 },
    ]);
    const sharp = { ...roundedWindow, radius: 0 };
    const upright = panel(0.4, 0.6, sheetOfLayers([plyLayer(0.009, 120)]), hinged, [
      { kind: "point", at: { x: 0.1, y: 0.5 }, force: 10 },
    ]);
    const turned: DrawnCutout = { ...sharp, left: 0.15, bottom: 0.2, width: 0.15, height: 0.2 };
    const before = bent(factoredPanel(opened({ ...lying, places: [] }, sharp), coarse));
    const after = bent(factoredPanel(opened({ ...upright, places: [] }, turned), coarse));
    for (const [x, y] of [
      [0.5, 0.3],
      [0.1, 0.1],
      [0.45, 0.2],
    ] as const)
      expect(deflectionAt(after, { x: 0.4 - y, y: x }) / deflectionAt(before, { x, y })).toBeCloseTo(1, 6);
  });
});

describe("energy", () => {
  const load = fc.tuple(
    fc.double({ min: 0.42, max: 0.58, noNaN: true }),
    fc.double({ min: 0.02, max: 0.38, noNaN: true }),
    fc.double({ min: -50, max: 50, noNaN: true }),
  );
  const holds: readonly Hold[] = [hinged, { kind: "clamped" }, { kind: "elastic", rotational: 300 }];

  test.each(holds)("what a $kind panel stores is half of force times way", (hold) => {
    fc.assert(
      fc.property(load, ([x, y, force]) => {
        fc.pre(Math.abs(force) > 1);
        const loads: PanelLoad[] = [
          { kind: "pressure", pressure: 500 },
          { kind: "point", at: { x, y }, force },
        ];
        const faced = sheetOfLayers([plyLayer(0.009), plainLayer(0.0008, 9e9, 0.3)], 0.0045);
        const [outer, inner] = energies(opened(panel(0.6, 0.4, faced, hold, loads)));
        expect(inner / outer).toBeCloseTo(1, 7);
      }),
      runs,
    );
  });
});

describe("more material is never softer", () => {
  /** A force beside the window: its way is the panel's softness there. */
  const push: PanelLoad = { kind: "point", at: { x: 0.5, y: 0.2 }, force: 10 };
  const softness = (problem: PanelProblem): number => energies(problem)[0];
  const plain = opened(panel(0.6, 0.4, ply, hinged, [push]));
  const before = softness(plain);

  test("a smaller window", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 0.9, noNaN: true }), (scale) => {
        const smaller: DrawnCutout = {
          ...roundedWindow,
          width: 0.2 * scale,
          height: 0.15 * scale,
          radius: 0.02 * scale,
        };
        expect(softness(opened(plain, smaller))).toBeLessThan(1.0005 * before);
      }),
      runs,
    );
  });

  test("a thicker sheet", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.0092, max: 0.02, noNaN: true }), (thickness) => {
        expect(softness({ ...plain, sheet: sheetOfLayers([plyLayer(thickness)]) })).toBeLessThan(before);
      }),
      runs,
    );
  });

  test("a batten, wherever it has room and whichever way it runs", () => {
    const batten = { height: 0.02, modulus: 8e9, shearModulus: 0.6e9, density: 700 };
    fc.assert(
      fc.property(fc.boolean(), fc.double({ min: 0.01, max: 0.99, noNaN: true }), (upright, share) => {
        const strip = upright
          ? { left: 0.42 + 0.12 * share, bottom: 0, width: 0.04, height: 0.4 }
          : { left: 0, bottom: 0.27 + 0.08 * share, width: 0.6, height: 0.04 };
        const sheet = withBatten(ply, { ...batten, along: upright ? "y" : "x" });
        expect(softness({ ...plain, regions: [{ ...strip, sheet }] })).toBeLessThan(before);
      }),
      runs,
    );
  });
});
