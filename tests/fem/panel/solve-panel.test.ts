import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  bent,
  bucklingFactor,
  deflectionAt,
  factoredPanel,
  type Hold,
  largestDeflection,
  momentsOf,
  naturalFrequencies,
  type PanelLoad,
  type PanelProblem,
  reactions,
  type Sheet,
  sheetOfLayers,
  strainsNear,
  timesPieces,
} from "../../../lib/fem/index.js";
import type { Point2 } from "../../../lib/shape/index.js";
import { cut, panel, plainLayer, plainStiffness, ply, plyLayer, rimOf } from "../sheets.js";

const hinged: Hold = { kind: "hinged" };
const clamped: Hold = { kind: "clamped" };
const pressure: PanelLoad = { kind: "pressure", pressure: 1000 };
const coarse = 60;

function deflection(problem: PanelProblem, at: Point2, elementTarget?: number): number {
  return deflectionAt(bent(factoredPanel(problem, elementTarget)), at);
}

describe("plates of the handbooks, thin", () => {
  // Timoshenko and Woinowsky-Krieger, tables 8, 23 and 35 by their series, recomputed; w = a q a^4 / D or a P a^2 / D.
  const thickness = 0.001;
  const stiffness = plainStiffness(thickness, 1e10, 0.3);
  const sheet = sheetOfLayers([plainLayer(thickness, 1e10, 0.3)]);
  const point: PanelLoad = { kind: "point", at: { x: 0.5, y: 0.5 }, force: 1000 };
  test.each<[string, number, Hold, PanelLoad, number]>([
    ["hinged square, uniform", 1, hinged, pressure, 0.00406235],
    ["hinged 1:2, uniform", 2, hinged, pressure, 0.010129],
    ["hinged 1:5, uniform", 5, hinged, pressure, 0.012971],
    ["clamped square, uniform", 1, clamped, pressure, 0.0012653],
    ["hinged square, point", 1, hinged, point, 0.011601],
    ["clamped square, point", 1, clamped, point, 0.005612],
  ])("%s", (_, length, hold, load, factor) => {
    const problem = panel(length, 1, sheet, hold, [load]);
    expect((deflection(problem, { x: length / 2, y: 0.5 }) * stiffness) / 1000 / factor).toBeCloseTo(1, 2);
  });

  test("do not lock a ten-thousandth of the span thick", () => {
    const thin = sheetOfLayers([plainLayer(1e-4, 1e10, 0.3)]);
    const problem = panel(1, 1, thin, clamped, [pressure]);
    const factor = (deflection(problem, { x: 0.5, y: 0.5 }, coarse) * plainStiffness(1e-4, 1e10, 0.3)) / 1000;
    expect(factor / 0.0012653).toBeCloseTo(1, 2);
  });

  test("moment in the middle of a hinged square, table 8", () => {
    const solved = bent(factoredPanel(panel(1, 1, sheet, hinged, [pressure])));
    const { strains } = strainsNear(solved, { x: 0.5, y: 0.5 });
    expect(Math.abs(momentsOf(sheet, strains)[0] / 1000 / 0.0479 - 1)).toBeLessThan(0.01);
  });

  test("first frequency of a hinged square: 2 pi^2 sqrt(D / m) / a^2", () => {
    const [first = 0] = naturalFrequencies(factoredPanel(panel(1, 1, sheet, hinged, [])), 1);
    expect((first * 2 * Math.PI) / (2 * Math.PI ** 2 * Math.sqrt(stiffness / 0.7))).toBeCloseTo(1, 2);
  });

  test("buckling of a hinged square pressed along x: k = 4 (Timoshenko and Gere, ch. 9)", () => {
    const factor = bucklingFactor(factoredPanel(panel(1, 1, sheet, hinged, [])), [
      { from: { x: 0, y: 0 }, to: { x: 0, y: 1 }, x: 1, y: 0 },
      { from: { x: 1, y: 0 }, to: { x: 1, y: 1 }, x: -1, y: 0 },
    ]);
    expect(factor / ((4 * Math.PI ** 2 * stiffness) / 1)).toBeCloseTo(1, 2);
  });

  test("an edge that turns against a stiffness lies between hinged and clamped", () => {
    const at = (hold: Hold): number =>
      deflection(panel(1, 1, sheet, hold, [pressure]), { x: 0.5, y: 0.5 }, coarse);
    const [free, firm] = [at(hinged), at(clamped)];
    expect(at({ kind: "elastic", rotational: 1e-6 * stiffness }) / free).toBeCloseTo(1, 4);
    expect(at({ kind: "elastic", rotational: 1e6 * stiffness }) / firm).toBeCloseTo(1, 2);
    expect(at({ kind: "elastic", rotational: 5 * stiffness })).toBeLessThan(0.8 * free);
  });
});

