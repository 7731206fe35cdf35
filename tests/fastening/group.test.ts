import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { groupPull, groupShear, type Position } from "../../lib/fastening/index.js";
import { Length, Moment, mm, newton } from "../../lib/quantity/index.js";

const place = fc
  .tuple(fc.integer({ min: -200, max: 200 }), fc.integer({ min: -200, max: 200 }))
  .map(([x, y]): Position => ({ x: mm(x), y: mm(y) }));

const places = fc.uniqueArray(place, {
  minLength: 3,
  maxLength: 8,
  selector: ({ x, y }) => `${x},${y}`,
});

const force = fc.integer({ min: -2000, max: 2000 });

const at = (x: number, y: number): Position => ({ x: mm(x), y: mm(y) });

const rectangle = (columns: number, rows: number): Position[] =>
  Array.from({ length: columns * rows }, (_, i) =>
    at(100 * ((i % columns) / (columns - 1) - 0.5), 80 * (Math.floor(i / columns) / (rows - 1) - 0.5)),
  );

describe("a group under a load off its middle", () => {
  test("has forces that add up to the load and to its moment about any point", () => {
    fc.assert(
      fc.property(places, force, force, place, (positions, x, y, point) => {
        const { forces } = groupShear({ positions, load: { x: newton(x), y: newton(y) }, at: point });
        const sum = (pick: (i: number) => number): number =>
          forces.reduce((total, _force, i) => total + pick(i), 0);
        expect(sum((i) => forces[i]!.x)).toBeCloseTo(x, 6);
        expect(sum((i) => forces[i]!.y)).toBeCloseTo(y, 6);
        expect(sum((i) => positions[i]!.x * forces[i]!.y - positions[i]!.y * forces[i]!.x)).toBeCloseTo(
          point.x * y - point.y * x,
          6,
        );
      }),
    );
  });

  test("has no moment, and no force across, under a load through its middle", () => {
    // Ten holes of a handle at 149, 187, 225, 263 and 301 mm: their mean is 225, which no sum of tenths of an inch hits.
    const columns = [149, 187, 225, 263, 301];
    const positions = [194, 306].flatMap((y) => columns.map((x) => at(x, y)));
    for (const off of [0, 1e-16, -3e-16]) {
      const point = { x: Length.si(mm(225) + off), y: mm(250) };
      const { moment, forces } = groupShear({
        positions,
        load: { x: newton(0), y: newton(257.4) },
        at: point,
      });
      expect(moment).toBe(0);
      for (const { x } of forces) expect(x).toBeCloseTo(0, 300);
    }
  });

  test("has forces that double with the load", () => {
    fc.assert(
      fc.property(places, force, force, place, (positions, x, y, point) => {
        const once = groupShear({ positions, load: { x: newton(x), y: newton(y) }, at: point });
        const twice = groupShear({ positions, load: { x: newton(2 * x), y: newton(2 * y) }, at: point });
        twice.forces.forEach((one, i) => {
          expect(one.x).toBeCloseTo(2 * once.forces[i]!.x, 6);
          expect(one.y).toBeCloseTo(2 * once.forces[i]!.y, 6);
        });
      }),
    );
  });

  test("does not care where it stands", () => {
    fc.assert(
      fc.property(places, place, place, (positions, point, shift) => {
        const move = ({ x, y }: Position): Position => ({
          x: Length.si(x + shift.x),
          y: Length.si(y + shift.y),
        });
        const load = { x: newton(300), y: newton(-700) };
        const here = groupShear({ positions, load, at: point });
        const there = groupShear({ positions: positions.map(move), load, at: move(point) });
        expect(there.largest).toBeCloseTo(here.largest, 6);
      }),
    );
  });

  test("never loads its worst fastener more for having more of them in the same rectangle", () => {
    const load = { x: newton(0), y: newton(-1000) };
    const largest = (columns: number, rows: number): number =>
      groupShear({ positions: rectangle(columns, rows), load, at: at(300, 0) }).largest;
    expect(largest(3, 2)).toBeLessThan(largest(2, 2));
    expect(largest(3, 3)).toBeLessThan(largest(3, 2));
    expect(largest(4, 3)).toBeLessThan(largest(3, 3));
  });

  test("shares a load through its middle equally", () => {
    const load = { x: newton(0), y: newton(-600) };
    const { largest, smallest } = groupShear({ positions: rectangle(3, 2), load, at: at(0, 55) });
    expect(largest).toBeCloseTo(100, 9);
    expect(smallest).toBeCloseTo(100, 9);
  });

  test("of one fastener carries a load through it and refuses one beside it", () => {
    const alone = { positions: [at(10, 10)], load: { x: newton(0), y: newton(50) } };
    expect(groupShear({ ...alone, at: at(10, 40) }).largest).toBe(50);
    expect(() => groupShear({ ...alone, at: at(40, 10) })).toThrow(
      "group.eccentric: fasteners in one place cannot hold a load that turns them: set them apart",
    );
    expect(() => groupShear({ ...alone, positions: [], at: at(0, 0) })).toThrow(
      "group.eccentric: at least one fastener, got none",
    );
  });
});

