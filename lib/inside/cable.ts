import { type Formula, formula } from "../formula.js";
import { Length, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** A cable that turns a corner. */
export interface BentCable {
  /** Outside. */
  readonly diameter: Length;
  /** Least inner radius over diameter: 4 for data, 6 to 8 for power, from its maker. */
  readonly factor: Ratio;
  /** Of plug and strain relief, straight. */
  readonly plug: Length;
}

/** Room behind a plug. */
export type CableRoom = {
  /** Inner radius of the bend. */
  readonly radius: Length;
  /** From the socket to the far side of the bent cable. */
  readonly room: Length;
};

/**
 * Room behind a socket for its plug and a right-angled bend: plug + factor x d + d.
 *
 * @source common practice; NEC 300.34 for factors of power cable
 * @throws RangeError unless the diameter is positive and the factor at least 1
 */
export const cableRoom: Formula<BentCable, CableRoom> = formula<BentCable, CableRoom>({
  id: "cable.room",
  title: "Room behind a socket",
  equation: String.raw`r=f\,d,\quad L=p+r+d`,
  inputs: {
    diameter: { symbol: "d", kind: Length, meaning: "cable", above: 0 },
    factor: { symbol: "f", kind: Ratio, meaning: "least radius over diameter", min: 1 },
    plug: { symbol: "p", kind: Length, meaning: "plug and strain relief", min: 0 },
  },
  result: {
    radius: { symbol: "r", kind: Length, meaning: "inner radius of the bend" },
    room: { symbol: "L", kind: Length, meaning: "room from the socket" },
  },
  source: [
    cite("common-practice", "inner radius as a multiple of the diameter"),
    cite("nec", "300.34, multiples of the diameter"),
  ],
  validity: "One bend at rest; a cable that moves wants twice the radius.",
  compute: ({ diameter, factor, plug }) => ({
    radius: factor * diameter,
    room: plug + factor * diameter + diameter,
  }),
});
