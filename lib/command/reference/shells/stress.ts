import type { Sheet } from "../../../fem/element/index.js";
import { type QuadMesh, strainsAtHeight, strainsNear } from "../../../fem/index.js";
import { nodeAt, type SolvedShell } from "./solve-shell.js";

/** Stress of a plane sheet. */
export interface PlaneStress {
  readonly x: number;
  readonly y: number;
  readonly shear: number;
}

/**
 * Stress of a flat plate at a node and a height, from the elements around it.
 *
 * @param solved a plate in the plane z = 0
 * @param parameters of the node
 * @param sheet a single layer
 * @param height above the middle
 */
export function stressAt(
  solved: SolvedShell,
  parameters: readonly [number, number],
  sheet: Sheet,
  height: number,
): PlaneStress {
  const { mesh } = solved;
  const place = mesh.nodes[nodeAt(mesh, parameters)]!;
  const flat: QuadMesh = {
    x: Float64Array.from(mesh.nodes, ([x]) => x),
    y: Float64Array.from(mesh.nodes, ([, y]) => y),
    elements: Int32Array.from(mesh.elements.flat()),
    rim: [],
  };
  const { strains } = strainsNear(
    { structure: { mesh: flat, sheets: mesh.elements.map(() => sheet) }, displacement: solved.turned() },
    [place[0], place[1]],
  );
  const strain = strainsAtHeight(strains, height);
  const [x = 0, y = 0, shear = 0] = sheet.membrane.map(
    (row) => row.reduce((sum, entry, i) => sum + entry * strain[i]!, 0) / (sheet.faces[0] - sheet.faces[1]),
  );
  return { x, y, shear };
}
