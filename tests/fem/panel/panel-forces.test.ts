/** The largest moments of a panel, and loads spread on whatever mesh there is. */
import { expect, test } from "vitest";
import {
  bent,
  factoredPanel,
  largestDeflection,
  type PanelLoad,
  type PanelProblem,
  panelForcesOf,
  withBatten,
} from "../../../lib/fem/index.js";
import { rectangle } from "../../../lib/shape/index.js";

const stiff = 500;
const thickness = 0.01;
const sheet: PanelProblem["sheet"] = {
  membrane: [
    [6e7, 1.8e7, 0],
    [1.8e7, 6e7, 0],
    [0, 0, 2.1e7],
  ],
  coupling: [
    [0, 0, 0],
    [0, 0, 0],
    [0, 0, 0],
  ],
  bending: [
    [stiff, 0.3 * stiff, 0],
    [0.3 * stiff, stiff, 0],
    [0, 0, 0.35 * stiff],
  ],
  shear: [1e7, 0, 1e7],
  mass: [0, 0, 0],
  faces: [thickness / 2, -thickness / 2],
};

const hinged = { kind: "hinged" } as const;

function plate(loads: readonly PanelLoad[], cutouts: PanelProblem["outline"]["cutouts"] = []): PanelProblem {
  return {
    name: "a plate",
    outline: { length: 0.8, width: 0.5, cutouts },
    sheet,
    regions: [],
    heldLines: [
      { from: { x: 0, y: 0 }, to: { x: 0, y: 0.5 }, hold: hinged },
      { from: { x: 0.8, y: 0 }, to: { x: 0.8, y: 0.5 }, hold: hinged },
      { from: { x: 0, y: 0 }, to: { x: 0.8, y: 0 }, hold: hinged },
      { from: { x: 0, y: 0.5 }, to: { x: 0.8, y: 0.5 }, hold: hinged },
    ],
    heldPoints: [],
    loads,
    masses: [],
    places: [],
  };
}

test("a force spread on whatever mesh there is bends a panel as the same force on a mesh made for it", () => {
  const over = { left: 0.27, bottom: 0.13, width: 0.21, height: 0.19 };
  const [spread, patch] = (["spread", "patch"] as const).map(
    (kind) => largestDeflection(bent(factoredPanel(plate([{ kind, over, force: 300 }])))).value,
  );
  expect(spread! / patch!).toBeCloseTo(1, 2);
});

test("a sharp inside corner counts from one thickness away: finer meshes then agree, and a rim is no milder than no hole", () => {
  const window = [
    { name: "window", shape: rectangle({ left: 0.25, bottom: 0.15, width: 0.3, height: 0.2 }) },
  ];
  const forces = (cutouts: PanelProblem["outline"]["cutouts"], target: number) =>
    panelForcesOf(bent(factoredPanel(plate([{ kind: "pressure", pressure: 1000 }], cutouts), target)));
  const [coarse, fine] = [forces(window, 60), forces(window, 240)];
  expect(fine.alongY / coarse.alongY).toBeGreaterThan(0.9);
  expect(fine.alongY / coarse.alongY).toBeLessThan(1.1);
  expect(fine.alongY).toBeGreaterThan(0.5 * forces([], 60).alongY);
});

test("a batten across the middle relieves the sheet, and one that hardly bends leaves the hogging moment of two spans at most", () => {
  const bare = plate([{ kind: "pressure", pressure: 1000 }]);
  const most = (height: number): number => {
    const batten = { along: "y", height, modulus: 1e10, shearModulus: 6e8, density: 500 } as const;
    const strip = { left: 0.38, bottom: 0, width: 0.04, height: 0.5, sheet: withBatten(sheet, batten) };
    const { alongX, alongY } = panelForcesOf(bent(factoredPanel({ ...bare, regions: [strip] })));
    return Math.max(alongX, alongY);
  };
  const without = panelForcesOf(bent(factoredPanel(bare)));
  expect(most(0.03)).toBeLessThan(Math.max(without.alongX, without.alongY));
  // A strip over three rigid supports, q l2 / 8, is an upper bound of a plate that its other edges help.
  expect(most(0.12)).toBeLessThan((1000 * 0.4 ** 2) / 8);
});
