/** Boxes that the tests share. */
import {
  type BeamSection,
  type BoxProblem,
  type BoxSeam,
  type BoxSpot,
  type FaceName,
  faceNames,
  frames,
  type Sheet,
} from "../../lib/fem/index.js";
import { cut, ply } from "./sheets.js";

/** Sizes of the box, m. */
export const size: BoxSpot = [0.6, 0.5, 0.4];

/** A closed box of one sheet, a window in one face, a port in another. */
export function plyBox(sheet: Sheet = ply, changes: Partial<BoxProblem> = {}): BoxProblem {
  const plain = { sheet, regions: [], cutouts: [] };
  const window = cut({
    kind: "rectangle",
    name: "window",
    left: 0.1,
    bottom: 0.1,
    width: 0.3,
    height: 0.2,
    radius: 0,
  });
  return {
    name: "test box",
    length: size[0],
    width: size[1],
    height: size[2],
    faces: {
      bottom: plain,
      top: plain,
      x0: plain,
      x1: plain,
      y0: { ...plain, cutouts: [window] },
      y1: plain,
    },
    ...changes,
  };
}

/** The twelve edges of a box as seams that give alike. */
export function allSeams(stiffness: Omit<BoxSeam, "faces">): readonly BoxSeam[] {
  return faceNames.flatMap((one, i) =>
    faceNames
      .slice(i + 1)
      .flatMap((other: FaceName) =>
        frames[one].axes[2] === frames[other].axes[2] ? [] : [{ ...stiffness, faces: [one, other] as const }],
      ),
  );
}

/** An angle of aluminium, 30 x 30 x 2 mm, about its corner. */
export const angle: BeamSection = {
  axial: 7e10 * 1.16e-4,
  bending: { aa: 7e10 * 1.0e-8, bb: 7e10 * 1.0e-8, ab: 7e10 * -0.6e-8 },
  torsion: 2.6e10 * 1.55e-10,
  shear: { a: 2.6e10 * 5e-5, b: 2.6e10 * 5e-5 },
  centroid: { a: 0.008, b: 0.008 },
  shearCentre: { a: 0, b: 0 },
};
