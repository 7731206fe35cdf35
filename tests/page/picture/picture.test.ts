import fc from "fast-check";
import { expect, test } from "vitest";
import type { Vector3 } from "../../../lib/algebra/matrix3.js";
import { openJob } from "../../../lib/index.js";
import type { CaseSolid } from "../../../lib/model/index.js";
import {
  type PartLook,
  type PictureView,
  pictureOf,
  pictureSvg,
  type Sight,
  sizeOfSolids,
  tellingCorner,
} from "../../../lib/page/index.js";
import { cameraOf, projected } from "../../../lib/page/picture/camera.js";
import { circle, rectangle } from "../../../lib/shape/index.js";

/** A box along the axes from its low corner. */
function box(part: string, [x, y, z]: Vector3, [width, depth, height]: Vector3): CaseSolid {
  return {
    ...{ key: part, part, name: part, section: "s", kind: "content", joins: [], holes: [] },
    outline: rectangle({ left: 0, bottom: 0, width, height: depth }),
    place: { origin: [x, y, z], x: [1, 0, 0], y: [0, 1, 0] },
    depth: height,
  };
}

const drawAll = { description: "boxes", look: (): PartLook => "plain" } as const;

/** The part painted last at a place of the picture. */
function partAt({ faces }: PictureView, x: number, y: number): string | undefined {
  return faces.findLast(({ areas }) => areas.filter((area) => inside(area, x, y)).length % 2 === 1)?.part;
}

function inside(area: readonly number[], x: number, y: number): boolean {
  let odd = false;
  for (let i = 0; i < area.length; i += 2) {
    const [ax, ay] = [area[i] as number, area[i + 1] as number];
    const [bx, by] = [area[(i + 2) % area.length] as number, area[(i + 3) % area.length] as number];
    if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) odd = !odd;
  }
  return odd;
}

interface LoneBox {
  readonly part: string;
  readonly low: Vector3;
  readonly size: Vector3;
}

/** The box that a ray from the eye meets first: slabs along each axis, which shares nothing with the painter. */
function firstMet(boxes: readonly LoneBox[], from: Vector3, towards: Vector3): string | undefined {
  let [best, part] = [Infinity, undefined as string | undefined];
  for (const one of boxes) {
    let [enter, leave] = [-Infinity, Infinity];
    for (const i of [0, 1, 2] as const) {
      const [a, b] = [(one.low[i] - from[i]) / towards[i], (one.low[i] + one.size[i] - from[i]) / towards[i]];
      enter = Math.max(enter, Math.min(a, b));
      leave = Math.min(leave, Math.max(a, b));
    }
    if (enter < leave && enter < best) [best, part] = [enter, one.part];
  }
  return part;
}

/** Checks a grid of places of a picture of boxes against rays. */
function expectAsRaysSee(boxes: readonly LoneBox[], from: Sight): void {
  const view = pictureOf(
    boxes.map(({ part, low, size }) => box(part, low, size)),
    { ...drawAll, from },
  );
  const camera = cameraOf(from);
  const corners = boxes.flatMap(({ low, size }) =>
    [0, 1, 2, 3, 4, 5, 6, 7].map((n) =>
      projected(camera, [
        low[0] + (n & 1) * size[0],
        low[1] + ((n >> 1) & 1) * size[1],
        low[2] + ((n >> 2) & 1) * size[2],
      ]),
    ),
  );
  const [left, right] = [Math.min(...corners.map(({ x }) => x)), Math.max(...corners.map(({ x }) => x))];
  const [bottom, top] = [Math.min(...corners.map(({ y }) => y)), Math.max(...corners.map(({ y }) => y))];
  const scale = 1000 / Math.max(right - left, top - bottom);
  const wrong: string[] = [];
  for (let i = 0.5; i < 24; i++)
    for (let j = 0.5; j < 24; j++) {
      const [x, y] = [left + ((right - left) * i) / 24, bottom + ((top - bottom) * j) / 24];
      const eye = [0, 1, 2].map(
        (k) => x * (camera.right[k] ?? 0) + y * (camera.up[k] ?? 0) + 100 * (camera.toEye[k] ?? 0),
      ) as unknown as Vector3;
      const seen = (dx: number, dy: number): string | undefined =>
        partAt(view, (x - left) * scale + 12 + dx, (top - y) * scale + 12 + dy);
      // Whole units in the picture: a place within two units of an edge may go to either side.
      const near = [seen(-2, -2), seen(2, -2), seen(-2, 2), seen(2, 2)];
      const met = firstMet(boxes, eye, camera.toEye.map((k) => -k) as unknown as Vector3);
      if (near.every((part) => part === near[0]) && seen(0, 0) !== met) wrong.push(`${i} ${j}: ${met}`);
    }
  expect(wrong).toEqual([]);
}

test("three bars that lie over each other in a circle are cut so that each covers the next", () => {
  expectAsRaysSee(
    [
      { part: "a", low: [0, 0, 2], size: [10, 1, 1] },
      { part: "b", low: [1, -1, 0.5], size: [1, 10, 1] },
      { part: "c", low: [0, 6, -2], size: [1, 1, 10] },
      { part: "d", low: [-0.5, 3, 1.6], size: [9, 1, 1] },
    ],
    { around: 33, above: 25 },
  );
});

