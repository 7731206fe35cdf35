import { describe, expect, test } from "vitest";
import {
  elementCount,
  elementPlaces,
  type MeshBox,
  nodeAreas,
  panelMesh,
  type QuadMesh,
  type Side,
  sharpCorners,
  worstShape,
} from "../../../lib/fem/index.js";
import { cut, type DrawnCutout } from "../sheets.js";

const guides = { boxes: [], corners: [], rim: 0.005, shared: false, places: [] };

function meshed(cutouts: readonly DrawnCutout[], boxes: readonly MeshBox[] = []): QuadMesh {
  const outline = { length: 0.8, width: 0.5, cutouts: cutouts.map(cut) };
  return panelMesh(outline, { ...guides, boxes, corners: sharpCorners(outline, boxes) }, 150);
}

function area(mesh: QuadMesh): number {
  let sum = 0;
  for (let i = 0; i < elementCount(mesh); i++) {
    const { x, y } = elementPlaces(mesh, i);
    sum += nodeAreas(x, y).reduce((total, share) => total + share, 0);
  }
  return sum;
}

const window: DrawnCutout & { readonly kind: "rectangle" } = {
  kind: "rectangle",
  name: "window",
  left: 0.2,
  bottom: 0.1,
  width: 0.3,
  height: 0.2,
  radius: 0,
};
const rounded: typeof window = { ...window, radius: 0.03 };
const slot: typeof window = { ...window, name: "slot", height: 0.06, radius: 0.03 };
const port: DrawnCutout & { readonly kind: "circle" } = {
  kind: "circle",
  name: "port",
  x: 0.4,
  y: 0.25,
  radius: 0.1,
};
const notch: typeof window = { ...window, name: "notch", left: -0.01, width: 0.11 };
const corner: typeof window = { ...window, name: "corner", left: 0.5, bottom: 0.3, width: 0.4, height: 0.3 };
const triangle: DrawnCutout = {
  kind: "polygon",
  name: "triangle",
  points: [
    { x: 0.3, y: 0.1 },
    { x: 0.6, y: 0.2 },
    { x: 0.35, y: 0.4 },
  ],
};
const nearEdge: DrawnCutout = { kind: "circle", name: "port near the edge", x: 0.4, y: 0.065, radius: 0.05 };
const halfRound: DrawnCutout = { kind: "circle", name: "half-round", x: 0.4, y: 0, radius: 0.1 };

/** A strip from edge to edge. */
function strip(bottom: number, height: number): MeshBox {
  return { left: 0, bottom, width: 0.8, height };
}

/** Length of a side along the parabola through its three nodes, by Simpson's rule. */
function sideLength({ x, y }: QuadMesh, [a, m, b]: Side): number {
  const speed = (at: number): number =>
    Math.hypot(...[x, y].map((of) => (at - 0.5) * of[a]! - 2 * at * of[m]! + (at + 0.5) * of[b]!));
  return (speed(-1) + 4 * speed(0) + speed(1)) / 3;
}

/** Exact areas by plain geometry, m2. */
const shapes: readonly [string, readonly DrawnCutout[], number][] = [
  ["no opening", [], 0.4],
  ["a window", [window], 0.4 - 0.06],
  ["a rounded window", [rounded], 0.4 - 0.06 + (4 - Math.PI) * 0.03 ** 2],
  ["a slot", [slot], 0.4 - 0.3 * 0.06 + (4 - Math.PI) * 0.03 ** 2],
  ["a port", [port], 0.4 - Math.PI * 0.01],
  ["a port near the edge", [nearEdge], 0.4 - Math.PI * 0.0025],
  ["a notch", [notch], 0.4 - 0.02],
  ["an L", [corner], 0.4 - 0.3 * 0.2],
  ["a polygon", [triangle], 0.4 - (0.3 * 0.3 - 0.05 * 0.1) / 2],
  ["a half-round notch", [halfRound], 0.4 - (Math.PI * 0.01) / 2],
  [
    "a window, a slot and an L",
    [
      { ...rounded, bottom: 0.25, height: 0.15, width: 0.2 },
      { ...slot, bottom: 0.1 },
      { ...corner, left: 0.6 },
    ],
    0.4 - 0.2 * 0.15 - 0.3 * 0.06 + 2 * (4 - Math.PI) * 0.03 ** 2 - 0.2 * 0.2,
  ],
];

