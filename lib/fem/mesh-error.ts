import { Ratio } from "../quantity/index.js";

/**
 * How far the mesh may have a value wrong: its change from a rougher mesh, as a share; nothing of nothing.
 *
 * @param value on the finer mesh
 * @param rougher the same on the rougher one
 */
export function meshChange(value: number, rougher: number): Ratio {
  return Ratio.si(value === 0 ? 0 : Math.abs(1 - rougher / value));
}
