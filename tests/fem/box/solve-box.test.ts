/** A box whose edges give, with beams along them: laws, limits, what cannot be. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  alongLine,
  type BoxForce,
  type BoxProblem,
  type BoxSpot,
  type BoxStructure,
  boxStructure,
  type FactoredBox,
  factoredBox,
  heldUp,
  type MovedBox,
  moved,
  movementAt,
  type NodeShares,
  overPatch,
  type SeamFlow,
  type Sheet,
  seamFlows,
  seamLoad,
  spaceDofs,
  storedEnergy,
  wayOfForce,
} from "../../../lib/fem/index.js";
import { scaled as scaledShape } from "../../../lib/shape/index.js";
import { allSeams, angle, plyBox, size } from "../boxes.js";
import { ply } from "../sheets.js";

const coarse = 0.2;
const riveted = { slip: 2e7, opening: 2e7, rotational: 500 };
const [length, width, height] = size;
const soft = plyBox(ply, {
  seams: allSeams(riveted),
  beams: [{ name: "angle", on: "bottom", from: [0, 0, 0], to: [length, 0, 0], section: angle }],
});

/** Held within the bottom near its corners, so that only seams carry to the bottom. */
function standing(problem: BoxProblem): FactoredBox {
  const within = (at: number, extent: number): boolean =>
    (at > 1e-9 && at < 0.13) || (at > extent - 0.13 && at < extent - 1e-9);
  const where = ([x, y, z]: BoxSpot): boolean => z < 1e-9 && within(x, length) && within(y, width);
  return factoredBox(boxStructure(problem, coarse), [{ where, dofs: [0, 1, 2] }]);
}

function topEdge({ structure }: FactoredBox): NodeShares {
  return alongLine(structure, [0, 0, height], [0, width, height]);
}

function racked(problem: BoxProblem): MovedBox {
  const box = standing(problem);
  return moved(box, [{ on: topEdge(box), force: [100, 0, 0] }]);
}

function rackWay(problem: BoxProblem): number {
  const box = racked(problem);
  return wayOfForce(box, box.forces[0]!);
}

const box = standing(soft);

describe("laws, with seams that give and a beam", () => {
  const node = fc.integer({ min: 0, max: box.structure.nodes.length - 1 });
  const way = fc.constantFrom<BoxSpot>([1, 0, 0], [0, 1, 0], [0, 0, 1]);
  const runs = { numRuns: 12 };
  const at = (one: number): NodeShares => ({ nodes: [one], shares: [1] });

  test("a force here moves there as a force there moves here (Maxwell and Betti)", () => {
    fc.assert(
      fc.property(node, way, node, way, (a, along, b, across) => {
        const [here, there] = [
          { on: at(a), force: along },
          { on: at(b), force: across },
        ];
        const one = wayOfForce({ ...moved(box, [here]) }, there);
        const other = wayOfForce(moved(box, [there]), here);
        expect(Math.abs(one - other)).toBeLessThan(1e-9 * Math.max(Math.abs(one), 1e-6));
      }),
      runs,
    );
  });

  test("loads add up", () => {
    fc.assert(
      fc.property(node, way, fc.integer({ min: -500, max: 500 }), (a, along, force) => {
        const one: BoxForce = { on: at(a), force: along.map((share) => force * share) as unknown as BoxSpot };
        const other: BoxForce = { on: topEdge(box), force: [100, 20, -7] };
        const [first, second, both] = [[one], [other], [one, other]].map(
          (forces) => moved(box, forces).displacement,
        );
        const scale = Math.max(...both!.map(Math.abs), 1e-9);
        const off = both!.map((value, i) => Math.abs(value - first![i]! - second![i]!));
        expect(Math.max(...off)).toBeLessThan(1e-9 * scale);
      }),
      runs,
    );
  });

  test("what the box stores is half of force times way", () => {
    fc.assert(
      fc.property(node, way, fc.integer({ min: 1, max: 500 }), (a, along, force) => {
        const push: BoxForce = {
          on: at(a),
          force: along.map((share) => force * share) as unknown as BoxSpot,
        };
        const pushed = moved(box, [push]);
        fc.pre(wayOfForce(pushed, push) > 1e-12);
        expect(storedEnergy(pushed) / ((force * wayOfForce(pushed, push)) / 2)).toBeCloseTo(1, 6);
      }),
      runs,
    );
  });

  test("supports push back with all that is loaded, and the seams of a face with all that lies on it", () => {
    const pressed = moved(box, [
      {
        on: overPatch(box.structure, "y1", { left: 0.05, bottom: 0.05, width: 0.4, height: 0.3 }),
        force: [3, 40, -9],
      },
    ]);
    const up = heldUp(pressed);
    [3, 40, -9].forEach((force, axis) => {
      expect(up[axis]).toBeCloseTo(-force, 6);
    });
    // The seams of y1, whichever way round each is named: what they carry holds the face.
    const carried = (soft.seams ?? [])
      .filter(({ faces }) => faces.includes("y1"))
      .flatMap((seam) =>
        seamFlows(pressed.structure, pressed.displacement, seam).map(({ force, length: long }) =>
          force.map((each) => (seam.faces[1] === "y1" ? each : -each) * long),
        ),
      )
      .reduce((sum, force) => sum.map((each, axis) => each + force[axis]!), [0, 0, 0]);
    [3, 40, -9].forEach((force, axis) => {
      expect(carried[axis]).toBeCloseTo(-force, 6);
    });
  });

  test("a box and its mirror image move alike", () => {
    const plain = plyBox(ply, { seams: allSeams(riveted) });
    const sheet = plain.faces.y1!;
    const closed = { ...plain, faces: { ...plain.faces, y0: sheet } };
    const solved = racked(closed);
    const [left, right] = [0, width].map((y) => movementAt(solved, [length, y, height]));
    expect(left![0] / right![0]).toBeCloseTo(1, 6);
    expect(left![1] / right![1]).toBeCloseTo(-1, 6);
  });
});

