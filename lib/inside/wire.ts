/** Copper wires by their gauge. */
import { type Formula, formula } from "../formula.js";
import { Area, Count, Length, Ratio, ratio, Temperature } from "../quantity/index.js";
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
  /** Of copper. */
  readonly area: Area;
  /** One way. */
  readonly length: Length;
  /** Of the copper: 75 °C when loaded. */
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
