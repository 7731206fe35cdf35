/** A panel as pieces: its elements, springs and supports. */
import { elementStiffness, freedomsPerNode, isCoupled, type Sheet } from "../element/index.js";
import {
  elementCount,
  elementMiddle,
  elementNodes,
  elementPlaces,
  type Fineness,
  type MeshBox,
  panelMesh,
  type QuadMesh,
  type Spot,
} from "../mesh/index.js";
import type { Piece } from "../solve/index.js";
import { nodeNear, sidesOnLine } from "./nodes-on.js";
import type { HeldLine, HeldPoint, PanelProblem } from "./panel-problem.js";
import { across, heldFreedoms } from "./panel-supports.js";
import { turningSprings } from "./turning-springs.js";

/** A panel ready to be factored. */
export interface PanelStructure {
  readonly problem: PanelProblem;
  readonly mesh: QuadMesh;
  /** Make-up of each element. */
  readonly sheets: readonly Sheet[];
  readonly elements: readonly Piece[];
  /** Springs at elastic edges and points. */
  readonly springs: readonly Piece[];
  /** 1 for each freedom that cannot move. */
  readonly held: Uint8Array;
}

/**
 * Meshes the panel and adds up its pieces.
 *
 * @param problem the panel
 * @param fineness of the mesh
 * @throws RangeError that names the cutout or the support when it cannot be meshed or held
 */
export function panelStructure(problem: PanelProblem, fineness: Fineness): PanelStructure {
  const { outline, regions, loads, places, heldPoints, masses } = problem;
  const patches = loads.flatMap((load): MeshBox[] => (load.kind === "patch" ? [load.over] : []));
  const points = loads.flatMap((load): Spot[] => (load.kind === "point" ? [load.at] : []));
  const mesh = panelMesh(
    outline,
    {
      boxes: [...regions, ...patches],
      rim: rimWidth(problem),
      shared: false,
      places: [...points, ...places, ...heldPoints.map(({ at }) => at), ...masses.map(({ at }) => at)],
    },
    fineness,
  );
  const sheets = Array.from({ length: elementCount(mesh) }, (_, i) =>
    sheetAt(problem, elementMiddle(mesh, i)),
  );
  return {
    problem,
    mesh,
    sheets,
    elements: sheets.map((sheet, i) => elementPiece(mesh, i, sheet)),
    springs: [
      ...problem.heldLines.flatMap((line) => springsAlong(mesh, line)),
      ...heldPoints.flatMap((point) => springAt(mesh, point)),
    ],
    held: heldFreedoms(problem, mesh, sheets.some(isCoupled)),
  };
}

/** Freedoms of an element's nodes in its own order. */
export function elementFreedoms(mesh: QuadMesh, element: number): Int32Array {
  return Int32Array.from(
    Array.from(elementNodes(mesh, element)).flatMap((node) =>
      Array.from({ length: freedomsPerNode }, (_, kind) => freedomsPerNode * node + kind),
    ),
  );
}

/** The make-up at a place: that of the last region that covers it. */
export function sheetAt({ regions, sheet }: Pick<PanelProblem, "regions" | "sheet">, [x, y]: Spot): Sheet {
  const covers = ({ left, bottom, width, height }: MeshBox): boolean =>
    x > left && x < left + width && y > bottom && y < bottom + height;
  return regions.findLast(covers)?.sheet ?? sheet;
}

function elementPiece(mesh: QuadMesh, element: number, sheet: Sheet): Piece {
  const { x, y } = elementPlaces(mesh, element);
  return {
    freedoms: elementFreedoms(mesh, element),
    matrix: elementStiffness(x, y, sheet),
    middle: [...elementMiddle(mesh, element), 0],
  };
}

function springsAlong(mesh: QuadMesh, { from, to, hold }: HeldLine): readonly Piece[] {
  return hold.kind === "elastic" ? turningSprings(mesh, sidesOnLine(mesh, from, to), hold.turning) : [];
}

function springAt(mesh: QuadMesh, { at, spring }: HeldPoint): readonly Piece[] {
  if (spring === undefined) return [];
  const freedoms = Int32Array.of(freedomsPerNode * nodeNear(mesh, at) + across.w);
  return [{ freedoms, matrix: Float64Array.of(spring), middle: [...at, 0] }];
}

/** Width of the row of elements along the rim, in thicknesses. */
const rimThicknesses = 0.6;

function rimWidth({ sheet: { faces } }: PanelProblem): number {
  return rimThicknesses * (faces[0] - faces[1]);
}
