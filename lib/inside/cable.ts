/** Cables: round corners and through holes. */
import { type Formula, formula } from "../formula.js";
import { Area, Length, listOf, Ratio } from "../quantity/index.js";
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
 * @example cableRoom(cableRoom.read({ diameter: "6 mm", factor: 4, plug: "30 mm" })) // radius 24 mm, room 60 mm
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

/** Cables through one hole. */
export interface CablesInHole {
  /** Outside diameter of each. */
  readonly cables: readonly Length[];
  /** Free area of the hole. */
  readonly opening: Area;
}

/** How full a hole is. */
export type HoleFill = {
  /** Share of the hole that cables take up. */
  readonly fill: Ratio;
  /** Share that they may. */
  readonly allowed: Ratio;
};

/** Share of a hole that one, two, or more cables may fill. NEC chapter 9, table 1. */
const fillAllowed = [0.53, 0.31, 0.4] as const;

/**
 * How full cables make a hole: sum of pi d^2 / 4 over its area, beside what the code for conduits allows: 53 % for
 * one, 31 % for two, 40 % for more.
 *
 * @source geometry; NEC chapter 9, table 1
 * @throws RangeError for no cable, a cable without diameter, or a hole without area
 * @example cableFill(cableFill.read({ cables: ["10 mm"], opening: "100 mm2" })) // fill 0.7854, allowed 0.53
 */
export const cableFill: Formula<CablesInHole, HoleFill> = formula<CablesInHole, HoleFill>({
  id: "cable.fill",
  title: "How full cables make a hole",
  equation: String.raw`f=\frac{\pi\sum d_i^2}{4A}`,
  inputs: {
    cables: { symbol: "d_i", kind: listOf(Length), meaning: "cables" },
    opening: { symbol: "A", kind: Area, meaning: "hole", above: 0 },
  },
  result: {
    fill: { symbol: "f", kind: Ratio, meaning: "share taken up" },
    allowed: { symbol: "f_{max}", kind: Ratio, meaning: "share that may be" },
  },
  source: [cite("nec", "chapter 9, table 1"), cite("geometry", "area of a circle")],
  validity: "A table for conduits: a short hole forgives more, a brush less.",
  refuse: ({ cables }) =>
    cables.length > 0 && cables.every((cable) => cable > 0)
      ? []
      : ["at least one cable, each with a diameter"],
  compute: ({ cables, opening }) => ({
    fill: (Math.PI * cables.reduce((sum, cable) => sum + cable ** 2, 0)) / (4 * opening),
    allowed: fillAllowed[Math.min(cables.length, fillAllowed.length) - 1] ?? 0,
  }),
});
