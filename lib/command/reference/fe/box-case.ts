/** A box case as a problem for our solver, in SI. */
import {
  type BoxFace,
  type BoxProblem,
  type BoxSpot,
  type Cutout,
  type FaceName,
  faceNames,
  frames,
  looksOut,
  type MeshBox,
  type SheetRegion,
  sheetOfLayers,
} from "../../../fem/index.js";
import type { BoxCase } from "./box-file.js";
import { cutoutOf, layerOf } from "./panel-case.js";

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
export function boxMetres([x, y, z]: BoxSpot): BoxSpot {
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