describe("a facing on one side", () => {
  test("bends a free strip as the transformed section says", () => {
    // Two layers without Poisson's ratio, 20 mm wide cantilever: EI about the common neutral axis, any text.
    const wood = { ...plainLayer(0.009, 1e10, 0), throughAlong: plainLayer(1, 1e14, 0).throughAlong };
    const skin = { ...plainLayer(0.001, 5e10, 0), throughAlong: wood.throughAlong };
    const [ea, eb] = [1e10 * 0.009, 5e10 * 0.001];
    const arm = 0.005;
    const rigidity = 1e10 * (0.009 ** 3 / 12) + 5e10 * (0.001 ** 3 / 12) + ((ea * eb) / (ea + eb)) * arm ** 2;
    const problem: PanelProblem = {
      ...panel(0.4, 0.02, sheetOfLayers([wood, skin], 0.0045), clamped, []),
      heldLines: [{ from: { x: 0, y: 0 }, to: { x: 0, y: 0.02 }, hold: clamped }],
      loads: [{ kind: "line", from: { x: 0.4, y: 0 }, to: { x: 0.4, y: 0.02 }, force: 1 }],
    };
    const exact = 0.4 ** 3 / (3 * rigidity * 0.02);
    expect(deflection(problem, { x: 0.4, y: 0.01 }, coarse) / exact).toBeCloseTo(1, 3);
  });
});

const hole = cut({ kind: "circle", name: "port", x: 0.3, y: 0.2, radius: 0.08 });
const spot = fc.record({
  x: fc.double({ min: 0.45, max: 0.55, noNaN: true }),
  y: fc.double({ min: 0.05, max: 0.35, noNaN: true }),
});

function withHole(sheet: Sheet, loads: readonly PanelLoad[]): PanelProblem {
  const plain = panel(0.6, 0.4, sheet, hinged, loads);
  return { ...plain, outline: { ...plain.outline, cutouts: [hole] } };
}