describe("mesh", () => {
  test.each(shapes)(
    "covers a panel with %s, exactly but for arcs, with sound elements",
    (_, cutouts, wanted) => {
      const mesh = meshed(cutouts);
      expect(area(mesh) / wanted).toBeCloseTo(1, 4);
      expect(worstShape(mesh)).toBeGreaterThan(0.02);
      expect(elementCount(mesh)).toBeLessThan(1500);
    },
  );

  /** Perimeter of the outline beside its area, in m and m2, by plain geometry. */
  const outer = 2 * (0.8 + 0.5);
  const awkward: readonly [string, readonly DrawnCutout[], readonly MeshBox[], number, number][] = [
    [
      "a batten that crosses a port",
      [port],
      [strip(0.21, 0.08)],
      0.4 - Math.PI * 0.01,
      outer + 0.2 * Math.PI,
    ],
    ["a batten that grazes a port", [port], [strip(0.35, 0.04)], 0.4 - Math.PI * 0.01, outer + 0.2 * Math.PI],
    [
      "a batten a hair into a port",
      [port],
      [strip(0.349, 0.04)],
      0.4 - Math.PI * 0.01,
      outer + 0.2 * Math.PI,
    ],
    [
      "a notch whose sizes add up to a hair less than the panel's",
      [{ ...window, left: 0.1 + 0.2, bottom: 0.1 + 0.2, height: 0.2 }, nearEdge],
      [],
      0.4 - 0.06 - Math.PI * 0.0025,
      outer + 2 * 0.2 + 0.1 * Math.PI,
    ],
    [
      "a notch with rounded corners at its bottom, square at its mouth",
      [{ ...rounded, bottom: 0.3 }],
      [],
      0.4 - 0.06 + ((4 - Math.PI) * 0.03 ** 2) / 2,
      outer + 2 * 0.2 - (4 - Math.PI) * 0.03,
    ],
    [
      "a window with a radius of 2 mm",
      [{ ...window, radius: 0.002 }],
      [],
      0.4 - 0.06 + (4 - Math.PI) * 0.002 ** 2,
      outer + 1 - (8 - 2 * Math.PI) * 0.002,
    ],
    [
      "a window that is almost a port",
      [{ ...window, left: 0.3, width: 0.1, height: 0.102, radius: 0.05 }],
      [],
      0.4 - Math.PI * 0.05 ** 2 - 0.1 * 0.002,
      outer + 0.1 * Math.PI + 0.004,
    ],
    [
      "a rounded window 5 mm beside a notch",
      [
        { ...window, left: 0.1, bottom: 0, height: 0.3 },
        { ...rounded, left: 0.405, bottom: 0.05, width: 0.08, height: 0.11 },
      ],
      [strip(0.4, 0.03)],
      0.4 - 0.09 - 0.08 * 0.11 + (4 - Math.PI) * 0.03 ** 2,
      outer + 0.6 + 0.38 - (8 - 2 * Math.PI) * 0.03,
    ],
    [
      "two windows leaving a bar of 6 mm",
      [
        { ...window, height: 0.15 },
        { ...window, name: "upper", bottom: 0.256 },
      ],
      [],
      0.4 - 0.3 * 0.35,
      outer + 0.9 + 1,
    ],
  ];

  test.each(awkward)("leaves no gap in a panel with %s", (_, cutouts, boxes, wanted, perimeter) => {
    const mesh = meshed(cutouts, boxes);
    const rim = mesh.rim.reduce((sum, side) => sum + sideLength(mesh, side), 0);
    expect(area(mesh) / wanted).toBeCloseTo(1, 4);
    expect(rim / perimeter).toBeCloseTo(1, 3);
    expect(worstShape(mesh)).toBeGreaterThan(0.02);
    expect(Math.max(...mesh.elements) + 1).toBe(mesh.x.length);
    expect(new Set(mesh.elements).size).toBe(mesh.x.length);
  });

  test.each<[string, readonly DrawnCutout[]]>([
    ["port touches or crosses window", [window, { ...port, x: 0.5 }].reverse() as DrawnCutout[]],
    ["window touches or crosses other", [window, { ...window, name: "other", left: 0.5 }]],
    ["port touches the panel's edge; leave material there or let it cut through", [{ ...port, y: 0.4 }]],
    [
      "the openings leave nothing of the panel",
      [{ ...window, left: -0.1, bottom: -0.1, width: 1, height: 1 }],
    ],
    ["window lies outside the panel", [{ ...window, left: 0.9 }]],
    ["the radius of port must be positive, got 0 mm", [{ ...port, radius: 0 }]],
    [
      "the corner radius of window must be between 0 and half its smaller side, got 200 mm",
      [{ ...window, radius: 0.2 }],
    ],
    [
      "the outline of bow tie crosses itself",
      [
        {
          kind: "polygon",
          name: "bow tie",
          points: [
            { x: 0.2, y: 0.1 },
            { x: 0.4, y: 0.3 },
            { x: 0.4, y: 0.1 },
            { x: 0.2, y: 0.3 },
          ],
        },
      ],
    ],
  ])("refuses: %s", (message, cutouts) => {
    expect(() => meshed(cutouts)).toThrow(`panel mesh: ${message}`);
  });

  test("refuses a panel without size", () => {
    expect(() => panelMesh({ length: 0, width: 0.5, cutouts: [] }, guides, 150)).toThrow(
      "panel mesh: the panel's length must be positive, got 0 mm",
    );
  });
});