describe("a group pulled and pried", () => {
  const moment = fc.integer({ min: -50, max: 50 });

  test("has pulls that add up to the pull and to the prying", () => {
    fc.assert(
      fc.property(places, force, moment, moment, (positions, pull, x, y) => {
        const [a, b, c] = positions as [Position, Position, Position];
        const turn = (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
        fc.pre(Math.abs(turn) > 1e-4);
        const { pulls } = groupPull({
          positions,
          pull: newton(pull),
          pryingX: Moment.si(x),
          pryingY: Moment.si(y),
        });
        const n = positions.length;
        const middle = (axis: "x" | "y"): number => positions.reduce((sum, one) => sum + one[axis], 0) / n;
        const about = (axis: "x" | "y"): number =>
          pulls.reduce((sum, one, i) => sum + one * (positions[i]![axis] - middle(axis)), 0);
        expect(pulls.reduce((sum: number, one) => sum + one, 0)).toBeCloseTo(pull, 6);
        expect(about("x")).toBeCloseTo(x, 6);
        expect(about("y")).toBeCloseTo(y, 6);
      }),
    );
  });

  test("says that positions start from any one point, and moving them all changes no pull", () => {
    const load = { pull: newton(300), pryingX: Moment.si(3), pryingY: Moment.si(0) };
    const [near, far] = [0, 1000].map((away) =>
      groupPull({ ...load, positions: [at(away, away), at(away + 60, away), at(away, away + 80)] }),
    );
    expect(groupPull.declaration.validity).toMatch(/^Positions from any one point/);
    expect(groupPull.declaration.equation).toContain(String.raw`(x_i - \bar x) T_i = M_x`);
    far?.pulls.forEach((pull, i) => {
      expect(pull).toBeCloseTo(near?.pulls[i] ?? Number.NaN, 6);
    });
  });

  test("in one line holds prying along the line and refuses prying across it", () => {
    const line = { positions: [at(0, 0), at(30, 40), at(60, 80)], pull: newton(0) };
    const along = groupPull({ ...line, pryingX: Moment.si(3), pryingY: Moment.si(4) });
    // 5 N m, arms of -50, 0 and 50 mm: 5 x 0.05 / (2 x 0.05^2) = 50 N.
    expect(along.largest).toBeCloseTo(50, 6);
    expect(() => groupPull({ ...line, pryingX: Moment.si(4), pryingY: Moment.si(-3) })).toThrow(
      "group.pull: these fasteners have no arm against this prying: set them apart in its direction",
    );
  });

  test("of one fastener carries a straight pull only", () => {
    const alone = { positions: [at(5, 5)], pull: newton(80), pryingX: Moment.si(0) };
    expect(groupPull({ ...alone, pryingY: Moment.si(0) }).largest).toBe(80);
    expect(() => groupPull({ ...alone, pryingY: Moment.si(1) })).toThrow("no arm against this prying");
  });
});