describe("laws", () => {
  const runs = { numRuns: 6 };

  test("a patch whose side all but meets an opening bends the panel as one whose side meets it", () => {
    const opening = cut({
      kind: "rectangle",
      name: "latch",
      left: 0.31,
      bottom: 0.099,
      width: 0.038,
      height: 0.056,
      radius: 0,
    });
    const sagBelow = (right: number): number => {
      const over = { left: 0.04325, bottom: 0, width: right - 0.04325, height: 0.254 };
      const plain = panel(0.374, 0.254, ply, hinged, [{ kind: "patch", over, force: 222 }]);
      return deflection(
        { ...plain, outline: { ...plain.outline, cutouts: [opening] } },
        { x: 0.2, y: 0.127 },
        280,
      );
    };
    for (const beside of [-3e-4, -5e-5, 5e-5, 3e-4])
      expect(sagBelow(0.348 + beside) / sagBelow(0.348)).toBeCloseTo(1, 2);
  });

  test("a force here moves there as a force there moves here (Maxwell and Betti)", () => {
    fc.assert(
      fc.property(spot, spot, (a, b) => {
        fc.pre(Math.hypot(a.x - b.x, a.y - b.y) > 0.02);
        const solved = factoredPanel({ ...withHole(ply, []), places: [a, b] }, coarse);
        const push = (at: Point2): PanelLoad[] => [{ kind: "point", at, force: 10 }];
        const there = deflectionAt(bent(solved, push(a)), b);
        expect(deflectionAt(bent(solved, push(b)), a) / there).toBeCloseTo(1, 6);
      }),
      runs,
    );
  });

  test("loads add up", () => {
    fc.assert(
      fc.property(spot, fc.double({ min: -50, max: 50, noNaN: true }), (at, force) => {
        const push: PanelLoad = { kind: "point", at, force };
        const solved = factoredPanel({ ...withHole(ply, []), places: [at] }, coarse);
        const [one, other, both] = [[pressure], [push], [pressure, push]].map(
          (loads) => bent(solved, loads).displacement,
        );
        const scale = Math.max(...both!.map(Math.abs));
        both!.forEach((value, i) => {
          expect(Math.abs(value - one![i]! - other![i]!)).toBeLessThan(1e-9 * scale);
        });
      }),
      runs,
    );
  });

  test("what the panel stores is half of force times way", () => {
    fc.assert(
      fc.property(spot, fc.double({ min: 1, max: 50, noNaN: true }), (at, force) => {
        const solved = factoredPanel({ ...withHole(ply, []), places: [at] }, coarse);
        const pushed = bent(solved, [{ kind: "point", at, force }]);
        const { elements, springs } = solved.structure;
        const pulls = timesPieces([...elements, ...springs], pushed.displacement);
        const stored = pulls.reduce((sum, pull, i) => sum + (pull * pushed.displacement[i]!) / 2, 0);
        expect(stored / ((force * deflectionAt(pushed, at)) / 2)).toBeCloseTo(1, 9);
      }),
      runs,
    );
  });

  test("supports push back with all that is loaded", () => {
    const solved = bent(factoredPanel(withHole(ply, [pressure]), coarse));
    const up = reactions(solved).reduce((sum, force, dof) => sum + (dof % 5 === 2 ? force : 0), 0);
    expect(up / (-1000 * (0.24 - Math.PI * 0.08 ** 2))).toBeCloseTo(1, 3);
  });

  test("turning panel and grain together changes nothing", () => {
    const upright = { ...panel(0.4, 0.6, sheetOfLayers([plyLayer(0.009, 90 + 30)]), hinged, [pressure]) };
    const lying = panel(0.6, 0.4, sheetOfLayers([plyLayer(0.009, 30)]), hinged, [pressure]);
    const turned = deflection(upright, { x: 0.15, y: 0.2 }, coarse);
    expect(turned / deflection(lying, { x: 0.2, y: 0.25 }, coarse)).toBeCloseTo(1, 6);
  });

  test("a thicker strip never makes a panel softer", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.4, noNaN: true }),
        fc.double({ min: 0.05, max: 0.3, noNaN: true }),
        (left, bottom) => {
          const plain = panel(0.6, 0.4, ply, hinged, [pressure]);
          const thick = sheetOfLayers([plyLayer(0.018)]);
          const strip = { left, bottom, width: 0.1, height: 0.06, sheet: thick };
          const work = (problem: PanelProblem): number =>
            Math.abs(largestDeflection(bent(factoredPanel(problem, coarse))).value);
          expect(work({ ...plain, regions: [strip] })).toBeLessThan(work(plain));
        },
      ),
      runs,
    );
  });

  test("equipment on a panel lowers its frequency", () => {
    const bare = panel(0.6, 0.4, ply, hinged, []);
    const [first = 0] = naturalFrequencies(factoredPanel(bare, coarse), 1);
    const loaded = { ...bare, masses: [{ at: { x: 0.3, y: 0.2 }, mass: 3 }] };
    expect(naturalFrequencies(factoredPanel(loaded, coarse), 1)[0]).toBeLessThan(0.7 * first);
  });
});

describe("what cannot be solved is named", () => {
  const free = { ...panel(0.6, 0.4, ply, hinged, [pressure]), heldLines: [] };

  test("a panel that nothing holds", () => {
    expect(() => factoredPanel(free)).toThrow(
      /^test panel is loose: at \d+ mm, \d+ mm it .* without resistance; hold it better$/,
    );
  });

  test("a panel hinged along one side only", () => {
    const [first] = rimOf(0.6, 0.4);
    const oneSide = { ...free, heldLines: [{ from: first![0], to: first![1], hold: hinged }] };
    expect(() => factoredPanel(oneSide)).toThrow("test panel is loose");
  });

  test("a held line without rim", () => {
    const inside = {
      ...free,
      heldLines: [{ from: { x: 0.1, y: 0.123 }, to: { x: 0.2, y: 0.123 }, hold: hinged }],
    };
    expect(() => factoredPanel(inside)).toThrow(
      "test panel: no rim is left where it is held, from 0.1,0.123 to 0.2,0.123 m",
    );
  });

  test("a patch on no material", () => {
    const patch: PanelLoad = {
      kind: "patch",
      over: { left: 0.28, bottom: 0.18, width: 0.04, height: 0.04 },
      force: 1,
    };
    expect(() => bent(factoredPanel(withHole(ply, [patch])))).toThrow(
      "test panel: a patch load lies on no material",
    );
  });

  test("a place in an opening", () => {
    expect(() => deflection(withHole(ply, [pressure]), { x: 0.3, y: 0.2 })).toThrow(
      "panel: the place 0.3, 0.2 m lies on no material",
    );
  });
});
