import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  angleWalls,
  outlineSection,
  type ProfileWall,
  rectangleTorsion,
  solidTorsion,
  tubeTorsion,
  walledSection,
} from "../../lib/material/index.js";
import { Length, mm, squareMetre } from "../../lib/quantity/index.js";

type Corner = readonly [number, number];
const outline = (corners: readonly Corner[]) => corners.map(([x, y]) => ({ x: mm(x), y: mm(y) }));
const lShape: readonly Corner[] = [
  [0, 0],
  [30, 0],
  [30, 4],
  [5, 4],
  [5, 22],
  [0, 22],
];
const moved = (corners: readonly Corner[], by: Corner): Corner[] =>
  corners.map(([x, y]) => [x + by[0], y + by[1]]);
const offset = fc.tuple(fc.integer({ min: -80, max: 80 }), fc.integer({ min: -80, max: 80 }));

describe("a drawn section", () => {
  test("does not care where on the paper it is drawn, nor which way round", () => {
    const at = outlineSection({ outlines: [outline(lShape)] });
    fc.assert(
      fc.property(offset, (by) => {
        const elsewhere = outlineSection({ outlines: [outline(moved(lShape, by)).reverse()] });
        expect(elsewhere.secondX / at.secondX).toBeCloseTo(1, 9);
        expect(elsewhere.product / at.product).toBeCloseTo(1, 9);
        expect(elsewhere.centroidX - at.centroidX).toBeCloseTo(by[0] / 1000, 9);
      }),
    );
  });

  test("keeps the sum of its second moments when it is turned", () => {
    const at = outlineSection({ outlines: [outline(lShape)] });
    fc.assert(
      fc.property(fc.double({ min: 0, max: 6.28, noNaN: true }), (angle) => {
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        const turned = outlineSection({
          outlines: [outline(lShape.map(([x, y]) => [x * c - y * s, x * s + y * c]))],
        });
        expect((turned.secondX + turned.secondY) / (at.secondX + at.secondY)).toBeCloseTo(1, 9);
        expect(turned.largest / at.largest).toBeCloseTo(1, 9);
      }),
    );
  });

  test.each([
    [[], "section.outline: at least one outline, got none"],
    [
      [
        outline([
          [0, 0],
          [9, 0],
        ]),
      ],
      "section.outline: outline 1 must enclose an area",
    ],
    [
      [
        outline([
          [0, 0],
          [9, 9],
          [9, 0],
          [0, 5],
        ]),
      ],
      "section.outline: outline 1 must not cross itself",
    ],
    [
      [
        outline([
          [0, 0],
          [9, 0],
          [9, 9],
        ]),
        outline([
          [0, 0],
          [20, 0],
          [20, 20],
        ]),
      ],
      "section.outline: hollows must be smaller than the profile",
    ],
  ])("is refused, case %#", (outlines, message) => {
    expect(() => outlineSection({ outlines })).toThrow(message);
  });

  test("is refused on one line, whatever area rounding gives it", () => {
    const onOneLine = outline([
      [0.1, 0.3],
      [0.7, 2.1],
      [1.9, 5.7],
    ]);
    expect(() => outlineSection({ outlines: [onOneLine] })).toThrow(
      "section.outline: outline 1 must enclose an area",
    );
  });

  test("is refused where its hollow is all of it, turned and drawn anew", () => {
    const turned = lShape.map(
      ([x, y]): Corner => [x * Math.cos(1) - y * Math.sin(1), x * Math.sin(1) + y * Math.cos(1)],
    );
    expect(() => outlineSection({ outlines: [outline(turned), outline(moved(turned, [0.1, 0.7]))] })).toThrow(
      "section.outline: hollows must be smaller than the profile",
    );
  });
});

describe("torsion of a drawn solid", () => {
  const ell = outline(lShape);

  test("does not care where it is drawn, and grows with the fourth power of its size", () => {
    const at = solidTorsion({ outline: ell });
    expect(solidTorsion({ outline: outline(moved(lShape, [13, -7])) }) / at).toBeCloseTo(1, 6);
    expect(solidTorsion({ outline: outline(lShape.map(([x, y]) => [3 * x, 3 * y])) }) / at).toBeCloseTo(
      81,
      4,
    );
  });

  test("is below the polar moment, and near the sum over the walls of a thin angle", () => {
    const { secondX, secondY } = outlineSection({ outlines: [ell] });
    expect(solidTorsion({ outline: ell })).toBeLessThan(secondX + secondY);
    const angle: readonly Corner[] = [
      [0, 0],
      [30, 0],
      [30, 2],
      [2, 2],
      [2, 30],
      [0, 30],
    ];
    const walls = walledSection({ walls: angleWalls(mm(30), mm(2)) }).torsion;
    expect(Math.abs(solidTorsion({ outline: outline(angle) }) / walls - 1)).toBeLessThan(0.02);
  });

  test("is refused for an outline that encloses nothing", () => {
    expect(() =>
      solidTorsion({
        outline: outline([
          [0, 0],
          [5, 0],
        ]),
      }),
    ).toThrow("section.torsion.solid: outline must enclose an area");
  });
});

