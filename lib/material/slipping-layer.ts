/** A strip on a beam or a panel that slips on its fasteners: how much of it works along. */
import { type Formula, formula } from "../formula.js";
import { Area, Length, Pressure, Ratio, SpringRate } from "../quantity/index.js";
import { cite } from "../source.js";

/** A strip held by a row of fasteners. */
export interface SlippingStrip {
  /** Modulus of the strip along its length. */
  readonly modulus: Pressure;
  /** Of its cross section. */
  readonly area: Area;
  /** From one fastener to the next; of several rows the pitch over their number. */
  readonly pitch: Length;
  /** Of one fastener: force over slip. */
  readonly slip: SpringRate;
  /** Between the rests, or of the strip where it is shorter. */
  readonly length: Length;
}

/**
 * Share of its stiffness along the beam with which a strip works together with what it is fastened to:
 * gamma = 1 / (1 + pi^2 E A s / (K l^2)). Glued, it is 1; loose, it is 0.
 *
 * @example slippingShare(slippingShare.read({ modulus: "9 GPa", area: "600 mm2", pitch: "100 mm", slip: "2000 N/mm", length: "1 m" })) // 0.2729
 */
export const slippingShare: Formula<SlippingStrip, Ratio> = formula({
  id: "composite.slip",
  title: "Share of a strip that works along, fastened but not glued",
  equation: String.raw`\gamma = \frac{1}{1 + \dfrac{\pi^2 E A\,s}{K\,l^2}}`,
  inputs: {
    modulus: { symbol: "E", kind: Pressure, meaning: "modulus of the strip along its length", above: 0 },
    area: { symbol: "A", kind: Area, meaning: "cross section of the strip", above: 0 },
    pitch: { symbol: "s", kind: Length, meaning: "pitch of the fasteners", above: 0 },
    slip: { symbol: "K", kind: SpringRate, meaning: "force over slip of one fastener", above: 0 },
    length: { symbol: "l", kind: Length, meaning: "span, or length of the strip", above: 0 },
  },
  result: { symbol: String.raw`\gamma`, kind: Ratio, meaning: "share that works along" },
  source: [cite("en-1995", "annex B, eq. B.5")],
  validity: "Strips bent about one axis under a load that is spread; for one of the two parts of a beam.",
  compute: ({ modulus, area, pitch, slip, length }) =>
    1 / (1 + (Math.PI ** 2 * modulus * area * pitch) / (slip * length ** 2)),
});
