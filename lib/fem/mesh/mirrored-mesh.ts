/**
 * A panel and its mirror image are meshed as mirror images: of the two, the one that comes first by its places is meshed,
 * and the other gets that mesh mirrored. Meshing itself goes by places in order, and where two choices are as good as
 * each other it takes the first; that is why it alone would not do.
 */

import { circlesOf, mirrored, type Point2 } from "../../shape/index.js";
import { nodesPerElement } from "../element/index.js";
import type { Outline } from "./outline.js";
import type { QuadMesh } from "./quad-mesh.js";
import type { MeshGuides } from "./size.js";

/** A panel as it is meshed. */
export interface MeshView {
  /** Its outline. */
  readonly outline: Outline;
  /** What its mesh follows. */
  readonly guides: MeshGuides;
  /** Whether left and right are changed. */
  readonly mirrors: boolean;
}

/**
 * Meshes a panel, or its mirror image.
 *
 * @param make the mesh of either
 */
export function meshedAlike(
  outline: Outline,
  guides: MeshGuides,
  make: (view: MeshView) => QuadMesh | undefined,
): QuadMesh | undefined {
  const plain: MeshView = { outline, guides: inOrder(guides, outline), mirrors: false };
  const other = mirroredView(plain);
  if (comesFirst(placesOf(plain), placesOf(other), gridOf(outline))) return make(plain);
  const mesh = make(other);
  return mesh && mirroredMesh(mesh, outline.length);
}

function mirroredView({ outline, guides }: MeshView): MeshView {
  const { length, cutouts } = outline;
  const image = ({ x, y }: Point2): Point2 => ({ x: length - x, y });
  return {
    outline: {
      ...outline,
      cutouts: cutouts.map(({ name, shape }) => ({ name, shape: mirrored(shape, length / 2) })),
    },
    guides: inOrder(
      {
        ...guides,
        boxes: guides.boxes.map((box) => ({ ...box, left: length - box.left - box.width })),
        corners: guides.corners.map(image),
        places: guides.places.map(image),
      },
      outline,
    ),
    mirrors: true,
  };
}

function inOrder(guides: MeshGuides, outline: Outline): MeshGuides {
  const grid = gridOf(outline);
  return { ...guides, corners: sorted(guides.corners, grid), places: sorted(guides.places, grid) };
}

/** Width of a grid over a panel, as a share of it: no two places are one, and of a drawn size none lies between two. */
const gridShare = 1.2345678e-9;

/** Width of the grid in which places of a panel are told apart, m. */
export function gridOf({ length, width }: Pick<Outline, "length" | "width">): number {
  return gridShare * Math.max(length, width);
}

function cell(at: number, grid: number): number {
  return Math.round(at / grid);
}

/** Which of two places comes first: by x, then by y. */
function order(a: Point2, b: Point2, grid: number): number {
  return cell(a.x, grid) - cell(b.x, grid) || cell(a.y, grid) - cell(b.y, grid);
}

/** By x, then by y. */
export function sorted<Place extends Point2>(places: readonly Place[], grid: number): Place[] {
  return [...places].sort((a, b) => order(a, b, grid));
}

/** A place without the round-off of the way to it. */
export function settled(at: number, grid: number): number {
  return cell(at, grid) * grid;
}

/** All places that a view is made of. */
function placesOf({ outline, guides }: MeshView): readonly Point2[] {
  const ends = ({ left, bottom, width, height }: MeshGuides["boxes"][number]): Point2[] => [
    { x: left, y: bottom },
    { x: left + width, y: bottom + height },
  ];
  const ofCutouts = outline.cutouts.flatMap(({ shape }) => [
    ...shape.sides.map(({ from }) => from),
    ...circlesOf(shape).map(({ centre }) => centre),
  ]);
  const all = [...ofCutouts, ...guides.boxes.flatMap(ends), ...guides.corners, ...guides.places];
  return sorted(all, gridOf(outline));
}

function comesFirst(one: readonly Point2[], other: readonly Point2[], grid: number): boolean {
  for (const [i, place] of one.entries()) {
    const far = other[i];
    const before = far ? order(place, far, grid) : -1;
    if (before !== 0) return before < 0;
  }
  return true;
}

/** Where a node of an element stands in its mirror image, whose corners run the same way round. */
const otherWayRound = [1, 0, 3, 2, 4, 7, 6, 5, 8];

function mirroredMesh({ x, y, elements, rim }: QuadMesh, length: number): QuadMesh {
  return {
    x: x.map((at) => length - at),
    y,
    elements: elements.map((_, i) => {
      const node = i % nodesPerElement;
      return elements[i - node + (otherWayRound[node] ?? node)] ?? 0;
    }),
    rim: rim.map(([first, middle, last]) => [last, middle, first]),
  };
}
