/** A tight strap on the edge of a panel. */
import { type Formula, formula } from "../formula.js";
import { Angle, degree, Force, Length, Pressure } from "../quantity/index.js";
import { cite } from "../source.js";

/** A strap that runs over the top and down beside a wall. */
export interface StrapOnEdge {
  /** In the strap. */
  readonly tension: Force;
  /** Between its leg and the floor. */
  readonly strapAngle: Angle;
  /** Width of the strap. */
  readonly strapWidth: Length;
  /** Of the wall that it runs over. */
  readonly thickness: Length;
}

/**
 * What a strap presses the upper edge of a wall with: the upright part of its pull on strap width times thickness.
 *
 * @example strapEdgePressure(strapEdgePressure.read({ tension: "1000 N", strapAngle: "90 deg", strapWidth: "25 mm",
 *   thickness: "10 mm" })) // 4 MPa
 */
export const strapEdgePressure: Formula<StrapOnEdge, Pressure> = formula<StrapOnEdge, Pressure>({
  id: "lashing.edge",
  title: "What a strap presses an edge with",
  equation: String.raw`p=\frac{S\,\sin\alpha}{b\,t}`,
  inputs: {
    tension: { symbol: "S", kind: Force, meaning: "tension of the strap", min: 0 },
    strapAngle: {
      symbol: String.raw`\alpha`,
      kind: Angle,
      meaning: "strap against the floor",
      above: 0,
      max: degree(90),
    },
    strapWidth: { symbol: "b", kind: Length, meaning: "width of the strap", above: 0 },
    thickness: { symbol: "t", kind: Length, meaning: "thickness of the wall", above: 0 },
  },
  result: { symbol: "p", kind: Pressure, meaning: "pressure on the edge" },
  source: [
    cite("en-12195", "tie-down lashing, vertical part of the tension"),
    cite("statics", "force over area"),
  ],
  validity: "The wall bears the strap alone; a metal edge or a protector spreads it over more.",
  compute: ({ tension, strapAngle, strapWidth, thickness }) =>
    (tension * Math.sin(strapAngle)) / (strapWidth * thickness),
});
