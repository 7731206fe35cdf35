/** Reads the deflected plate: deflection and moments at a place, the largest deflection. */
import { largestPlace } from "./largest-place.js";
import type { PlateSeries } from "./plate-series.js";
import type { StripValues } from "./strip-functions.js";

/** What happens at one place. */
export interface PlatePoint {
  /** m from the left edge. */
  readonly x: number;
  /** m from the lower edge. */
  readonly y: number;
  /** m */
  readonly deflection: number;
  /** Bending moment that bends strips along x, N m per m; positive where the loaded face is hollow. */
  readonly momentX: number;
  /** The same along y. */
  readonly momentY: number;
  /** Twisting moment, N m per m. */
  readonly momentXY: number;
}

/**
 * Deflection and moments at a place: Mx = -(Dx wxx + D1 wyy), My = -(Dy wyy + D1 wxx), Mxy = -2 Dxy wxy.
 *
 * @param series the solved plate
 * @param x m from the left edge
 * @param y m from the lower edge
 */
export function plateAt(series: PlateSeries, x: number, y: number): PlatePoint {
  const fx = series.along.at(x);
  const fy = series.across.at(y);
  const sum = (a: keyof StripValues, b: keyof StripValues): number =>
    series.terms.reduce(
      (total, { i, j, factor }) => total + factor * (fx[a][i] as number) * (fy[b][j] as number),
      0,
    );
  const { alongX, alongY, coupling, twist } = series.plate.stiffness;
  const [wxx, wyy] = [sum("curvature", "value"), sum("value", "curvature")];
  return {
    x,
    y,
    deflection: sum("value", "value"),
    momentX: -(alongX * wxx + coupling * wyy),
    momentY: -(alongY * wyy + coupling * wxx),
    momentXY: -2 * twist * sum("slope", "slope"),
  };
}

/**
 * The place of the largest deflection over the material, either way.
 *
 * @param series the solved plate
 */
export function largestDeflection(series: PlateSeries): PlatePoint {
  const { along, across, terms } = series;
  const [x, y] = largestPlace(series.plate, (x, y) => {
    const fx = along.at(x).value;
    const fy = across.at(y).value;
    let sum = 0;
    for (const { i, j, factor } of terms) sum += factor * (fx[i] as number) * (fy[j] as number);
    return Math.abs(sum);
  });
  return plateAt(series, x, y);
}
