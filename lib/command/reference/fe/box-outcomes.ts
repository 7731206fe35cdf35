/** Every expected value of a box case beside ours, and the box it describes. */
import {
  alongLine,
  type BoxFace,
  type BoxForce,
  type BoxHold,
  type BoxProblem,
  type BoxSpot,
  type BoxStructure,
  boxStructure,
  type Cutout,
  type FaceName,
  faceNames,
  factoredBox,
  farthestMovement,
  frames,
  looksOut,
  type MeshBox,
  type MovedBox,
  moved,
  movementAt,
  overPatch,
  type SheetRegion,
  sheetOfLayers,
  usualBoxSize,
  wayOfForce,
} from "../../../fem/index.js";
import { compared, type ReferenceOutcome, type ValueNamed } from "../outcome.js";
import type { BoxCase } from "./box-file.js";
import { cutoutOf, layerOf } from "./panel-outcomes.js";

const mm = 1e-3;

/** The problem that a case describes. */
export function boxProblem(found: BoxCase): BoxProblem {
  const { L, W, H, open_faces } = found.geometry;
  const closed = faceNames.filter((name) => !open_faces.includes(name));
  return {
    name: `box ${found.id}`,
    length: L * mm,
    width: W * mm,
    height: H * mm,
    faces: Object.fromEntries(closed.map((name) => [name, faceOf(found, name)])),
  };
}

/** A place in m. */
function boxMetres([x, y, z]: BoxSpot): BoxSpot {
  return [x * mm, y * mm, z * mm];
}

/** The four corner patches of the bottom by their signs along x and y, from 0, 0. */
export function cornerPatches({ geometry: { L, W }, castor_patch: side }: BoxCase): readonly MeshBox[] {
  return [0, 1].flatMap((far) =>
    [0, 1].map((high) => ({
      left: far * (L - side) * mm,
      bottom: high * (W - side) * mm,
      width: side * mm,
      height: side * mm,
    })),
  );
}

function faceOf(found: BoxCase, name: FaceName): BoxFace {
  const { material, thickness, grain, geometry } = found;
  const grainAxis = { x: 0, y: 1, z: 2 }[grain[name] ?? "x"];
  const degrees = frames[name].axes[0] === grainAxis ? 0 : 90;
  const layer = layerOf(material, thickness, degrees);
  return {
    sheet: sheetOfLayers([layer]),
    regions: edgeStrips(found, name, degrees),
    cutouts: geometry.cutouts.flatMap((cutout, i): Cutout[] =>
      cutout.face === name
        ? [
            cutoutOf(
              cutout.type === "circle"
                ? { ...cutout, type: "circle", cx: cutout.u, cy: cutout.v }
                : { ...cutout, type: "rect", x: cutout.u, y: cutout.v },
              i,
            ),
          ]
        : [],
    ),
  };
}

/** Angles bonded outside along the edges: a strip of metal on each side of a face whose neighbour is there. */
function edgeStrips(found: BoxCase, name: FaceName, degrees: number): readonly SheetRegion[] {
  const { edge_angle: angle, material, thickness, geometry } = found;
  if (!angle) return [];
  const [along, across] = frames[name].axes;
  const sizes = [geometry.L * mm, geometry.W * mm, geometry.H * mm];
  const [length, width] = [sizes[along]!, sizes[across]!];
  const metal = layerOf({ ...material, ...angle.material }, angle.thickness, 0);
  const ply = layerOf(material, thickness, degrees);
  const half = (thickness / 2) * mm;
  const sheet = looksOut(name)
    ? sheetOfLayers([ply, metal], half)
    : sheetOfLayers([metal, ply], angle.thickness * mm + half);
  const leg = angle.width * mm;
  const strips: readonly (readonly [FaceName, SheetRegion])[] = [
    [neighbour(across, false), { left: 0, bottom: 0, width: length, height: leg, sheet }],
    [neighbour(across, true), { left: 0, bottom: width - leg, width: length, height: leg, sheet }],
    [neighbour(along, false), { left: 0, bottom: 0, width: leg, height: width, sheet }],
    [neighbour(along, true), { left: length - leg, bottom: 0, width: leg, height: width, sheet }],
  ];
  return strips.flatMap(([other, strip]) => (geometry.open_faces.includes(other) ? [] : [strip]));
}

