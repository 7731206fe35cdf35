/** A panel as pieces: its elements, springs and supports. */

import { at as entry } from "../../algebra/lists.js";
import type { Point2 } from "../../shape/index.js";
import {
  bendingStiffness,
  dofsPerNode,
  type ElementMatrix,
  elementStiffness,
  isCoupled,
  type Sheet,
  sharedMatrices,
} from "../element/index.js";
import {
  type ElementTarget,
  elementCount,
  elementMiddle,
  elementNodes,
  elementPlaces,
  type MeshBox,
  onNearSides,
  panelMesh,
  type QuadMesh,
  sharpCorners,
} from "../mesh/index.js";
import type { Piece } from "../solve/index.js";
import type { HeldLine, HeldPoint, PanelProblem } from "./panel-problem.js";
import { across, heldDofs, nodeNear, rotationalSprings, sidesOnLine } from "./panel-supports.js";

/** A panel ready to be factored. */
export interface PanelStructure {
  /** The panel as it was described. */
  readonly problem: PanelProblem;
  /** Its nodes and elements. */
  readonly mesh: QuadMesh;
  /** Make-up of each element. */
  readonly sheets: readonly Sheet[];
  /** They only bend, unless bending stretches the panel too. */
  readonly elements: readonly Piece[];
  /** Springs at elastic edges and points. */
  readonly springs: readonly Piece[];
  /** 1 for each degree of freedom that cannot move. */
  readonly held: Uint8Array;
}

/**
 * Meshes the panel and adds up its pieces.
 *
 * @param problem the panel
 * @param element target of the mesh
 * @param rim width of the row of elements along the rims, m; 0 for none
 * @throws Refusal that names the cutout or the support when it cannot be meshed or held
 */
export function panelStructure(
  problem: PanelProblem,
  elementTarget: ElementTarget,
  rim: number = rimWidth(problem.sheet),
): PanelStructure {
  const { outline, regions, loads, places, heldPoints, masses } = problem;
  const patches = loads.flatMap((load): MeshBox[] =>
    load.kind === "patch" ? [onNearSides(load.over, outline, regions)] : [],
  );
  const points = loads.flatMap((load): Point2[] => (load.kind === "point" ? [load.at] : []));
  const mesh = panelMesh(
    outline,
    {
      boxes: [...regions, ...patches],
      corners: sharpCorners(outline, regions),
      rim,
      shared: false,
      places: [...points, ...places, ...heldPoints.map(({ at }) => at), ...masses.map(({ at }) => at)],
    },
    elementTarget,
  );
  const sheets = Array.from({ length: elementCount(mesh) }, (_, i) =>
    sheetAt(problem, elementMiddle(mesh, i)),
  );
  const coupled = sheets.some(isCoupled);
  return {
    problem,
    mesh,
    sheets,
    elements: elementPieces(mesh, sheets, coupled),
    springs: [
      ...problem.heldLines.flatMap((line) => springsAlong(mesh, line)),
      ...heldPoints.flatMap((point) => springAt(mesh, point)),
    ],
    held: heldDofs(problem, mesh, coupled),
  };
}

/** All degrees of freedom of a node on the plane of its element. */
const allKinds: readonly number[] = [0, 1, 2, 3, 4];

/** Degrees of freedom of an element's nodes in its own order. */
export function elementDofs(
  mesh: QuadMesh,
  element: number,
  kinds: readonly number[] = allKinds,
): Int32Array {
  const nodes = elementNodes(mesh, element);
  const dofs = new Int32Array(kinds.length * nodes.length);
  for (let i = 0; i < dofs.length; i++)
    dofs[i] = dofsPerNode * entry(nodes, Math.floor(i / kinds.length)) + entry(kinds, i % kinds.length);
  return dofs;
}

/** The make-up at a place: that of the last region that covers it. */
export function sheetAt(
  { regions, sheet }: Pick<PanelProblem, "regions" | "sheet">,
  { x, y }: Point2,
): Sheet {
  const covers = ({ left, bottom, width, height }: MeshBox): boolean =>
    x > left && x < left + width && y > bottom && y < bottom + height;
  return regions.findLast(covers)?.sheet ?? sheet;
}

function elementPieces(mesh: QuadMesh, sheets: readonly Sheet[], coupled: boolean): readonly Piece[] {
  const kinds = coupled ? allKinds : [across.w, across.turnX, across.turnY];
  return piecesOf(mesh, sheets, kinds, coupled ? elementStiffness : bendingStiffness);
}

/** A piece for each element: its matrix in some of its nodes' degrees of freedom. */
export function piecesOf(
  mesh: QuadMesh,
  sheets: readonly Sheet[],
  kinds: readonly number[],
  matrix: ElementMatrix,
): readonly Piece[] {
  const shared = sharedMatrices(matrix);
  return sheets.map((sheet, element) => {
    const { x, y } = elementPlaces(mesh, element);
    return {
      dofs: elementDofs(mesh, element, kinds),
      matrix: shared(x, y, sheet),
      middle: inSpace(elementMiddle(mesh, element)),
    };
  });
}

/** A place of the panel as one of space. */
export function inSpace({ x, y }: Point2): Piece["middle"] {
  return [x, y, 0];
}

function springsAlong(mesh: QuadMesh, { from, to, hold }: HeldLine): readonly Piece[] {
  return hold.kind === "elastic" ? rotationalSprings(mesh, sidesOnLine(mesh, from, to), hold.rotational) : [];
}

function springAt(mesh: QuadMesh, { at, spring }: HeldPoint): readonly Piece[] {
  if (spring === undefined) return [];
  const dofs = Int32Array.of(dofsPerNode * nodeNear(mesh, at) + across.w);
  return [{ dofs, matrix: Float64Array.of(spring), middle: inSpace(at) }];
}

/** Width of the row of elements along the rim, in thicknesses. */
const rimThicknesses = 0.6;

/** Width of the row of elements along the rims of a sheet, m. */
export function rimWidth({ faces }: Sheet): number {
  return rimThicknesses * (faces[0] - faces[1]);
}
