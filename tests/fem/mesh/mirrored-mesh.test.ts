/** The mesh of a panel's mirror image is the mirror image of its mesh, however the image was drawn. */
import { describe, expect, test } from "vitest";
import {
  elementCount,
  elementMiddle,
  type MeshBox,
  panelMesh,
  type QuadMesh,
  sharpCorners,
} from "../../../lib/fem/index.js";
import { cut, type DrawnCutout } from "../sheets.js";

const size = { length: 0.8137, width: 0.5 };

/** Sizes in millimetres, so that those of the image are sums of other numbers. */
const mm = (value: number): number => value / 1000;

interface Drawn {
  readonly cutouts: readonly DrawnCutout[];
  readonly boxes: readonly MeshBox[];
  readonly places: readonly { readonly x: number; readonly y: number }[];
}

function meshed({ cutouts, boxes, places }: Drawn): QuadMesh {
  const outline = { ...size, cutouts: cutouts.map(cut) };
  const guides = { boxes, corners: sharpCorners(outline, boxes), rim: 0.005, shared: false, places };
  return panelMesh(outline, guides, 150);
}

/** What a builder would draw who sees the panel in a mirror. */
function seenInMirror({ cutouts, boxes, places }: Drawn): Drawn {
  const across = (x: number): number => size.length - x;
  const image = (one: DrawnCutout): DrawnCutout => {
    if (one.kind === "circle") return { ...one, x: across(one.x) };
    if (one.kind === "rectangle") return { ...one, left: across(one.left + one.width) };
    return { ...one, points: one.points.map(({ x, y }) => ({ x: across(x), y })).reverse() };
  };
  return {
    cutouts: cutouts.map(image).reverse(),
    boxes: boxes.map((box) => ({ ...box, left: across(box.left + box.width) })),
    places: places.map(({ x, y }) => ({ x: across(x), y })).reverse(),
  };
}

const window: DrawnCutout & { readonly kind: "rectangle" } = {
  kind: "rectangle",
  name: "window",
  left: mm(203),
  bottom: mm(101),
  width: mm(307),
  height: mm(199),
  radius: 0,
};
const port: DrawnCutout = { kind: "circle", name: "port", x: mm(331), y: mm(250), radius: mm(97) };
const house: DrawnCutout = {
  kind: "polygon",
  name: "house",
  points: [
    { x: mm(300), y: mm(100) },
    { x: mm(600), y: mm(100) },
    { x: mm(600), y: mm(250) },
    { x: mm(350), y: mm(390) },
    { x: mm(300), y: mm(250) },
  ],
};
const bare = { boxes: [], places: [] };

describe("the mesh of a panel in a mirror, with", () => {
  test.each<[string, Drawn]>([
    ["a window", { ...bare, cutouts: [window] }],
    ["two windows of which corners share an element", { ...bare, cutouts: [{ ...window, width: mm(20) }] }],
    ["a rounded window", { ...bare, cutouts: [{ ...window, radius: mm(31) }] }],
    ["a port", { ...bare, cutouts: [port] }],
    [
      "a port in the middle, pushed at beside it",
      { cutouts: [{ ...port, x: size.length / 2 }], boxes: [], places: [{ x: mm(150), y: mm(80) }] },
    ],
    ["a polygon", { ...bare, cutouts: [house] }],
    [
      "a slot, a port and a batten",
      {
        cutouts: [
          { ...window, name: "slot", height: mm(61), radius: mm(30.5), bottom: mm(60) },
          { ...port, x: mm(600), y: mm(330), radius: mm(60) },
        ],
        boxes: [{ left: mm(110), bottom: mm(250), width: mm(200), height: mm(40) }],
        places: [
          { x: mm(710), y: mm(90) },
          { x: mm(90), y: mm(410) },
        ],
      },
    ],
  ])("%s, is its mirror image", (_, drawn) => {
    const [mesh, image] = [meshed(drawn), meshed(seenInMirror(drawn))];
    expect(elementCount(image)).toBe(elementCount(mesh));
    const middles = (of: QuadMesh) =>
      Array.from({ length: elementCount(of) }, (_, i) => elementMiddle(of, i));
    const seen = middles(image).map(({ x, y }) => ({ x: size.length - x, y }));
    for (const { x, y } of middles(mesh))
      expect(Math.min(...seen.map((one) => Math.hypot(one.x - x, one.y - y)))).toBeLessThan(1e-7);
  });
});
