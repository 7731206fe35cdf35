import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  areaOf,
  boundsOf,
  centroidOf,
  circle,
  circleOf,
  circlesOf,
  clipped,
  contains,
  cornersOf,
  distanceTo,
  ellipse,
  gapOf,
  lengthOnRim,
  mirrored,
  moved,
  notch,
  offset,
  type Point2,
  pathData,
  perimeterOf,
  pointAt,
  polygon,
  rectangle,
  roundedBoxOf,
  type Shape,
  sampled,
  scaled,
  selfCrossing,
  sharpCornersOf,
  slot,
  turned,
} from "../../lib/shape/index.js";

const points = (...corners: readonly (readonly [number, number])[]): Point2[] =>
  corners.map(([x, y]) => ({ x, y }));
const origin = { x: 0, y: 0 };
const unitBox = { left: 0, bottom: 0, width: 1, height: 1 };
const triangle = polygon(points([0, 0], [60, 0], [0, 80]));
const ell = polygon(points([0, 0], [40, 0], [40, 20], [20, 20], [20, 40], [0, 40]));
/** A half circle of radius 3 on its diameter: what a circle leaves above a line through its centre. */
const [halfCircle = triangle] = clipped(circle(origin, 3), { left: -4, bottom: 0, width: 8, height: 4 });
/** A quarter of the same. */
const [quarter = triangle] = clipped(circle(origin, 3), { left: 0, bottom: 0, width: 4, height: 4 });
/** The segment of a circle of radius 2 above a chord at half its radius: it spans 120 degrees. */
const [segment = triangle] = clipped(circle(origin, 2), { left: -2, bottom: 1, width: 4, height: 1 });

/** A convex shape, a shape with a bay, one with holes of no kind: the laws hold for all. */
const sizes = { min: 0.2, max: 5, noNaN: true } as const;
const box = fc.record({
  left: fc.double({ min: -3, max: 3, noNaN: true }),
  bottom: fc.double({ min: -3, max: 3, noNaN: true }),
  width: fc.double(sizes),
  height: fc.double(sizes),
});
const convex: fc.Arbitrary<Shape> = fc.oneof(
  box.map((sides) => rectangle(sides)),
  fc
    .tuple(box, fc.double({ min: 0.05, max: 0.5, noNaN: true }))
    .map(([sides, share]) => rectangle(sides, share * Math.min(sides.width, sides.height))),
  box.map(slot),
  box.map(({ left, bottom, width }) => circle({ x: left, y: bottom }, width)),
  box.map(({ height, ...rest }) => ellipse({ ...rest, height: Math.max(height, rest.width / 4) })),
);
const shape: fc.Arbitrary<Shape> = fc.oneof(
  convex,
  box.map(({ left, bottom, width, height }) => {
    const at = (x: number, y: number): Point2 => ({ x: left + x * width, y: bottom + y * height });
    return polygon([at(0, 0), at(1, 0), at(1, 1), at(0.6, 0.3), at(0.1, 0.9)]);
  }),
);
const point = fc.record({
  x: fc.double({ min: -8, max: 8, noNaN: true }),
  y: fc.double({ min: -8, max: 8, noNaN: true }),
});
const close = (one: number, other: number, share = 1e-9): void =>
  expect(Math.abs(one - other)).toBeLessThanOrEqual(share * Math.max(1, Math.abs(one), Math.abs(other)));

