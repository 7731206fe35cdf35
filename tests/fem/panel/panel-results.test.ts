/** The largest deflection lies between nodes, on straight and round rims too. */
import fc from "fast-check";
import { expect, test } from "vitest";
import {
  bent,
  deflectionAt,
  factoredPanel,
  largestDeflection,
  type PanelProblem,
  trustedDeflection,
} from "../../../lib/fem/index.js";
import { cut, type DrawnCutout, panel, ply } from "../sheets.js";

const pressed = panel(0.6, 0.5, ply, { kind: "hinged" }, [{ kind: "pressure", pressure: 1000 }]);
const withCutout = (cutout: DrawnCutout): PanelProblem => ({
  ...pressed,
  outline: { ...pressed.outline, cutouts: [cut(cutout)] },
  places: [],
});

test("nowhere does the panel sag more, and there it sags as much", () => {
  const window = { kind: "rectangle", name: "window", radius: 0 } as const;
  const solved = bent(
    factoredPanel(withCutout({ ...window, left: 0.13, bottom: 0.1, width: 0.22, height: 0.19 }), 40),
  );
  const { value, at } = largestDeflection(solved);
  expect(deflectionAt(solved, at)).toBeCloseTo(value, 9);
  for (let i = 1; i < 60; i++)
    expect(deflectionAt(solved, { x: 0.35 + 0.25 * (i / 60), y: at.y })).toBeLessThan(value * (1 + 1e-3));
});

test("is found on any round rim, on both meshes alike", () => {
  const places = fc.record({
    x: fc.double({ min: 0.25, max: 0.35, noNaN: true }),
    y: fc.double({ min: 0.2, max: 0.3, noNaN: true }),
    radius: fc.double({ min: 0.06, max: 0.12, noNaN: true }),
  });
  fc.assert(
    fc.property(places, (place) => {
      const found = trustedDeflection(withCutout({ kind: "circle", name: "port", ...place }), 60);
      expect(found.value).toBeGreaterThan(0);
      expect(found.meshError).toBeLessThan(0.02);
    }),
    { numRuns: 12 },
  );
});

test.each([
  ["no opening", []],
  ["a round port", [{ kind: "circle", name: "port", x: 0.33, y: 0.27, radius: 0.1 }]],
  [
    "a rounded window near a rim",
    [
      {
        kind: "rectangle",
        name: "window",
        left: 0.06,
        bottom: 0.14,
        width: 0.32,
        height: 0.27,
        radius: 0.04,
      },
    ],
  ],
] satisfies readonly (readonly [string, readonly DrawnCutout[]])[])(
  "the mesh error owned up to is no less than the true one, with %s",
  (_, cutouts) => {
    const problem = { ...pressed, outline: { ...pressed.outline, cutouts: cutouts.map(cut) }, places: [] };
    const truth = largestDeflection(bent(factoredPanel(problem, 1200))).value;
    for (const elementTarget of [16, 30, 100]) {
      const { value, meshError } = trustedDeflection(problem, elementTarget);
      expect(Math.abs(value / truth - 1)).toBeLessThan(meshError);
    }
  },
);
