/** Boxes through openings: the laws that they keep; worked examples are in tests/reference/things-through-openings.json. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { attitudesOf, goesIntoRectangle, goesThrough, passage, widened } from "../../lib/assembly/index.js";
import {
  circle,
  mirrored,
  moved,
  polygon,
  rectangle,
  type Shape,
  scaled,
  slot,
  turned,
} from "../../lib/shape/index.js";

const door = rectangle({ left: 0, bottom: 0, width: 0.3, height: 0.4 }, 0.02);

test("a size that is none is refused", () => {
  expect(() => passage([0.1, 0, 0.1], door)).toThrow(
    "passage: every size must be positive, got 0.1, 0, 0.1 m",
  );
});

test("each side that can go first has its attitude, the longest way first", () => {
  const { attitudes } = passage([0.2, 0.25, 0.6], door);
  expect(attitudes.map(({ along }) => along)).toEqual([2]);
  expect(passage([0.1, 0.2, 0.3], door).attitudes.map(({ along }) => along)).toEqual([2, 1, 0]);
});

test("an opening is told how much wider it must be, to half a millimetre", () => {
  // a square of 340 in 300 x 400: 20 on the left and the right, within a corner of 20 + 20
  const square = [0.34, 0.34, 0.9] as const;
  const sharp = rectangle({ left: 0, bottom: 0, width: 0.3, height: 0.4 });
  expect(widened(square, sharp)).toBeGreaterThanOrEqual(0.02 - 1e-5);
  expect(widened(square, sharp)).toBeLessThan(0.0205);
  expect(attitudesOf(square, sharp, widened(square, sharp))).not.toEqual([]);
  expect(widened([0.1, 0.1, 0.1], sharp)).toBe(0);
});

test("a thin board goes corner to corner through the opening as it is when it is wider", () => {
  // 300 long through a square of 100, wider all round by w: its diagonal (100 + 2 w) root 2 must hold 300 and the edges
  const wider = widened([0.3, 0.0002, 1], rectangle({ left: 0, bottom: 0, width: 0.1, height: 0.1 }));
  const needed = ((0.3 + 0.0002) / Math.SQRT2 - 0.1) / 2;
  expect(wider).toBeGreaterThan(needed - 2e-5);
  expect(wider).toBeLessThan(needed + 5.2e-4);
});

test("a rectangle goes into another just where a turn is found at which it does", () => {
  const length = fc.integer({ min: 1, max: 400 });
  fc.assert(
    fc.property(length, length, length, length, (a, b, width, height) => {
      const overBy = Array.from({ length: 3601 }, (_, i) => (i * Math.PI) / 7200).map((turn) => {
        const [c, s] = [Math.cos(turn), Math.sin(turn)];
        return Math.max(a * c + b * s - width, a * s + b * c - height);
      });
      const least = Math.min(...overBy);
      if (least <= 0) expect(goesIntoRectangle([a, b], [width, height])).toBe(true);
      else if (least > 0.2) expect(goesIntoRectangle([a, b], [width, height])).toBe(false);
    }),
    { numRuns: 300 },
  );
});

describe("laws", () => {
  const size = fc.integer({ min: 20, max: 400 }).map((value) => value / 1000);
  const side = fc.integer({ min: 60, max: 400 }).map((value) => value / 1000);
  const box = fc.tuple(size, size, size);
  const opening: fc.Arbitrary<Shape> = fc.oneof(
    fc
      .tuple(side, side, fc.integer({ min: 0, max: 10 }))
      .map(([width, height, share]) =>
        rectangle({ left: 0, bottom: 0, width, height }, (Math.min(width, height) / 2) * (share / 10)),
      ),
    side.map((diameter) => circle({ x: 0, y: 0 }, diameter / 2)),
    fc.tuple(side, side).map(([width, height]) => slot({ left: 0, bottom: 0, width, height })),
    fc.tuple(side, side, side).map(([a, b, c]) =>
      polygon([
        { x: 0, y: 0 },
        { x: a + c, y: 0 },
        { x: a + c, y: b },
        { x: a, y: b },
        { x: a, y: b + c },
        { x: 0, y: b + c },
      ]),
    ),
  );
  const runs = { numRuns: 40 };

  test("a thing goes through where it has an attitude, and through what it needs", () => {
    fc.assert(
      fc.property(box, opening, (thing, shape) => {
        expect(goesThrough(thing, shape, 0)).toBe(passage(thing, shape).passes);
        expect(goesThrough(thing, shape, widened(thing, shape))).toBe(true);
      }),
      runs,
    );
  });

  test("a bigger opening never blocks", () => {
    fc.assert(
      fc.property(box, opening, fc.integer({ min: 101, max: 150 }), (thing, shape, percent) => {
        if (!passage(thing, shape).passes) return;
        expect(passage(thing, scaled(shape, percent / 100, { x: 0, y: 0 })).passes).toBe(true);
      }),
      runs,
    );
  });

  test("a smaller thing never sticks, and its sizes may be told in any order", () => {
    fc.assert(
      fc.property(box, opening, ([a, b, c], shape) => {
        if (!passage([a, b, c], shape).passes) return;
        expect(passage([0.99 * a, b, c], shape).passes).toBe(true);
        expect(passage([c, a, b], shape).passes).toBe(true);
      }),
      runs,
    );
  });

  test("moving the opening, mirroring it or turning it changes nothing", () => {
    fc.assert(
      fc.property(box, opening, fc.integer({ min: 1, max: 3 }), (thing, shape, quarters) => {
        const { passes } = passage(thing, shape);
        const origin = { x: 0, y: 0 };
        expect(passage(thing, moved(shape, { x: 1.5, y: -0.25 })).passes).toBe(passes);
        expect(passage(thing, mirrored(shape, 0)).passes).toBe(passes);
        expect(passage(thing, turned(shape, quarters, origin)).passes).toBe(passes);
      }),
      runs,
    );
  });

  test("what passes has its smallest side inside the area of the opening's hull, turned as it is told", () => {
    fc.assert(
      fc.property(box, side, side, (thing, width, height) => {
        const shape = rectangle({ left: 0, bottom: 0, width, height });
        for (const { along, across, angle } of passage(thing, shape).attitudes) {
          const up = [0, 1, 2].find((axis) => axis !== along && axis !== across) as 0;
          const [p, q] = [thing[across], thing[up]];
          const [c, s] = [Math.abs(Math.cos(angle)), Math.abs(Math.sin(angle))];
          expect(p * c + q * s).toBeLessThanOrEqual(width + 2.1e-5);
          expect(p * s + q * c).toBeLessThanOrEqual(height + 2.1e-5);
        }
      }),
      runs,
    );
  });
});