// Sectors and segments: the geometry chapter of any engineer's handbook, worked out by hand; the rest is elementary.
describe("values by hand", () => {
  test.each([
    ["a square", rectangle({ ...unitBox, left: 1, bottom: 2 }), 1, 4, [1.5, 2.5]],
    [
      "a rounded rectangle",
      rectangle({ ...unitBox, width: 3 }, 0.25),
      3 - (4 - Math.PI) / 16,
      8 - (8 - 2 * Math.PI) / 4,
      [1.5, 0.5],
    ],
    [
      "a slot",
      slot({ left: 0, bottom: 0, width: 160, height: 60 }),
      6000 + 900 * Math.PI,
      200 + 60 * Math.PI,
      [80, 30],
    ],
    ["a notch", notch({ left: 0, bottom: 0, width: 4, height: 2 }), 8, 12, [2, 1]],
    ["a circle", circle({ x: 5, y: 6 }, 2), 4 * Math.PI, 4 * Math.PI, [5, 6]],
    ["a right triangle", triangle, 2400, 240, [20, 80 / 3]],
    ["an L", ell, 1200, 160, [50 / 3, 50 / 3]],
    ["a half circle: centroid 4 r / 3 pi", halfCircle, 4.5 * Math.PI, 6 + 3 * Math.PI, [0, 4 / Math.PI]],
    [
      "a sector of 90 degrees: r^2 / 2 times its angle",
      quarter,
      (9 * Math.PI) / 4,
      6 + 1.5 * Math.PI,
      [4 / Math.PI, 4 / Math.PI],
    ],
    [
      "a segment of 120 degrees: r^2 / 2 (angle - sine), centroid c^3 / 12 A",
      segment,
      2 * ((2 * Math.PI) / 3 - Math.sqrt(3) / 2),
      2 * Math.sqrt(3) + (4 * Math.PI) / 3,
      [0, (2 * Math.sqrt(3)) ** 3 / (12 * 2 * ((2 * Math.PI) / 3 - Math.sqrt(3) / 2))],
    ],
  ] as const)("of %s", (_, made, area, perimeter, [x, y]) => {
    close(areaOf(made), area);
    close(perimeterOf(made), perimeter);
    close(centroidOf(made).x, x);
    close(centroidOf(made).y, y);
  });

  test.each([
    [1, 1.5],
    [3, 1],
    [4, 1],
    [1, 4],
  ])(
    "an ellipse of half axes %d and %d: area pi a b, perimeter by the series in h = ((a - b) / (a + b))^2",
    (a, b) => {
      const made = ellipse({ left: -a, bottom: -b, width: 2 * a, height: 2 * b });
      const h = ((a - b) / (a + b)) ** 2;
      const series = 1 + h / 4 + h ** 2 / 64 + h ** 3 / 256 + (25 * h ** 4) / 16384 + (49 * h ** 5) / 65536;
      close(areaOf(made), Math.PI * a * b, 2e-4);
      close(perimeterOf(made), Math.PI * (a + b) * series, 1e-4);
      close(centroidOf(made).x, 0);
      close(centroidOf(made).y, 0);
      expect(boundsOf(made)).toEqual({ left: -a, bottom: -b, width: 2 * a, height: 2 * b });
    },
  );

  test.each([1, 1.5, 2, 4])(
    "no point of an ellipse %d times as long as wide is off by 0.0001 of its longer half axis",
    (ratio) => {
      const made = ellipse({ left: -ratio, bottom: -1, width: 2 * ratio, height: 2 });
      const off = made.sides
        .flatMap((side) => [0, 0.25, 0.5, 0.75].map((share) => pointAt(side, share)))
        .map(({ x, y }) => {
          const level = (x / ratio) ** 2 + y ** 2 - 1;
          return Math.abs(level) / (2 * Math.hypot(x / ratio ** 2, y));
        });
      expect(Math.max(...off)).toBeLessThan(1e-4 * ratio);
    },
  );

  test("an ellipse has no corner", () => {
    expect(sharpCornersOf(ellipse({ left: 0, bottom: 0, width: 3, height: 1 }))).toEqual([]);
  });
});

