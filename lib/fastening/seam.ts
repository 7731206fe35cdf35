/** A riveted seam under shear flow, and the length of rivet that closes a stack. */
import { type Formula, formula } from "../formula.js";
import { Force, Length, LineLoad, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** A row of fasteners along a seam. */
export interface SeamInputs {
  /** Shear along the seam, a metre. */
  readonly flow: LineLoad;
  readonly pitch: Length;
  /** Rows that share it. */
  readonly rows: Ratio;
}

/**
 * Force on each fastener of a seam: F = q p / m.
 *
 * @example seamForce(seamForce.read({ flow: "3 N/mm", pitch: "100 mm", rows: 1 })) // 300 N
 */
export const seamForce: Formula<SeamInputs, Force> = formula({
  id: "seam.force",
  title: "Force on each fastener of a seam",
  equation: String.raw`F = \frac{q\,p}{m}`,
  inputs: {
    flow: { symbol: "q", kind: LineLoad, meaning: "shear along the seam", min: 0 },
    pitch: { symbol: "p", kind: Length, meaning: "pitch", above: 0 },
    rows: { symbol: "m", kind: Ratio, meaning: "rows", min: 1 },
  },
  result: { symbol: "F", kind: Force, meaning: "force on each" },
  source: [cite("machine-design", "shear flow times pitch"), cite("statics", "equal shares along a seam")],
  validity: "Even shear along the seam; near openings and corners it is larger.",
  compute: ({ flow, pitch, rows }) => (flow * pitch) / rows,
});

/** A blind rivet to choose. */
export interface RivetLengthInputs {
  /** Washer counted. */
  readonly grip: Length;
  readonly diameter: Length;
}

/**
 * Length of a blind rivet under its head, when no grip range is stated: l = g + 1.5 d.
 *
 * @example rivetLength(rivetLength.read({ grip: "6 mm", diameter: "4 mm" })) // 12 mm
 */
export const rivetLength: Formula<RivetLengthInputs, Length> = formula({
  id: "rivet.length",
  title: "Length of a blind rivet for a stack",
  equation: String.raw`l = g + 1.5\,d`,
  inputs: {
    grip: { symbol: "g", kind: Length, meaning: "stack, washer counted", above: 0 },
    diameter: { symbol: "d", kind: Length, meaning: "diameter", above: 0 },
  },
  result: { symbol: "l", kind: Length, meaning: "length under the head" },
  source: [cite("common-practice", "grip plus one and a half diameters")],
  validity: "Standard open-end rivets; a maker's grip range outranks it.",
  compute: ({ grip, diameter }) => grip + 1.5 * diameter,
});
