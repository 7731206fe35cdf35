/** Cables and wires: round corners, through holes, and what they resist. */
import { type Formula, formula } from "../formula.js";
import { Area, Count, Length, listOf, Ratio, ratio, Temperature } from "../quantity/index.js";
import { cite } from "../source.js";
import { Resistance } from "./kinds.js";

/**
 * Size of a solid wire by its American gauge: d = 0.127 mm x 92^((36-n)/39).
 *
 * @source ASTM B258
 * @throws RangeError unless the gauge is from 0 to 40
 * @example wireSize({ gauge: 14 }) // diameter 1.628 mm, area 2.081 mm2
 */
export const wireSize: Formula<
  { readonly gauge: number },
  { readonly diameter: Length; readonly area: Area }
> = formula<{ readonly gauge: number }, { readonly diameter: Length; readonly area: Area }>({
  id: "power.wire.size",
  title: "Size of a wire by its gauge",
  equation: String.raw`d=0.127\,\mathrm{mm}\cdot92^{(36-n)/39},\quad A=\tfrac{\pi}{4}d^2`,
  inputs: { gauge: { symbol: "n", kind: Count, meaning: "gauge (AWG)", max: 40 } },
  result: {
    diameter: { symbol: "d", kind: Length, meaning: "diameter of the copper" },
    area: { symbol: "A", kind: Area, meaning: "section of the copper" },
  },
  source: [cite("astm-b258", "progression of sizes")],
  validity: "Solid wire; a strand of the same gauge has the same copper and is thicker.",
  compute: ({ gauge }) => {
    const diameter = 0.127e-3 * 92 ** ((36 - gauge) / 39);
    return { diameter, area: (Math.PI / 4) * diameter ** 2 };
  },
});

/** A copper wire. */
export interface CopperWire {
  /** The area of copper. */
  readonly area: Area;
  /** One way. */
  readonly length: Length;
  /** The temperature of the copper: 75 °C when loaded. */
  readonly temperature: Temperature;
  /** How much longer strands are than the wire: 1 solid, about 1.02 stranded, 1.2 for flexible cord. */
  readonly stranding: Ratio;
}

/** Resistance of finely stranded flexible cord over solid copper of its section. BS 7671, table 4F3B. */
export const flexibleCord: Ratio = ratio(1.2);

/** Annealed copper at 20 °C: 1/58 ohm mm2/m, and its rise for each degree. International Annealed Copper Standard. */
const copperResistivity = 1e-6 / 58;
const copperRise = 0.00393;

/**
 * Resistance of a copper wire: s rho L / A x (1 + 0.00393 (T - 20 °C)), with s for the strands.
 *
 * @source electricity; NEC chapter 9, table 8 for the check
 * @throws RangeError unless area and length are positive
 * @example wireResistance(wireResistance.read({ area: "1 mm2", length: "2 m", temperature: "60 °C", stranding: 1.2 })) // 47.88 mohm
 */
export const wireResistance: Formula<CopperWire, Resistance> = formula({
  id: "power.wire.resistance",
  title: "Resistance of a copper wire",
  equation: String.raw`R=s\,\frac{L}{58\,A}\left(1+0.00393\,(T-20)\right)`,
  inputs: {
    area: { symbol: "A", kind: Area, meaning: "copper", above: 0, unit: "mm2" },
    length: { symbol: "L", kind: Length, meaning: "length of wire", above: 0, unit: "m" },
    temperature: { symbol: "T", kind: Temperature, meaning: "of the copper", min: 200, max: 500, unit: "°C" },
    stranding: { symbol: "s", kind: Ratio, meaning: "strands over solid wire", min: 1, max: 1.5 },
  },
  result: { symbol: "R", kind: Resistance, meaning: "resistance", unit: "ohm" },
  source: [
    cite("electricity", "resistance of a wire"),
    cite("nec", "chapter 9, table 8"),
    cite("bs-7671", "table 4F3B"),
  ],
  validity: "Direct current or thin wire at mains frequency.",
  compute: ({ area, length, temperature, stranding }) =>
    ((stranding * copperResistivity * length) / area) * (1 + copperRise * (temperature - 293.15)),
});

/** A cable that turns a corner. */
export interface BentCable {
  /** The outside diameter of the cable. */
  readonly diameter: Length;
  /** Least inner radius over diameter: 4 for data, 6 to 8 for power, from its maker. */
  readonly factor: Ratio;
  /** The straight length of plug and strain relief. */
  readonly plug: Length;
}

/** Room behind a plug. */
export type CableRoom = {
  /** Inner radius of the bend. */
  readonly radius: Length;
  /** The room from the socket to the far side of the bent cable. */
  readonly room: Length;
};

/**
 * Room behind a socket for its plug and a right-angled bend: plug + factor x d + d.
 *
 * @source common practice; no published rule was found for cords
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
    cite("common-practice", "inner radius as a multiple of the diameter; no published rule found for cords"),
  ],
  validity: "One bend at rest; a cable that moves wants twice the radius.",
  compute: ({ diameter, factor, plug }) => ({
    radius: factor * diameter,
    room: plug + factor * diameter + diameter,
  }),
});

/** Cables through one hole. */
export interface CablesInHole {
  /** The outside diameter of each cable. */
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
