/** Meshes of whole panels: one by itself, or a face of a box that shares its sides with others. */

import { Refusal } from "../../refusal.js";
import { circleOf, type Point2, rectangle, roundedBoxOf } from "../../shape/index.js";
import { cornersOnLines, gridCorners } from "./grid-corners.js";
import { gridOf, type MeshView, meshedAlike } from "./mirrored-mesh.js";
import { type Arc, arcsOf, type Cutout, isMaterial, type Outline, sharpBoxesOf } from "./outline.js";
import { outlineFaults } from "./outline-faults.js";
import { type QuadMesh, quadMesh, shapeOf, worstAllowed } from "./quad-mesh.js";
import { type CornerMesh, withCornerRings, withRimRow } from "./refinement.js";
import { gradedSize, type MeshBox, type MeshGuides, type SizeAt } from "./size.js";
import { splitCorners } from "./split-corners.js";

/** How fine a mesh is: about so many elements if none were needed for corners. */
export type ElementTarget = number;

/** Element targets tried one after another, in parts of the one asked for, where outlines lie awkwardly. */
const targetTries = [1, 1.3, 0.8, 1.7];
/** How often the row along the rim is narrowed where it folds an element. */
const narrowings = 5;

/**
 * Meshes a panel: by straight lines when all cutouts are sharp rectangles, by triangles split in squares otherwise.
 *
 * @param drawn the panel
 * @param guides lines of patches and battens, and places to look at
 * @param element target about how many elements
 * @throws Refusal that names the cutout when the outline cannot be meshed
 */
export function panelMesh(drawn: Outline, guides: MeshGuides, elementTarget: ElementTarget): QuadMesh {
  const faults = outlineFaults(drawn);
  if (faults.length > 0) throw new Refusal(`panel mesh: ${faults.join("; ")}`);
  const outline = seated(drawn);
  const area = materialArea(outline);
  if (!(area > 0)) throw new Refusal("panel mesh: the openings leave nothing of the panel");
  const mesh = meshedAlike(outline, guides, (view) => panelMeshOf(view, area, elementTarget));
  if (mesh) return mesh;
  throw new Refusal("panel mesh: an element is folded; part the outlines that come close, or let them meet");
}

function panelMeshOf(
  { outline, guides }: MeshView,
  area: number,
  elementTarget: ElementTarget,
): QuadMesh | undefined {
  const cornersOf = sharpBoxesOf(outline) !== undefined ? gridCorners : splitCorners;
  for (const share of targetTries) {
    const size = gradedSize(outline, guides.corners, Math.sqrt(area / (share * elementTarget)));
    const corners = withCornerRings(cornersOf(outline, guides, size), guides.corners);
    const mesh = rimmed(corners, guides.rim, outline.cutouts.flatMap(arcsOf));
    if (mesh) return mesh;
  }
  return undefined;
}

/**
 * The mesh with its row along the rims, narrower where it would fold an element; undefined where that does not do.
 */
function rimmed(corners: CornerMesh, rim: number, arcs: readonly Arc[]): QuadMesh | undefined {
  const shares = new Map<number, number>();
  for (let round = 0; round < narrowings; round++) {
    const { places, quads, rimOf } =
      rim > 0 ? withRimRow(corners, rim, shares) : { ...corners, rimOf: shares };
    const mesh = quadMesh(places, quads, arcs);
    const folded = quads.filter((_, element) => shapeOf(mesh, element) < worstAllowed);
    if (folded.length === 0) return mesh;
    for (const corner of new Set(folded.flat().flatMap((one) => rimOf.get(one) ?? [])))
      shares.set(corner, (shares.get(corner) ?? 1) / 2);
  }
  return undefined;
}

/** Share of a grid of samples that is material, times the panel's area. */
function materialArea(outline: Outline): number {
  const samples = 60;
  let inside = 0;
  for (let i = 0; i < samples * samples; i++) {
    const x = ((i % samples) + 0.5) / samples;
    const y = (Math.floor(i / samples) + 0.5) / samples;
    if (isMaterial(outline, { x: x * outline.length, y: y * outline.width })) inside++;
  }
  return (inside / samples ** 2) * outline.length * outline.width;
}

/** What the mesh of a face must follow besides its outline. */
export interface FaceGuides {
  /** Strips of another make-up, their sides among the lines too. */
  readonly boxes: readonly MeshBox[];
  /** Places where strains pile up. */
  readonly corners: readonly Point2[];
  /** Width of a row of elements along all rims, m. */
  readonly rim: number;
}

/**
 * Meshes a face whose four sides other faces share, so that nodes on the sides lie where the lines say.
 *
 * @param name what messages call the face
 * @param drawn outline of the face; the sides of its sharp rectangles are among the lines
 * @param guides what else it must follow
 * @param lines along x and y of the face: every second one is the middle of its neighbours
 * @param size of elements
 * @throws Refusal that names the face and the cutout when the outline cannot be meshed
 */
