/**
 * Navier's double sine series for a plate on four hinged edges, an independent way beside the Ritz series.
 * Timoshenko and Woinowsky-Krieger, arts. 28, 29 (isotropic), 85 (orthotropic).
 */

import { at as entry, memoized } from "../../algebra/lists.js";
import type { OrthotropicStiffness } from "../../material/index.js";
import type { Box2 } from "../../shape/index.js";
import type { PlateSides } from "./opening-layout.js";
import type { PlatePoint } from "./plate-field.js";
import { largestPlace } from "./plate-field.js";

/** A plate on four hinged edges under a pressure over a rectangle, SI. */
export interface HingedPlate extends PlateSides {
  /** Bending stiffness, with x along `length`. */
  readonly stiffness: OrthotropicStiffness;
  /** Pa */
  readonly pressure: number;
  /** The rectangle that is loaded. */
  readonly over: Box2;
}

/** Sine waves along each side. Moments of a uniform load then hold to five digits. */
const waves = 120;

/** Amplitudes of the deflection, m: entry (m - 1) * waves + (n - 1). */
type Amplitudes = Float64Array;

/**
 * Sums the series once; the answers can then be read anywhere.
 *
 * @param plate geometry, stiffness and load
 */
export function navierSeries(plate: HingedPlate): {
  at(x: number, y: number): PlatePoint;
  largest(): PlatePoint;
} {
  const amplitudes = deflectionAmplitudes(plate);
  const at = (x: number, y: number): PlatePoint => readSeries(plate, amplitudes, x, y);
  const largest = (): PlatePoint => {
    const along = memoized((x) => wavesAt(plate.length, x, 0));
    const across = memoized((y) => rowSums(amplitudes, wavesAt(plate.width, y, 0)));
    return at(...largestPlace({ ...plate, openings: [] }, (x, y) => Math.abs(dot(along(x), across(y)))));
  };
  return { at, largest };
}

function deflectionAmplitudes({ length, width, stiffness, pressure, over }: HingedPlate): Amplitudes {
  const { alongX, alongY, coupling, twist } = stiffness;
  const alongLoad = loadWaves(length, over.left, over.width);
  const acrossLoad = loadWaves(width, over.bottom, over.height);
  return Float64Array.from({ length: waves * waves }, (_, place) => {
    const [i, j] = [Math.floor(place / waves), place % waves];
    const kx = ((i + 1) * Math.PI) / length;
    const ky = ((j + 1) * Math.PI) / width;
    const stiff = alongX * kx ** 4 + 2 * (coupling + 2 * twist) * kx ** 2 * ky ** 2 + alongY * ky ** 4;
    return (pressure * entry(alongLoad, i) * entry(acrossLoad, j)) / stiff;
  });
}

/** Sine amplitudes of a unit load between two places of a span. */
function loadWaves(span: number, from: number, length: number): number[] {
  return Array.from({ length: waves }, (_, i) => {
    const k = ((i + 1) * Math.PI) / span;
    return (4 / (k * span)) * Math.sin(k * (from + length / 2)) * Math.sin((k * length) / 2);
  });
}

/** sin or cos of every wave at a place, times the wave number to a power. */
function wavesAt(span: number, place: number, power: 0 | 1 | 2): Float64Array {
  return Float64Array.from({ length: waves }, (_, i) => {
    const k = ((i + 1) * Math.PI) / span;
    return power === 1 ? k * Math.cos(k * place) : k ** power * Math.sin(k * place);
  });
}

/** The series summed over the waves along y, one value a wave along x. */
function rowSums(amplitudes: Amplitudes, acrossWaves: Float64Array): Float64Array {
  return Float64Array.from({ length: waves }, (_, i) =>
    dot(amplitudes.subarray(i * waves, (i + 1) * waves), acrossWaves),
  );
}

function dot(one: Float64Array, other: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < waves; i++) sum += entry(one, i) * entry(other, i);
  return sum;
}

function readSeries(plate: HingedPlate, amplitudes: Amplitudes, x: number, y: number): PlatePoint {
  const { length, width, stiffness } = plate;
  const sum = (powerX: 0 | 1 | 2, powerY: 0 | 1 | 2): number =>
    dot(wavesAt(length, x, powerX), rowSums(amplitudes, wavesAt(width, y, powerY)));
  const [bendX, bendY] = [sum(2, 0), sum(0, 2)];
  return {
    x,
    y,
    deflection: sum(0, 0),
    momentX: stiffness.alongX * bendX + stiffness.coupling * bendY,
    momentY: stiffness.alongY * bendY + stiffness.coupling * bendX,
    momentXY: -2 * stiffness.twist * sum(1, 1),
  };
}
