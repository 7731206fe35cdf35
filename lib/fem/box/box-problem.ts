/** A box of flat faces that meet at their middle planes: 0, 0, 0 to length, width, height. SI throughout. */

import type { Point2 } from "../../shape/index.js";
import type { BeamSection, Sheet } from "../element/index.js";
import type { Cutout } from "../mesh/index.js";
import type { SheetRegion } from "../panel/index.js";

/** Names of the six faces. */
export const faceNames = ["bottom", "top", "x0", "x1", "y0", "y1"] as const;

/** One of the six faces: x0 stands at x = 0, x1 at x = length. */
export type FaceName = (typeof faceNames)[number];

/** x, y, z in m. */
export type BoxSpot = readonly [x: number, y: number, z: number];

/** One face in its own axes: bottom and top x, y; x0 and x1 y, z; y0 and y1 x, z. */
export interface BoxFace {
  /** Make-up, its axes those of the face, +z where `frames` says. */
  readonly sheet: Sheet;
  /** Strips of another make-up. */
  readonly regions: readonly SheetRegion[];
  /** Openings and notches in the face. */
  readonly cutouts: readonly Cutout[];
  /** Whether triangles mesh it even where straight lines would do, which run on through the faces beside it. */
  readonly freely?: boolean;
}

/** How two faces hold together along the edge where they meet: a riveted extrusion, a line of glue. */
export interface BoxSeam {
  /** The two faces that meet. */
  readonly faces: readonly [FaceName, FaceName];
  /** Force on each metre over the slip along the seam, N/m2. */
  readonly slip: number;
  /** Force on each metre over the gap, either way across the seam, N/m2. */
  readonly opening: number;
  /** Moment on each metre over the change of the angle, N m a radian on each metre; 0 turns freely. */
  readonly rotational: number;
}

/** A beam along a straight line of a face: an edge extrusion, a batten. */
export interface BoxBeam {
  /** What messages call it. */
  readonly name: string;
  /** The face whose nodes it follows; the other face of a sprung seam follows through the seam. */
  readonly on: FaceName;
  /** One end of the beam's line, in the box. */
  readonly from: BoxSpot;
  /** The other end of the beam's line. */
  readonly to: BoxSpot;
  /** Stiffness of the beam, and where it lies beside the line. */
  readonly section: BeamSection;
}

/** A box. */
export interface BoxProblem {
  /** What messages call it. */
  readonly name: string;
  /** Along x, between the middle planes of x0 and x1, m. */
  readonly length: number;
  /** Along y, between the middle planes of y0 and y1, m. */
  readonly width: number;
  /** Along z, between the middle planes of bottom and top, m. */
  readonly height: number;
  /** Faces left out are open. */
  readonly faces: Readonly<Partial<Record<FaceName, BoxFace>>>;
  /** Edges that give; all others are rigid. */
  readonly seams?: readonly BoxSeam[];
  /** Beams along lines of the faces; none when left out. */
  readonly beams?: readonly BoxBeam[];
}

/** How a face lies in the box. */
export interface Frame {
  /** Axes of the box along the face's x and y, and across it. */
  readonly axes: readonly [0 | 1 | 2, 0 | 1 | 2, 0 | 1 | 2];
  /** Whether the face's +z runs along its third axis (1) or against it (-1). */
  readonly sense: 1 | -1;
  /** Whether the face lies at the far end of its third axis. */
  readonly far: boolean;
}

/** How each face lies. */
export const frames: Readonly<Record<FaceName, Frame>> = {
  bottom: { axes: [0, 1, 2], sense: 1, far: false },
  top: { axes: [0, 1, 2], sense: 1, far: true },
  x0: { axes: [1, 2, 0], sense: 1, far: false },
  x1: { axes: [1, 2, 0], sense: 1, far: true },
  y0: { axes: [0, 2, 1], sense: -1, far: false },
  y1: { axes: [0, 2, 1], sense: -1, far: true },
};

/** Whether a face's +z looks out of the box. */
export function looksOut(face: FaceName): boolean {
  const { sense, far } = frames[face];
  return sense === (far ? 1 : -1);
}

/** Sizes of a box along x, y, z. */
export function extents({ length, width, height }: BoxProblem): BoxSpot {
  return [length, width, height];
}

/** A place of a face in the box. */
export function onFace(problem: BoxProblem, face: FaceName, { x: u, y: v }: Point2): BoxSpot {
  const { axes, far } = frames[face];
  const spot: [number, number, number] = [0, 0, 0];
  spot[axes[0]] = u;
  spot[axes[1]] = v;
  spot[axes[2]] = far ? extents(problem)[axes[2]] : 0;
  return spot;
}
