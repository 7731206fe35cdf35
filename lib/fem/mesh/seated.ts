import type { Cutout, CutRectangle, Outline } from "./outline.js";

/** Distance that counts as touching, as a share of the panel's larger side. */
const touching = 1e-6;

/**
 * The outline with every rectangle that touches a side of the panel run out to it: exactly, where drawn sizes add up to
 * a hair less or more, and past it by its corner radius, so that a rounded notch is as wide at its mouth as inside.
 *
 * @param outline as drawn
 */
export function seated(outline: Outline): Outline {
  return { ...outline, cutouts: outline.cutouts.map((cutout) => seatedCutout(cutout, outline)) };
}

function seatedCutout(cutout: Cutout, { length, width }: Outline): Cutout {
  if (cutout.kind !== "rectangle") return cutout;
  const near = touching * Math.max(length, width);
  const [left, right] = seatedSides(cutout.left, cutout.left + cutout.width, length, cutout, near);
  const [bottom, top] = seatedSides(cutout.bottom, cutout.bottom + cutout.height, width, cutout, near);
  return { ...cutout, left, bottom, width: right - left, height: top - bottom };
}

function seatedSides(
  low: number,
  high: number,
  extent: number,
  { radius }: CutRectangle,
  near: number,
): readonly [low: number, high: number] {
  return [Math.abs(low) < near ? -radius : low, Math.abs(high - extent) < near ? extent + radius : high];
}
