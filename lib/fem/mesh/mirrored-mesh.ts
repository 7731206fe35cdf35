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
  const plain: MeshView = { outline, guides: inOrder(guides), mirrors: false };
  const other = mirroredView(plain);
  if (comesFirst(placesOf(plain), placesOf(other))) return make(plain);
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
    guides: inOrder({
      ...guides,
      boxes: guides.boxes.map((box) => ({ ...box, left: length - box.left - box.width })),
      corners: guides.corners.map(image),
      places: guides.places.map(image),
    }),
    mirrors: true,
  };
}

function inOrder(guides: MeshGuides): MeshGuides {
  return { ...guides, corners: sorted(guides.corners), places: sorted(guides.places) };
}

/** Places in a grid so fine that no two of a panel are one, and of an odd width, so that no drawn size lies between, m. */
const grid = 1.2345678e-9;

function cell(at: number): number {
  return Math.round(at / grid);
}

/** By x, then by y. */
export function sorted<Place extends Point2>(places: readonly Place[]): Place[] {
  return [...places].sort((a, b) => cell(a.x) - cell(b.x) || cell(a.y) - cell(b.y));
}

/** A place without the round-off of the way to it. */
export function settled(at: number): number {
  return cell(at) * grid;
}

/** All places that a view is made of. */
function placesOf({ outline: { cutouts }, guides }: MeshView): readonly Point2[] {
  const ends = ({ left, bottom, width, height }: MeshGuides["boxes"][number]): Point2[] => [
    { x: left, y: bottom },
    { x: left + width, y: bottom + height },
  ];
  return sorted([
    ...cutouts.flatMap(({ shape }) => [
      ...shape.sides.map(({ from }) => from),
      ...circlesOf(shape).map(({ centre }) => centre),
    ]),
    ...guides.boxes.flatMap(ends),
    ...guides.corners,
    ...guides.places,
  ]);
}

function comesFirst(one: readonly Point2[], other: readonly Point2[]): boolean {
  for (const [i, { x, y }] of one.entries()) {
    const far = other[i];
    const before = far ? cell(x) - cell(far.x) || cell(y) - cell(far.y) : -1;
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
