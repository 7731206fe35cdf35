import { withCornerRings } from "./corner-rings.js";
import { cornersOnLines, type MeshBox } from "./grid-corners.js";
import { arcsOf, type Outline, type Spot } from "./outline.js";
import { outlineFaults } from "./outline-faults.js";
import { rimmed } from "./panel-mesh.js";
import type { QuadMesh } from "./quad-mesh.js";
import { seated } from "./seated.js";
import type { SizeAt } from "./size.js";
import { splitCorners } from "./split-corners.js";

/** What the mesh of a face must follow besides its outline. */
export interface FaceGuides {
  /** Strips of another make-up, their sides among the lines too. */
  readonly boxes: readonly MeshBox[];
  /** Places where strains pile up. */
  readonly corners: readonly Spot[];
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
 * @throws RangeError that names the face and the cutout when the outline cannot be meshed
 */
export function faceMesh(
  name: string,
  drawn: Outline,
  { boxes, corners, rim }: FaceGuides,
  lines: readonly [columns: readonly number[], rows: readonly number[]],
  size: SizeAt,
): QuadMesh {
  const faults = outlineFaults(drawn);
  if (faults.length > 0) throw new RangeError(`${name}: ${faults.join("; ")}`);
  const outline = seated(drawn);
  const straight = outline.cutouts.every((cutout) => cutout.kind === "rectangle" && cutout.radius === 0);
  const plain = straight
    ? cornersOnLines(outline, ...lines)
    : splitCorners(
        outline,
        { boxes, corners, rim: 0, shared: true, places: rimPlaces(outline, lines) },
        size,
      );
  const mesh = rimmed(withCornerRings(plain, corners), rim, outline.cutouts.flatMap(arcsOf));
  if (mesh) return mesh;
  throw new RangeError(`${name}: an element is folded; part the outlines that come close, or let them meet`);
}

/** Every second line where it meets the rim: splitting adds the ones between. */
function rimPlaces(
  { length, width }: Outline,
  [columns, rows]: readonly [readonly number[], readonly number[]],
): Spot[] {
  const second = (lines: readonly number[]): readonly number[] => lines.filter((_, i) => i % 2 === 0);
  return [
    ...second(columns).flatMap((x): Spot[] => [
      [x, 0],
      [x, width],
    ]),
    ...second(rows).flatMap((y): Spot[] => [
      [0, y],
      [length, y],
    ]),
  ];
}
