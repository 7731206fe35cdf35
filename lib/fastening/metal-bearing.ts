import { type Formula, formula } from "../formula.js";
import { Force, Length, Pressure } from "../quantity/index.js";
import { cite } from "../source.js";

/** A fastener in a hole in sheet metal. */
export interface MetalBearingInputs {
  readonly diameter: Length;
  readonly thickness: Length;
  /** Tensile strength of the metal. */
  readonly tensileStrength: Pressure;
  /** Centre of the hole to the edge towards which it is pulled. */
  readonly edgeDistance: Length;
}

/**
 * Bearing strength of one hole in aluminium: R = min(e, 2 d) t F_tu. Near the edge the metal in front
 * of the fastener shears out, further in it crushes.
 *
 * @throws RangeError when the hole's centre is nearer to the edge than one diameter
 * @example metalBearing(metalBearing.read({ diameter: "4.8 mm", thickness: "1.5 mm", tensileStrength: "200 MPa", edgeDistance: "15 mm" })) // 2.88 kN
 */
export const metalBearing: Formula<MetalBearingInputs, Force> = formula({
  id: "metal.bearing",
  title: "Bearing strength of a hole in aluminium",
  equation: String.raw`R = \min(e,\,2d)\;t\,F_{tu}`,
  inputs: {
    diameter: { symbol: "d", kind: Length, meaning: "diameter of the fastener", above: 0 },
    thickness: { symbol: "t", kind: Length, meaning: "thickness of the metal", above: 0 },
    tensileStrength: { symbol: "F_{tu}", kind: Pressure, meaning: "tensile strength of the metal", above: 0 },
    edgeDistance: { symbol: "e", kind: Length, meaning: "centre of the hole to the edge", above: 0 },
  },
  result: { symbol: "R", kind: Force, meaning: "bearing strength, ultimate" },
  source: [cite("aluminum-design", "J.3.6 and J.4.6, bearing at holes")],
  validity: "Sheet and extrusions; heat beside a weld would lower the tensile strength.",
  refuse: ({ diameter, edgeDistance }) =>
    edgeDistance >= diameter * (1 - 1e-9)
      ? []
      : [
          `edgeDistance must be at least one diameter (${Length.show(diameter)}), got ${Length.show(edgeDistance)}`,
        ],
  compute: ({ diameter, thickness, tensileStrength, edgeDistance }) =>
    Math.min(edgeDistance, 2 * diameter) * thickness * tensileStrength,
});
