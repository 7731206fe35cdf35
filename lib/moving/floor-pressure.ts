import { type Formula, formula } from "../formula.js";
import { Area, Force, Pressure } from "../quantity/index.js";
import { cite } from "../source.js";

/** A caster on a floor. */
export interface CasterOnFloor {
  /** On the caster. */
  readonly load: Force;
  /** Of tread that touches: press it on carbon paper. */
  readonly contact: Area;
}

/**
 * Pressure of a caster on the floor: F / A.
 *
 * @source statics
 * @throws Refusal for a negative load or no contact
 * @example floorPressure(floorPressure.read({ load: "300 N", contact: "100 mm2" })) // 3 MPa
 */
export const floorPressure: Formula<CasterOnFloor, Pressure> = formula({
  id: "roll.pressure",
  title: "Pressure of a caster on the floor",
  equation: String.raw`p=\frac{F}{A}`,
  inputs: {
    load: { symbol: "F", kind: Force, meaning: "load of the caster", min: 0 },
    contact: { symbol: "A", kind: Area, meaning: "tread that touches", above: 0 },
  },
  result: { symbol: "p", kind: Pressure, meaning: "pressure on the floor" },
  source: [cite("statics", "force over area")],
  validity: "Mean over the print; its middle has up to half as much again.",
  compute: ({ load, contact }) => load / contact,
});
