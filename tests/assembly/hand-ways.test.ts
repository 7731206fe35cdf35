/** Ways of a hand round what stands in a room, and openings that an arm passes. */
import { describe, expect, test } from "vitest";
import { doorwaysIn, handWays, type Solid, solidsOnLine } from "../../lib/assembly/index.js";
import { circle, rectangle } from "../../lib/shape/index.js";

function box(key: string, low: readonly [number, number, number], size: readonly number[]): Solid {
  const [width = 1, height = 1, depth = 1] = size;
  const outline = rectangle({ left: 0, bottom: 0, width, height });
  return { key, outline, holes: [], place: { origin: low, x: [1, 0, 0], y: [0, 1, 0] }, depth };
}

describe("a line", () => {
  const panel: Solid = {
    ...box("panel", [0, 0, 0], [1, 1, 0.01]),
    holes: [circle({ x: 0.5, y: 0.5 }, 0.2)],
  };

  test("goes through a hole and into what is beside it", () => {
    expect(solidsOnLine([0.5, 0.5, -1], [0.5, 0.5, 1], [panel])).toEqual([]);
    expect(solidsOnLine([0.5, 0.75, -1], [0.5, 0.75, 1], [panel])).toEqual([panel]);
    expect(solidsOnLine([0.5, 0.75, 0.02], [0.5, 0.75, 1], [panel])).toEqual([]);
  });

  test("along a face only touches", () => {
    expect(solidsOnLine([0, 0, 0.01], [1, 1, 0.01], [panel])).toEqual([]);
  });
});

describe("a hand", () => {
  const room = { low: [0, 0, 0], high: [0.7, 0.6, 0.6], doorways: [[0.35, 0, 0.5]] } as const;

  test("goes straight where nothing stands in its way", () => {
    expect(handWays({ ...room, solids: [] })([0.35, 0.4, 0.2])?.length).toBeCloseTo(0.5, 12);
  });

  test("goes round the front of a shelf: longer than straight, and as short as the way over its edge", () => {
    // the shelf is 10 mm thick, 400 mm up, from wall to wall, and begins 100 mm behind the doorway
    const shelf = box("shelf", [0, 0.1, 0.4], [0.7, 0.5, 0.01]);
    const way = handWays({ ...room, solids: [shelf] })([0.35, 0.5, 0.2]);
    const taut = Math.hypot(0.1, 0.09) + 0.01 + Math.hypot(0.4, 0.2);
    expect(way?.length).toBeGreaterThan(taut - 1e-9);
    expect(way?.length).toBeLessThan(1.25 * taut);
    expect(way?.points.length).toBeGreaterThan(2);
  });

  test("gets nowhere behind a wall from side to side", () => {
    const wall = box("wall", [0, 0.3, 0], [0.7, 0.01, 0.6]);
    expect(handWays({ ...room, solids: [wall] })([0.35, 0.5, 0.3])).toBeUndefined();
  });
});

describe("an arm", () => {
  test("passes an opening as wide as it is, in its middle", () => {
    const slit = rectangle({ left: 0, bottom: 0, width: 0.12, height: 0.3 });
    expect(
      doorwaysIn(slit, 0.12).every(
        ({ x, y }) => Math.abs(x - 0.06) < 1e-9 && y > 0.06 - 1e-9 && y < 0.24 + 1e-9,
      ),
    ).toBe(true);
    expect(doorwaysIn(slit, 0.12).length).toBeGreaterThan(2);
    expect(doorwaysIn(slit, 0.121)).toEqual([]);
  });

  test("passes a larger opening wherever it passes a smaller one", () => {
    for (const diameter of [0.05, 0.12, 0.2]) {
      const round = (size: number) => doorwaysIn(circle({ x: 0, y: 0 }, size / 2), diameter).length > 0;
      expect(round(diameter * 0.99)).toBe(false);
      expect(round(diameter * 1.01)).toBe(true);
      expect(round(diameter * 3)).toBe(true);
    }
  });
});