export function faceMesh(
  name: string,
  drawn: Outline,
  { boxes, corners, rim }: FaceGuides,
  lines: readonly [columns: readonly number[], rows: readonly number[]],
  size: SizeAt,
): QuadMesh {
  const faults = outlineFaults(drawn);
  if (faults.length > 0) throw new Refusal(`${name}: ${faults.join("; ")}`);
  const outline = seated(drawn);
  const guides = { boxes, corners, rim, shared: true, places: rimPlaces(outline, lines) };
  const mesh = meshedAlike(outline, guides, (view) => faceMeshOf(view, lines, size));
  if (mesh) return ontoLines(mesh, outline, lines);
  throw new Refusal(`${name}: an element is folded; part the outlines that come close, or let them meet`);
}

function faceMeshOf(
  { outline, guides, mirrors }: MeshView,
  [columns, rows]: readonly [columns: readonly number[], rows: readonly number[]],
  size: SizeAt,
): QuadMesh | undefined {
  const { length } = outline;
  const straight = sharpBoxesOf(outline) !== undefined;
  const sizeAt: SizeAt = mirrors ? ({ x, y }) => size({ x: length - x, y }) : size;
  const along = mirrors ? columns.map((at) => length - at).reverse() : columns;
  const plain = straight
    ? cornersOnLines(outline, along, rows)
    : splitCorners(outline, { ...guides, rim: 0 }, sizeAt);
  const corners = withCornerRings(plain, guides.corners);
  return rimmed(corners, guides.rim, outline.cutouts.flatMap(arcsOf));
}

/** Widths of the grid within which a place is one of the lines. */
const settling = 10;

/** The mesh with its nodes on the rim to the last digit where the lines meet it, so that faces share them. */
function ontoLines(
  mesh: QuadMesh,
  { length, width }: Outline,
  [columns, rows]: readonly [columns: readonly number[], rows: readonly number[]],
): QuadMesh {
  const near = settling * gridOf({ length, width });
  const onLine = (at: number, lines: readonly number[]): number =>
    lines.find((line) => Math.abs(line - at) < near) ?? at;
  const isEnd = (at: number, extent: number): boolean => Math.abs(at) < near || Math.abs(at - extent) < near;
  return {
    ...mesh,
    x: mesh.x.map((at, i) => (isEnd(mesh.y[i]!, width) ? onLine(at, columns) : at)),
    y: mesh.y.map((at, i) => (isEnd(mesh.x[i]!, length) ? onLine(at, rows) : at)),
  };
}

/** Every second line where it meets the rim: splitting adds the ones between. */
function rimPlaces(
  { length, width }: Outline,
  [columns, rows]: readonly [readonly number[], readonly number[]],
): Point2[] {
  const second = (lines: readonly number[]): readonly number[] => lines.filter((_, i) => i % 2 === 0);
  return [
    ...second(columns).flatMap((x) => [
      { x, y: 0 },
      { x, y: width },
    ]),
    ...second(rows).flatMap((y) => [
      { x: 0, y },
      { x: length, y },
    ]),
  ];
}

/** Distance that counts as touching, as a share of the panel's larger side. */
const touching = 1e-6;

/**
 * The outline with every rectangle that touches a side of the panel run out to it: exactly, where drawn sizes add up
 * to a hair less or more, and past it by its corner radius, so that a rounded notch is as wide at its mouth as
 * inside.
 *
 * @param outline as drawn
 */
export function seated(outline: Outline): Outline {
  return { ...outline, cutouts: outline.cutouts.map((cutout) => seatedCutout(cutout, outline)) };
}

function seatedCutout(cutout: Cutout, { length, width }: Outline): Cutout {
  const box = circleOf(cutout.shape) ? undefined : roundedBoxOf(cutout.shape);
  if (!box) return cutout;
  const { radius } = box;
  const near = touching * Math.max(length, width);
  const [drawnRight, drawnTop] = [box.left + box.width, box.bottom + box.height];
  const [left, right] = seatedSides(box.left, drawnRight, length, radius, near);
  const [bottom, top] = seatedSides(box.bottom, drawnTop, width, radius, near);
  const same = left === box.left && right === drawnRight && bottom === box.bottom && top === drawnTop;
  return same
    ? cutout
    : { ...cutout, shape: rectangle({ left, bottom, width: right - left, height: top - bottom }, radius) };
}

function seatedSides(
  low: number,
  high: number,
  extent: number,
  radius: number,
  near: number,
): readonly [low: number, high: number] {
  return [Math.abs(low) < near ? -radius : low, Math.abs(high - extent) < near ? extent + radius : high];
}