/** The face at the near or far end of an axis. */
function neighbour(axis: 0 | 1 | 2, far: boolean): FaceName {
  return faceNames.find((name) => frames[name].axes[2] === axis && frames[name].far === far)!;
}

/** All nodes in the corner patches stand still; 500 N along the top edge at x = 0. */
export function racked(found: BoxCase, structure: BoxStructure): MovedBox {
  const { L, W, H } = found.geometry;
  const side = found.castor_patch;
  const within = (at: number, extent: number): boolean => at < side + 1e-6 || at > extent - side - 1e-6;
  const held: BoxHold = {
    where: ([x, y, z]) => z < 1e-9 && within(1e3 * x, L) && within(1e3 * y, W),
    dofs: [0, 1, 2],
  };
  const edge = alongLine(structure, boxMetres([0, 0, H]), boxMetres([0, W, H]));
  return moved(factoredBox(structure, [held]), [{ on: edge, force: [500, 0, 0] }]);
}

/** 200 N on each corner patch, two up and two down; held only against drifting. */
export function twisted(found: BoxCase, structure: BoxStructure): MovedBox {
  const { L, W } = found.geometry;
  const at = (spot: BoxSpot, dofs: readonly number[]): BoxHold => ({
    where: (node) => Math.hypot(...boxMetres(spot).map((place, axis) => place - node[axis]!)) < 1e-7,
    dofs,
  });
  const box = factoredBox(structure, [at([0, 0, 0], [0, 1, 2]), at([L, 0, 0], [1, 2]), at([0, W, 0], [2])]);
  const down = [-1, 1, 1, -1];
  const forces = cornerPatches(found).map(
    (patch, i): BoxForce => ({ on: overPatch(structure, "bottom", patch), force: [0, 0, 200 * down[i]!] }),
  );
  return moved(box, forces);
}

/** How far all forces have moved in their own direction, by their work, mm. */
export function workWay(box: MovedBox): number {
  return 1e3 * box.forces.reduce((sum, force) => sum + wayOfForce(box, force), 0);
}

/** Sides of elements of the coarser mesh, which tells the mesh error, over the usual ones. */
const coarser = 1.7;

/**
 * Runs one box at the usual mesh, and at a coarser one for the mesh error.
 *
 * @throws RangeError for a load case that is not known
 */
export function boxOutcomes(found: BoxCase): readonly ReferenceOutcome[] {
  const problem = boxProblem(found);
  const [fine, coarse] = [1, coarser].map((times) =>
    boxStructure(problem, times * usualBoxSize(problem), cornerPatches(found)),
  ) as [BoxStructure, BoxStructure];
  return Object.entries(found.expected.mindlin).flatMap(([name, expected]) => {
    const run = loadCases[name];
    if (!run) throw new RangeError(`${found.id}: no load case "${name}", expected racking or twist`);
    const [ours, other] = [fine, coarse].map((structure) => valuesOf(found, run(found, structure)));
    return compared(`${found.id} ${name}`, expected, ours!, other!);
  });
}

const loadCases: Readonly<Record<string, (found: BoxCase, structure: BoxStructure) => MovedBox>> = {
  racking: racked,
  twist: twisted,
};

/** Ours in mm by the names of the file. */
function valuesOf(found: BoxCase, box: MovedBox): ValueNamed {
  const size = Math.abs(box.forces[0]!.force[0] + box.forces[0]!.force[2]);
  const way = workWay(box);
  return (name) => {
    if (name === "work_displacement") return way;
    if (name === "stiffness_N_per_mm") return size / way;
    if (name === "umax") return 1e3 * farthestMovement(box);
    const [kind, point = ""] = name.split("@");
    const spot = found.named_points[point];
    return spot && 1e3 * movementAt(box, boxMetres(spot))[["ux", "uy", "uz"].indexOf(kind ?? "")]!;
  };
}