test("boxes that do not meet are seen as rays see them, from any side", () => {
  const cell = fc.record({
    at: fc.tuple(...[0, 1, 2].map(() => fc.integer({ min: 0, max: 3 }))),
    long: fc.tuple(...[0, 1, 2].map(() => fc.integer({ min: 1, max: 3 }))),
  });
  fc.assert(
    fc.property(
      fc.array(cell, { minLength: 3, maxLength: 9 }),
      fc.integer({ min: 3, max: 87 }),
      fc.integer({ min: -80, max: 80 }),
      (cells, around, above) => {
        const boxes: LoneBox[] = [];
        for (const { at, long } of cells) {
          const [low, size] = [at as unknown as Vector3, long.map((n) => n - 0.1) as unknown as Vector3];
          const apart = boxes.every((other) =>
            [0, 1, 2].some(
              (k) =>
                (low[k] ?? 0) > (other.low[k] ?? 0) + (other.size[k] ?? 0) ||
                (other.low[k] ?? 0) > (low[k] ?? 0) + (size[k] ?? 0),
            ),
          );
          if (apart) boxes.push({ part: `box ${boxes.length}`, low, size });
        }
        if (above !== 0) expectAsRaysSee(boxes, { around, above });
      },
    ),
    { numRuns: 60, seed: 16 },
  );
});

test("what stands behind a hole is seen through it, what stands in it covers its rim's far wall, and a circle shows its edge", () => {
  const wall: CaseSolid = {
    ...box("wall", [0, 0, 0], [1, 1, 0.1]),
    holes: [rectangle({ left: 0.2, bottom: 0.2, width: 0.6, height: 0.6 })],
  };
  const behind = box("behind", [0.3, 0.3, -0.5], [0.4, 0.4, 0.3]);
  const inHole = box("in it", [0.7, 0.21, 0.02], [0.09, 0.58, 0.05]);
  const view = pictureOf([behind, inHole, wall], { ...drawAll, from: "top" });
  expect([0.05, 0.5, 0.75, 0.25].map((x) => partAt(view, 12 + 1000 * x, 512))).toEqual([
    "wall",
    "behind",
    "in it",
    undefined,
  ]);
  const rod: CaseSolid = { ...box("rod", [0, 0, 0], [1, 1, 2]), outline: circle({ x: 0, y: 0 }, 0.3) };
  const lines = pictureOf([rod], { ...drawAll, from: "front right" }).faces.flatMap(
    (face) => face.lines ?? [],
  );
  // Its mantle is one surface: a rim at each end and the two sides where it turns away from the eye.
  expect(lines).toHaveLength(4);
});

const { solids } = openJob("soil-lab").review.solids;

test("the picture of a whole case is small, has every outside part, and no more than is seen", () => {
  const view = pictureOf(solids, { description: "the case", from: "front left" });
  expect(String(pictureSvg(view)).length).toBeLessThan(60_000);
  const parts = new Set(view.faces.map(({ part }) => part));
  for (const part of ["upper.front", "upper.top", "lower.front", "upper.left"]) expect(parts).toContain(part);
  for (const part of ["upper.back", "lower.right"])
    expect(view.faces.filter((face) => face.part === part).length, part).toBeLessThan(3);
  expect(view.faces.some(({ stuff }) => stuff === "content" || stuff === "fastener")).toBe(false);
});

test("a sign stands on what is seen of its part, apart from others; a hidden part is drawn in broken line", () => {
  const marks = [
    { part: "upper.front", verdict: "fails", text: "1" },
    { part: "upper.front", verdict: "close", text: "2" },
    { part: "lower.back", verdict: "unknown", text: "3" },
    { part: "no such part", verdict: "fails", text: "4" },
  ] as const;
  const view = pictureOf(solids, { description: "the case", from: "front left", marks });
  expect(view.marks.map(({ text }) => text)).toEqual(["1", "2", "3"]);
  const [first, second] = view.marks.map(({ at }) => at);
  expect(first && partAt(view, first.x, first.y)).toBe("upper.front");
  expect(second && partAt(view, second.x, second.y)).toBe("upper.front");
  expect(Math.hypot((first?.x ?? 0) - (second?.x ?? 0), (first?.y ?? 0) - (second?.y ?? 0))).toBeGreaterThan(
    55,
  );
  expect(view.hidden.length).toBeGreaterThan(0);
  const markup = String(pictureSvg(view));
  expect(markup).toContain("stroke-dasharray");
  expect(pictureOf(solids, { description: "the case" }).hidden).toEqual([]);
});

test("the demo's door is in its left wall, so the left front corner tells more", () => {
  expect(tellingCorner(solids)).toBe("front left");
  expect(tellingCorner([])).toBe("front right");
});

test("sizes are over all that is drawn, and an empty picture is refused", () => {
  const two = [box("a", [0, 0, 0], [1, 2, 3]), box("b", [4, 0, 0], [1, 1, 5])];
  expect(sizeOfSolids(two)).toEqual([5, 2, 5]);
  expect(() => pictureOf(two, { description: "none", look: () => undefined })).toThrow(
    "picture: nothing to draw",
  );
});