describe("distance from a point", () => {
  test.each([
    ["beside a rectangle", rectangle({ left: 0, bottom: 0, width: 100, height: 60 }), [130, 30], 30],
    ["off its corner", rectangle({ left: 0, bottom: 0, width: 100, height: 60 }), [130, 100], 50],
    ["inside it", rectangle({ left: 0, bottom: 0, width: 100, height: 60 }), [10, 30], -10],
    ["off a rounded corner", rectangle({ left: 0, bottom: 0, width: 100, height: 100 }, 50), [50, 130], 30],
    ["beside a circle", circle({ x: 50, y: 50 }, 50), [130, 50], 30],
    ["in the middle of a circle", circle({ x: 50, y: 50 }, 50), [50, 50], -50],
    ["beside a triangle", triangle, [-10, 40], 10],
    ["inside a triangle", triangle, [10, 40], -10],
    ["in the bay of an L", ell, [30, 30], 10],
    ["under a half circle", halfCircle, [0, -2], 2],
    ["outside a half circle's end", halfCircle, [6, -4], 5],
  ] as const)("%s", (_, made, [x, y], distance) => {
    close(distanceTo(made, { x, y }), distance);
  });

  test("its sign says whether the point is inside", () => {
    fc.assert(
      fc.property(shape, point, (made, at) => {
        fc.pre(Math.abs(distanceTo(made, at)) > 1e-9);
        expect(distanceTo(made, at) < 0).toBe(contains(made, at));
      }),
    );
  });

  test("is zero on the path and grows no faster than the point moves", () => {
    fc.assert(
      fc.property(shape, point, point, (made, at, other) => {
        for (const side of made.sides) close(distanceTo(made, pointAt(side, 0.3)), 0);
        const way = Math.hypot(at.x - other.x, at.y - other.y);
        expect(Math.abs(distanceTo(made, at) - distanceTo(made, other))).toBeLessThanOrEqual(way + 1e-9);
      }),
    );
  });

  test("inside agrees with a polygon of many chords", () => {
    fc.assert(
      fc.property(shape, point, (made, at) => {
        fc.pre(Math.abs(distanceTo(made, at)) > 1e-3);
        expect(contains(polygon(sampled(made, 0.02)), at)).toBe(contains(made, at));
      }),
    );
  });
});

describe("distance of two shapes", () => {
  const square = rectangle({ left: 0, bottom: 0, width: 100, height: 100 });
  test.each([
    ["side by side", rectangle({ left: 110, bottom: 0, width: 50, height: 50 }), 10],
    ["side to side", rectangle({ left: 100, bottom: 0, width: 50, height: 50 }), 0],
    ["corner to corner", rectangle({ left: 100, bottom: 100, width: 50, height: 50 }), 0],
    ["crossing", rectangle({ left: 50, bottom: 50, width: 100, height: 100 }), 0],
    ["one in the other", rectangle({ left: 40, bottom: 40, width: 10, height: 10 }), 0],
    ["the other in the one", rectangle({ left: -40, bottom: -40, width: 500, height: 500 }), 0],
    ["a circle against a side", circle({ x: 120, y: 40 }, 20), 0],
    ["a circle beside a side", circle({ x: 125, y: 40 }, 20), 5],
    ["a circle off the corner", circle({ x: 130, y: 140 }, 20), 30],
    [
      "a slot through it, no corner of either in the other",
      slot({ left: -50, bottom: 40, width: 200, height: 20 }),
      0,
    ],
  ] as const)("%s", (_, other, distance) => {
    close(gapOf(square, other), distance);
    close(gapOf(other, square), distance);
  });

  test("of two circles is that of their centres less their radii", () => {
    fc.assert(
      fc.property(point, point, fc.double(sizes), fc.double(sizes), (a, b, r, s) => {
        const expected = Math.max(0, Math.hypot(a.x - b.x, a.y - b.y) - r - s);
        close(gapOf(circle(a, r), circle(b, s)), expected);
      }),
    );
  });

  test("is the same both ways, and at most that of any two points", () => {
    fc.assert(
      fc.property(shape, shape, (one, other) => {
        const gap = gapOf(one, other);
        close(gapOf(other, one), gap);
        for (const at of sampled(other, 0.5))
          expect(gap).toBeLessThanOrEqual(Math.max(0, distanceTo(one, at)) + 1e-9);
      }),
      { numRuns: 40 },
    );
  });
});

