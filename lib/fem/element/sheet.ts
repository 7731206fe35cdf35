/** What a sheet resists and weighs, per unit of its area, about its own reference plane. */
import type { Laminate } from "../../material/index.js";

/** Stiffness and mass of a sheet; rows and columns x, y, shear; +z is one face. */
export interface Sheet {
  /** A, N/m. */
  readonly membrane: Laminate["membrane"];
  /** B, N; all zero when the reference plane is the neutral one. */
  readonly coupling: Laminate["coupling"];
  /** D, N m. */
  readonly bending: Laminate["bending"];
  /** Stiffness against shear through the thickness on x, y and both, N/m. */
  readonly shear: readonly [xx: number, xy: number, yy: number];
  /** Mass and its first and second moments about the reference plane: kg/m2, kg/m, kg. */
  readonly mass: readonly [plain: number, first: number, second: number];
  /** The +z and -z faces, m from the reference plane. */
  readonly faces: readonly [top: number, bottom: number];
}

/** Whether stretching and bending act on each other. */
export function isCoupled({ coupling }: Sheet): boolean {
  return coupling.some((row) => row.some((value) => value !== 0));
}
