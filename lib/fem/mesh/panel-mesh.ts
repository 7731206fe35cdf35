import { gridCorners, type MeshGuides } from "./grid-corners.js";
import { arcsOf, isMaterial, type Outline } from "./outline.js";
import { outlineFaults } from "./outline-faults.js";
import { type QuadMesh, quadMesh, worstAllowed, worstShape } from "./quad-mesh.js";
import { withRimRow } from "./rim-row.js";
import { gradedSize } from "./size.js";
import { splitCorners } from "./split-corners.js";

/** How fine a mesh is: about so many elements if none were needed for corners. */
export type Fineness = number;

/** Widths tried for the row along the rim, where the outline leaves little room for it. */
const rimShares = [1, 0.5, 0.25, 0];

/**
 * Meshes a panel: by straight lines when all cutouts are sharp rectangles, by triangles split in squares otherwise.
 *
 * @param outline the panel
 * @param guides lines of patches and battens, and places to look at
 * @param fineness about how many elements
 * @throws RangeError that names the cutout when the outline cannot be meshed
 */
export function panelMesh(outline: Outline, guides: MeshGuides, fineness: Fineness): QuadMesh {
  const faults = outlineFaults(outline);
  if (faults.length > 0) throw new RangeError(`panel mesh: ${faults.join("; ")}`);
  const size = gradedSize(outline, Math.sqrt(materialArea(outline) / fineness));
  const straight = outline.cutouts.every((cutout) => cutout.kind === "rectangle" && cutout.radius === 0);
  const corners = straight ? gridCorners(outline, guides, size) : splitCorners(outline, guides, size);
  const arcs = outline.cutouts.flatMap(arcsOf);
  for (const share of rimShares) {
    const { places, quads } = share > 0 ? withRimRow(corners, share * guides.rim) : corners;
    const mesh = quadMesh(places, quads, arcs);
    if (worstShape(mesh) > worstAllowed) return mesh;
  }
  throw new RangeError(
    "panel mesh: an element is folded; part the outlines that come close, or let them meet",
  );
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
