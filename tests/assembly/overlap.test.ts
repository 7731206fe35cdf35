/** Overlaps of prisms, worked out by hand, and the laws that they keep. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { findOverlaps, overlapsOnWay, reachOfSolid, type Solid } from "../../lib/assembly/index.js";
import { circle, rectangle } from "../../lib/shape/index.js";

const never = () => false;

function box(
  key: string,
  low: readonly number[],
  size: readonly number[],
  holes: Solid["holes"] = [],
): Solid {
  const [x = 0, y = 0, z = 0] = low;
  const [width = 1, height = 1, depth = 1] = size;
  const outline = rectangle({ left: 0, bottom: 0, width, height });
  return { key, outline, holes, place: { origin: [x, y, z], x: [1, 0, 0], y: [0, 1, 0] }, depth };
}

/** A rod along x, y or z from a point. */
function rod(
  key: string,
  along: "x" | "y" | "z",
  from: readonly number[],
  radius: number,
  depth: number,
): Solid {
  const [x = 0, y = 0, z = 0] = from;
  const ways = {
    x: [
      [0, 1, 0],
      [0, 0, 1],
    ],
    y: [
      [0, 0, 1],
      [1, 0, 0],
    ],
    z: [
      [1, 0, 0],
      [0, 1, 0],
    ],
  } as const;
  const [u, v] = ways[along];
  return {
    key,
    outline: circle({ x: 0, y: 0 }, radius),
    holes: [],
    place: { origin: [x, y, z], x: u, y: v },
    depth,
  };
}

function depthOf(...solids: readonly Solid[]): number {
  return findOverlaps(solids, never)[0]?.depth ?? 0;
}

describe("two solids share", () => {
  test("the least extent of what two boxes have in common, and nothing where they touch", () => {
    expect(depthOf(box("a", [0, 0, 0], [2, 2, 2]), box("b", [1, 1.5, 1.25], [2, 2, 2]))).toBeCloseTo(0.5, 12);
    expect(depthOf(box("a", [0, 0, 0], [1, 1, 1]), box("b", [1, 0, 0], [1, 1, 1]))).toBe(0);
  });

  test("nothing where one goes through a hole of the other, and its rim where it does not", () => {
    const panel = box(
      "panel",
      [0, 0, 0],
      [4, 4, 0.1],
      [rectangle({ left: 1, bottom: 1, width: 2, height: 2 })],
    );
    expect(depthOf(panel, box("through", [1, 1, -1], [2, 2, 3]))).toBe(0);
    expect(depthOf(panel, box("aside", [0.75, 1, -1], [2, 2, 3]))).toBeCloseTo(0.1, 12);
    const [overlap] = findOverlaps([panel, box("aside", [0.75, 1.5, -1], [1, 1, 3])], never);
    expect(overlap?.low.map((value) => Number(value.toFixed(9)))).toEqual([0.75, 1.5, 0]);
    expect(overlap?.high.map((value) => Number(value.toFixed(9)))).toEqual([1, 2.5, 0.1]);
  });

  test("what two rods at right angles have in common: both radii less the distance of their axes", () => {
    const one = rod("one", "x", [-1, 0, 0], 0.1, 2);
    expect(depthOf(one, rod("other", "y", [0, -1, 0.15], 0.1, 2))).toBeCloseTo(0.05, 4);
    expect(depthOf(one, rod("other", "y", [0, -1, 0.21], 0.1, 2))).toBe(0);
    // it ends short of the other
    expect(depthOf(one, rod("other", "y", [0, 0.11, 0.05], 0.1, 2))).toBe(0);
  });

  test("what two parallel rods have in common", () => {
    const one = rod("one", "z", [0, 0, 0], 0.3, 1);
    expect(depthOf(one, rod("other", "z", [0.3, 0.4, 0.5], 0.25, 1))).toBeCloseTo(0.05, 12);
    expect(depthOf(one, rod("other", "z", [0.3, 0.4, 0.5], 0.19, 1))).toBe(0);
  });

  test("nothing where the pair is meant to", () => {
    const pair = [box("a", [0, 0, 0], [2, 2, 2]), box("b", [1, 1, 1], [2, 2, 2])];
    expect(findOverlaps(pair, () => true)).toEqual([]);
  });
});

