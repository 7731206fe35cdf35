/** Boxes on springs that only push: whatever the supports and the load, each pushes or has a gap, or the box tips. */

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type BoxSpot,
  boxStructure,
  type Fitting,
  fittingMotion,
  fittingOn,
  freePart,
  type JoinedParts,
  joinedParts,
  type Link,
  movedJoined,
  type PreparedLink,
  pullAt,
  shareBorne,
  spaceDofs,
} from "../../../lib/fem/index.js";
import { Refusal } from "../../../lib/refusal.js";
import type { Point2 } from "../../../lib/shape/index.js";
import { plyBox, size } from "../boxes.js";
import { ply } from "../sheets.js";

const [length, width, height] = size;
const structure = boxStructure(plyBox(ply, { faces: { ...plyBox().faces, y0: plyBox().faces.y1! } }), 0.3);
const part = freePart(structure, [0, 0, 0]);
/** The floor, below the box. */
const floor = -0.1;
const shares = [0.1, 0.35, 0.5, 0.65, 0.9];
const places = shares.flatMap((x) => shares.map((y) => [x * length, y * width] as const));

function plate(u: number, v: number): readonly Point2[] {
  return [-0.01, 0.01].flatMap((du) => [-0.01, 0.01].map((dv) => ({ x: u + du, y: v + dv })));
}

const feet: readonly Fitting[] = places.map(([x, y], k) =>
  fittingOn(structure, `foot ${k}`, [{ face: "bottom", spots: plate(x, y) }], [x, y, floor]),
);

/** Every place may be a foot, which pushes up; all of them hold sideways. */
const links: readonly Link[] = feet.flatMap((fitting): Link[] => {
  const held = { name: fitting.name, from: { part: 0, fitting } };
  return [
    { ...held, along: [0, 0, -1], stiffness: 4e5, only: "push" },
    { ...held, along: [1, 0, 0], stiffness: 4e4 },
    { ...held, along: [0, 1, 0], stiffness: 4e4 },
  ];
});
const joined: JoinedParts = joinedParts([part], links);

/** The feet of a load case, as names. */
const someFeet = (least: number): fc.Arbitrary<ReadonlySet<string>> =>
  fc
    .uniqueArray(fc.integer({ min: 0, max: feet.length - 1 }), { minLength: least, maxLength: 8 })
    .map((numbers) => new Set(numbers.map((number) => `foot ${number}`)));

const top = [0.2, 0.5, 0.8].flatMap((x) =>
  [0.2, 0.5, 0.8].map((y) =>
    fittingOn(
      structure,
      "load",
      [{ face: "top", spots: plate(x * length, y * width) }],
      [x * length, y * width, height],
    ),
  ),
);

function loaded(fitting: Fitting, force: BoxSpot): Float64Array {
  const load = new Float64Array(spaceDofs * structure.nodes.length);
  pullAt(load, fitting, force);
  return load;
}

const anyLoad = fc.record({
  on: fc.integer({ min: 0, max: top.length - 1 }),
  x: fc.integer({ min: -150, max: 150 }),
  y: fc.integer({ min: -150, max: 150 }),
  down: fc.integer({ min: 20, max: 400 }),
});

type Load = typeof anyLoad extends fc.Arbitrary<infer T> ? T : never;

function loadOf({ on, x, y, down }: Load): Float64Array {
  return loaded(top[on]!, [x, y, -down]);
}