describe("limits", () => {
  const rigid = rackWay(plyBox());

  test("seams far stiffer than the sheets are rigid seams", () => {
    const stiff = { slip: 1e13, opening: 1e13, rotational: 1e8 };
    expect(rackWay(plyBox(ply, { seams: allSeams(stiff) })) / rigid).toBeCloseTo(1, 4);
  });

  test("a stiffer seam never makes a softer box", () => {
    const stiffness = fc.double({ min: 5, max: 10, noNaN: true });
    fc.assert(
      fc.property(stiffness, fc.double({ min: 1, max: 3, noNaN: true }), (power, more) => {
        const seams = (by: number): BoxProblem =>
          plyBox(ply, {
            seams: allSeams({ slip: by * 10 ** power, opening: by * 10 ** power, rotational: by * 100 }),
          });
        const [before, after] = [rackWay(seams(1)), rackWay(seams(more))];
        expect(after).toBeLessThanOrEqual(before * (1 + 1e-9));
        expect(after).toBeGreaterThanOrEqual(rigid * (1 - 1e-9));
      }),
      { numRuns: 3 },
    );
  });

  test("a beam along an edge never makes a softer box", () => {
    expect(rackWay(soft)).toBeLessThan(rackWay({ ...soft, beams: [] }));
  });

  test("the unit of length changes nothing but the numbers", () => {
    // A millimetre for a metre: lengths by 1000, forces a length by 1/1000, moduli by a millionth.
    const by = 1000;
    const scaled = (rows: Sheet["bending"], share: number): Sheet["bending"] =>
      rows.map((row) => row.map((value) => value * share)) as unknown as Sheet["bending"];
    const sheet: Sheet = {
      ...ply,
      membrane: scaled(ply.membrane, 1 / by),
      bending: scaled(ply.bending, by),
      shear: ply.shear.map((value) => value / by) as unknown as Sheet["shear"],
      faces: ply.faces.map((at) => at * by) as unknown as Sheet["faces"],
    };
    const metres = plyBox(ply, { seams: allSeams(riveted) });
    const seams = allSeams({ slip: 2e7 / by ** 2, opening: 2e7 / by ** 2, rotational: 500 });
    const plain = plyBox(sheet, { seams, length: by * length, width: by * width, height: by * height });
    const faces = Object.fromEntries(
      Object.entries(plain.faces).map(([name, face]) => [
        name,
        {
          ...face,
          cutouts: face.cutouts.map(({ name: cutName, shape }) => ({
            name: cutName,
            shape: scaledShape(shape, by, { x: 0, y: 0 }),
          })),
        },
      ]),
    );
    const structure = boxStructure({ ...plain, faces }, by * coarse);
    const far = [by * length, by * width, by * height] as const;
    const within = (at: number, extent: number): boolean =>
      (at > 1e-6 && at < 130) || (at > extent - 130 && at < extent - 1e-6);
    const where = ([x, y, z]: BoxSpot): boolean => z < 1e-6 && within(x, far[0]) && within(y, far[1]);
    const solved = moved(factoredBox(structure, [{ where, dofs: [0, 1, 2] }]), [
      { on: alongLine(structure, [0, 0, far[2]], [0, far[1], far[2]]), force: [100, 0, 0] },
    ]);
    expect(wayOfForce(solved, solved.forces[0]!) / by / rackWay(metres)).toBeCloseTo(1, 6);
  });
});

