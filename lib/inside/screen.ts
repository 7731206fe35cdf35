/** Screens between clamps and foam strip. */
import { type Formula, formula } from "../formula.js";
import { Area, Force, Length, Pressure, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** A foam strip squeezed between a clamp and a pane. */
export interface FoamStrip {
  /** The thickness before the strip is squeezed. */
  readonly thickness: Length;
  /** The squeeze, as a share of the thickness. */
  readonly squeeze: Ratio;
  /** Share of the squeeze that does not come back: ASTM D395, from its maker. */
  readonly set: Ratio;
}

/**
 * What is left of the squeeze of a foam strip once it has set: T q (1 - s). A rattle begins at nothing.
 *
 * @source ASTM D395, compression set
 * @throws RangeError unless squeeze and set are from 0 to below 1
 * @example stripGrip(stripGrip.read({ thickness: "1/4 in", squeeze: 0.4, set: 1 })) // 0 mm
 */
export const stripGrip: Formula<FoamStrip, Length> = formula({
  id: "screen.strip.grip",
  title: "Squeeze that a foam strip keeps",
  equation: String.raw`r=T\,q\,(1-s)`,
  inputs: {
    thickness: { symbol: "T", kind: Length, meaning: "thickness, free", above: 0 },
    squeeze: { symbol: "q", kind: Ratio, meaning: "squeeze", min: 0, below: 1 },
    set: { symbol: "s", kind: Ratio, meaning: "compression set", min: 0, max: 1 },
  },
  result: { symbol: "r", kind: Length, meaning: "squeeze left" },
  source: [cite("astm-d395", "method B, set as a share of the deflection")],
  validity: "At the temperature and time that its maker tested.",
  compute: ({ thickness, squeeze, set }) => thickness * squeeze * (1 - set),
});

/** Compression set of a test piece. */
export interface SetTest {
  /** The thickness before the test. */
  readonly before: Length;
  /** The thickness while squeezed. */
  readonly squeezed: Length;
  /** Half an hour after it was let go. */
  readonly after: Length;
}

/**
 * Compression set: (before - after) / (before - squeezed).
 *
 * @source ASTM D395, method B
 * @throws RangeError unless the squeezed piece is thinner than before
 * @example compressionSet(compressionSet.read({ before: "10 mm", squeezed: "7 mm", after: "10 mm" })) // 0
 */
export const compressionSet: Formula<SetTest, Ratio> = formula({
  id: "screen.strip.set",
  title: "Compression set",
  equation: String.raw`s=\frac{t_0-t_1}{t_0-t_n}`,
  inputs: {
    before: { symbol: "t_0", kind: Length, meaning: "before", above: 0 },
    squeezed: { symbol: "t_n", kind: Length, meaning: "while squeezed", min: 0 },
    after: { symbol: "t_1", kind: Length, meaning: "afterwards", min: 0 },
  },
  result: { symbol: "s", kind: Ratio, meaning: "share that does not come back" },
  source: [cite("astm-d395", "method B")],
  validity: "Read half an hour after release.",
  refuse: ({ before, squeezed, after }) =>
    squeezed < before && after <= before
      ? []
      : ["the piece must be thinner squeezed than before, and not grow"],
  compute: ({ before, squeezed, after }) => (before - after) / (before - squeezed),
});

/** A pane's edge under a clamp. */
export interface ClampedEdge {
  /** The force of one clamp. */
  readonly force: Force;
  /** The area of the strip under one clamp. */
  readonly area: Area;
}

/**
 * Pressure of a clamp on a pane's edge through its strip: F / A.
 *
 * @source statics
 * @throws RangeError unless the area is positive
 * @example clampPressure(clampPressure.read({ force: "20 N", area: "200 mm2" })) // 100 kPa
 */
export const clampPressure: Formula<ClampedEdge, Pressure> = formula({
  id: "screen.clamp",
  title: "Pressure of a clamp on a pane",
  equation: String.raw`p=\frac{F}{A}`,
  inputs: {
    force: { symbol: "F", kind: Force, meaning: "force of the clamp", min: 0 },
    area: { symbol: "A", kind: Area, meaning: "strip under it", above: 0 },
  },
  result: { symbol: "p", kind: Pressure, meaning: "pressure on the pane" },
  source: [cite("statics", "force over area")],
  validity:
    "An even strip, no metal on glass anywhere; the rim of a screen panel stands little and its face none.",
  compute: ({ force, area }) => force / area,
});
