import type { Sheet } from "./sheet.js";

/** A strip of wood glued on the +z side of a sheet. */
export interface Batten {
  /** Axis of the panel it runs along. */
  readonly along: "x" | "y";
  /** How far it stands off the sheet, m. */
  readonly height: number;
  /** Modulus along it, Pa; across it counts for nothing. */
  readonly modulus: number;
  /** In its plane and through its height, Pa. */
  readonly shearModulus: number;
  /** kg/m3 */
  readonly density: number;
}

/**
 * A sheet with a batten on it, about the sheet's own reference plane. As a strip of plate the batten twists like a
 * flat bar, which is too stiff for one higher than wide.
 *
 * @param sheet bare
 * @param batten glued on without slip
 * @throws RangeError when the batten is nothing
 */
export function withBatten(sheet: Sheet, batten: Batten): Sheet {
  const { height, modulus, shearModulus, density, along } = batten;
  if (!(height > 0 && modulus > 0 && shearModulus > 0))
    throw new RangeError(
      `batten: height and moduli must be positive, got ${height} m, ${modulus} Pa, ${shearModulus} Pa`,
    );
  const low = sheet.faces[0];
  const high = low + height;
  const moments = [height, (high ** 2 - low ** 2) / 2, (high ** 3 - low ** 3) / 3] as const;
  const axis = along === "x" ? 0 : 1;
  const stiffened = (matrix: Sheet["bending"], moment: number): Sheet["bending"] => {
    const rows = matrix.map((row) => [...row]) as [
      [number, number, number],
      [number, number, number],
      [number, number, number],
    ];
    rows[axis]![axis]! += modulus * moment;
    rows[2][2] += shearModulus * moment;
    return rows;
  };
  const through = shearModulus * height;
  return {
    membrane: stiffened(sheet.membrane, moments[0]),
    coupling: stiffened(sheet.coupling, moments[1]),
    bending: stiffened(sheet.bending, moments[2]),
    shear: [sheet.shear[0] + through, sheet.shear[1], sheet.shear[2] + through],
    mass: [0, 1, 2].map(
      (power) => sheet.mass[power]! + density * moments[power]!,
    ) as unknown as Sheet["mass"],
    faces: [high, sheet.faces[1]],
  };
}
