import { withCornerRings } from "./corner-rings.js";
import { gridCorners, type MeshGuides } from "./grid-corners.js";
import { type Arc, arcsOf, isMaterial, type Outline } from "./outline.js";
import { outlineFaults } from "./outline-faults.js";
import { type QuadMesh, quadMesh, shapeOf, worstAllowed } from "./quad-mesh.js";
import { type CornerMesh, withRimRow } from "./rim-row.js";
import { seated } from "./seated.js";
import { gradedSize } from "./size.js";
import { splitCorners } from "./split-corners.js";

/** How fine a mesh is: about so many elements if none were needed for corners. */
export type Fineness = number;

/** Finenesses tried one after another, in parts of the one asked for, where outlines lie awkwardly. */
const finenessTries = [1, 1.3, 0.8, 1.7];
/** How often the row along the rim is narrowed where it folds an element. */
const narrowings = 5;

/**
 * Meshes a panel: by straight lines when all cutouts are sharp rectangles, by triangles split in squares otherwise.
 *
 * @param drawn the panel
 * @param guides lines of patches and battens, and places to look at
 * @param fineness about how many elements
 * @throws RangeError that names the cutout when the outline cannot be meshed
 */
export function panelMesh(drawn: Outline, guides: MeshGuides, fineness: Fineness): QuadMesh {
  const faults = outlineFaults(drawn);
  if (faults.length > 0) throw new RangeError(`panel mesh: ${faults.join("; ")}`);
  const outline = seated(drawn);
  const area = materialArea(outline);
  if (!(area > 0)) throw new RangeError("panel mesh: the openings leave nothing of the panel");
  const straight = outline.cutouts.every((cutout) => cutout.kind === "rectangle" && cutout.radius === 0);
  const cornersOf = straight ? gridCorners : splitCorners;
  for (const share of finenessTries) {
    const size = gradedSize(outline, guides.corners, Math.sqrt(area / (share * fineness)));
    const corners = withCornerRings(cornersOf(outline, guides, size), guides.corners);
    const mesh = rimmed(corners, guides.rim, outline.cutouts.flatMap(arcsOf));
    if (mesh) return mesh;
  }
  throw new RangeError(
    "panel mesh: an element is folded; part the outlines that come close, or let them meet",
  );
}

/** The mesh with its row along the rims, narrower where it would fold an element; undefined where that does not do. */
export function rimmed(corners: CornerMesh, rim: number, arcs: readonly Arc[]): QuadMesh | undefined {
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
    if (isMaterial(outline, [x * outline.length, y * outline.width])) inside++;
  }
  return (inside / samples ** 2) * outline.length * outline.width;
}