describe("moved, scaled, turned, mirrored", () => {
  test("area, perimeter and centroid go along", () => {
    fc.assert(
      fc.property(
        shape,
        point,
        fc.double({ min: 0.1, max: 4, noNaN: true }),
        fc.integer({ min: -5, max: 5 }),
        (made, at, s, n) => {
          const [area, length, centre] = [areaOf(made), perimeterOf(made), centroidOf(made)];
          const away = moved(made, at);
          close(areaOf(away), area);
          close(centroidOf(away).x, centre.x + at.x);
          close(centroidOf(away).y, centre.y + at.y);
          const larger = scaled(made, s, at);
          close(areaOf(larger), s ** 2 * area);
          close(perimeterOf(larger), s * length);
          close(centroidOf(larger).x, at.x + s * (centre.x - at.x));
          const mirror = mirrored(made, at.x);
          close(areaOf(mirror), area);
          close(centroidOf(mirror).x, 2 * at.x - centre.x);
          const about = turned(made, n, at);
          close(areaOf(about), area);
          close(distanceTo(about, at), distanceTo(made, at));
        },
      ),
    );
  });

  test("a quarter turn takes the right to the top", () => {
    expect(boundsOf(turned(rectangle({ left: 1, bottom: 0, width: 2, height: 1 }), 1, origin))).toEqual({
      left: -1,
      bottom: 1,
      width: 1,
      height: 2,
    });
  });

  test("mirrored twice, and turned four times, is the same", () => {
    fc.assert(
      fc.property(shape, point, (made, at) => {
        const twice = mirrored(mirrored(made, at.x), at.x);
        const round = [1, 2, 3, 4].reduce((so) => turned(so, 1, at), made);
        for (const [i, side] of made.sides.entries()) {
          for (const other of [twice.sides[i], round.sides[i]]) {
            close(other?.from.x ?? NaN, side.from.x);
            close(other?.from.y ?? NaN, side.from.y);
          }
        }
      }),
    );
  });

  test("refuse a factor and a turn that make no sense", () => {
    expect(() => scaled(triangle, 0, origin)).toThrow("scaled shape: factor must be positive, got 0");
    expect(() => turned(triangle, 0.5, origin)).toThrow(
      "turned shape: quarter turns must be a whole number, got 0.5",
    );
  });
});

describe("offset", () => {
  test("a convex shape grows as Steiner's formula says: A + P d + pi d^2", () => {
    fc.assert(
      fc.property(convex, fc.double({ min: 0.01, max: 2, noNaN: true }), (made, d) => {
        const grown = offset(made, d);
        close(areaOf(grown), areaOf(made) + perimeterOf(made) * d + Math.PI * d ** 2, 1e-6);
        close(perimeterOf(grown), perimeterOf(made) + 2 * Math.PI * d, 1e-6);
      }),
      { numRuns: 60 },
    );
  });

  test("grown and shrunk again a convex shape is as it was", () => {
    fc.assert(
      fc.property(convex, fc.double({ min: 0.01, max: 1, noNaN: true }), (made, d) => {
        close(areaOf(offset(offset(made, d), -d)), areaOf(made), 1e-6);
      }),
      { numRuns: 40 },
    );
  });

  test.each([
    [
      "a rectangle keeps its corners sharp inwards",
      rectangle({ left: 0, bottom: 0, width: 10, height: 6 }),
      -1,
      32,
    ],
    [
      "a rounded one loses a radius that is less than the distance",
      rectangle({ left: 0, bottom: 0, width: 10, height: 6 }, 0.5),
      -1,
      32,
    ],
    [
      "a rounded one keeps what is left of its radius",
      rectangle({ left: 0, bottom: 0, width: 10, height: 6 }, 2),
      -1,
      8 * 4 - (4 - Math.PI),
    ],
    ["a 3-4-5 triangle shrinks towards its inscribed circle of radius 20", triangle, -10, 600],
    ["an L inwards, round its inner corner", ell, -5, 30 * 10 + 10 * 20 + 25 - (25 * Math.PI) / 4],
    ["an L outwards", ell, 5, 1200 + 5 * 160 + (5 / 4) * 25 * Math.PI - 25],
  ] as const)("%s", (_, made, distance, area) => {
    close(areaOf(offset(made, distance)), area, 1e-6);
  });

  test("refuses to leave nothing, and to leave two pieces", () => {
    const waist = polygon(
      points(
        [0, 0],
        [4, 0],
        [4, 1.8],
        [6, 1.8],
        [6, 0],
        [10, 0],
        [10, 4],
        [6, 4],
        [6, 2.2],
        [4, 2.2],
        [4, 4],
        [0, 4],
      ),
    );
    expect(() => offset(rectangle(unitBox), -0.6)).toThrow(
      "offset of a shape by -0.6: one piece expected, nothing is left",
    );
    expect(() => offset(waist, -0.5)).toThrow(
      "offset of a shape by -0.5: one piece expected, 2 pieces are left",
    );
  });
});

