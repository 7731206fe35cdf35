import { type Formula, formula } from "../formula.js";
import { Force, Length, Pressure } from "../quantity/index.js";
import { cite } from "../source.js";

/** A fastener that pulls towards the edge of its sheet. */
export interface TearOutInputs {
  /** Centre of the hole to the edge. */
  readonly edgeDistance: Length;
  readonly hole: Length;
  readonly thickness: Length;
  /** Through the thickness, in the planes from the hole's sides to the edge. */
  readonly shearStrength: Pressure;
}

/**
 * Load at which a fastener tears a plug out to the edge: two shear planes from the hole's sides to the edge,
 * F = 2 (e - d_h/2) t f_v.
 *
 * @throws RangeError when the hole reaches the edge
 * @example edgeTearOut(edgeTearOut.read({ edgeDistance: "10 mm", hole: "5 mm", thickness: "9 mm", shearStrength: "4 MPa" })) // 540 N
 */
export const edgeTearOut: Formula<TearOutInputs, Force> = formula({
  id: "edge.tearout",
  title: "Tear-out of a hole to the edge",
  equation: String.raw`F = 2\left(e - \tfrac{d_h}{2}\right) t\,f_v`,
  inputs: {
    edgeDistance: { symbol: "e", kind: Length, meaning: "centre of the hole to the edge", above: 0 },
    hole: { symbol: "d_h", kind: Length, meaning: "hole", above: 0 },
    thickness: { symbol: "t", kind: Length, meaning: "thickness of the sheet", above: 0 },
    shearStrength: { symbol: "f_v", kind: Pressure, meaning: "shear strength of the sheet", above: 0 },
  },
  result: { symbol: "F", kind: Force, meaning: "load at tear-out" },
  source: [cite("machine-design", "8-12, shear tear-out"), cite("common-practice", "two straight planes")],
  validity: "Ply and sheet metal pulled in their plane; solid wood along its grain splits earlier.",
  refuse: ({ edgeDistance, hole }) =>
    edgeDistance > hole / 2
      ? []
      : [
          `edgeDistance must be more than half the hole (${Length.show(Length.si(hole / 2))}), got ${Length.show(edgeDistance)}`,
        ],
  compute: ({ edgeDistance, hole, thickness, shearStrength }) =>
    2 * (edgeDistance - hole / 2) * thickness * shearStrength,
});