describe("on a way", () => {
  test("a drawer is stopped by what stands before it, and not by what stands beside it", () => {
    const drawer = box("drawer", [0, 0, 0], [1, 1, 1]);
    const post = (y: number): Solid => box("post", [0.5, y, 0], [0.1, 0.1, 2]);
    const by = { kind: "slide", by: [0, -2, 0] } as const;
    expect(overlapsOnWay([drawer], [post(-1.5)], by, never)[0]?.depth).toBeCloseTo(0.1, 9);
    expect(overlapsOnWay([drawer], [post(-2.2)], by, never)).toEqual([]);
    expect(overlapsOnWay([drawer], [box("wall", [1, -3, 0], [1, 5, 1])], by, never)).toEqual([]);
  });

  test("a leaf hits what is nearer to its hinge than it is wide, on the side it turns to", () => {
    const leaf = box("leaf", [0, -0.1, 0], [3, 0.1, 2]);
    const turn = { kind: "turn", about: [0, -0.1, 0], axis: [0, 0, -1], angle: Math.PI / 2 } as const;
    // at 3 : 4 : 5, five quarters from the hinge
    const post = (far: number): Solid => box("post", [0.6 * far, -0.1 - 0.8 * far, 0.5], [0.01, 0.01, 0.5]);
    expect(overlapsOnWay([leaf], [post(2.9)], turn, never)).toHaveLength(1);
    expect(overlapsOnWay([leaf], [post(3.1)], turn, never)).toEqual([]);
    expect(overlapsOnWay([leaf], [box("behind", [1, 0.05, 0], [1, 1, 1])], turn, never)).toEqual([]);
  });

  test("a thick leaf needs room at its free edge: the root of width squared and thickness squared", () => {
    const leaf = box("leaf", [0, 0, 0], [0.4, 0.03, 2]);
    const turn = { kind: "turn", about: [0, 0, 0], axis: [0, 0, -1], angle: Math.PI / 2 } as const;
    const reach = Math.hypot(0.4, 0.03);
    const frame = (gap: number): Solid => box("frame", [0.4 + gap, -0.01, 0], [0.1, 0.05, 2]);
    expect(overlapsOnWay([leaf], [frame(reach - 0.4 - 3e-4)], turn, never)).toHaveLength(1);
    expect(overlapsOnWay([leaf], [frame(reach - 0.4 + 3e-4)], turn, never)).toEqual([]);
  });
});

describe("laws", () => {
  const number = fc.integer({ min: 0, max: 40 }).map((value) => value / 10);
  const size = fc.integer({ min: 1, max: 20 }).map((value) => value / 10);
  const triple = (of: fc.Arbitrary<number>) => fc.tuple(of, of, of);
  const boxes = fc.array(fc.tuple(triple(number), triple(size)), { minLength: 2, maxLength: 8 });
  const solidsOf = (list: readonly (readonly [readonly number[], readonly number[]])[]) =>
    list.map(([low, sizes], i) => box(`box ${i}`, low, sizes));
  const keys = (solids: readonly Solid[]) =>
    findOverlaps(solids, never)
      .map(({ one, other, depth }) => `${one.key} ${other.key} ${depth.toFixed(6)}`)
      .sort();

  test("boxes share what their intervals share", () => {
    fc.assert(
      fc.property(boxes, (list) => {
        const solids = solidsOf(list);
        const reach = solids.map(reachOfSolid);
        let pairs = 0;
        for (const [i, a] of reach.entries())
          for (const b of reach.slice(i + 1))
            if (
              [0, 1, 2].every(
                (k) =>
                  Math.min(a.high[k as 0], b.high[k as 0]) - Math.max(a.low[k as 0], b.low[k as 0]) > 1e-6,
              )
            )
              pairs++;
        expect(findOverlaps(solids, never)).toHaveLength(pairs);
      }),
    );
  });

  test("moving everything, or mirroring it, changes nothing", () => {
    fc.assert(
      fc.property(boxes, triple(number), (list, by) => {
        const there = list.map(
          ([low, sizes]) => [low.map((value, i) => value + (by[i] ?? 0)), sizes] as const,
        );
        const mirrored = list.map(([low, sizes]) => [[-low[0] - sizes[0], low[1], low[2]], sizes] as const);
        const here = keys(solidsOf(list));
        expect(keys(solidsOf(there))).toEqual(here);
        expect(keys(solidsOf(mirrored))).toEqual(here);
      }),
    );
  });

  test("taking a part away adds no overlap", () => {
    fc.assert(
      fc.property(boxes, (list) => {
        const solids = solidsOf(list);
        const all = new Set(keys(solids));
        expect(keys(solids.slice(1)).filter((key) => !all.has(key))).toEqual([]);
      }),
    );
  });
});