describe("clipped", () => {
  test("never grows, and stays in both", () => {
    fc.assert(
      fc.property(shape, box, (made, frame) => {
        const pieces = clipped(made, frame);
        const area = pieces.reduce((sum, piece) => sum + areaOf(piece), 0);
        expect(area).toBeLessThanOrEqual(Math.min(areaOf(made), frame.width * frame.height) + 1e-9);
        for (const piece of pieces) {
          expect(selfCrossing(piece)).toBeUndefined();
          for (const at of sampled(piece, 0.5)) {
            expect(distanceTo(made, at)).toBeLessThan(1e-7);
            expect(distanceTo(rectangle(frame), at)).toBeLessThan(1e-7);
          }
        }
      }),
    );
  });

  test("four quarters of a plane make up the whole", () => {
    fc.assert(
      fc.property(shape, point, (made, { x, y }) => {
        const quarters = [
          { left: x - 50, bottom: y - 50 },
          { left: x, bottom: y - 50 },
          { left: x - 50, bottom: y },
          { left: x, bottom: y },
        ].flatMap((corner) => clipped(made, { ...corner, width: 50, height: 50 }));
        close(
          quarters.reduce((sum, piece) => sum + areaOf(piece), 0),
          areaOf(made),
          1e-7,
        );
      }),
    );
  });

  test("cuts a U in two", () => {
    const u = polygon(points([0, 0], [3, 0], [3, 3], [2, 3], [2, 1], [1, 1], [1, 3], [0, 3]));
    expect(clipped(u, { left: -1, bottom: 2, width: 9, height: 9 }).map(areaOf)).toEqual([1, 1]);
  });

  test("leaves a shape inside as it is, and nothing of one outside", () => {
    const inside = circle({ x: 1, y: 1 }, 1);
    expect(clipped(inside, { left: 0, bottom: 0, width: 2, height: 2 })).toEqual([inside]);
    expect(clipped(inside, { left: 2, bottom: 0, width: 2, height: 2 })).toEqual([]);
  });

  test("a piece of a rectangle is a rectangle again", () => {
    const [piece = triangle] = clipped(rectangle({ left: -1, bottom: 0, width: 3, height: 1 }), {
      ...unitBox,
      height: 5,
    });
    expect(roundedBoxOf(piece)).toEqual({ ...unitBox, radius: 0 });
  });
});

