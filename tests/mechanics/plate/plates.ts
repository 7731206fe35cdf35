/** Plates for tests: sound by construction, unequal and unround. */
import fc from "fast-check";
import type { OrthotropicStiffness } from "../../../lib/material/index.js";
import type { EdgeSupport, PlateEdges, PlatePatch } from "../../../lib/mechanics/index.js";
import { Force, Length, PlateStiffness } from "../../../lib/quantity/index.js";

export const stiffnessOf = (
  alongX: number,
  alongY: number,
  coupling: number,
  twist: number,
): OrthotropicStiffness => ({
  alongX: PlateStiffness.si(alongX),
  alongY: PlateStiffness.si(alongY),
  coupling: PlateStiffness.si(coupling),
  twist: PlateStiffness.si(twist),
});

/** A 9 mm panel of cross-banded plywood, or near it. */
export const plywood: OrthotropicStiffness = stiffnessOf(547, 365, 18, 38);

export const anyStiffness: fc.Arbitrary<OrthotropicStiffness> = fc
  .tuple(
    fc.double({ min: 100, max: 2000, noNaN: true }),
    fc.double({ min: 0.2, max: 5, noNaN: true }),
    fc.double({ min: 0, max: 0.4, noNaN: true }),
    fc.double({ min: 0.05, max: 0.6, noNaN: true }),
  )
  .map(([x, ratio, coupling, twist]) => {
    const mean = x * Math.sqrt(ratio);
    return stiffnessOf(x, x * ratio, coupling * mean, twist * mean);
  });

export const anySide: fc.Arbitrary<Length> = fc.double({ min: 0.3, max: 0.9, noNaN: true }).map(Length.si);

export const edges = (
  left: EdgeSupport,
  right: EdgeSupport,
  bottom: EdgeSupport,
  top: EdgeSupport,
): PlateEdges => ({
  left,
  right,
  bottom,
  top,
});

const support = fc.constantFrom<EdgeSupport>("free", "hinged", "clamped");

/** Edges that hold a plate in place. */
export const anyEdges: fc.Arbitrary<PlateEdges> = fc
  .tuple(support, support, support, support)
  .map(([left, right, bottom, top]) => edges(left, right, bottom, top))
  .filter((held) => {
    const all = Object.values(held);
    return all.includes("clamped") || all.filter((one) => one === "hinged").length > 1;
  });

export const patchOf = (x: number, y: number, length: number, width: number, force = 100): PlatePatch => ({
  force: Force.si(force),
  patchX: Length.si(x),
  patchY: Length.si(y),
  patchLength: Length.si(length),
  patchWidth: Length.si(width),
});

/** Solving a plate takes a while, so few of them. */
export const few: { readonly numRuns: number } = { numRuns: 10 };

export function close(a: number, b: number, tolerance: number): boolean {
  return Math.abs(a - b) <= tolerance * Math.max(Math.abs(a), Math.abs(b));
}