/** Undefined where the box tips or is loose. */
function answered(load: Float64Array, standing: ReadonlySet<string>) {
  try {
    return movedJoined(joined, [load], ({ name }) => standing.has(name));
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

/** The feet's places around the load's: whether statics lets it stand, by the moments about every pair of feet. */
function standsBySight(load: Load, standing: ReadonlySet<string>): number {
  const { at } = top[load.on]!;
  // Where the line of the load meets the floor.
  const arm = (height - floor) / load.down;
  const [x, y] = [at[0] + load.x * arm, at[1] + load.y * arm];
  const own = feet
    .filter(({ name }) => standing.has(name))
    .map(({ at: [fx, fy] }) => [fx - x, fy - y] as const);
  let least = Infinity;
  for (const [ax, ay] of own)
    for (const [bx, by] of own) {
      const far = Math.hypot(bx - ax, by - ay);
      if (far === 0) continue;
      // All feet on one side of the line of two: an edge; how far inside it the load's place lies.
      const side = (px: number, py: number): number => ((bx - ax) * (py - ay) - (by - ay) * (px - ax)) / far;
      if (own.every(([px, py]) => side(px, py) > -1e-9)) least = Math.min(least, side(0, 0));
    }
  return least;
}

/** How much longer a spring gets, by the movement of the fittings at its ends. */
function stretchOf({ link, ends }: PreparedLink, moved: Float64Array): number {
  return ends.reduce((sum, { fitting, sign }) => {
    const motion = fittingMotion(fitting, moved);
    return sum + sign * link.along.reduce((way, share, axis) => way + share * motion[axis]!, 0);
  }, 0);
}

describe("a box on feet that only push", () => {
  test("every foot pushes or has a gap, and all balance the load, or the load's line misses their base", () => {
    let [stood, fell] = [0, 0];
    fc.assert(
      fc.property(someFeet(3), anyLoad, (standing, load) => {
        const inside = standsBySight(load, standing);
        fc.pre(Number.isFinite(inside) && Math.abs(inside) > 1e-6);
        const found = answered(loadOf(load), standing);
        expect(found !== undefined).toBe(inside > 0);
        if (!found) {
          fell++;
          return;
        }
        stood++;
        const sum = [0, 0, 0];
        joined.links.forEach((prepared, i) => {
          const { link } = prepared;
          const force = found.forces[i]!;
          if (!standing.has(link.name)) return;
          const stretch = stretchOf(prepared, found.displacements[0]!);
          link.along.forEach((share, axis) => {
            sum[axis]! += share * force;
          });
          const off = Math.abs(stretch - force / link.stiffness);
          if (link.only === undefined) expect(off).toBeLessThan(1e-9);
          else {
            // Complementarity: a force that pushes, or a gap.
            expect(force).toBeLessThanOrEqual(0);
            if (force < 0) expect(off).toBeLessThan(1e-9);
            else expect(stretch).toBeGreaterThan(-1e-9);
          }
        });
        [load.x, load.y, -load.down].forEach((value, axis) => {
          expect(sum[axis]! + value).toBeCloseTo(0, 6);
        });
      }),
      { numRuns: 300 },
    );
    expect(Math.min(stood, fell)).toBeGreaterThan(10);
  });

  test("one more foot never makes it tip", () => {
    fc.assert(
      fc.property(someFeet(3), someFeet(1), anyLoad, (standing, more, load) => {
        fc.pre(answered(loadOf(load), standing) !== undefined);
        expect(answered(loadOf(load), new Set([...standing, ...more]))).toBeDefined();
      }),
      { numRuns: 30 },
    );
  });

  test("tips under a growing push at the share that moments about the edges give", () => {
    fc.assert(
      fc.property(someFeet(3), anyLoad, (standing, load) => {
        const own = { ...load, x: 0, y: 0 };
        fc.pre(standsBySight(own, standing) > 1e-3 && Math.hypot(load.x, load.y) > 1);
        const strong = { ...load, x: 50 * load.x, y: 50 * load.y };
        const push = loaded(top[load.on]!, [strong.x, strong.y, 0]);
        const share = shareBorne(joined, [loadOf(own)], [push], ({ name }) => standing.has(name));
        // By statics alone: the share at which the load's line meets an edge of the base.
        let [low, high] = [0, 1];
        for (let halving = 0; halving < 60; halving++) {
          const tried = (low + high) / 2;
          const at = standsBySight({ ...load, x: tried * strong.x, y: tried * strong.y }, standing);
          if (at > 0) low = tried;
          else high = tried;
        }
        expect(share / low).toBeCloseTo(1, 6);
      }),
      { numRuns: 30 },
    );
  });

  test("mirrored feet under a load in the middle push alike", () => {
    const pairs = [0, 1, 3, 4].map((k) => [`foot ${k}`, `foot ${20 + k}`] as const);
    const found = answered(loadOf({ on: 4, x: 0, y: 0, down: 300 }), new Set(pairs.flat()))!;
    const upright = (name: string): number =>
      found.forces[joined.links.findIndex(({ link }) => link.name === name && link.only === "push")]!;
    for (const [left, right] of pairs) expect(upright(left) / upright(right)).toBeCloseTo(1, 6);
  });

  test("balances on two feet with the load above their line, the third touching", () => {
    // Two corners across from each other, and one beside them: a knife edge.
    const found = answered(
      loadOf({ on: 4, x: 0, y: 0, down: 300 }),
      new Set(["foot 0", "foot 24", "foot 4"]),
    )!;
    const upright = joined.links.flatMap(({ link }, i) =>
      link.only === "push" && found.forces[i] !== 0 ? [[link.name, found.forces[i]!] as const] : [],
    );
    const of = Object.fromEntries(upright);
    expect(of["foot 0"]).toBeCloseTo(-150, 4);
    expect(of["foot 24"]).toBeCloseTo(-150, 4);
    expect(Math.abs(of["foot 4"] ?? 0)).toBeLessThan(1e-4);
  });

  test("on nothing but a line of feet says that it turns", () => {
    expect(() =>
      movedJoined(joined, [loadOf({ on: 4, x: 0, y: 10, down: 300 })], ({ name }) =>
        ["foot 2", "foot 7", "foot 12", "foot 22"].includes(name),
      ),
    ).toThrow(/^test box (is loose|gives way): it turns about x/);
  });

  test("is told which way it tips", () => {
    expect(() =>
      movedJoined(joined, [loadOf({ on: 0, x: -150, y: 0, down: 20 })], ({ name }) =>
        ["foot 0", "foot 4", "foot 20", "foot 24"].includes(name),
      ),
    ).toThrow(/^test box gives way: it turns about y and nothing there pushes or pulls against it$/);
  });
});

describe("a box screwed onto one that stands on feet", () => {
  const lower = freePart(structure, [0, 0, 0]);
  const upper = freePart(structure, [0, 0, height]);
  const between = [
    [0.13, 0.17],
    [0.83, 0.21],
    [0.19, 0.87],
    [0.79, 0.81],
  ].map(([u = 0, v = 0], k): Pick<Link, "name" | "from" | "to"> => {
    const [x, y] = [u * length, v * width];
    const name = `place ${k}`;
    return {
      name,
      from: {
        part: 0,
        fitting: fittingOn(structure, name, [{ face: "top", spots: plate(x, y) }], [x, y, height]),
      },
      to: {
        part: 1,
        fitting: fittingOn(structure, name, [{ face: "bottom", spots: plate(x, y) }], [x, y, 0]),
      },
    };
  });
  const slant = Math.sqrt(1 / 3);
  const screws = between.slice(0, 3).flatMap((place, k): Link[] => [
    { ...place, along: [slant, slant, k === 1 ? -slant : slant], stiffness: 4e5 },
    { ...place, along: [slant, -slant, slant], stiffness: 3e5 },
    { ...place, along: [-slant, slant, slant], stiffness: 2e5 },
  ]);
  const rests = between.map(
    (place): Link => ({ ...place, name: "rest", along: [0, 0, 1], stiffness: 1e6, only: "push" }),
  );
  const stacked = joinedParts([lower, upper], [...links, ...screws, ...rests]);

  /** Whether it stands, with rests under the upper box and without. */
  function stands(load: Load, standing: ReadonlySet<string>, rested: boolean): boolean {
    const loads = [new Float64Array(loadOf(load).length), loadOf(load)];
    try {
      movedJoined(
        stacked,
        loads,
        ({ name }) => standing.has(name) || name.startsWith("place") || (rested && name === "rest"),
      );
      return true;
    } catch (error) {
      if (error instanceof Refusal) return false;
      throw error;
    }
  }

  test("stands and tips alike with rests under it that the screws do not need", () => {
    let [stood, fell] = [0, 0];
    fc.assert(
      fc.property(someFeet(6), anyLoad, (standing, push) => {
        const load = { ...push, x: push.x / 4, y: push.y / 4 };
        const alone = stands(load, standing, false);
        if (alone) stood++;
        else fell++;
        expect(stands(load, standing, true)).toBe(alone);
      }),
      { numRuns: 60 },
    );
    expect(Math.min(stood, fell)).toBeGreaterThan(5);
  });
});