describe("seen as something simpler", () => {
  test("what it was made from is found again", () => {
    fc.assert(
      fc.property(box, fc.double({ min: 0.05, max: 0.5, noNaN: true }), (sides, share) => {
        const radius = share * Math.min(sides.width, sides.height);
        const found = roundedBoxOf(rectangle(sides, radius));
        for (const key of ["left", "bottom", "width", "height"] as const)
          close(found?.[key] ?? NaN, sides[key]);
        close(found?.radius ?? NaN, radius);
        const round = circleOf(circle({ x: sides.left, y: sides.bottom }, radius));
        expect(round).toEqual({ centre: { x: sides.left, y: sides.bottom }, radius });
      }),
    );
  });

  test("a circle is a rectangle rounded all the way; triangles, ellipses and L are none", () => {
    expect(roundedBoxOf(circle({ x: 1, y: 1 }, 1))).toEqual({
      left: 0,
      bottom: 0,
      width: 2,
      height: 2,
      radius: 1,
    });
    const others = [triangle, ell, ellipse({ ...unitBox, width: 2 }), halfCircle];
    expect(others.map(roundedBoxOf)).toEqual([undefined, undefined, undefined, undefined]);
    expect([triangle, ell, rectangle(unitBox, 0.2), slot({ ...unitBox, width: 2 })].map(circleOf)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
    expect(roundedBoxOf(polygon(points([1, 0], [2, 1], [1, 2], [0, 1])))).toBeUndefined();
  });

  test("corners, circles and sharp corners", () => {
    expect(cornersOf(triangle)).toEqual(points([0, 0], [60, 0], [0, 80]));
    expect(cornersOf(halfCircle)).toBeUndefined();
    expect(circlesOf(slot({ left: 0, bottom: 0, width: 4, height: 2 }))).toHaveLength(2);
    expect(sharpCornersOf(halfCircle)).toHaveLength(2);
    expect(sharpCornersOf(ell)).toHaveLength(6);
    expect(sharpCornersOf(rectangle(unitBox, 0.2))).toEqual([]);
  });

  test("a path for a drawing, y running down", () => {
    expect(pathData(triangle, String)).toBe("M0 0L60 0L0 -80L0 0Z");
    expect(pathData(circle(origin, 2), (value) => String(Math.round(value) + 0))).toBe(
      "M2 0A2 2 0 0 0 0 -2A2 2 0 0 0 -2 0A2 2 0 0 0 0 2A2 2 0 0 0 2 0Z",
    );
  });

  test("the mouth of a notch lies on the rim", () => {
    const cut = notch({ left: 2, bottom: 0, width: 3, height: 2 });
    expect(lengthOnRim(cut, { left: 0, bottom: 0, width: 10, height: 10 }, 1e-9)).toBe(3);
    const corner = notch({ left: 0, bottom: 0, width: 3, height: 2 });
    expect(lengthOnRim(corner, { left: 0, bottom: 0, width: 10, height: 10 }, 1e-9)).toBe(5);
  });
});

describe("a path that crosses itself", () => {
  test.each([
    ["a bow tie", polygon(points([0, 0], [2, 2], [2, 0], [0, 2])), [1, 3]],
    ["a corner on a side", polygon(points([0, 0], [4, 0], [4, 2], [2, 0], [0, 2])), [1, 3]],
    ["a spike back along its own side", polygon(points([0, 0], [4, 0], [2, 0], [0, 2])), [1, 2]],
  ] as const)("%s", (_, made, sides) => {
    expect(selfCrossing(made)).toEqual(sides);
  });

  test("none of a maker's does", () => {
    fc.assert(
      fc.property(shape, (made) => {
        expect(selfCrossing(made)).toBeUndefined();
      }),
    );
  });
});

test.each([
  ["a circle without radius", () => circle(origin, 0), "circle: radius must be positive, got 0"],
  [
    "a rectangle without width",
    () => rectangle({ ...unitBox, width: 0 }),
    "rectangle: width must be positive, got 0",
  ],
  [
    "too round a rectangle",
    () => rectangle(unitBox, 0.6),
    "rectangle: radius must be from 0 to 0.5, half its shorter side, got 0.6",
  ],
  [
    "a negative ellipse",
    () => ellipse({ ...unitBox, height: -1 }),
    "ellipse: height must be positive, got -1",
  ],
  [
    "a polygon of two corners",
    () => polygon(points([0, 0], [1, 1])),
    "polygon: at least three corners, got 2",
  ],
  [
    "the centroid of a line",
    () => centroidOf(polygon(points([0, 0], [1, 1], [2, 2]))),
    "centroid of a shape: it must enclose an area, got 0",
  ],
] as const)("refuses %s", (_, make, message) => {
  expect(make).toThrow(message);
});
