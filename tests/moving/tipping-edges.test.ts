import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { armTowards, type Foot, headings, tippingEdges } from "../../lib/moving/index.js";
import { Angle, Length, mm } from "../../lib/quantity/index.js";

const foot = (x: number, y: number, offset = 0): Foot => ({ x: mm(x), y: mm(y), offset: mm(offset) });
const square = (offset: number): Foot[] => [
  foot(0, 0, offset),
  foot(600, 0, offset),
  foot(0, 400, offset),
  foot(600, 400, offset),
];
const at = (x: number, y: number) => ({ x: mm(x), y: mm(y) });

describe("the lines a case tips over", () => {
  test("are the four sides of four feet, each in by the offset of its casters", () => {
    const edges = tippingEdges(square(40), at(250, 150));
    expect(edges.map(({ way }) => way)).toEqual(["front", "left", "back", "right"]);
    expect(edges.map(({ arm }) => Math.round(Length.in(arm, "mm")))).toEqual([110, 210, 210, 310]);
  });

  test("of three feet join them, not the rectangle around them", () => {
    // From the middle (300, 200) to the line from (0, 0) to (300, 400), by hand: |400*300 - 300*200| / 500 = 120.
    const edges = tippingEdges([foot(0, 0), foot(600, 0), foot(300, 400)], at(300, 200));
    expect(edges).toHaveLength(3);
    expect(edges.map(({ arm }) => Math.round(Length.in(arm, "mm")))).toEqual([120, 120, 200]);
  });

  test("with two fixed and two swivel casters turn with the wheels that swivel", () => {
    // Fixed at the back: the side line runs from the fixed wheel, 40 off the axis in front: sin = 40 / 400 by hand.
    const edges = tippingEdges(
      [foot(0, 0, 40), foot(600, 0, 40), foot(0, 400), foot(600, 400)],
      at(300, 200),
    );
    const side = edges.find(({ way }) => way === "right");
    const [cos, sin] = [Math.sqrt(1 - 0.01), 0.1];
    expect(Length.in(side?.arm ?? mm(0), "mm")).toBeCloseTo(300 * cos - 200 * sin, 6);
    expect(Length.in(edges.find(({ way }) => way === "back")?.arm ?? mm(0), "mm")).toBeCloseTo(200, 9);
  });

  test("are past the centre where it does not stand between the feet", () => {
    const [nearest] = tippingEdges(square(0), at(700, 200));
    expect(nearest?.way).toBe("right");
    expect(nearest?.arm).toBeCloseTo(-0.1, 12);
  });

  test("lie further out on a slant than square to a side", () => {
    const edges = tippingEdges(square(0), at(300, 200));
    expect(armTowards(edges, headings.front)).toBeCloseTo(0.2, 12);
    expect(armTowards(edges, headings.right)).toBeCloseTo(0.3, 12);
  });
});

test("a longer offset never tips later, in any direction", () => {
  const place = fc.double({ min: 0, max: 600, noNaN: true });
  const offset = fc.double({ min: 0, max: 60, noNaN: true });
  fc.assert(
    fc.property(
      fc.array(fc.tuple(place, place), { minLength: 3, maxLength: 6 }),
      offset,
      offset,
      fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
      (places, one, more, heading) => {
        const feet = (by: number) => places.map(([x, y]) => foot(x, y, by));
        const middle = at(
          places.reduce((sum, [x]) => sum + x, 0) / places.length,
          places.reduce((sum, [, y]) => sum + y, 0) / places.length,
        );
        const least = (by: number): number => tippingEdges(feet(by), middle)[0]?.arm ?? 0;
        const towards = (by: number): number => armTowards(tippingEdges(feet(by), middle), Angle.si(heading));
        expect(least(one + more)).toBeLessThanOrEqual(least(one) + 1e-9);
        if (least(one + more) > 0.01) expect(towards(one + more)).toBeLessThanOrEqual(towards(one) + 1e-9);
      },
    ),
  );
});