describe("a thin-walled section", () => {
  test("of an angle closes no cell, whatever rounding makes of its walls walked out and back", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 200, max: 900 }),
        fc.integer({ min: 10, max: 40 }),
        offset,
        (tenthsLeg, tenthsWall, [right, up]) => {
          const [leg, wall] = [mm(tenthsLeg / 10), mm(tenthsWall / 10)];
          const walls = angleWalls(leg, wall).map(
            ({ fromX, fromY, toX, toY, thickness }): ProfileWall => ({
              fromX: Length.si(fromX + mm(right)),
              fromY: Length.si(fromY + mm(up)),
              toX: Length.si(toX + mm(right)),
              toY: Length.si(toY + mm(up)),
              thickness,
            }),
          );
          const open = ((2 * leg - wall) * wall ** 3) / 3;
          expect(walledSection({ walls }).torsion / open).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test("of an angle of 40 x 1.5 mm has a torsion constant, as one of 40 x 1.6 mm", () => {
    expect(walledSection({ walls: angleWalls(mm(40), mm(1.5)) }).torsion).toBeCloseTo(88.3125e-12, 18);
    expect(walledSection({ walls: angleWalls(mm(40), mm(1.6)) }).torsion).toBeCloseTo(107.0421333e-12, 18);
  });

  test("of an angle agrees with its outline", () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 60 }), fc.integer({ min: 1, max: 4 }), (leg, wall) => {
        const walls = walledSection({ walls: angleWalls(mm(leg), mm(wall)) });
        const drawn = outlineSection({
          outlines: [
            outline([
              [0, 0],
              [leg, 0],
              [leg, wall],
              [wall, wall],
              [wall, leg],
              [0, leg],
            ]),
          ],
        });
        for (const part of ["area", "centroidX", "secondX", "secondY", "product", "smallest"] as const) {
          expect(walls[part] / drawn[part]).toBeCloseTo(1, 9);
        }
      }),
    );
  });

  test("twists as stiffly as a long rectangle of the same wall, but for its ends", () => {
    const wall = { fromX: mm(0), fromY: mm(0), toX: mm(100), toY: mm(0), thickness: mm(2) };
    const [thin, solid] = [
      walledSection({ walls: [wall] }).torsion,
      rectangleTorsion({ width: mm(100), height: mm(2) }),
    ];
    expect(solid / thin).toBeCloseTo(1 - (0.63 * 2) / 100, 4);
  });

  test("closed is far stiffer in twist than the same wall slit open", () => {
    const closed = tubeTorsion({ enclosed: squareMetre(900e-6), round: mm(120), thickness: mm(1) });
    expect(closed).toBeGreaterThan(500 * ((0.12 * 0.001 ** 3) / 3));
  });

  const closedWalls = (corners: readonly Corner[], thickness: number): ProfileWall[] =>
    corners.map(([x, y], i) => {
      const [toX, toY] = corners[(i + 1) % corners.length] as Corner;
      return { fromX: mm(x), fromY: mm(y), toX: mm(toX), toY: mm(toY), thickness: mm(thickness) };
    });
  const twist = (walls: readonly ProfileWall[]): number => walledSection({ walls }).torsion;

  test("closed by its walls twists as the tube formula has it, whichever way round and in whatever order", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 90 }),
        fc.integer({ min: 20, max: 90 }),
        fc.integer({ min: 0, max: 3 }),
        (width, height, start) => {
          const walls = closedWalls(
            [
              [0, 0],
              [width, 0],
              [width, height],
              [0, height],
            ],
            2,
          );
          const turned = [...walls.slice(start), ...walls.slice(0, start)];
          const tube = tubeTorsion({
            enclosed: squareMetre(width * height * 1e-6),
            round: mm(2 * (width + height)),
            thickness: mm(2),
          });
          expect(twist(turned) / tube).toBeCloseTo(1, 9);
          expect(twist(turned.reverse()) / tube).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test("of many short walls nears the round tube", () => {
    const corners = Array.from(
      { length: 72 },
      (_, i): Corner => [20 * Math.cos((i * Math.PI) / 36), 20 * Math.sin((i * Math.PI) / 36)],
    );
    expect(twist(closedWalls(corners, 1)) / (2 * Math.PI * 20 ** 3 * 1e-12)).toBeCloseTo(1, 2);
  });

  test("slit open loses nearly all of it, and a pencil's slip is no slit", () => {
    const walls = closedWalls(
      [
        [0, 0],
        [40, 0],
        [40, 40],
        [0, 40],
      ],
      2,
    );
    const [first, ...others] = walls as [ProfileWall, ...ProfileWall[]];
    const shortened = (gap: number): ProfileWall[] => [
      { ...first, toX: mm(20) },
      { ...first, fromX: mm(20 + gap) },
      ...others,
    ];
    expect(twist(shortened(0.1)) / twist(walls)).toBeCloseTo(1, 2);
    expect(twist(shortened(1))).toBeLessThan(0.01 * twist(walls));
  });

  test("is refused without walls, or with one that has no length", () => {
    expect(() => walledSection({ walls: [] })).toThrow("section.walls: at least one wall, got none");
    const point = { fromX: mm(1), fromY: mm(1), toX: mm(1), toY: mm(1), thickness: mm(1) };
    expect(() => walledSection({ walls: [point] })).toThrow(
      "section.walls: wall 1 must have a length and a thickness",
    );
    expect(() => tubeTorsion({ enclosed: squareMetre(1), round: mm(10), thickness: mm(1) })).toThrow(
      "section.torsion.tube: no line of that length encloses so much",
    );
  });
});
