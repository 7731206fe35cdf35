/** Boxes and doors joined at their fittings: laws, limits, what cannot be. */
import { describe, expect, test } from "vitest";
import {
  type BoxFace,
  type BoxSpot,
  type BoxStructure,
  boxStructure,
  displacementsUnder,
  type FaceSpots,
  type Fitting,
  type FreePart,
  factoredBox,
  fittingMotion,
  fittingOn,
  freePart,
  type JoinedAnswer,
  joinedParts,
  type Link,
  movedJoined,
  piecesOf,
  pullAt,
  spaceDofs,
  timesPieces,
} from "../../../lib/fem/index.js";
import { allSeams, plyBox, size } from "../boxes.js";
import { ply } from "../sheets.js";

const coarse = 0.25;
const [length, width, height] = size;
const problem = plyBox(ply, { seams: allSeams({ slip: 2e7, opening: 2e7, rotational: 500 }) });
const structure = boxStructure(problem, coarse);
const box = freePart(structure, [0, 0, 0]);
const axes: readonly BoxSpot[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** Four fasteners about a place of a face. */
function plate(face: FaceSpots["face"], u: number, v: number): readonly FaceSpots[] {
  const spots = [-0.02, 0.02].flatMap((du) => [-0.015, 0.015].map((dv) => ({ x: u + du, y: v + dv })));
  return [{ face, spots }];
}

function caster(on: BoxStructure, x: number, y: number): Fitting {
  return fittingOn(on, `caster at ${x}, ${y}`, plate("bottom", x, y), [x, y, -0.1]);
}

const corners = [0.08, length - 0.08].flatMap((x) => [0.08, width - 0.08].map((y) => [x, y] as const));
const casters = corners.map(([x, y]) => caster(structure, x, y));

/** Every caster held every way; it bears on the floor and may lift off it. */
function standing(part: number, fittings: readonly Fitting[], liftsOff = false): Link[] {
  return fittings.flatMap((fitting) =>
    axes.map(
      (along, axis): Link => ({
        name: fitting.name,
        from: { part, fitting },
        along: along.map((share) => -share) as unknown as BoxSpot,
        stiffness: 1e6,
        ...(liftsOff && axis === 2 ? { only: "push" as const } : {}),
      }),
    ),
  );
}

function empty(of: BoxStructure): Float64Array {
  return new Float64Array(spaceDofs * of.nodes.length);
}

function pulled(fitting: Fitting, force: BoxSpot, of: BoxStructure = structure): Float64Array {
  const load = empty(of);
  pullAt(load, fitting, force);
  return load;
}

const handle = fittingOn(structure, "handle", plate("x1", 0.25, 0.3), [length, 0.25, 0.3]);

describe("a fitting", () => {
  const moves = [0.3, -0.2, 0.5, 0.04, -0.07, 0.02];

  test("follows a rigid movement exactly, also beside its fasteners", () => {
    const rigid = empty(structure);
    structure.nodes.forEach(([x, y, z], node) => {
      const [tx, ty, tz, rx, ry, rz] = moves as [number, number, number, number, number, number];
      rigid.set(
        [tx + ry * z - rz * y, ty + rz * x - rx * z, tz + rx * y - ry * x, rx, ry, rz],
        spaceDofs * node,
      );
    });
    const [x, y, z] = casters[1]!.at;
    const [tx = 0, ty = 0, tz = 0, rx = 0, ry = 0, rz = 0] = moves;
    const exact = [tx + ry * z - rz * y, ty + rz * x - rx * z, tz + rx * y - ry * x, rx, ry, rz];
    fittingMotion(casters[1]!, rigid).forEach((value, i) => {
      expect(value).toBeCloseTo(exact[i]!, 9);
    });
  });

  test("shares a force out in balance: the same force and moment on the nodes", () => {
    const load = pulled(casters[0]!, [3, -5, 7]);
    const sum = [0, 0, 0, 0, 0, 0];
    structure.nodes.forEach(([x, y, z], node) => {
      const [fx = 0, fy = 0, fz = 0, mx = 0, my = 0, mz = 0] = load.subarray(
        spaceDofs * node,
        spaceDofs * node + 6,
      );
      [fx, fy, fz, mx + y * fz - z * fy, my + z * fx - x * fz, mz + x * fy - y * fx].forEach((value, i) => {
        sum[i]! += value;
      });
    });
    const [x, y, z] = casters[0]!.at;
    [3, -5, 7, y * 7 + z * 5, z * 3 - x * 7, -x * 5 - y * 3].forEach((value, i) => {
      expect(sum[i]).toBeCloseTo(value, 9);
    });
  });

  test.each<[string, readonly FaceSpots[]]>([
    [
      "test box, lock: two fasteners apart from each other are needed",
      [{ face: "top", spots: [{ x: 0.2, y: 0.2 }] }],
    ],
    [
      "test box, lock: 200, 200 mm of y0 is no material",
      [
        {
          face: "y0",
          spots: [
            { x: 0.2, y: 0.2 },
            { x: 0.05, y: 0.05 },
          ],
        },
      ],
    ],
  ])("refuses: %s", (message, on) => {
    expect(() => fittingOn(structure, "lock", on, [0, 0, 0])).toThrow(message);
  });
});

describe("a box on casters", () => {
  const joined = joinedParts([box], standing(0, casters));
  const push = pulled(handle, [40, 10, -200]);
  const answer = movedJoined(joined, [push]);

  test("stands as it does when the same springs are part of it", () => {
    // The springs as pieces of the box: one matrix a spring, k m m^T over the fitting's degrees of freedom.
    const springs = standing(0, casters).map(({ from: { fitting }, along, stiffness }) => {
      const columns = fitting.dofs.length;
      const row = Array.from({ length: columns }, (_, i) =>
        along.reduce((sum, share, axis) => sum + share * fitting.motion[axis * columns + i]!, 0),
      );
      return {
        dofs: fitting.dofs,
        matrix: Float64Array.from(row.flatMap((a) => row.map((b) => stiffness * a * b))),
        middle: fitting.at,
      };
    });
    const { factors } = factoredBox(structure, [], springs);
    const whole = displacementsUnder(factors, push);
    const scale = Math.max(...whole.map(Math.abs));
    // A sheet's own turn across its plane means nothing to it.
    const off = whole.map((value, i) =>
      factors.held[i] ? 0 : Math.abs(value - answer.displacements[0]![i]!),
    );
    expect(Math.max(...off)).toBeLessThan(1e-6 * scale);
  });

  test("is pushed back by its casters with all that is loaded", () => {
    [40, 10, -200].forEach((force, axis) => {
      const sum = answer.forces.reduce((total, each, i) => total + (i % 3 === axis ? each : 0), 0);
      expect(sum).toBeCloseTo(force, 6);
    });
  });

  test("stores half of force times way, in the box and in its springs", () => {
    const way = dot(push, answer.displacements[0]!);
    const springs = answer.forces.reduce((sum, force) => sum + force ** 2 / 1e6, 0);
    const sheets = dot(timesPieces(piecesOf(structure), answer.displacements[0]!), answer.displacements[0]!);
    expect((springs + sheets) / way).toBeCloseTo(1, 6);
  });

  test("moves here by a force there as there by a force here (Maxwell and Betti)", () => {
    const other = pulled(casters[2]!, [7, -3, 5]);
    const [there, here] = [
      dot(other, answer.displacements[0]!),
      dot(push, movedJoined(joined, [other]).displacements[0]!),
    ];
    expect(there / here).toBeCloseTo(1, 6);
  });

  test("on three casters bears on three: the fourth carries nothing, and moments balance", () => {
    const three = movedJoined(
      joined,
      [pulled(handle, [0, 0, -200])],
      ({ name }) => name !== casters[0]!.name,
    );
    expect(three.forces.slice(0, 3)).toEqual([0, 0, 0]);
    // Moments about y of what the floor does to the casters, and of the load.
    const floor = casters.reduce(
      (sum, { at: [x, , z] }, k) => sum + x * three.forces[3 * k + 2]! - z * three.forces[3 * k]!,
      0,
    );
    expect(floor).toBeCloseTo(-200 * length, 6);
  });

  test("lifts off casters that would have to hold it down", () => {
    const tipping = joinedParts([box], standing(0, casters, true));
    const near = fittingOn(structure, "bag", plate("bottom", 0.12, 0.11), [0.12, 0.11, 0.1]);
    const load = pulled(near, [0, 0, -200]);
    const forces = movedJoined(tipping, [load]).forces;
    const upright = forces.filter((_, i) => i % 3 === 2);
    expect(Math.max(...upright)).toBeLessThanOrEqual(0);
    expect(upright.filter((force) => force === 0).length).toBeGreaterThan(0);
    expect(upright.reduce((sum, force) => sum + force, 0)).toBeCloseTo(-200, 6);
  });

  test("on springs ever stiffer comes to rest", () => {
    const at = (stiffness: number): JoinedAnswer =>
      movedJoined(
        joinedParts(
          [box],
          standing(0, casters).map((link) => ({ ...link, stiffness })),
        ),
        [push],
      );
    const [firm, firmer] = [at(1e11), at(1e13)].map(
      ({ displacements }) => fittingMotion(handle, displacements[0]!)[2]!,
    );
    expect(firmer! / firm!).toBeCloseTo(1, 4);
  });

  test("that nothing holds down is named, with the way it moves", () => {
    const flat = standing(0, casters).filter((_, i) => i % 3 !== 2);
    expect(() => movedJoined(joinedParts([box], flat), [push])).toThrow(
      /^test box is loose: it (moves along z|turns about [xy]) without resistance; hold it better$/,
    );
  });
});

describe("two boxes", () => {
  const upper = freePart(boxStructure({ ...problem, name: "upper box" }, coarse), [0, 0, height + 0.01]);
  const latchAt = [
    [0, 0.1],
    [0, 0.4],
    [length, 0.1],
    [length, 0.4],
  ] as const;
  const latches = latchAt.flatMap(([x, y], k): Link[] => {
    const face = x === 0 ? "x0" : "x1";
    const own = fittingOn(structure, "keeper", plate(face, y, height - 0.04), [x, y, height]);
    const other = fittingOn(upper.structure, "latch", plate(face, y, 0.04), [x, y, -0.01]);
    return axes.map((along) => ({
      name: `latch ${k + 1}`,
      from: { part: 0, fitting: own },
      to: { part: 1, fitting: other },
      along,
      stiffness: 5e6,
    }));
  });
  const load = pulled(
    fittingOn(upper.structure, "bag", plate("bottom", 0.3, 0.25), [0.3, 0.25, 0]),
    [0, 0, -300],
    upper.structure,
  );

  test("latched together pass the upper's load on to the casters of the lower", () => {
    const joined = joinedParts([box, upper], [...standing(0, casters), ...latches]);
    const { forces } = movedJoined(joined, [empty(structure), load]);
    const passed = joined.links.reduce(
      (sum, { link }, i) => sum + (link.name.startsWith("latch") && link.along[2] === 1 ? forces[i]! : 0),
      0,
    );
    const floor = joined.links.reduce(
      (sum, { link }, i) => sum + (link.name.startsWith("caster") && link.along[2] === -1 ? forces[i]! : 0),
      0,
    );
    expect(passed).toBeCloseTo(-300, 6);
    expect(floor).toBeCloseTo(-300, 6);
  });

  test("on one latch only the upper is loose, and named", () => {
    const joined = joinedParts([box, upper], [...standing(0, casters), ...latches.slice(0, 3)]);
    expect(() => movedJoined(joined, [empty(structure), load])).toThrow(
      /^upper box is loose: it turns about/,
    );
  });

  test("that do not touch where a latch should join them are named with their distance", () => {
    const away = { ...upper, at: [0, 0, height + 0.035] as const };
    expect(() => joinedParts([box, away], latches)).toThrow(
      "latch 1: test box and upper box do not touch there, they are 25.0 mm apart",
    );
  });

  test("a spring without stiffness is refused", () => {
    expect(() =>
      joinedParts(
        [box, upper],
        latches.map((link) => ({ ...link, stiffness: 0 })),
      ),
    ).toThrow("latch 1: its stiffness must be positive, got 0 N/m");
  });
});

describe("a door", () => {
  const leaf: BoxFace = { sheet: ply, regions: [], cutouts: [] };
  // It stands in the plane of the face, 5 mm clear of the window's sides.
  const door: FreePart = freePart(
    boxStructure({ name: "door", length: 0.29, width: 0, height: 0.19, faces: { y0: leaf } }, coarse),
    [0.105, 0, 0.105],
  );
  const spots = (u: number, v: number): FaceSpots["spots"] => [
    { x: u, y: v - 0.02 },
    { x: u, y: v + 0.02 },
  ];
  const hinge = (name: string, z: number): Link[] => {
    const at: BoxSpot = [0.1025, 0, z];
    const frame = fittingOn(structure, name, [{ face: "y0", spots: spots(0.09, z) }], at);
    const own = fittingOn(
      door.structure,
      name,
      [{ face: "y0", spots: spots(0.015, z - 0.105) }],
      [-0.0025, 0, z - 0.105],
    );
    return axes.map((along) => ({
      name,
      from: { part: 0, fitting: frame },
      to: { part: 1, fitting: own },
      along,
      stiffness: 1e7,
    }));
  };
  const latch = (): Link => {
    const at: BoxSpot = [0.4, 0, 0.2];
    const frame = fittingOn(structure, "latch", [{ face: "y0", spots: spots(0.41, 0.2) }], at);
    const own = fittingOn(
      door.structure,
      "latch",
      [{ face: "y0", spots: spots(0.28, 0.095) }],
      [0.295, 0, 0.095],
    );
    return {
      name: "latch",
      from: { part: 0, fitting: frame },
      to: { part: 1, fitting: own },
      along: [0, 1, 0],
      stiffness: 1e7,
    };
  };
  const hinges = [...hinge("hinge 1", 0.14), ...hinge("hinge 2", 0.26)];
  const wind = pulled(
    fittingOn(door.structure, "hand", plate("y0", 0.145, 0.095), [0.145, 0, 0.095]),
    [0, 50, 0],
    door.structure,
  );

  test("on two hinges and a latch passes a push on to them, and turns freely without the latch", () => {
    const joined = joinedParts([box, door], [...standing(0, casters), ...hinges, latch()]);
    const { forces } = movedJoined(joined, [empty(structure), wind]);
    const across = joined.links.reduce(
      (sum, { link: { name, along } }, i) =>
        sum + (/hinge|latch/.test(name) && along[1] === 1 ? forces[i]! : 0),
      0,
    );
    expect(across).toBeCloseTo(50, 6);
    const open = joinedParts([box, door], [...standing(0, casters), ...hinges]);
    expect(() => movedJoined(open, [empty(structure), wind])).toThrow(/^door is loose: it turns about z/);
  });
});

function dot(a: Float64Array, b: Float64Array): number {
  return a.reduce((sum, value, i) => sum + value * b[i]!, 0);
}