describe("seams", () => {
  test("along the bottom carry all of a push along the top, the walls along it alike and nearly all", () => {
    const plain = plyBox(ply, { seams: allSeams(riveted) });
    const closed: BoxProblem = { ...plain, faces: { ...plain.faces, y0: plain.faces.y1! } };
    const pushed = racked(closed);
    const flowsOf = (wall: string): readonly SeamFlow[] =>
      seamFlows(
        pushed.structure,
        pushed.displacement,
        closed.seams!.find(({ faces }) => faces[0] === "bottom" && faces[1] === wall)!,
      );
    const along = (wall: string): number =>
      flowsOf(wall).reduce((sum, { force, length: own }) => sum + force[0] * own, 0);
    const [front, back, left, right] = ["y0", "y1", "x0", "x1"].map(along) as [
      number,
      number,
      number,
      number,
    ];
    expect(front + back + left + right).toBeCloseTo(-100, 6);
    expect(front / back).toBeCloseTo(1, 6);
    expect(front + back).toBeLessThan(-80);
    const { mean, peak } = seamLoad(flowsOf("y1"), 0.05);
    expect(peak).toBeGreaterThan(mean);
    expect(mean * length).toBeGreaterThan(-back);
  });

  const structure = (changes: Partial<BoxProblem>): BoxStructure =>
    boxStructure(plyBox(ply, changes), coarse);

  test.each<[string, Partial<BoxProblem>]>([
    [
      "test box: bottom and top do not touch, they are 400 mm apart",
      { seams: [{ ...riveted, faces: ["bottom", "top"] }] },
    ],
    [
      "test box: a seam needs face top, which is open",
      {
        seams: [{ ...riveted, faces: ["x0", "top"] }],
        faces: { bottom: plyBox().faces.bottom!, x0: plyBox().faces.x0! },
      },
    ],
    [
      "seam of x0 and top: slip must not be negative, got -1",
      { seams: [{ ...riveted, slip: -1, faces: ["x0", "top"] }] },
    ],
  ])("refuses: %s", (message, changes) => {
    expect(() => structure(changes)).toThrow(message);
  });

  test("without any stiffness leave a face loose, which is named", () => {
    const loose = plyBox(ply, {
      seams: allSeams(riveted).map((seam) =>
        seam.faces.includes("top") ? { ...seam, slip: 0, opening: 0, rotational: 0 } : seam,
      ),
    });
    expect(() => standing(loose)).toThrow(
      /^test box is loose: top at .* without resistance; hold it better$/,
    );
  });

  test("give each face its own nodes along them, and no more freedoms than its sheet has", () => {
    const [shared, apart] = [structure({}), structure({ seams: allSeams(riveted) })];
    const seamNodes = shared.nodes.filter(
      (spot) => spot.filter((at, axis) => at < 1e-9 || at > size[axis]! - 1e-9).length === 2,
    );
    const corners = 8;
    expect(apart.nodes.length).toBe(shared.nodes.length + seamNodes.length + 2 * corners);
    expect(spaceDofs).toBe(6);
  });
});
